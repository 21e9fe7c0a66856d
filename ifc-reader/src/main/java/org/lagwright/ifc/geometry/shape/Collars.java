package org.lagwright.ifc.geometry.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * Flanges of duct fittings that are drawn as plates of their own around the last of a sleeve, and
 * frames around a casing that goes through them. They are not the size of the duct, and among the
 * other pieces they would be taken for an end of it.
 */
public final class Collars {

  /** Fittings that are drawn so have few pieces; more are the parts of a machine. */
  private static final int MOST_PIECES = 20;

  /** Flanges stand off a duct by no more. Common practice, no source. */
  private static final double WIDEST_M = 0.06;

  /** Faces and axes that count as one, and sides that are alike, differ by less. */
  private static final double SAME_M = 0.001;

  /** Sine of the angle between two axes that count as one. */
  private static final double PARALLEL = 0.002;

  private Collars() {}

  /**
   * Takes the flanges off the pieces of a body.
   *
   * @param items the pieces
   * @param shapes what each of them is, in the same order
   */
  public static void takeOff(List<Item> items, List<Shape> shapes) {
    if (shapes.size() < 2 || shapes.size() > MOST_PIECES) {
      return;
    }
    List<Shape> all = List.copyOf(shapes);
    for (int i = all.size() - 1; i >= 0; i--) {
      Shape plate = flat(all.get(i));
      if (plate != null && liesAroundOneOf(all, plate)) {
        items.remove(i);
        shapes.remove(i);
      }
    }
  }

  /** A box read along its shortest edge, null if it is none. */
  private static @Nullable Shape flat(Shape box) {
    Point width = Prism.isPlainBox(box) ? box.ends().get(0).width() : null;
    if (width == null) {
      return null;
    }
    Vec across = Vec.of(width);
    Shape flat = box;
    for (Vec axis : List.of(across, box.ends().get(0).out().cross(across))) {
      Shape turned = Prism.alongOf(box, axis);
      flat = turned != null && lengthM(turned) < lengthM(flat) ? turned : flat;
    }
    return flat;
  }

  private static double lengthM(Shape straight) {
    return straight.ends().get(0).centre().distanceTo(straight.ends().get(1).centre());
  }

  private static boolean liesAroundOneOf(List<Shape> pieces, Shape plate) {
    Vec axis = plate.ends().get(1).out();
    for (Shape piece : pieces) {
      Shape inLine = inLine(piece, axis);
      if (goesThrough(inLine, plate)) {
        return true;
      }
      for (ShapeEnd end : inLine.ends()) {
        if (liesAround(plate, end)) {
          return true;
        }
      }
    }
    return false;
  }

  /** A box read along an axis, if one of its edges lies so, as that of a short sleeve does. */
  private static Shape inLine(Shape piece, Vec axis) {
    boolean turn = Prism.isPlainBox(piece) && !isParallel(piece.ends().get(1), axis);
    Shape turned = turn ? Prism.alongOf(piece, axis) : null;
    return turned == null ? piece : turned;
  }

  private static boolean isParallel(ShapeEnd end, Vec axis) {
    return end.out().cross(axis).norm() < PARALLEL;
  }

  /** True if one face of a plate lies in the plane of an end, and its edge all around it. */
  private static boolean liesAround(Shape plate, ShapeEnd end) {
    double standsOffM = standsOffM(plate.ends().get(0).section(), end.section());
    if (!(standsOffM > SAME_M) || standsOffM > WIDEST_M || lengthM(plate) > standsOffM) {
      return false;
    }
    for (ShapeEnd face : plate.ends()) {
      boolean meets = face.centre().distanceTo(end.centre()) < SAME_M;
      if (meets && isParallel(end, face.out()) && face.out().dot(end.out()) > 0) {
        return true;
      }
    }
    return false;
  }

  /** True if a piece goes through a frame, as of a damper in a wall, and out of both its faces. */
  private static boolean goesThrough(Shape piece, Shape frame) {
    if (piece.ends().size() != 2) {
      return false;
    }
    ShapeEnd start = piece.ends().get(0);
    double standsOffM = standsOffM(frame.ends().get(0).section(), start.section());
    if (!(standsOffM > SAME_M) || standsOffM > WIDEST_M) {
      return false;
    }
    for (ShapeEnd face : frame.ends()) {
      Vec way = face.centre().minus(start.centre());
      double atM = -way.dot(start.out());
      boolean onAxis = way.across(start.out()).norm() < SAME_M;
      if (!onAxis || atM < SAME_M || atM > lengthM(piece) - SAME_M) {
        return false;
      }
    }
    return true;
  }

  /** How far a plate stands off a duct at all its sides; NaN if not by the same all around. */
  private static double standsOffM(Section plate, Section duct) {
    double atLongM = (plate.largestSideM() - duct.largestSideM()) / 2;
    double atShortM = (plate.smallestSideM() - duct.smallestSideM()) / 2;
    boolean around =
        plate instanceof Section.Rectangular
            && duct instanceof Section.Rectangular
            && Math.abs(atLongM - atShortM) < SAME_M;
    return around ? atLongM : Double.NaN;
  }
}
