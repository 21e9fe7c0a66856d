package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.schema.IfcRecord;

/** Samples B-spline curves into short straight legs; the points lie on the curve. */
public final class BSpline {

  /** Points per span between two knots. */
  private static final int STEPS = 12;

  /** The same where the length counts: a hose of 1 m in 3 spans falls short by 0.05 mm. */
  private static final int FINE_STEPS = 36;

  private BSpline() {}

  /** The sampled curve, null if degree, knots, weights and control points do not fit together. */
  static @Nullable Path read(IfcRecord curve, Coordinates coordinates) {
    return read(curve, coordinates, STEPS);
  }

  /** The curve in finer steps, to measure along it. */
  public static @Nullable Path fine(IfcRecord curve, Coordinates coordinates) {
    return read(curve, coordinates, FINE_STEPS);
  }

  private static @Nullable Path read(IfcRecord curve, Coordinates coordinates, int steps) {
    List<Vec> control = new ArrayList<>();
    for (IfcRecord record : curve.refs("ControlPointsList")) {
      Vec point = coordinates.point(record);
      if (point == null) {
        return null;
      }
      control.add(point);
    }
    int degree = (int) curve.number("Degree");
    double[] knots = knots(curve.numbers("KnotMultiplicities"), curve.numbers("Knots"));
    double[] weights = curve.numbers("WeightsData");
    boolean weighted = weights.length > 0;
    if (degree < 1
        || degree > 25
        || control.size() <= degree
        || knots.length != control.size() + degree + 1
        || (weighted && weights.length != control.size())) {
      return null;
    }
    Path path = sample(degree, knots, control, weights, steps);
    return path.isEmpty() ? null : path;
  }

  /** Each knot as often as it counts. */
  public static double[] knots(double[] multiplicities, double[] values) {
    List<Double> knots = new ArrayList<>();
    for (int i = 0; i < Math.min(multiplicities.length, values.length); i++) {
      for (int k = 0; k < multiplicities[i] && k < 100; k++) {
        knots.add(values[i]);
      }
    }
    return knots.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Path sample(
      int degree, double[] knots, List<Vec> control, double[] weights, int steps) {
    List<Vec> points = new ArrayList<>();
    for (int span = degree; span < control.size(); span++) {
      double width = knots[span + 1] - knots[span];
      for (int i = 0; width > 0 && i <= steps; i++) {
        points.add(at(degree, knots, control, weights, span, knots[span] + width * i / steps));
      }
    }
    return Path.through(points);
  }

  /** De Boor's recursion in homogeneous coordinates; textbook, from memory. */
  private static Vec at(
      int degree, double[] knots, List<Vec> control, double[] weights, int span, double t) {
    Vec[] points = new Vec[degree + 1];
    double[] weight = new double[degree + 1];
    for (int j = 0; j <= degree; j++) {
      int index = span - degree + j;
      weight[j] = weights.length > 0 ? weights[index] : 1;
      points[j] = control.get(index).times(weight[j]);
    }
    for (int round = 1; round <= degree; round++) {
      for (int j = degree; j >= round; j--) {
        double low = knots[span - degree + j];
        double share = (t - low) / (knots[span + 1 + j - round] - low);
        points[j] = points[j - 1].times(1 - share).plus(points[j].times(share));
        weight[j] = weight[j - 1] * (1 - share) + weight[j] * share;
      }
    }
    return points[degree].times(1 / weight[degree]);
  }
}
