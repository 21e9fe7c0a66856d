package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A curve of one or more legs, each beginning where the last one ends. */
record Path(List<Leg> legs) {

  /** Points closer than this are one; a hundredth of the length tolerance of 0.1 mm. */
  static final double SAME_POINT_M = 1e-6;

  Path {
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

  Leg first() {
    return legs.get(0);
  }

  Leg last() {
    return legs.get(legs.size() - 1);
  }

  double lengthM() {
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

  Path in(Frame frame) {
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
  Path between(double from, double to) {
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

  /** Part of a path between two lengths along it; the whole path where they leave nothing. */
  Path betweenM(double fromM, double toM) {
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
  Path filleted(double radiusM) {
    List<Leg> rounded = new ArrayList<>();
    Leg last = legs.get(0);
    for (int i = 1; i < legs.size(); i++) {
      Leg next = legs.get(i);
      double turn = last.endTangent().angleTo(next.startTangent());
      double tangentM = radiusM * Math.tan(turn / 2);
      if (turn > 1e-6 && tangentM < last.lengthM() && tangentM < next.lengthM()) {
        Vec from = last.end().minus(last.endTangent().times(tangentM));
        Vec to = next.start().plus(next.startTangent().times(tangentM));
        Vec axis = last.endTangent().cross(next.startTangent()).unit();
        Vec u = last.endTangent().cross(axis).times(radiusM);
        rounded.add(new Leg.Line(last.start(), from));
        rounded.add(new Leg.Arc(from.minus(u), u, last.endTangent().times(radiusM), turn));
        last = new Leg.Line(to, next.end());
      } else {
        rounded.add(last);
        last = next;
      }
    }
    rounded.add(last);
    return new Path(rounded);
  }

  /** Points along the path without repeats; a closed path does not repeat its first point. */
  List<Vec> points() {
    return points(Leg.STEP_RAD);
  }

  /**
   * @param stepRad arcs are cut into steps of at most this
   */
  List<Vec> points(double stepRad) {
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
