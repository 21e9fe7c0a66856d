package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * Distance of two convex bodies by the algorithm of Gilbert, Johnson and Keerthi (A fast procedure
 * for computing the distance between complex objects in three-dimensional space, IEEE Journal of
 * Robotics and Automation 4 (1988) 193-203): a simplex of differences of their points moves towards
 * the origin until no point of the difference lies nearer.
 */
final class Gap {

  /** Beyond this the distance is known well enough; a hundredth of a millimetre, for drawings. */
  private static final double ACCURACY_M = 1e-5;

  /** Nearer than this bodies touch. */
  private static final double TOUCHING_M = 1e-7;

  private static final int MOST_STEPS = 100;

  private Gap() {}

  /**
   * Gap between two bodies, metres; below zero where they overlap: how far one had to move, in the
   * best of the directions square to their sides and their axes.
   *
   * @param enoughM where they are farther apart than this, any number above it may be returned
   */
  static double betweenM(Solid a, Solid b, double enoughM) {
    double sideM = Cylinders.sideGapM(a, b);
    double distanceM = Double.isNaN(sideM) ? distanceM(a, b, enoughM) : sideM;
    return distanceM > TOUCHING_M ? distanceM : -Overlap.depthM(a, b);
  }

  /** The smallest gap of any two of them. */
  static double betweenM(List<Solid> some, List<Solid> others, double enoughM) {
    double leastM = Double.POSITIVE_INFINITY;
    for (Solid a : some) {
      for (Solid b : others) {
        leastM = Math.min(leastM, betweenM(a, b, Math.max(0, Math.min(enoughM, leastM))));
      }
    }
    return leastM;
  }

  /** Distance, 0 where they touch or overlap; something above {@code enoughM} beyond that. */
  static double distanceM(Solid a, Solid b, double enoughM) {
    List<Point> simplex = new ArrayList<>(4);
    Point nearest = Direction.between(b.from().centre(), a.from().centre());
    double lowerM = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      double lengthM = Direction.length(nearest);
      if (lengthM <= TOUCHING_M) {
        return 0;
      }
      Point corner =
          Direction.between(b.farthest(nearest), a.farthest(Direction.opposite(nearest)));
      lowerM = Math.max(lowerM, Direction.dot(nearest, corner) / lengthM);
      if (lowerM > enoughM) {
        return lowerM;
      }
      if (lengthM - lowerM <= ACCURACY_M || simplex.contains(corner)) {
        return lengthM;
      }
      simplex.add(corner);
      Simplex.Nearest found = Simplex.nearest(simplex);
      simplex = new ArrayList<>(found.corners());
      nearest = found.point();
      if (simplex.size() == 4) {
        return 0;
      }
    }
    return Direction.length(nearest);
  }
}
