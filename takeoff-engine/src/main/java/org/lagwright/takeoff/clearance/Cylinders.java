package org.lagwright.takeoff.clearance;

import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * Two round pipes that face each other with their sides, the usual case, in closed form: the
 * distance of their axes less both radii.
 */
final class Cylinders {

  /** Cosine below which a way is square to an axis. */
  private static final double SQUARE = 1e-9;

  private Cylinders() {}

  /**
   * Gap between the sides, metres, below zero where they overlap; NaN where one of them is no
   * cylinder, or where the shortest way between the axes is not square to both.
   */
  static double sideGapM(Solid a, Solid b) {
    if (!isCylinder(a) || !isCylinder(b)) {
      return Double.NaN;
    }
    Point p = a.from().centre();
    Point d = axis(a);
    Point q = b.from().centre();
    Point e = axis(b);
    double t = nearest(p, d, q, e);
    double s = clamped(Direction.dot(Direction.between(p, Direction.plus(q, e, t)), d), d);
    t = clamped(Direction.dot(Direction.between(q, Direction.plus(p, d, s)), e), e);
    Point way = Direction.between(Direction.plus(p, d, s), Direction.plus(q, e, t));
    double lengthM = Direction.length(way);
    boolean square = isSquare(way, d, lengthM) && isSquare(way, e, lengthM);
    return square ? lengthM - a.from().cornerM() - b.from().cornerM() : Double.NaN;
  }

  /** Share of e at which its line is nearest to that of d; its middle where they are parallel. */
  private static double nearest(Point p, Point d, Point q, Point e) {
    double dd = Direction.dot(d, d);
    double ee = Direction.dot(e, e);
    double de = Direction.dot(d, e);
    Point way = Direction.between(p, q);
    double free = dd * ee - de * de;
    double share =
        free < SQUARE * dd * ee
            ? clamped(-Direction.dot(Direction.between(Direction.plus(p, d, 0.5), q), e), e)
            : (de * Direction.dot(way, d) - dd * Direction.dot(way, e)) / free;
    return Math.max(0, Math.min(1, share));
  }

  private static double clamped(double alongTimesLength, Point axis) {
    return Math.max(0, Math.min(1, alongTimesLength / Direction.dot(axis, axis)));
  }

  private static boolean isSquare(Point way, Point axis, double lengthM) {
    return Math.abs(Direction.dot(way, axis)) <= SQUARE * lengthM * Direction.length(axis);
  }

  private static Point axis(Solid solid) {
    return Direction.between(solid.from().centre(), solid.to().centre());
  }

  private static boolean isCylinder(Solid solid) {
    Face face = solid.from();
    Point axis = axis(solid);
    double lengthM = Direction.length(axis);
    return face.isDisc()
        && solid.to().isDisc()
        && face.cornerM() == solid.to().cornerM()
        && lengthM > SQUARE
        && isSquare(face.u(), axis, 1)
        && isSquare(face.v(), axis, 1)
        && isSquare(solid.to().u(), axis, 1)
        && isSquare(solid.to().v(), axis, 1);
  }
}
