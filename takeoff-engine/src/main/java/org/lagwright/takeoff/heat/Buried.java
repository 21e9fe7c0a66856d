package org.lagwright.takeoff.heat;

/** Pipes in soil of even conductivity. Source: Cengel, Heat and Mass Transfer, table 3-7. */
public final class Buried {

  private Buried() {}

  /**
   * Resistance of the soil round one pipe: arcosh(2 z/D)/(2 pi lambda).
   *
   * @param depthM from the surface of the ground to the axis, metres, more than half the diameter
   * @param diameterM outer diameter of pipe and insulation, metres
   * @param soilWPerMK conductivity of the soil
   * @return metre kelvin per watt
   */
  public static double soilResistanceMKPerW(double depthM, double diameterM, double soilWPerMK) {
    double ratio = 2 * depthM / diameterM;
    if (!(ratio > 1)) {
      throw new IllegalArgumentException("a buried pipe must lie below the ground");
    }
    return arcosh(ratio) / (2 * Math.PI * soilWPerMK);
  }

  /**
   * Resistance of the soil between two parallel pipes far below the ground: arcosh((4 z^2 - D1^2 -
   * D2^2)/(2 D1 D2))/(2 pi lambda).
   *
   * @param distanceM from axis to axis, metres
   * @return metre kelvin per watt
   */
  public static double betweenPipesMKPerW(
      double distanceM, double diameter1M, double diameter2M, double soilWPerMK) {
    double ratio =
        (4 * distanceM * distanceM - diameter1M * diameter1M - diameter2M * diameter2M)
            / (2 * diameter1M * diameter2M);
    if (!(ratio > 1)) {
      throw new IllegalArgumentException("the pipes must not touch");
    }
    return arcosh(ratio) / (2 * Math.PI * soilWPerMK);
  }

  private static double arcosh(double x) {
    return Math.log(x + Math.sqrt(x * x - 1));
  }
}
