package org.lagwright.ifc.geometry;

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
  boolean isAmong(List<ShapeEnd> ends, double toleranceM) {
    for (ShapeEnd end : ends) {
      if (centreM.distanceM(end.centreM) < toleranceM) {
        return true;
      }
    }
    return false;
  }

  Vec centre() {
    return Vec.of(centreM);
  }

  Vec out() {
    return Vec.of(outward);
  }
}
