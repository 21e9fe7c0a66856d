package org.lagwright.takeoff.heat;

/**
 * Properties of dry air at 101325 Pa.
 *
 * <p>Source: viscosity and conductivity after the U.S. Standard Atmosphere 1976 (from memory,
 * verify), density of the ideal gas, heat capacity 1007 J/(kg K).
 *
 * @param conductivityWPerMK conductivity
 * @param kinematicViscosityM2PerS kinematic viscosity
 * @param prandtl Prandtl number
 * @param expansionPerK coefficient of thermal expansion, 1/K
 */
public record AirProperties(
    double conductivityWPerMK,
    double kinematicViscosityM2PerS,
    double prandtl,
    double expansionPerK) {

  private static final double ZERO_C_IN_K = 273.15;
  private static final double PRESSURE_PA = 101325;
  private static final double GAS_CONSTANT_J_PER_KG_K = 287.05;
  private static final double HEAT_CAPACITY_J_PER_KG_K = 1007;
  private static final double GRAVITY_M_PER_S2 = 9.80665;

  /** At the mean of surface and air, degC. */
  public static AirProperties at(double filmC) {
    double t = filmC + ZERO_C_IN_K;
    double viscosityPaS = 1.458e-6 * Math.pow(t, 1.5) / (t + 110.4);
    double conductivity = 2.64638e-3 * Math.pow(t, 1.5) / (t + 245.4 * Math.pow(10, -12 / t));
    double density = PRESSURE_PA / (GAS_CONSTANT_J_PER_KG_K * t);
    return new AirProperties(
        conductivity,
        viscosityPaS / density,
        viscosityPaS * HEAT_CAPACITY_J_PER_KG_K / conductivity,
        1 / t);
  }

  /**
   * Rayleigh number g beta dT L^3 Pr/nu^2.
   *
   * @param lengthM deciding length, metres
   * @param differenceK surface against air, kelvin, either sign
   */
  public double rayleigh(double lengthM, double differenceK) {
    return GRAVITY_M_PER_S2
        * expansionPerK
        * Math.abs(differenceK)
        * Math.pow(lengthM, 3)
        * prandtl
        / (kinematicViscosityM2PerS * kinematicViscosityM2PerS);
  }

  /** Coefficient that belongs to a Nusselt number, W/(m2 K). */
  public double coefficientWPerM2K(double nusselt, double lengthM) {
    return nusselt * conductivityWPerMK / lengthM;
  }
}
