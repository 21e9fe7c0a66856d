package org.lagwright.takeoff.moistair;

/**
 * Temperature of saturated steam by its pressure.
 *
 * <p>Source: IAPWS-IF97, region 4, equations 29 to 31. Holds from 611.213 Pa to 22.064 MPa.
 */
public final class SteamSaturation {

  /** Standard atmosphere, Pa: what a gauge reads as 0. */
  public static final double ATMOSPHERE_PA = 101325;

  private static final double LOWEST_PA = 611.213;
  private static final double HIGHEST_PA = 22.064e6;
  private static final double ZERO_C_IN_K = 273.15;

  /** Coefficients n1 to n10 of equation 29. */
  private static final double[] N = {
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3,
  };

  private SteamSaturation() {}

  /** True where steam of this absolute pressure, pascal, can be saturated. */
  public static boolean isSaturatedAt(double pressurePa) {
    return pressurePa >= LOWEST_PA && pressurePa <= HIGHEST_PA;
  }

  /**
   * Saturation temperature.
   *
   * @param pressurePa absolute pressure, pascal
   * @return degC
   * @throws IllegalArgumentException outside the range of the equation
   */
  public static double temperatureC(double pressurePa) {
    if (!isSaturatedAt(pressurePa)) {
      throw new IllegalArgumentException(
          "steam is saturated from 611.213 Pa to 22.064 MPa only, asked for " + pressurePa + " Pa");
    }
    double beta = Math.pow(pressurePa / 1e6, 0.25);
    double e = beta * beta + N[2] * beta + N[5];
    double f = N[0] * beta * beta + N[3] * beta + N[6];
    double g = N[1] * beta * beta + N[4] * beta + N[7];
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N[9] + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * d))) / 2 - ZERO_C_IN_K;
  }

  /**
   * Saturation temperature by the pressure a gauge shows.
   *
   * @param gaugeBar bar above the atmosphere
   * @return degC
   */
  public static double temperatureAtGaugeC(double gaugeBar) {
    return temperatureC(gaugeBar * 1e5 + ATMOSPHERE_PA);
  }
}
