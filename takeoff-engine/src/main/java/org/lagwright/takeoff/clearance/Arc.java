package org.lagwright.takeoff.clearance;

import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * The curve {@code ((1-t)^2 a + 2 w t (1-t) c + t^2 b) / ((1-t)^2 + 2 w t (1-t) + t^2)}: with w the
 * cosine of half the turn and equal tangents it is a circular arc exactly. Elementary geometry of
 * rational curves of second degree.
 *
 * @param a start
 * @param corner where the tangents of both ends meet
 * @param b end
 * @param weight w
 */
record Arc(Point a, Point corner, Point b, double weight) {

  private static final Point ORIGIN = new Point(0, 0, 0);

  /** The parameter t at a share of the turn: the tangent of half the angle grows with t/(1-t). */
  double parameter(double share, double turnRad) {
    double half = turnRad / 2;
    double from = Math.sin(share * half);
    double to = Math.sin((1 - share) * half);
    return from / (from + to);
  }

  /** A point of the curve. */
  Point at(double t) {
    double first = (1 - t) * (1 - t);
    double middle = 2 * weight * t * (1 - t);
    double last = t * t;
    double sum = first + middle + last;
    Point p = Direction.plus(ORIGIN, a, first / sum);
    return Direction.plus(Direction.plus(p, corner, middle / sum), b, last / sum);
  }

  /** The direction of the curve there, of any length. */
  Point tangent(double t) {
    double first = 1 - t;
    Point toCorner = Direction.between(a, corner);
    Point toEnd = Direction.between(corner, b);
    Point between = Direction.between(a, b);
    Point sum = Direction.plus(ORIGIN, toCorner, weight * first * first);
    sum = Direction.plus(sum, between, first * t);
    return Direction.plus(sum, toEnd, weight * t * t);
  }
}
