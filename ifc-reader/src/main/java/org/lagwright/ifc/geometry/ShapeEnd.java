package org.lagwright.ifc.geometry;

import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * An open end of a body.
 *
 * @param centreM world position of its centre in metres
 * @param outward world unit vector along the axis, away from the body
 * @param section outer section there
 */
public record ShapeEnd(Point centreM, Point outward, Section section) {

  Vec centre() {
    return Vec.of(centreM);
  }

  Vec out() {
    return Vec.of(outward);
  }
}
