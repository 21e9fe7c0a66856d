package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.lagwright.ifc.geometry.frame.Vec;

/** A curve by short straight legs, by length along it; beyond its ends it runs on straight. */
@SuppressWarnings("ArrayRecordComponent")
public record SampledCurve(List<Vec> points, double[] upToM) {

  /** Steps of curves, radians. */
  private static final double STEP_RAD = Math.toRadians(0.25);

  /** A curve as points along a path. */
  public static SampledCurve of(Path path) {
    List<Vec> points = new ArrayList<>(path.points(STEP_RAD));
    Vec end = path.last().end();
    if (points.get(points.size() - 1).distanceTo(end) > Path.SAME_POINT_M) {
      points.add(end);
    }
    double[] upToM = new double[points.size()];
    for (int i = 1; i < upToM.length; i++) {
      upToM[i] = upToM[i - 1] + points.get(i).distanceTo(points.get(i - 1));
    }
    return new SampledCurve(List.copyOf(points), upToM);
  }

  /** Length along it in metres. */
  public double lengthM() {
    return upToM[upToM.length - 1];
  }

  /** True if it ends where it begins. */
  public boolean isClosed() {
    return points.size() > 2
        && points.get(0).distanceTo(points.get(points.size() - 1)) < 10 * Path.SAME_POINT_M;
  }

  /** The point at a distance from its start in metres. */
  public Vec at(double alongM) {
    double m = isClosed() ? alongM - lengthM() * Math.floor(alongM / lengthM()) : alongM;
    int leg = Arrays.binarySearch(upToM, m);
    int from = Math.max(0, Math.min(points.size() - 2, leg < 0 ? -leg - 2 : leg));
    double share = (m - upToM[from]) / (upToM[from + 1] - upToM[from]);
    return points.get(from).plus(points.get(from + 1).minus(points.get(from)).times(share));
  }

  /** Length along the curve to what is nearest to a radius about z and a height. */
  public double nearestTurned(double radiusM, double heightM) {
    return nearest(new Vec(radiusM, 0, heightM), p -> new Vec(Math.hypot(p.x(), p.y()), 0, p.z()));
  }

  /** Length along the curve to what is nearest to a point, seen along a direction. */
  public double nearestAlong(Vec point, Vec direction) {
    return nearest(point.across(direction), p -> p.across(direction));
  }

  private double nearest(Vec sought, UnaryOperator<Vec> seen) {
    double best = 0;
    double leastM = Double.MAX_VALUE;
    for (int i = 0; i + 1 < points.size(); i++) {
      Vec from = seen.apply(points.get(i));
      Vec leg = seen.apply(points.get(i + 1)).minus(from);
      double share = leg.isTiny() ? 0 : sought.minus(from).dot(leg) / leg.dot(leg);
      double low = i == 0 && !isClosed() ? Double.NEGATIVE_INFINITY : 0;
      double high = i + 2 == points.size() && !isClosed() ? Double.POSITIVE_INFINITY : 1;
      double on = Math.max(low, Math.min(high, share));
      double offM = sought.distanceTo(from.plus(leg.times(on)));
      if (offM < leastM) {
        leastM = offM;
        best = upToM[i] + on * (upToM[i + 1] - upToM[i]);
      }
    }
    return best;
  }
}
