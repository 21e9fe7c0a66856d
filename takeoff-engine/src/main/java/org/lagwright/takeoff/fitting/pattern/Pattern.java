package org.lagwright.takeoff.fitting.pattern;

import java.util.List;

/**
 * A flat pattern at full size, ready to be drawn.
 *
 * @param curves all lines
 * @param ordinates stations for marking by hand, empty where the outline says everything
 * @param toleranceM how far a drawn line may lie beside the exact one, metres
 */
public record Pattern(List<Curve> curves, List<Ordinate> ordinates, double toleranceM) {

  /** Drawn lines lie within a twentieth of a millimetre, finer than a pencil line. */
  public static final double FINE_M = 5e-5;

  public Pattern {
    curves = List.copyOf(curves);
    ordinates = List.copyOf(ordinates);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a pattern without lines");
    }
  }

  /** A pattern of exact lines and arcs. */
  static Pattern of(List<Curve> curves) {
    return new Pattern(curves, List.of(), FINE_M);
  }

  /**
   * Smallest upright rectangle round all lines.
   *
   * @param leftM smallest x
   * @param bottomM smallest y
   */
  public record Bounds(double leftM, double bottomM, double widthM, double heightM) {}

  /** The bounds, metres. */
  public Bounds bounds() {
    double left = Double.POSITIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Curve curve : curves) {
      for (FlatPoint point : curve.flattened(toleranceM)) {
        left = Math.min(left, point.xM());
        right = Math.max(right, point.xM());
        bottom = Math.min(bottom, point.yM());
        top = Math.max(top, point.yM());
      }
    }
    return new Bounds(left, bottom, right - left, top - bottom);
  }
}
