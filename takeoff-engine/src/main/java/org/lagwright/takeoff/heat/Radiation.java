package org.lagwright.takeoff.heat;

/** Heat exchange by radiation with surroundings as warm as the air. */
public final class Radiation {

  /** Stefan-Boltzmann constant, W/(m2 K4); CODATA 2018, rounded. */
  private static final double STEFAN_BOLTZMANN = 5.670374e-8;

  private static final double ZERO_C_IN_K = 273.15;

  private Radiation() {}

  /**
   * Coefficient eps sigma (Ts^4 - Ta^4)/(Ts - Ta), written so that it also holds for equal
   * temperatures. Source: ISO 12241, clause on the surface coefficient, and every textbook.
   *
   * @param emissivity of the surface for long waves, 0 to 1
   * @param surfaceC surface, degC
   * @param surroundingsC surroundings, degC
   * @return W/(m2 K)
   */
  public static double coefficientWPerM2K(
      double emissivity, double surfaceC, double surroundingsC) {
    double ts = surfaceC + ZERO_C_IN_K;
    double ta = surroundingsC + ZERO_C_IN_K;
    return emissivity * STEFAN_BOLTZMANN * (ts * ts + ta * ta) * (ts + ta);
  }
}
