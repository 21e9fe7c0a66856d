package org.lagwright.takeoff.fitting.pattern;

/**
 * A point in a plane, metres.
 *
 * @param xM to the right
 * @param yM upwards
 */
public record FlatPoint(double xM, double yM) {

  public FlatPoint {
    if (!Double.isFinite(xM) || !Double.isFinite(yM)) {
      throw new IllegalArgumentException("a point must be finite, was " + xM + ", " + yM);
    }
  }

  /** This point moved. */
  public FlatPoint plus(double byXM, double byYM) {
    return new FlatPoint(xM + byXM, yM + byYM);
  }

  /** Distance to another point, metres. */
  public double distanceM(FlatPoint other) {
    return Math.hypot(other.xM - xM, other.yM - yM);
  }

  /** A point at a distance and an angle from the origin; angle counterclockwise from +x. */
  static FlatPoint polar(double radiusM, double angleRad) {
    return new FlatPoint(radiusM * Math.cos(angleRad), radiusM * Math.sin(angleRad));
  }

  /**
   * A point beside a line through the origin.
   *
   * @param alongM how far along the line
   * @param directionRad direction of the line, counterclockwise from +x
   * @param leftM how far to the left of it
   */
  public static FlatPoint along(double alongM, double directionRad, double leftM) {
    double c = Math.cos(directionRad);
    double n = Math.sin(directionRad);
    return new FlatPoint(alongM * c - leftM * n, alongM * n + leftM * c);
  }
}
