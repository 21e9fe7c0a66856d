package org.lagwright.ifc.geometry.frame;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * An open end of a body.
 *
 * @param centreM world position of its centre in metres
 * @param outward world unit vector along the axis, away from the body
 * @param section outer section there
 * @param width world unit vector along the width of the section as drawn; null where it is round or
 *     not known
 */
public record ShapeEnd(Point centreM, Point outward, Section section, @Nullable Point width) {

  /** An end of which nothing tells where the width of its section points. */
  public ShapeEnd(Point centreM, Point outward, Section section) {
    this(centreM, outward, section, null);
  }

  /** True if it lies where one of some ends does. */
  public boolean isAmong(List<ShapeEnd> ends, double toleranceM) {
    return anyLiesAt(ends, centreM, toleranceM);
  }

  /** True if one of some ends lies at a place, to a tolerance in metres. */
  public static boolean anyLiesAt(List<ShapeEnd> ends, Point atM, double toleranceM) {
    for (ShapeEnd end : ends) {
      if (end.centreM.distanceM(atM) < toleranceM) {
        return true;
      }
    }
    return false;
  }

  /** Its centre, in metres. */
  public Vec centre() {
    return Vec.of(centreM);
  }

  /** Its outward unit vector. */
  public Vec out() {
    return Vec.of(outward);
  }

  /** True if a way from its axis ends within the section, or on its edge. */
  public boolean contains(Vec way) {
    Vec off = way.across(out());
    if (width == null) {
      return off.norm() < section.largestSideM() / 2 + Vec.WELD_M;
    }
    Vec u = Vec.of(width);
    Vec v = out().cross(u);
    return Math.abs(off.dot(u)) < halfM(u) + Vec.WELD_M
        && Math.abs(off.dot(v)) < halfM(v) + Vec.WELD_M;
  }

  /** How far a section reaches from its centre in a direction across its axis. */
  public double halfM(Vec direction) {
    if (width == null || section instanceof Section.Round) {
      return section.largestSideM() / 2;
    }
    boolean oval = section instanceof Section.Oval;
    double widthM =
        oval ? ((Section.Oval) section).widthM() : ((Section.Rectangular) section).widthM();
    double heightM =
        oval ? ((Section.Oval) section).heightM() : ((Section.Rectangular) section).heightM();
    Vec u = Vec.of(width);
    Vec v = out().cross(u);
    return (Math.abs(u.dot(direction)) * widthM + Math.abs(v.dot(direction)) * heightM) / 2;
  }
}
