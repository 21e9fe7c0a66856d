package org.lagwright.ifc.geometry.mesh;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The bore of a rectangular or oval box or frame that is made of faces: all its corners are those
 * of two rectangles, or of two flat ovals, about one axis.
 */
public final class FrameBore {

  /** Corners that are one but for rounding. */
  private static final double SAME_M = 0.0005;

  private FrameBore() {}

  /** The bore of a straight mesh, null if there is none. */
  public static @Nullable Section of(Mesh mesh, Shape shape) {
    ShapeEnd end = shape.ends().get(0);
    Point width = end.width();
    if (width == null) {
      return null;
    }
    if (end.section() instanceof Section.Oval oval) {
      return inOval(mesh, end, oval, Vec.of(width));
    }
    return end.section() instanceof Section.Rectangular outside
        ? inRectangle(mesh, end, outside, Vec.of(width))
        : null;
  }

  private static @Nullable Section inRectangle(
      Mesh mesh, ShapeEnd end, Section.Rectangular outside, Vec u) {
    Vec centre = end.centre().minus(mesh.origin());
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

  /** A shell is as thick all around, so that both ovals are half circles about the same points. */
  private static @Nullable Section inOval(
      Mesh mesh, ShapeEnd end, Section.Oval outside, Vec width) {
    Vec centre = end.centre().minus(mesh.origin());
    Vec height = end.out().cross(width);
    boolean lies = outside.widthM() > outside.heightM();
    double radiusM = outside.smallestSideM() / 2;
    double flatM = outside.largestSideM() / 2 - radiusM;
    double boreM = 0;
    for (Vec corner : mesh.vertices()) {
      Vec off = corner.minus(centre);
      double alongM = Math.abs(off.dot(lies ? width : height));
      double awayM = Math.hypot(Math.max(0, alongM - flatM), off.dot(lies ? height : width));
      if (!isSame(awayM, radiusM) && boreM != 0 && !isSame(awayM, boreM)) {
        return null;
      }
      boreM = isSame(awayM, radiusM) ? boreM : awayM;
    }
    boolean inside = boreM > SAME_M && boreM < radiusM - SAME_M;
    double thickM = radiusM - boreM;
    return inside
        ? new Section.Oval(outside.widthM() - 2 * thickM, outside.heightM() - 2 * thickM)
        : null;
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(a - b) < SAME_M;
  }
}
