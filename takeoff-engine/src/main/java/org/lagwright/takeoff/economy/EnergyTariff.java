package org.lagwright.takeoff.economy;

/**
 * How heat or cold is made and what it costs.
 *
 * @param hoursPerYear hours of operation, above 0, up to 8784
 * @param pricePerKWh money for one kWh of the energy bought, 0 or more
 * @param efficiency heat or cold delivered per energy bought, above 0: a boiler 0.9, a chiller 4
 * @param co2KgPerKWh emitted for one kWh of the energy bought, 0 or more
 */
public record EnergyTariff(
    double hoursPerYear, double pricePerKWh, double efficiency, double co2KgPerKWh) {

  private static final double HOURS_OF_A_LEAP_YEAR = 8784;

  public EnergyTariff {
    require(
        hoursPerYear > 0 && hoursPerYear <= HOURS_OF_A_LEAP_YEAR,
        "hoursPerYear must be above 0 and at most 8784",
        hoursPerYear);
    require(finite(pricePerKWh), "pricePerKWh must be 0 or more", pricePerKWh);
    require(efficiency > 0 && finite(efficiency), "efficiency must be above 0", efficiency);
    require(finite(co2KgPerKWh), "co2KgPerKWh must be 0 or more", co2KgPerKWh);
  }

  /** Heat per year at a heat flow in either direction, kWh; source: q L tau. */
  public double heatKWh(double flowW) {
    return Math.abs(flowW) * hoursPerYear / 1000;
  }

  /** Energy bought per year for a heat flow, kWh. */
  public double energyKWh(double flowW) {
    return heatKWh(flowW) / efficiency;
  }

  /** Money per year for a heat flow. */
  public double costPerYear(double flowW) {
    return energyKWh(flowW) * pricePerKWh;
  }

  /** Carbon dioxide per year for a heat flow, kg. */
  public double co2KgPerYear(double flowW) {
    return energyKWh(flowW) * co2KgPerKWh;
  }

  private static boolean finite(double value) {
    return value >= 0 && Double.isFinite(value);
  }

  private static void require(boolean holds, String what, double value) {
    if (!holds) {
      throw new IllegalArgumentException(what + ", was " + value + ".");
    }
  }
}
