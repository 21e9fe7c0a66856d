package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Section;

/**
 * What the flat sides of a body tell once its neighbours have told which of them are its ends. The
 * sides of a square elbow lie off any arc between them.
 */
public final class FlatSides {

  /** A side whose middle is this near to an end is that end. */
  private static final double SAME_PLACE_M = 0.02;

  private FlatSides() {}

  /**
   * True if no drawn side lies off the arc of a bend.
   *
   * @param drawn a body whose flat sides look like ends
   * @param bend what its two real ends make, with a radius
   */
  public static boolean followArc(Shape drawn, Shape bend) {
    List<Vec> corners = new ArrayList<>(drawn.ends().size() * 4);
    for (ShapeEnd side : drawn.ends()) {
      addCorners(side, corners);
    }
    ShapeEnd a = bend.ends().get(0);
    ShapeEnd b = bend.ends().get(1);
    return corners.isEmpty() || BendFit.followsArc(corners, a, b, halfM(drawn, a, b));
  }

  private static void addCorners(ShapeEnd side, List<Vec> into) {
    Vec u = halfWidth(side);
    Vec v = u == null ? null : halfHeight(side, u);
    if (u != null && v != null) {
      into.add(side.centre().plus(u).plus(v));
      into.add(side.centre().plus(u).minus(v));
      into.add(side.centre().minus(u).plus(v));
      into.add(side.centre().minus(u).minus(v));
    }
  }

  private static @Nullable Vec halfWidth(ShapeEnd side) {
    return side.width() != null && side.section() instanceof Section.Rectangular r
        ? Vec.of(side.width()).times(r.widthM() / 2)
        : null;
  }

  private static @Nullable Vec halfHeight(ShapeEnd side, Vec halfWidth) {
    return side.section() instanceof Section.Rectangular r
        ? side.out().cross(halfWidth).unit().times(r.heightM() / 2)
        : null;
  }

  /** Half the width of the first end in the plane of the bend. */
  private static double halfM(Shape drawn, ShapeEnd a, ShapeEnd b) {
    Vec across = a.out().cross(b.out()).cross(a.out()).unit();
    for (ShapeEnd side : drawn.ends()) {
      Vec u = side.centreM().distanceM(a.centreM()) < SAME_PLACE_M ? halfWidth(side) : null;
      Vec v = u == null ? null : halfHeight(side, u);
      if (u != null && v != null) {
        return Math.abs(u.dot(across)) + Math.abs(v.dot(across));
      }
    }
    return a.section().largestSideM() / 2;
  }
}
