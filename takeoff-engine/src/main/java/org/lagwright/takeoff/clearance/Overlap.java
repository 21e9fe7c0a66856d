package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * How deep two bodies overlap: the smallest of their overlaps along the sides of both, the products
 * of these, and the way between their axes. Exact for boxes (separating axes) and for round bodies
 * that meet with their sides; an upper bound where round bodies meet with their ends.
 */
final class Overlap {

  private static final double LEAST = 1e-9;

  private Overlap() {}

  static double depthM(Solid a, Solid b) {
    double leastM = Double.POSITIVE_INFINITY;
    for (Point direction : directions(a, b)) {
      double length = Direction.length(direction);
      if (length > LEAST) {
        leastM = Math.min(leastM, alongM(a, b, Direction.unit(direction)));
      }
    }
    return Math.max(0, leastM);
  }

  private static double alongM(Solid a, Solid b, Point unit) {
    Point back = Direction.opposite(unit);
    return Math.min(a.reachM(unit) + b.reachM(back), b.reachM(unit) + a.reachM(back));
  }

  private static List<Point> directions(Solid a, Solid b) {
    List<Point> ofA = sides(a);
    List<Point> ofB = sides(b);
    List<Point> all = new ArrayList<>(ofA);
    all.addAll(ofB);
    for (Point one : ofA) {
      for (Point other : ofB) {
        all.add(Direction.cross(one, other));
      }
    }
    all.add(betweenAxes(a, b));
    all.add(betweenAxes(b, a));
    return all;
  }

  private static List<Point> sides(Solid solid) {
    return List.of(solid.from().u(), solid.from().v(), axis(solid));
  }

  private static Point axis(Solid solid) {
    return Direction.between(solid.from().centre(), solid.to().centre());
  }

  /** Square to the axis of a, towards the middle of b. */
  private static Point betweenAxes(Solid a, Solid b) {
    Point axis = axis(a);
    Point way =
        Direction.between(a.from().centre(), Direction.middle(b.from().centre(), b.to().centre()));
    double squareM = Direction.dot(axis, axis);
    return squareM < LEAST ? way : Direction.plus(way, axis, -Direction.dot(way, axis) / squareM);
  }
}
