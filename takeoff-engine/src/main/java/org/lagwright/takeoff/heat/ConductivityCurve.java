package org.lagwright.takeoff.heat;

/** Conductivity that depends on temperature, as heat flow needs it. */
@FunctionalInterface
public interface ConductivityCurve {

  /**
   * Integral mean between the temperatures of the two sides of a layer, in either order; at equal
   * temperatures the conductivity there.
   *
   * <p>Source: the factor for the curvature in ISO 23993; exact for one-dimensional conduction.
   *
   * @param oneC one side, degC
   * @param otherC other side, degC
   * @return W/(m K)
   */
  double meanWPerMK(double oneC, double otherC);

  /** The same at all temperatures. */
  static ConductivityCurve constant(double wPerMK) {
    return (oneC, otherC) -> wPerMK;
  }

  /**
   * A polynomial a0 + a1 t + a2 t^2, with t in degC. Its integral mean is a0 + a1 (t1 + t2)/2 + a2
   * (t1^2 + t1 t2 + t2^2)/3.
   */
  static ConductivityCurve quadratic(double a0, double a1, double a2) {
    return (t1, t2) -> a0 + a1 * (t1 + t2) / 2 + a2 * (t1 * t1 + t1 * t2 + t2 * t2) / 3;
  }
}
