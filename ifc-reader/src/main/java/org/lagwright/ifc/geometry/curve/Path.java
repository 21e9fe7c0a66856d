package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;

/** A curve of one or more legs, each beginning where the last one ends. */
public record Path(List<Leg> legs) {

  /** Points closer than this are one; a hundredth of the length tolerance of 0.1 mm. */
  public static final double SAME_POINT_M = 1e-6;

  /** Vertices and curves of one edge differ by less: the tolerance of lengths. */
  private static final double AT_POINT_M = 1e-4;

  /** How far off a chord its curve runs, as a share of it: 1.6 % where 12 chords make a quarter. */
  private static final double ON_LEG = 0.05;

  /** Fewer chords are bends with corners. */
  private static final int FEWEST_CHORDS = 4;

  /** A finest corner up to which chords stand for an arc. */
  private static final double COARSEST_RAD = Math.toRadians(31);

  /** How far off an arc its points may lie, as a share of how far its chords keep within it. */
  private static final double ON_ARC = 0.25;

  private static final double STEP_TOLERANCE_RAD = 1e-3;

  public Path {
    legs = List.copyOf(legs);
  }

  /** Straight legs from point to point; repeated points are passed over. */
  static Path through(List<Vec> points) {
    List<Leg> legs = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      Vec from = points.get(i - 1);
      if (from.distanceTo(points.get(i)) > SAME_POINT_M) {
        legs.add(new Leg.Line(from, points.get(i)));
      }
    }
    return new Path(legs);
  }

  boolean isEmpty() {
    return legs.isEmpty();
  }

  /** Where it begins. */
  public Leg first() {
    return legs.get(0);
  }

  /** Where it ends. */
  public Leg last() {
    return legs.get(legs.size() - 1);
  }

  /** Length along it in metres. */
  public double lengthM() {
    double lengthM = 0;
    for (Leg leg : legs) {
      lengthM += leg.lengthM();
    }
    return lengthM;
  }

  Path reversed() {
    List<Leg> turned = new ArrayList<>();
    for (Leg leg : legs) {
      turned.add(leg.reversed());
    }
    Collections.reverse(turned);
    return new Path(turned);
  }

  /** The same path, of a frame, in the surrounding one. */
  public Path in(Frame frame) {
    List<Leg> placed = new ArrayList<>(legs.size());
    for (Leg leg : legs) {
      placed.add(leg.in(frame));
    }
    return new Path(placed);
  }

  /**
   * Part of a path of straight legs between two parameters, where leg i runs from i to i + 1; the
   * whole path where the parameters leave nothing.
   */
  public Path between(double from, double to) {
    List<Leg> kept = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      double low = Math.max(0, from - i);
      double high = Math.min(1, to - i);
      if (high > low) {
        Vec start = legs.get(i).start();
        Vec along = legs.get(i).end().minus(start);
        kept.add(new Leg.Line(start.plus(along.times(low)), start.plus(along.times(high))));
      }
    }
    return kept.isEmpty() ? this : new Path(kept);
  }

  /**
   * Part of a path between two points on it, of straight legs also where they lie between its ends;
   * the whole path where they do not.
   *
   * @param forward whether a closed path is followed as it runs; others run as the points ask
   */
  Path between(Vec from, Vec to, boolean forward) {
    boolean atStart = first().start().distanceTo(from) <= last().end().distanceTo(from);
    Path way = atStart ? this : reversed();
    boolean whole =
        way.first().start().distanceTo(from) < AT_POINT_M
            && way.last().end().distanceTo(to) < AT_POINT_M;
    double startM = alongM(from);
    double endM = alongM(to);
    if (whole || Double.isNaN(startM + endM)) {
      return way;
    }
    boolean closed = first().start().distanceTo(last().end()) < AT_POINT_M;
    if (closed && !forward) {
      return reversed().between(from, to, true);
    }
    return closed && startM >= endM
        ? over(startM, endM)
        : startM > endM ? betweenM(endM, startM).reversed() : betweenM(startM, endM);
  }

  /** Part of a closed path that leads over its end. */
  private Path over(double startM, double endM) {
    List<Leg> kept = new ArrayList<>(betweenM(startM, lengthM()).legs);
    if (endM > AT_POINT_M) {
      kept.addAll(betweenM(0, endM).legs);
    }
    return new Path(kept);
  }

  /** How far along straight legs a point lies on them; NaN if it lies off, or some are bent. */
  private double alongM(Vec point) {
    double beforeM = 0;
    double leastM = Double.MAX_VALUE;
    double foundM = Double.NaN;
    for (Leg leg : legs) {
      Vec way = leg.end().minus(leg.start());
      double share = point.minus(leg.start()).dot(way) / way.dot(way);
      double within = Math.max(0, Math.min(1, share));
      double offM = leg.start().plus(way.times(within)).distanceTo(point);
      if (!(leg instanceof Leg.Line)) {
        return Double.NaN;
      }
      if (offM < leastM) {
        leastM = offM;
        foundM =
            offM < ON_LEG * leg.lengthM() + AT_POINT_M
                ? beforeM + within * leg.lengthM()
                : Double.NaN;
      }
      beforeM += leg.lengthM();
    }
    return foundM;
  }

  /** Part of a path between two lengths along it; the whole path where they leave nothing. */
  public Path betweenM(double fromM, double toM) {
    List<Leg> kept = new ArrayList<>();
    double beforeM = 0;
    for (Leg leg : legs) {
      double low = Math.max(0, (fromM - beforeM) / leg.lengthM());
      double high = Math.min(1, (toM - beforeM) / leg.lengthM());
      if (high - low > 1e-9) {
        kept.add(leg.part(low, high));
      }
      beforeM += leg.lengthM();
    }
    return kept.isEmpty() ? this : new Path(kept);
  }

  /** Corners between straight legs rounded by arcs of a radius, where the legs are long enough. */
  public Path filleted(double radiusM) {
    List<Leg> rounded = new ArrayList<>();
    Leg last = legs.get(0);
    for (int i = 1; i < legs.size(); i++) {
      Leg next = legs.get(i);
      // what an arc has left of a leg may have no length, and so no direction
      Vec in = legs.get(i - 1).endTangent();
      Vec out = next.startTangent();
      double turn = in.angleTo(out);
      double tangentM = radiusM * Math.tan(turn / 2);
      double mostM = Math.min(last.lengthM(), next.lengthM()) + SAME_POINT_M;
      if (turn > 1e-6 && tangentM < mostM) {
        Vec from = last.end().minus(in.times(tangentM));
        Vec to = next.start().plus(out.times(tangentM));
        Vec u = in.cross(in.cross(out).unit()).times(radiusM);
        add(new Leg.Line(last.start(), from), rounded);
        rounded.add(new Leg.Arc(from.minus(u), u, in.times(radiusM), turn));
        last = new Leg.Line(to, next.end());
      } else {
        add(last, rounded);
        last = next;
      }
    }
    add(last, rounded);
    return new Path(rounded);
  }

  private static void add(Leg leg, List<Leg> into) {
    if (leg.lengthM() > SAME_POINT_M) {
      into.add(leg);
    }
  }

  /** A row of chords of one circle as the arc that they stand for; any other path as it is. */
  public Path asArc() {
    if (legs.size() < FEWEST_CHORDS) {
      return this;
    }
    List<Vec> points = new ArrayList<>(legs.size() + 1);
    points.add(first().start());
    double finestRad = Double.MAX_VALUE;
    for (int i = 0; i < legs.size(); i++) {
      if (!(legs.get(i) instanceof Leg.Line)) {
        return this;
      }
      points.add(legs.get(i).end());
      double corner =
          i == 0 ? finestRad : legs.get(i - 1).endTangent().angleTo(legs.get(i).startTangent());
      finestRad = Math.min(finestRad, corner);
    }
    Leg.Arc arc =
        Curves.arcThrough(points.get(0), points.get(legs.size() / 2), points.get(legs.size()));
    return arc != null && finestRad < COARSEST_RAD && holds(arc, points, finestRad)
        ? new Path(List.of(arc))
        : this;
  }

  /** True if all points lie on an arc one after the other; those of tangents lie off it. */
  private static boolean holds(Leg.Arc arc, List<Vec> points, double finestRad) {
    double radiusM = arc.radiusM();
    double withinM = ON_ARC * radiusM * (1 - Math.cos(finestRad / 2));
    Vec axis = arc.u().cross(arc.v()).unit();
    double turn = 0;
    for (int i = 0; i < points.size(); i++) {
      Vec off = points.get(i).minus(arc.centre());
      if (Math.abs(off.norm() - radiusM) > withinM || Math.abs(off.dot(axis)) > withinM) {
        return false;
      }
      Vec before = points.get(Math.max(0, i - 1)).minus(arc.centre());
      double step = before.angleTo(off);
      turn += before.cross(off).dot(axis) < 0 ? -step : step;
    }
    return Math.abs(turn - arc.sweepRad()) < STEP_TOLERANCE_RAD;
  }

  /** Points along the path without repeats; a closed path does not repeat its first point. */
  public List<Vec> points() {
    return points(Leg.STEP_RAD);
  }

  /**
   * @param stepRad arcs are cut into steps of at most this
   */
  public List<Vec> points(double stepRad) {
    List<Vec> points = new ArrayList<>();
    for (Leg leg : legs) {
      for (Vec p : leg.points(stepRad)) {
        if (points.isEmpty() || points.get(points.size() - 1).distanceTo(p) > SAME_POINT_M) {
          points.add(p);
        }
      }
    }
    if (points.size() > 1
        && points.get(0).distanceTo(points.get(points.size() - 1)) <= SAME_POINT_M) {
      points.remove(points.size() - 1);
    }
    return points;
  }
}
