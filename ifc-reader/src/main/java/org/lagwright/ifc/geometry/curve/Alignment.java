package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * Curves of alignments that are neither lines nor arcs, as short straight legs, and beside them.
 */
public final class Alignment {

  /** A leg turns by at most this: its chord is short of it by 0.00003 %. */
  private static final double STEP_RAD = Math.toRadians(0.25);

  /** Length of a leg where the curve hardly turns, as a share of the whole. */
  private static final int LEAST_STEPS = 64;

  private static final int MOST_STEPS = 5000;

  /** A line and an arc that meet with less of a corner touch. */
  private static final double SMOOTH_RAD = Math.toRadians(0.1);

  /** Chords of a curve turn by less from one to the next. */
  private static final double CHORD_RAD = Math.toRadians(1);

  /** A leg that is longer than so many of the next one is straight, and no chord like that. */
  private static final double LONGEST_CHORD = 1.5;

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

  /**
   * The curve that keeps beside another one, as sections do that stand upright across it.
   *
   * @param aside how far to its left, level, as x; how far above, square to it, as y
   * @return null where it turns within itself or cannot be followed
   */
  public static @Nullable Path beside(Path path, Vec aside) {
    if (aside.isTiny()) {
      return path;
    }
    List<Leg> legs = path.legs();
    List<Leg> moved = new ArrayList<>(legs.size());
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      Leg before = i == 0 ? leg : legs.get(i - 1);
      Leg after = i == legs.size() - 1 ? leg : legs.get(i + 1);
      Leg beside =
          leg instanceof Leg.Arc arc ? beside(arc, aside) : beside(before, leg, after, aside);
      boolean bent = before != leg && !meetsSmoothly(before, leg);
      if (beside == null || (bent && (leg instanceof Leg.Arc || before instanceof Leg.Arc))) {
        return null;
      }
      moved.add(beside);
    }
    return new Path(moved);
  }

  private static boolean meetsSmoothly(Leg before, Leg leg) {
    return before.endTangent().angleTo(leg.startTangent()) < SMOOTH_RAD;
  }

  /** A level arc about the same axis; null for others. */
  private static Leg.@Nullable Arc beside(Leg.Arc arc, Vec aside) {
    Vec axis = arc.u().cross(arc.v()).unit();
    boolean level = axis.cross(Vec.Z).norm() < 1e-6;
    double radiusM = arc.radiusM() - Math.signum(axis.z()) * aside.x();
    if (!level || !arc.isCircular() || radiusM < Path.SAME_POINT_M) {
      return null;
    }
    Vec u = arc.u().unit().times(radiusM);
    Vec v = arc.v().unit().times(radiusM);
    return new Leg.Arc(arc.centre().plus(Vec.Z.times(aside.y())), u, v, arc.sweepRad());
  }

  private static Leg.@Nullable Line beside(Leg before, Leg leg, Leg after, Vec aside) {
    Vec atStart = before == leg ? off(endingAs(leg, after), aside) : off(before, leg, aside);
    Vec atEnd = after == leg ? off(endingAs(leg, before), aside) : off(leg, after, aside);
    if (atStart == null || atEnd == null) {
      return null;
    }
    Leg.Line moved = new Leg.Line(leg.start().plus(atStart), leg.end().plus(atEnd));
    Vec along = moved.end().minus(moved.start());
    return along.dot(leg.startTangent()) > Path.SAME_POINT_M ? moved : null;
  }

  /**
   * The direction at the free end of a leg: a chord of a curve turns on there as it does at its
   * other end. A leg that is longer than the next one is no chord.
   */
  private static Vec endingAs(Leg leg, Leg next) {
    Vec own = leg.startTangent();
    boolean starts = next.start().distanceTo(leg.end()) < next.end().distanceTo(leg.start());
    boolean chord =
        next instanceof Leg.Line
            && leg.lengthM() < LONGEST_CHORD * next.lengthM()
            && own.angleTo(next.startTangent()) < CHORD_RAD;
    if (!chord) {
      return own;
    }
    Vec met = starts ? tangent(leg, next) : tangent(next, leg);
    return own.times(2 * own.dot(met)).minus(met);
  }

  /** The direction of a curve where two of its chords meet: more that of the shorter one. */
  private static Vec tangent(Leg before, Leg after) {
    Vec in = before.endTangent().times(after.lengthM());
    return in.plus(after.startTangent().times(before.lengthM())).unit();
  }

  /** From a corner to where the lines beside it meet; null where its way is plumb. */
  private static @Nullable Vec off(Leg before, Leg after, Vec aside) {
    Vec in = before.endTangent();
    Vec out = after.startTangent();
    boolean lines = before instanceof Leg.Line && after instanceof Leg.Line;
    if (lines && in.angleTo(out) < CHORD_RAD) {
      return off(tangent(before, after), aside);
    }
    Vec off = off(in.plus(out).unit(), aside);
    Vec outwards = in.minus(out).unit();
    double cosine = in.plus(out).norm() / 2;
    return off == null ? null : off.plus(outwards.times(off.dot(outwards) * (1 / cosine - 1)));
  }

  /** Square to a direction; null where that is plumb. */
  private static @Nullable Vec off(Vec along, Vec aside) {
    Vec level = Vec.Z.cross(along);
    if (level.norm() < 1e-6) {
      return null;
    }
    Vec left = level.unit();
    return left.times(aside.x()).plus(along.cross(left).times(aside.y()));
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
