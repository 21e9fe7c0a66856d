package org.lagwright.takeoff.moistair;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Saturation pressure and dew point.
 *
 * <p>Source: Hyland and Wexler (1983) as given in the ASHRAE Handbook of Fundamentals 2017, chapter
 * 1, equations 5 (over ice) and 6 (over water). Holds from -100 to 200 degC.
 */
public final class MoistAir {

  /** Lowest temperature the equations hold for, degC. */
  public static final double LOWEST_C = -100;

  /** Highest temperature the equations hold for, degC. */
  public static final double HIGHEST_C = 200;

  /**
   * Triple point of water. Equation 5 holds below, 6 above; switching at 0 degC instead leaves a
   * step that spoils the inverse near freezing.
   */
  private static final double TRIPLE_POINT_C = 0.01;

  private static final double ZERO_C_IN_K = 273.15;

  /** Far below what any thermometer on site shows. */
  private static final double DEW_POINT_ACCURACY_K = 1e-9;

  private static final int MAX_EVALUATIONS = 200;
  private static final int SOLVER_ORDER = 5;

  private MoistAir() {}

  /**
   * Pressure of saturated water vapour, over ice below 0.01 degC, over water above.
   *
   * @param temperatureC from -100 to 200 degC
   * @return pascal
   * @throws IllegalArgumentException outside that range
   */
  public static double saturationPressurePa(double temperatureC) {
    if (!(temperatureC >= LOWEST_C && temperatureC <= HIGHEST_C)) {
      throw new IllegalArgumentException(
          "saturation pressure holds from -100 to 200 degC, asked for " + temperatureC);
    }
    return Math.exp(lnSaturationPressure(temperatureC));
  }

  /**
   * Temperature at which air of this state becomes saturated when cooled; the frost point where
   * that is below freezing.
   *
   * @param dryBulbC from -100 to 200 degC
   * @param relativeHumidityPct above 0, up to 100; below freezing relative to ice
   * @return degC, never above the dry bulb
   * @throws IllegalArgumentException outside these ranges, and for air so dry that its dew point
   *     lies below -100 degC
   */
  public static double dewPointC(double dryBulbC, double relativeHumidityPct) {
    if (!(relativeHumidityPct > 0 && relativeHumidityPct <= 100)) {
      throw new IllegalArgumentException(
          "relative humidity must be above 0 and at most 100 %, was " + relativeHumidityPct);
    }
    double vapourPressurePa = saturationPressurePa(dryBulbC) * relativeHumidityPct / 100;
    if (vapourPressurePa < saturationPressurePa(LOWEST_C)) {
      throw new IllegalArgumentException(
          "dew point below -100 degC at " + dryBulbC + " degC and " + relativeHumidityPct + " %");
    }
    if (relativeHumidityPct == 100) {
      return dryBulbC;
    }
    double ln = Math.log(vapourPressurePa);
    return new BracketingNthOrderBrentSolver(DEW_POINT_ACCURACY_K, SOLVER_ORDER)
        .solve(MAX_EVALUATIONS, t -> lnSaturationPressure(t) - ln, LOWEST_C, dryBulbC);
  }

  private static double lnSaturationPressure(double temperatureC) {
    double t = temperatureC + ZERO_C_IN_K;
    return temperatureC < TRIPLE_POINT_C ? lnOverIce(t) : lnOverWater(t);
  }

  /** Equation 5; kelvin in, natural logarithm of pascal out. */
  private static double lnOverIce(double t) {
    return -5.6745359e3 / t
        + 6.3925247
        + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - 9.484024e-13 * t)))
        + 4.1635019 * Math.log(t);
  }

  /** Equation 6; kelvin in, natural logarithm of pascal out. */
  private static double lnOverWater(double t) {
    return -5.8002206e3 / t
        + 1.3914993
        + t * (-4.8640239e-2 + t * (4.1764768e-5 - 1.4452093e-8 * t))
        + 6.5459673 * Math.log(t);
  }
}
