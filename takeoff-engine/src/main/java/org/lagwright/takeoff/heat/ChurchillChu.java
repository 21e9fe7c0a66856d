package org.lagwright.takeoff.heat;

/**
 * Nusselt numbers of free convection after Churchill and Chu, of level plates after McAdams and of
 * cross flow after Churchill and Bernstein: the set of the heat transfer textbooks, an alternative
 * to ISO 12241. Incropera et al., Fundamentals of Heat and Mass Transfer, chapters 7 and 9.
 */
public final class ChurchillChu {

  private ChurchillChu() {}

  /** Level cylinder, 1e-5 to 1e12 in the Rayleigh number on the diameter. */
  public static double nusseltLevelCylinder(double rayleigh, double prandtl) {
    double base =
        0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / prandtlTerm(0.559, prandtl, 8.0 / 27);
    return base * base;
  }

  /** Upright plate, laminar and turbulent, any Rayleigh number on the height. */
  public static double nusseltUprightPlate(double rayleigh, double prandtl) {
    double base =
        0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / prandtlTerm(0.492, prandtl, 8.0 / 27);
    return base * base;
  }

  /** Upright plate, laminar only: closer than the general form up to a Rayleigh number of 1e9. */
  public static double nusseltUprightPlateLaminar(double rayleigh, double prandtl) {
    return 0.68 + 0.670 * Math.pow(rayleigh, 0.25) / prandtlTerm(0.492, prandtl, 4.0 / 9);
  }

  /** Level plate, warm side up or cold side down; deciding length area by perimeter. */
  public static double nusseltLevelPlateRising(double rayleigh) {
    return rayleigh <= 1e7 ? nusseltLevelPlateRisingLaminar(rayleigh) : 0.15 * Math.cbrt(rayleigh);
  }

  /** The same for laminar flow, a Rayleigh number of 1e4 to 1e7. */
  public static double nusseltLevelPlateRisingLaminar(double rayleigh) {
    return 0.54 * Math.pow(rayleigh, 0.25);
  }

  /** Level plate, warm side down or cold side up; deciding length area by perimeter. */
  public static double nusseltLevelPlateTrapped(double rayleigh) {
    return 0.27 * Math.pow(rayleigh, 0.25);
  }

  /** Cylinder in cross flow after Churchill and Bernstein, Reynolds times Prandtl above 0.2. */
  public static double nusseltCrossFlow(double reynolds, double prandtl) {
    double bracket = Math.pow(1 + Math.pow(reynolds / 282000, 5.0 / 8), 4.0 / 5);
    double laminar =
        0.62
            * Math.sqrt(reynolds)
            * Math.cbrt(prandtl)
            / Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25);
    return 0.3 + laminar * bracket;
  }

  /** Coefficient at a level cylinder in air, W/(m2 K). */
  static double levelCylinderWPerM2K(double diameterM, double surfaceC, double airC) {
    AirProperties air = AirProperties.at((surfaceC + airC) / 2);
    double rayleigh = air.rayleigh(diameterM, surfaceC - airC);
    return air.coefficientWPerM2K(nusseltLevelCylinder(rayleigh, air.prandtl()), diameterM);
  }

  /** Coefficient at an upright plate in air, W/(m2 K). */
  static double uprightPlateWPerM2K(double heightM, double surfaceC, double airC) {
    AirProperties air = AirProperties.at((surfaceC + airC) / 2);
    double rayleigh = air.rayleigh(heightM, surfaceC - airC);
    return air.coefficientWPerM2K(nusseltUprightPlate(rayleigh, air.prandtl()), heightM);
  }

  private static double prandtlTerm(double constant, double prandtl, double exponent) {
    return Math.pow(1 + Math.pow(constant / prandtl, 9.0 / 16), exponent);
  }
}
