package org.lagwright.takeoff.body;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Direction;

/**
 * How the sections of an element lie: their width level, unless the drawing tells where it points.
 *
 * @param width world direction of the width as drawn, null where it is not known
 */
record Lie(@Nullable Point width) {

  /** Widths that lie farther from each other are turned by a quarter. */
  private static final double TURNED = 0.7;

  /** The frame across an axis of any length, u along the width. */
  Frame across(Point way) {
    return Frame.across(way, width);
  }

  /** True where a width across this way is only guessed. */
  boolean isGuess(Point way) {
    return width == null && Frame.isUpright(Direction.unit(way));
  }

  /** The section as it shows in another frame across the same axis: turned by quarters. */
  Section inFrame(Section section, Frame frame) {
    boolean turned = Math.abs(Direction.dot(across(frame.axis()).u(), frame.u())) < TURNED;
    if (turned && section instanceof Section.Rectangular r) {
      return new Section.Rectangular(r.heightM(), r.widthM());
    }
    if (turned && section instanceof Section.Oval o) {
      return new Section.Oval(o.heightM(), o.widthM());
    }
    return section;
  }

  /** A frame whose height points a given way, as far as that is across the axis. */
  static Frame upright(Point way, Point height) {
    Point axis = Direction.unit(way);
    Point v = Direction.unit(Direction.plus(height, axis, -Direction.dot(height, axis)));
    return new Frame(axis, Direction.cross(v, axis), v);
  }
}
