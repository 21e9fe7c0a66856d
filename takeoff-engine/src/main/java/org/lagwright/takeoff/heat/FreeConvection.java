package org.lagwright.takeoff.heat;

/**
 * Coefficients of free convection in still air after ISO 12241.
 *
 * <p>Both forms have a laminar and a turbulent branch, which do not meet: at the switch the
 * coefficient steps up with size and temperature difference.
 */
public final class FreeConvection {

  /** Below this product of length cubed and temperature difference the flow is laminar, m3 K. */
  private static final double LAMINAR_UP_TO_M3K = 10;

  private FreeConvection() {}

  /**
   * Level pipe: 1.25 (dT/D)^0.25 laminar, 1.21 dT^(1/3) turbulent.
   *
   * <p>Source: ISO 12241, horizontal pipe in still air. The text of the standard was not at hand;
   * with radiation these branches reproduce 210 published heat losses of bare pipes from 17.2 to
   * 273 mm and 50 to 700 degC (bare-pipe.csv of the tests).
   *
   * @param diameterM outer diameter, metres
   * @param differenceK surface against air, kelvin, either sign
   * @return W/(m2 K)
   */
  public static double levelCylinderWPerM2K(double diameterM, double differenceK) {
    double dT = Math.abs(differenceK);
    return isLaminar(diameterM, dT) ? laminarWPerM2K(1.25, diameterM, dT) : 1.21 * Math.cbrt(dT);
  }

  /**
   * Vertical wall or side of a duct: 1.32 (dT/H)^0.25 laminar, 1.74 dT^(1/3) turbulent.
   *
   * <p>Source: ISO 12241, vertical wall in still air; from memory, verify.
   *
   * @param heightM height, metres
   * @param differenceK surface against air, kelvin, either sign
   * @return W/(m2 K)
   */
  public static double verticalSurfaceWPerM2K(double heightM, double differenceK) {
    double dT = Math.abs(differenceK);
    return isLaminar(heightM, dT) ? laminarWPerM2K(1.32, heightM, dT) : 1.74 * Math.cbrt(dT);
  }

  /**
   * The laminar form factor (dT/L)^0.25.
   *
   * @param factor W/(m^1.75 K^1.25)
   * @param lengthM deciding length, metres
   * @param differenceK surface against air, kelvin, either sign
   * @return W/(m2 K)
   */
  public static double laminarWPerM2K(double factor, double lengthM, double differenceK) {
    return factor * Math.pow(Math.abs(differenceK) / lengthM, 0.25);
  }

  private static boolean isLaminar(double lengthM, double differenceK) {
    return lengthM * lengthM * lengthM * differenceK <= LAMINAR_UP_TO_M3K;
  }
}
