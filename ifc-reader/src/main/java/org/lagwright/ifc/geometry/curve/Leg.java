package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;

/** A piece of a curve; metres. Survives affine frames, which turn arcs of circles into ellipses. */
public sealed interface Leg {

  /** Relative difference up to which two radii count as one. */
  double SAME_RADIUS = 2e-3;

  Vec start();

  Vec end();

  /** Direction of travel at the start, a unit vector. */
  Vec startTangent();

  Vec endTangent();

  double lengthM();

  Leg reversed();

  /** The part between two shares of the whole, 0 to 1; on ellipses shares of the sweep. */
  Leg part(double from, double to);

  Leg in(Frame frame);

  /** Arcs are cut into steps of at most this where nothing finer is asked for. */
  double STEP_RAD = Math.toRadians(7.5);

  /** Points along it with both ends; arcs by at most the given step, all points on the curve. */
  List<Vec> points(double stepRad);

  /** A straight piece. */
  public record Line(Vec start, Vec end) implements Leg {
    @Override
    public Vec startTangent() {
      return end.minus(start).unit();
    }

    @Override
    public Vec endTangent() {
      return startTangent();
    }

    @Override
    public double lengthM() {
      return start.distanceTo(end);
    }

    @Override
    public Line part(double from, double to) {
      Vec along = end.minus(start);
      return new Line(start.plus(along.times(from)), start.plus(along.times(to)));
    }

    @Override
    public Line reversed() {
      return new Line(end, start);
    }

    @Override
    public Line in(Frame frame) {
      return new Line(frame.point(start), frame.point(end));
    }

    @Override
    public List<Vec> points(double stepRad) {
      return List.of(start, end);
    }
  }

  /**
   * Part of a circle or ellipse: {@code centre + u cos t + v sin t} for t from 0 to the sweep.
   *
   * @param sweepRad above 0
   */
  record Arc(Vec centre, Vec u, Vec v, double sweepRad) implements Leg {

    private Vec at(double t) {
      return centre.plus(u.times(Math.cos(t))).plus(v.times(Math.sin(t)));
    }

    private Vec tangent(double t) {
      return v.times(Math.cos(t)).minus(u.times(Math.sin(t)));
    }

    /** Steps of at most the given angle, at least two. */
    int steps(double stepRad) {
      return Math.max(2, (int) Math.ceil(sweepRad / stepRad - 1e-9));
    }

    /** Position at a share of the sweep, 0 to 1. */
    Vec pointAt(double share) {
      return at(sweepRad * share);
    }

    /** Direction of travel at a share of the sweep, 0 to 1; a unit vector. */
    public Vec tangentAt(double share) {
      return tangent(sweepRad * share).unit();
    }

    /** True for an arc of a circle. */
    public boolean isCircular() {
      double larger = Math.max(u.norm(), v.norm());
      return Math.abs(u.norm() - v.norm()) < SAME_RADIUS * larger
          && Math.abs(u.dot(v)) < SAME_RADIUS * larger * larger;
    }

    /** Radius of a circle, mean of both of an ellipse. */
    public double radiusM() {
      return (u.norm() + v.norm()) / 2;
    }

    @Override
    public Vec start() {
      return at(0);
    }

    @Override
    public Vec end() {
      return at(sweepRad);
    }

    @Override
    public Vec startTangent() {
      return tangent(0).unit();
    }

    @Override
    public Vec endTangent() {
      return tangent(sweepRad).unit();
    }

    /** Exact for circles; Simpson's rule over 256 steps for ellipses. */
    @Override
    public double lengthM() {
      if (isCircular()) {
        return radiusM() * sweepRad;
      }
      int steps = 256;
      double sum = 0;
      for (int i = 0; i <= steps; i++) {
        int weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
        sum += weight * tangent(sweepRad * i / steps).norm();
      }
      return sum * sweepRad / steps / 3;
    }

    @Override
    public Arc part(double from, double to) {
      return Curves.arcFrom(this, sweepRad * from, sweepRad * (to - from));
    }

    @Override
    public Arc reversed() {
      return new Arc(centre, end().minus(centre), tangent(sweepRad).times(-1), sweepRad);
    }

    @Override
    public Arc in(Frame frame) {
      return new Arc(frame.point(centre), frame.vector(u), frame.vector(v), sweepRad);
    }

    @Override
    public List<Vec> points(double stepRad) {
      int steps = steps(stepRad);
      List<Vec> points = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        points.add(at(sweepRad * i / steps));
      }
      return points;
    }
  }
}
