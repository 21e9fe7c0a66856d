package org.lagwright.ifc.geometry.mesh;

import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.shape.Ends;

/** Two ends whose axes meet in one corner. */
final class Mitre {

  /** Ends that turn by less are no corner. */
  private static final double LEAST_RAD = Math.toRadians(5);

  /** Distance of the axes over the size of the ends, up to which they meet. */
  private static final double MEET = 0.02;

  private Mitre() {}

  /** Sum of the two legs from the ends to the corner in metres; 0 if there is no such corner. */
  static double legsM(Found a, Found b) {
    double turn = Math.PI - a.outward().angleTo(b.outward());
    if (turn < LEAST_RAD
        || turn > Math.PI - LEAST_RAD
        || !Ends.same(a.outline().section(), b.outline().section())) {
      return 0;
    }
    Vec between = b.outline().centre().minus(a.outline().centre());
    Vec normal = a.outward().cross(b.outward());
    double square = normal.dot(normal);
    double legA = -between.cross(b.outward()).dot(normal) / square;
    double legB = -between.cross(a.outward()).dot(normal) / square;
    double apart = Math.abs(between.dot(normal.unit()));
    boolean meet = apart < MEET * a.outline().largestHalfM();
    return meet && legA > 0 && legB > 0 ? legA + legB : 0;
  }
}
