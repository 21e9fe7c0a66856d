package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.BendLegs;

/**
 * The pipe of a bend between sockets or flanges, which are wider than it. Where the legs lie is
 * known from the ends; of all arcs between them the right one is that from which most corners on
 * its way stand off by the same distance, which is the radius of the pipe.
 *
 * @param radiusM of the pipe
 */
record SocketedBend(BendFit.Fit fit, double radiusM) {

  /** Arcs tried in a row. */
  private static final int STEPS = 100;

  /** Distances within this share of each other are one. */
  private static final double SAME = 0.02;

  /** Mean difference of the distances from their median over it, once the arc is found. */
  private static final double EVEN = 0.005;

  /** Share of the corners on the way of an arc that stand off alike: a bore is half of them. */
  private static final double LEAST_SHARE = 0.4;

  /** Share of the corners of a bore that the outside has at least: sockets hide rings of it. */
  private static final double OUTSIDE = 0.7;

  /** Two rings of six corners. */
  private static final int LEAST_CORNERS = 12;

  private static final int ROUNDS = 3;

  /** Arcs hardly larger than the pipe's own radius are what any corner on both legs gives. */
  private static final double LEAST_ARC = 1.05;

  /** The pipe, null if none can be told. */
  static @Nullable SocketedBend of(List<Vec> corners, BendLegs legs, double endRadiusM) {
    List<Vec> best = List.of();
    double off = 0;
    for (int i = 1; i <= STEPS; i++) {
      double arcM = legs.largestRadiusM() * i / STEPS;
      List<Vec> onWay = onWay(corners, legs, arcM);
      double[] distances = distances(onWay, legs, arcM);
      double tried = most(distances);
      List<Vec> alike = alike(onWay, legs, arcM, tried);
      boolean enough = alike.size() >= Math.max(LEAST_CORNERS, LEAST_SHARE * onWay.size());
      if (enough && tried < endRadiusM && isBetter(alike.size(), tried, best.size(), off)) {
        best = alike;
        off = tried;
      }
    }
    return best.isEmpty() || !isAllRound(best, legs)
        ? null
        : narrowed(best, legs, off * (1 + SAME / 2));
  }

  /** More corners alike, of which fewer are enough outside of others. */
  private static boolean isBetter(int alike, double atM, int best, double bestAtM) {
    if (atM > bestAtM * (1 + SAME)) {
      return alike >= OUTSIDE * best;
    }
    return bestAtM > atM * (1 + SAME) ? OUTSIDE * alike > best : alike > best;
  }

  /** Corners between the planes where an arc begins and stops. */
  private static List<Vec> onWay(List<Vec> corners, BendLegs legs, double arcM) {
    double tangentM = legs.tangentM(arcM) + Vec.WELD_M;
    List<Vec> onWay = new ArrayList<>(corners.size());
    for (Vec corner : corners) {
      Vec v = corner.minus(legs.corner());
      if (v.dot(legs.toA()) < tangentM && v.dot(legs.toB()) < tangentM) {
        onWay.add(corner);
      }
    }
    return onWay;
  }

  private static double[] distances(List<Vec> corners, BendLegs legs, double arcM) {
    double[] distances = new double[corners.size()];
    for (int i = 0; i < distances.length; i++) {
      distances[i] = legs.fromAxisM(corners.get(i), arcM);
    }
    Arrays.sort(distances);
    return distances;
  }

  /** Where the sorted distances crowd, the outermost such place; 0 if there are none. */
  private static double most(double[] distances) {
    int most = 0;
    int crowd = 0;
    double found = 0;
    int to = 0;
    for (int from = 0; from < distances.length; from++) {
      while (to < distances.length && distances[to] <= distances[from] * (1 + SAME)) {
        to++;
      }
      boolean beyond = distances[from] > found * (1 + SAME) && to - from >= OUTSIDE * most;
      if (to - from >= crowd || beyond) {
        crowd = to - from;
        most = Math.max(most, crowd);
        found = distances[from];
      }
    }
    return found;
  }

  private static List<Vec> alike(List<Vec> corners, BendLegs legs, double arcM, double fromM) {
    List<Vec> alike = new ArrayList<>();
    for (Vec corner : corners) {
      double off = legs.fromAxisM(corner, arcM);
      if (off >= fromM && off <= fromM * (1 + SAME)) {
        alike.add(corner);
      }
    }
    return alike;
  }

  /** True if some corners lie above and some below the plane of the bend, and inside of both. */
  private static boolean isAllRound(List<Vec> corners, BendLegs legs) {
    Vec normal = legs.toA().cross(legs.toB()).unit();
    int above = 0;
    int below = 0;
    for (Vec corner : corners) {
      double off = corner.minus(legs.corner()).dot(normal);
      above += off > Vec.WELD_M ? 1 : 0;
      below += off < -Vec.WELD_M ? 1 : 0;
    }
    return above > 2 && below > 2;
  }

  private static @Nullable SocketedBend narrowed(List<Vec> corners, BendLegs legs, double firstM) {
    double radiusM = firstM;
    BendFit.Fit fit = null;
    for (int round = 0; round < ROUNDS; round++) {
      fit = BendFit.of(corners, legs, radiusM);
      if (fit == null) {
        return null;
      }
      double[] distances = distances(corners, legs, fit.radiusM());
      radiusM = distances[distances.length / 2];
    }
    double uneven = 0;
    for (double off : fit == null ? new double[0] : distances(corners, legs, fit.radiusM())) {
      uneven += Math.abs(off - radiusM);
    }
    boolean even = uneven < EVEN * radiusM * corners.size();
    boolean isArc = fit != null && fit.radiusM() > LEAST_ARC * radiusM;
    return fit == null || !even || !isArc ? null : new SocketedBend(fit, radiusM);
  }
}
