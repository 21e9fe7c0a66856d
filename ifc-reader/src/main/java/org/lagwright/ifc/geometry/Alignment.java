package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Curves of alignments that are neither lines nor arcs, as short straight legs. */
final class Alignment {

  /** A leg turns by at most this: its chord is short of it by 0.00003 %. */
  private static final double STEP_RAD = Math.toRadians(0.25);

  /** Length of a leg where the curve hardly turns, as a share of the whole. */
  private static final int LEAST_STEPS = 64;

  private static final int MOST_STEPS = 5000;

  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

  private static final int POINTS = 5;

  private Alignment() {}

  /**
   * A part of a clothoid, moved and turned so that it begins at the origin along x. Its heading is
   * {@code s^2 / (2 A |A|)} at the length s from where it is straight, which makes its points
   * Fresnel integrals.
   *
   * @param constantM A, negative where it turns to the right
   * @param startM where the part begins
   * @param lengthM its length; negative if it runs against the clothoid
   * @return empty if the figures make no curve
   */
  static List<Leg> clothoid(double constantM, double startM, double lengthM) {
    double a2 = constantM * Math.abs(constantM);
    double turns =
        Math.abs(heading(startM + lengthM, a2) - heading(startM, a2))
            + Math.abs(heading(startM + lengthM / 2, a2) - heading(startM, a2));
    if (a2 == 0 || !Double.isFinite(turns)) {
      return List.of();
    }
    int steps = (int) Math.min(MOST_STEPS, Math.max(LEAST_STEPS, Math.ceil(turns / STEP_RAD)));
    double first = heading(startM, a2);
    List<Leg> legs = new ArrayList<>();
    Vec at = Vec.ZERO;
    for (int i = 0; i < steps; i++) {
      double from = startM + lengthM * i / steps;
      double to = startM + lengthM * (i + 1) / steps;
      GaussIntegrator over = GAUSS.legendre(POINTS, Math.min(from, to), Math.max(from, to));
      double x = over.integrate(s -> Math.cos(heading(s, a2) - first));
      double y = over.integrate(s -> Math.sin(heading(s, a2) - first));
      double way = Math.signum(lengthM);
      Vec next = at.plus(new Vec(x, y, 0).times(way));
      legs.add(new Leg.Line(at, next));
      at = next;
    }
    return legs;
  }

  private static double heading(double s, double a2) {
    return s * s / (2 * a2);
  }

  /**
   * A curve in space over one in plan.
   *
   * @param plan the curve in plan
   * @param profile height as y by the distance along the plan as x
   */
  static Path over(Path plan, Path profile) {
    List<Vec> heights = new ArrayList<>(profile.points(STEP_RAD));
    heights.add(profile.last().end());
    List<Double> stations = new ArrayList<>();
    double lengthM = plan.lengthM();
    for (int i = 0; i <= LEAST_STEPS; i++) {
      stations.add(lengthM * i / LEAST_STEPS);
    }
    double beforeM = 0;
    for (Leg leg : plan.legs()) {
      int parts = Math.max(1, leg.points(STEP_RAD).size() - 1);
      for (int i = 0; i < parts; i++) {
        stations.add(beforeM + leg.lengthM() * i / parts);
      }
      beforeM += leg.lengthM();
    }
    heights.forEach(h -> stations.add(h.x()));
    double fromM = heights.get(0).x();
    double toM = heights.get(heights.size() - 1).x();
    List<Vec> points = new ArrayList<>();
    stations.stream()
        .filter(s -> s >= Math.max(0, fromM) - 1e-9 && s <= Math.min(lengthM, toM) + 1e-9)
        .sorted()
        .forEach(s -> points.add(at(plan, s).plus(Vec.Z.times(height(heights, s)))));
    return Path.through(points);
  }

  private static Vec at(Path plan, double distanceM) {
    double leftM = distanceM;
    for (Leg leg : plan.legs()) {
      if (leftM <= leg.lengthM()) {
        return leftM <= Path.SAME_POINT_M ? leg.start() : leg.part(0, leftM / leg.lengthM()).end();
      }
      leftM -= leg.lengthM();
    }
    return plan.last().end();
  }

  private static double height(List<Vec> heights, double distanceM) {
    for (int i = 1; i < heights.size(); i++) {
      Vec a = heights.get(i - 1);
      Vec b = heights.get(i);
      if (distanceM <= b.x() && b.x() > a.x()) {
        return a.y() + (b.y() - a.y()) * (distanceM - a.x()) / (b.x() - a.x());
      }
    }
    return heights.get(heights.size() - 1).y();
  }
}
