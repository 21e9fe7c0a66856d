package org.lagwright.takeoff.heat;

/**
 * Coefficients of forced convection in wind after ISO 12241. From memory, verify: the text of the
 * standard was not at hand.
 */
public final class ForcedConvection {

  /** Wall: product of speed and length up to which the flow is laminar, m2/s. */
  private static final double FLAT_LAMINAR_UP_TO_M2_PER_S = 8;

  /** Pipe: product of speed and diameter up to which the flow is laminar, m2/s. */
  private static final double CYLINDER_LAMINAR_UP_TO_M2_PER_S = 8.55e-3;

  private ForcedConvection() {}

  /**
   * Flat surface along the wind: 3.96 (v/H)^0.5 laminar, 5.76 (v^4/H)^0.2 turbulent.
   *
   * @param lengthM length along the wind, metres
   * @param windMPerS speed, metres per second
   * @return W/(m2 K)
   */
  public static double flatWPerM2K(double lengthM, double windMPerS) {
    return windMPerS * lengthM <= FLAT_LAMINAR_UP_TO_M2_PER_S
        ? 3.96 * Math.sqrt(windMPerS / lengthM)
        : 5.76 * Math.pow(Math.pow(windMPerS, 4) / lengthM, 0.2);
  }

  /**
   * Pipe across the wind: 8.1e-3/D + 3.14 (v/D)^0.5 laminar, 8.9 v^0.9/D^0.1 turbulent.
   *
   * @param diameterM outer diameter, metres
   * @param windMPerS speed, metres per second
   * @return W/(m2 K)
   */
  public static double cylinderWPerM2K(double diameterM, double windMPerS) {
    return windMPerS * diameterM <= CYLINDER_LAMINAR_UP_TO_M2_PER_S
        ? 8.1e-3 / diameterM + 3.14 * Math.sqrt(windMPerS / diameterM)
        : 8.9 * Math.pow(windMPerS, 0.9) / Math.pow(diameterM, 0.1);
  }
}
