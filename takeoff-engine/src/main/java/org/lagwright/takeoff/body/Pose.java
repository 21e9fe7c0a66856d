package org.lagwright.takeoff.body;

import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * A place and how a section lies there.
 *
 * @param at world position of the middle of the section, metres
 */
public record Pose(Point at, Frame frame) {

  /** The world position of a point of the section, moved along the axis. */
  Point point(double uM, double vM, double alongM) {
    Point onAxis = Direction.plus(at, frame.axis(), alongM);
    return Direction.plus(Direction.plus(onAxis, frame.u(), uM), frame.v(), vM);
  }

  /** The pose further along the axis. */
  Pose along(double byM) {
    return new Pose(point(0, 0, byM), frame);
  }
}
