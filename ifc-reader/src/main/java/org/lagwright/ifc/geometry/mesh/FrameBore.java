package org.lagwright.ifc.geometry.mesh;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The bore of a rectangular box or frame that is made of faces: all its corners are those of two
 * rectangles about one axis.
 */
public final class FrameBore {

  /** Corners that are one but for rounding. */
  private static final double SAME_M = 0.0005;

  private FrameBore() {}

  /** The bore of a straight mesh, null if there is none. */
  public static @Nullable Section of(Mesh mesh, Shape shape) {
    ShapeEnd end = shape.ends().get(0);
    Point width = end.width();
    if (!(end.section() instanceof Section.Rectangular outside) || width == null) {
      return null;
    }
    Vec centre = end.centre().minus(mesh.origin());
    Vec u = Vec.of(width);
    Vec v = end.out().cross(u);
    double halfU = 0;
    double halfV = 0;
    for (Vec corner : mesh.vertices()) {
      Vec off = corner.minus(centre);
      double a = Math.abs(off.dot(u));
      double b = Math.abs(off.dot(v));
      if (isSame(a, outside.widthM() / 2) && isSame(b, outside.heightM() / 2)) {
        continue;
      }
      if (halfU == 0 && halfV == 0) {
        halfU = a;
        halfV = b;
      } else if (!isSame(a, halfU) || !isSame(b, halfV)) {
        return null;
      }
    }
    boolean open = Math.min(halfU, halfV) > SAME_M;
    boolean inside =
        halfU < outside.widthM() / 2 - SAME_M && halfV < outside.heightM() / 2 - SAME_M;
    return open && inside ? new Section.Rectangular(2 * halfU, 2 * halfV) : null;
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(a - b) < SAME_M;
  }
}
