package org.lagwright.takeoff.clearance;

import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * The convex body between two faces: a cylinder, a cone, the box of a duct, a piece of a bend.
 *
 * @param from one end
 * @param to the other end
 */
record Solid(Face from, Face to) {

  private static final Point X = new Point(1, 0, 0);
  private static final Point Y = new Point(0, 1, 0);
  private static final Point Z = new Point(0, 0, 1);

  /** The point of it that lies farthest in a direction. */
  Point farthest(Point direction) {
    Point a = from.farthest(direction);
    Point b = to.farthest(direction);
    return Direction.dot(a, direction) >= Direction.dot(b, direction) ? a : b;
  }

  /** A body without extent, to ask how far a point is away. */
  static Solid point(Point at) {
    Face face = new Face(at, X, Y, 0, 0, 0);
    return new Solid(face, face);
  }

  /**
   * What of it may lie between two planes; the ends of a slanting body stick out of them.
   *
   * @param across unit vector square to both planes
   * @param lowM from the origin to the first plane
   * @param highM from the origin to the other
   */
  Solid between(Point across, double lowM, double highM) {
    double start = Direction.dot(from.centre(), across);
    double end = Direction.dot(to.centre(), across);
    double lengthM = end - start;
    if (Math.abs(lengthM) < 1e-9) {
      return this;
    }
    double slackM = reachM(across) - Math.max(start, end);
    double low = share((lowM - slackM - start) / lengthM);
    double high = share((highM + slackM - start) / lengthM);
    Point way = Direction.between(from.centre(), to.centre());
    return new Solid(
        from.at(Direction.plus(from.centre(), way, low)),
        to.at(Direction.plus(from.centre(), way, high)));
  }

  private static double share(double share) {
    return Math.max(0, Math.min(1, share));
  }

  /** How far it reaches in a direction of length 1, from the origin, metres. */
  double reachM(Point direction) {
    return Direction.dot(farthest(direction), direction);
  }

  /** The box along the axes of the world round it. */
  Box box() {
    return new Box(
        -reachM(Direction.opposite(X)),
        -reachM(Direction.opposite(Y)),
        -reachM(Direction.opposite(Z)),
        reachM(X),
        reachM(Y),
        reachM(Z));
  }
}
