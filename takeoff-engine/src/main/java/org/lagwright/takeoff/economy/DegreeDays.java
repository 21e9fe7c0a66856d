package org.lagwright.takeoff.economy;

/** Heat of a heating season by degree days. */
public final class DegreeDays {

  private static final double HOURS_PER_DAY = 24;

  private DegreeDays() {}

  /**
   * Heat of a season: 24 h times degree days times design loss by design difference. Source: Murphy
   * and McKay, Energy Management, example 9.5.
   *
   * @param designLossW heat loss at the design difference, watt
   * @param designDifferenceK inside against outside, kelvin, above 0
   * @param degreeDaysKd degree days, kelvin days
   * @return kWh
   */
  public static double heatKWh(double designLossW, double designDifferenceK, double degreeDaysKd) {
    return HOURS_PER_DAY * degreeDaysKd * designLossW / designDifferenceK / 1000;
  }
}
