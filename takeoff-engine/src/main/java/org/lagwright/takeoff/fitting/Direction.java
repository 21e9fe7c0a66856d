package org.lagwright.takeoff.fitting;

import org.lagwright.ifc.model.Point;

/** Vectors in space: no more than axes of fittings and distances of bodies need. */
public final class Direction {

  private Direction() {}

  /** The way from one point to another. */
  public static Point between(Point from, Point to) {
    return new Point(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
  }

  /** The same length the other way; no zero becomes a negative one. */
  public static Point opposite(Point a) {
    return new Point(0 - a.x(), 0 - a.y(), 0 - a.z());
  }

  /** Scalar product. */
  public static double dot(Point a, Point b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  /** Vector product. */
  public static Point cross(Point a, Point b) {
    return new Point(
        a.y() * b.z() - a.z() * b.y(),
        a.z() * b.x() - a.x() * b.z(),
        a.x() * b.y() - a.y() * b.x());
  }

  /** Length of a vector. */
  public static double length(Point a) {
    return Math.sqrt(dot(a, a));
  }

  /** Angle between two directions, radians. */
  public static double angleRad(Point a, Point b) {
    return Math.atan2(length(cross(a, b)), dot(a, b));
  }

  /** A point moved along a vector, so many times its length. */
  public static Point plus(Point a, Point b, double times) {
    return new Point(a.x() + times * b.x(), a.y() + times * b.y(), a.z() + times * b.z());
  }

  /** The same direction with length 1. */
  public static Point unit(Point a) {
    double length = length(a);
    return new Point(a.x() / length, a.y() / length, a.z() / length);
  }

  /** Middle between two points. */
  public static Point middle(Point a, Point b) {
    return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
  }
}
