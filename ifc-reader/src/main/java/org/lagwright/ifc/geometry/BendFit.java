package org.lagwright.ifc.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;

/**
 * The bend radius of a meshed round bend that may have straight tangents. The ends alone only give
 * the radius a bend without tangents would have; here the arc is chosen so that the corners of the
 * mesh lie at the pipe's radius from the centre line.
 */
final class BendFit {

  /** Median distance of the corners from the pipe's surface over its radius, to be accepted. */
  private static final double ON_SURFACE = 0.02;

  /** Mean distance to be accepted: the mitres of a bend of five gores stand off by 2.5 %. */
  private static final double ON_MITRES = 0.04;

  /** Distances count up to this share of the pipe's radius, so that flanges do not outweigh. */
  private static final double CAPPED = 0.25;

  /** A bend without tangents is taken unless tangents fit this much better. */
  private static final double BETTER = 0.3;

  /** Radii tried in a row, before the best one is narrowed down. */
  private static final int STEPS = 100;

  /** Corners may lie this much further out than the ends: coarse arcs, flanges. */
  private static final double OUTSIDE = 1.1;

  /** A bend radius and the length with tangents, metres. */
  record Fit(double radiusM, double lengthM) {}

  private final List<Vec> corners;
  private final double pipeRadius;
  private final Vec corner;
  private final Vec toA;
  private final Vec toB;
  private final double legA;
  private final double legB;
  private final double turn;

  /**
   * @param corners corners of the mesh in the same coordinates as the ends
   */
  private BendFit(List<Vec> corners, ShapeEnd a, ShapeEnd b, double pipeRadius) {
    this.corners = corners;
    this.pipeRadius = pipeRadius;
    this.toA = a.out();
    this.toB = b.out();
    Vec normal = toA.cross(toB);
    Vec between = b.centre().minus(a.centre());
    this.legA = -between.cross(toB).dot(normal) / normal.dot(normal);
    this.legB = -between.cross(toA).dot(normal) / normal.dot(normal);
    this.corner = a.centre().minus(toA.times(legA));
    this.turn = Math.PI - toA.angleTo(toB);
  }

  /** The fit, null if the ends are not round, not alike, or if no arc fits. */
  static @Nullable Fit of(List<Vec> corners, ShapeEnd a, ShapeEnd b) {
    boolean round = a.section() instanceof Section.Round && Ends.same(a.section(), b.section());
    if (!round || a.out().cross(b.out()).norm() < Math.sin(Math.toRadians(1))) {
      return null;
    }
    return new BendFit(corners, a, b, a.section().largestSideM() / 2).best();
  }

  /**
   * True if nearly all corners lie within the ends' width of the centre line through both ends; so
   * a square or mitred elbow, or a body that only looks like a bend, does not pass.
   *
   * @param half half the width of the ends in the plane of the bend
   */
  static boolean followsArc(List<Vec> corners, ShapeEnd a, ShapeEnd b, double half) {
    BendFit fit = new BendFit(corners, a, b, half);
    double radius = Math.min(fit.legA, fit.legB) / Math.tan(fit.turn / 2);
    Vec normal = fit.toA.cross(fit.toB).unit();
    long outside =
        corners.stream()
            .map(p -> fit.corner.plus(p.minus(fit.corner).across(normal)))
            .filter(p -> fit.fromAxis(p, radius) > half * OUTSIDE + Mesh.WELD_M)
            .count();
    return outside <= corners.size() / 20;
  }

  private @Nullable Fit best() {
    double largest = Math.min(legA, legB) / Math.tan(turn / 2);
    if (!(largest > 0)) {
      return null;
    }
    double found = largest;
    double least = off(largest);
    for (int i = 1; least > ON_SURFACE / 10 * pipeRadius && i < STEPS; i++) {
      double off = off(largest * i / STEPS);
      found = off < least ? largest * i / STEPS : found;
      least = Math.min(off, least);
    }
    if (least > BETTER * off(largest)) {
      found = largest;
    }
    double radius = found == largest ? largest : narrowed(found, largest / STEPS);
    return fits(radius) ? new Fit(radius, lengthM(radius)) : null;
  }

  private boolean fits(double radius) {
    double[] off = distances(radius);
    return off[off.length / 2] <= ON_SURFACE * pipeRadius || off(radius) <= ON_MITRES * pipeRadius;
  }

  /** Halves the step about the best radius until it is below a micrometre. */
  private double narrowed(double start, double firstStep) {
    double at = start;
    for (double step = firstStep / 2; step > 1e-7; step /= 2) {
      for (double other : new double[] {at - step, at + step}) {
        at = off(other) < off(at) ? other : at;
      }
    }
    return at;
  }

  private double lengthM(double radius) {
    return legA + legB - 2 * radius * Math.tan(turn / 2) + radius * turn;
  }

  /** Mean distance of the corners from the surface, each capped. */
  private double off(double radius) {
    double sum = 0;
    for (double off : distances(radius)) {
      sum += Math.min(off, CAPPED * pipeRadius);
    }
    return sum / corners.size();
  }

  private double[] distances(double radius) {
    return corners.stream()
        .mapToDouble(p -> Math.abs(fromAxis(p, radius) - pipeRadius))
        .sorted()
        .toArray();
  }

  /** Distance of a point from the centre line of tangent, arc, tangent. */
  private double fromAxis(Vec point, double radius) {
    double tangent = radius * Math.tan(turn / 2);
    Vec v = point.minus(corner);
    if (v.dot(toA) >= tangent && v.dot(toA) >= v.dot(toB)) {
      return v.across(toA).norm();
    }
    if (v.dot(toB) >= tangent) {
      return v.across(toB).norm();
    }
    Vec normal = toA.cross(toB).unit();
    Vec centre = toA.plus(toB).unit().times(radius / Math.cos(turn / 2));
    Vec fromCentre = v.minus(centre);
    double inPlane = fromCentre.across(normal).norm() - radius;
    return Math.hypot(inPlane, fromCentre.dot(normal));
  }
}
