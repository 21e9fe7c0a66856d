package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of a pattern: straight pieces and exact arcs.
 *
 * @param role what it is for
 * @param label words that stand at it, empty for none
 * @param closed true where the last vertex leads back to the first
 * @param vertices at least two
 */
public record Curve(Role role, String label, boolean closed, List<Vertex> vertices) {

  /** What a line is for. */
  public enum Role {
    /** Cut here, on the outer face. */
    CUT,
    /** Where the cut comes out on the bore: guide for a bevel. */
    BORE,
    /** Square line that measures start from. */
    BASELINE,
    /** Longitudinal joint. */
    SEAM,
    /** Line along the tube at heel, sides and throat. */
    MARK,
    /** Bend here, do not cut. */
    FOLD
  }

  /**
   * A vertex and how the line goes on from it.
   *
   * @param bulge tangent of a quarter of the angle of the arc to the next vertex, positive
   *     counterclockwise; 0 for a straight piece
   */
  public record Vertex(FlatPoint at, double bulge) {}

  public Curve {
    vertices = List.copyOf(vertices);
    if (vertices.size() < 2) {
      throw new IllegalArgumentException("a curve needs two vertices, has " + vertices.size());
    }
  }

  /** A line of straight pieces. */
  public static Curve through(Role role, String label, boolean closed, List<FlatPoint> points) {
    return new Curve(
        role, label, closed, points.stream().map(point -> new Vertex(point, 0)).toList());
  }

  /** A closed cut of straight pieces. */
  static Curve polygon(FlatPoint... corners) {
    return through(Role.CUT, "", true, List.of(corners));
  }

  /** A whole circle, as a cut. */
  static Curve circle(FlatPoint centre, double radiusM) {
    double half = Math.tan(Math.PI / 4);
    return new Curve(
        Role.CUT,
        "",
        true,
        List.of(
            new Vertex(centre.plus(radiusM, 0), half), new Vertex(centre.plus(-radiusM, 0), half)));
  }

  /**
   * Part of a ring round the origin as a closed cut, symmetrical about the +y axis.
   *
   * @param angleRad above 0, below a full turn
   */
  static Curve ringSector(double outerM, double innerM, double angleRad) {
    List<Vertex> around = new ArrayList<>();
    addArc(around, outerM, Math.PI / 2 + angleRad / 2, -angleRad);
    addArc(around, innerM, Math.PI / 2 - angleRad / 2, angleRad);
    return new Curve(Role.CUT, "", true, around);
  }

  /** Adds an arc round the origin; ends with the vertex from which the line goes straight on. */
  private static void addArc(List<Vertex> to, double radiusM, double fromRad, double sweepRad) {
    int parts = 4;
    double bulge = Math.tan(sweepRad / parts / 4);
    for (int i = 0; i < parts; i++) {
      to.add(new Vertex(FlatPoint.polar(radiusM, fromRad + sweepRad * i / parts), bulge));
    }
    to.add(new Vertex(FlatPoint.polar(radiusM, fromRad + sweepRad), 0));
  }

  /** Length including arcs, metres. */
  public double lengthM() {
    double sum = 0;
    for (int i = 0; i < pieces(); i++) {
      double chord = vertices.get(i).at().distanceM(next(i).at());
      double quarter = Math.atan(Math.abs(vertices.get(i).bulge()));
      sum += quarter == 0 ? chord : chord * 2 * quarter / Math.sin(2 * quarter);
    }
    return sum;
  }

  /** Enclosed area including the segments of arcs, square metres, never below zero. */
  public double areaM2() {
    if (!closed) {
      throw new IllegalStateException("an open curve encloses nothing");
    }
    double twice = 0;
    for (int i = 0; i < pieces(); i++) {
      FlatPoint a = vertices.get(i).at();
      FlatPoint b = next(i).at();
      twice += a.xM() * b.yM() - b.xM() * a.yM() + 2 * segmentM2(vertices.get(i), b);
    }
    return Math.abs(twice) / 2;
  }

  /** Signed area between an arc and its chord. */
  private static double segmentM2(Vertex from, FlatPoint to) {
    if (from.bulge() == 0) {
      return 0;
    }
    double angle = 4 * Math.atan(from.bulge());
    double radius = from.at().distanceM(to) / (2 * Math.sin(Math.abs(angle) / 2));
    return radius * radius * (angle - Math.sin(angle)) / 2;
  }

  private int pieces() {
    return closed ? vertices.size() : vertices.size() - 1;
  }

  private Vertex next(int index) {
    return vertices.get((index + 1) % vertices.size());
  }

  /**
   * The same line in straight pieces only.
   *
   * @param toleranceM how far a piece may lie beside its arc, metres
   */
  public List<FlatPoint> flattened(double toleranceM) {
    List<FlatPoint> points = new ArrayList<>();
    for (int i = 0; i < pieces(); i++) {
      points.add(vertices.get(i).at());
      addArcPoints(points, vertices.get(i), next(i).at(), toleranceM);
    }
    points.add(next(pieces() - 1).at());
    return points;
  }

  private static void addArcPoints(
      List<FlatPoint> points, Vertex from, FlatPoint to, double toleranceM) {
    if (from.bulge() == 0) {
      return;
    }
    double angle = 4 * Math.atan(from.bulge());
    double chord = from.at().distanceM(to);
    double radius = chord / (2 * Math.sin(angle / 2));
    double toCentre = radius * Math.cos(angle / 2);
    double ux = (to.xM() - from.at().xM()) / chord;
    double uy = (to.yM() - from.at().yM()) / chord;
    double cx = (from.at().xM() + to.xM()) / 2 - uy * toCentre;
    double cy = (from.at().yM() + to.yM()) / 2 + ux * toCentre;
    double start = Math.atan2(from.at().yM() - cy, from.at().xM() - cx);
    double share = Math.min(1, toleranceM / Math.abs(radius));
    int steps = (int) Math.ceil(Math.abs(angle) / (2 * Math.acos(1 - share)));
    for (int i = 1; i < steps; i++) {
      FlatPoint beside = FlatPoint.polar(Math.abs(radius), start + angle * i / steps);
      points.add(beside.plus(cx, cy));
    }
  }

  /** This line moved. */
  public Curve moved(double byXM, double byYM) {
    return new Curve(
        role,
        label,
        closed,
        vertices.stream().map(v -> new Vertex(v.at().plus(byXM, byYM), v.bulge())).toList());
  }
}
