package org.lagwright.takeoff.fitting.pattern;

import java.util.List;

/**
 * The outer face of a tube in cross-section, stepped by arc length from the point on +x,
 * counterclockwise.
 */
public sealed interface Outline {

  /** Length once round, metres. */
  double girthM();

  /**
   * The point at an arc length, moved inwards square to the outline.
   *
   * @param sM from 0 to the girth
   * @param inwardM depth below the outer face, metres
   */
  FlatPoint at(double sM, double inwardM);

  /** Curvature there, 1/m; 0 on straight sides. */
  double curvaturePerM(double sM);

  /** Arc lengths between which curves are smooth, from 0 to the girth. */
  List<Double> breaksM();

  /** The outline of insulation of a thickness round this one. */
  Outline grown(double byM);

  /** Extent along x, metres. */
  double widthM();

  /** A round tube. */
  record Circle(double radiusM) implements Outline {

    public Circle {
      requirePositive(radiusM, "radius");
    }

    @Override
    public double girthM() {
      return 2 * Math.PI * radiusM;
    }

    @Override
    public FlatPoint at(double sM, double inwardM) {
      return FlatPoint.polar(radiusM - inwardM, sM / radiusM);
    }

    @Override
    public double curvaturePerM(double sM) {
      return 1 / radiusM;
    }

    @Override
    public List<Double> breaksM() {
      double quarter = girthM() / 4;
      return List.of(0.0, quarter, 2 * quarter, 3 * quarter, girthM());
    }

    @Override
    public Circle grown(double byM) {
      return new Circle(radiusM + byM);
    }

    @Override
    public double widthM() {
      return 2 * radiusM;
    }
  }

  /**
   * A flat-oval tube: two half circles joined by straight sides.
   *
   * @param widthM along x, in the plane of a bend
   * @param heightM along z
   */
  record Stadium(double widthM, double heightM) implements Outline {

    public Stadium {
      requirePositive(widthM, "width");
      requirePositive(heightM, "height");
    }

    private double radiusM() {
      return Math.min(widthM, heightM) / 2;
    }

    /** Half the straight side. */
    private double halfSideM() {
      return Math.abs(widthM - heightM) / 2;
    }

    private boolean isWide() {
      return widthM >= heightM;
    }

    @Override
    public double girthM() {
      return 2 * Math.PI * radiusM() + 4 * halfSideM();
    }

    @Override
    public FlatPoint at(double sM, double inwardM) {
      double quarterM = girthM() / 4;
      int quadrant = (int) Math.min(3, Math.floor(sM / quarterM));
      double inQuadrant = sM - quadrant * quarterM;
      boolean mirrored = quadrant % 2 == 1;
      FlatPoint first = inFirstQuadrant(mirrored ? quarterM - inQuadrant : inQuadrant, inwardM);
      double signX = quadrant == 1 || quadrant == 2 ? -1 : 1;
      double signY = quadrant >= 2 ? -1 : 1;
      return new FlatPoint(signX * first.xM(), signY * first.yM());
    }

    private FlatPoint inFirstQuadrant(double sM, double inwardM) {
      double r = radiusM();
      double arcM = Math.PI / 2 * r;
      double reach = r - inwardM;
      if (isWide()) {
        return sM <= arcM
            ? FlatPoint.polar(reach, sM / r).plus(halfSideM(), 0)
            : new FlatPoint(halfSideM() - (sM - arcM), reach);
      }
      return sM <= halfSideM()
          ? new FlatPoint(reach, sM)
          : FlatPoint.polar(reach, (sM - halfSideM()) / r).plus(0, halfSideM());
    }

    @Override
    public double curvaturePerM(double sM) {
      double quarterM = girthM() / 4;
      double inQuadrant = sM % quarterM;
      boolean mirrored = (int) (sM / quarterM) % 2 == 1;
      double first = mirrored ? quarterM - inQuadrant : inQuadrant;
      boolean onArc = isWide() ? first < Math.PI / 2 * radiusM() : first > halfSideM();
      return onArc ? 1 / radiusM() : 0;
    }

    @Override
    public List<Double> breaksM() {
      double quarter = girthM() / 4;
      double change = isWide() ? Math.PI / 2 * radiusM() : halfSideM();
      return List.of(
          0.0,
          change,
          quarter,
          2 * quarter - change,
          2 * quarter,
          2 * quarter + change,
          3 * quarter,
          4 * quarter - change,
          girthM());
    }

    @Override
    public Stadium grown(double byM) {
      return new Stadium(widthM + 2 * byM, heightM + 2 * byM);
    }
  }

  private static void requirePositive(double lengthM, String what) {
    if (!(lengthM > 0 && Double.isFinite(lengthM))) {
      throw new IllegalArgumentException(what + " must be above zero and finite, was " + lengthM);
    }
  }
}
