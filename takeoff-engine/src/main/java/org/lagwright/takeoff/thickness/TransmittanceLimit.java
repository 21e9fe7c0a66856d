package org.lagwright.takeoff.thickness;

/**
 * Largest heat flow per metre and kelvin by the diameter of the pipe: perMetre d + base.
 *
 * @param perMetreWPerM2K factor of the outside diameter without insulation, W/(m2 K)
 * @param baseWPerMK constant part, W/(m K)
 */
public record TransmittanceLimit(double perMetreWPerM2K, double baseWPerMK) {

  public TransmittanceLimit {
    if (!(perMetreWPerM2K > 0 && baseWPerMK > 0)) {
      throw new IllegalArgumentException("perMetreWPerM2K and baseWPerMK must be above 0.");
    }
  }

  /** The limit for an outside diameter in metres, W/(m K). */
  public double ofPipeWPerMK(double outsideDiameterM) {
    return perMetreWPerM2K * outsideDiameterM + baseWPerMK;
  }
}
