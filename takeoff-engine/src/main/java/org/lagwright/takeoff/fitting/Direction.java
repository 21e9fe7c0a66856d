package org.lagwright.takeoff.fitting;

import org.lagwright.ifc.model.Point;

/** Vectors in space: no more than reading axes of fittings needs. */
final class Direction {

  private Direction() {}

  static Point between(Point from, Point to) {
    return new Point(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
  }

  static double dot(Point a, Point b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  static Point cross(Point a, Point b) {
    return new Point(
        a.y() * b.z() - a.z() * b.y(),
        a.z() * b.x() - a.x() * b.z(),
        a.x() * b.y() - a.y() * b.x());
  }

  static double length(Point a) {
    return Math.sqrt(dot(a, a));
  }

  /** Angle between two directions, radians. */
  static double angleRad(Point a, Point b) {
    return Math.atan2(length(cross(a, b)), dot(a, b));
  }

  static Point plus(Point a, Point b, double times) {
    return new Point(a.x() + times * b.x(), a.y() + times * b.y(), a.z() + times * b.z());
  }
}
