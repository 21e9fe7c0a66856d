package org.lagwright.takeoff.thickness;

/** Conversion of figures printed in US units. */
final class UsUnits {

  /** One inch in metres, exact. */
  static final double INCH_M = 0.0254;

  /** One Btu in/(h ft2 degF) in W/(m K), international table Btu. */
  static final double BTU_IN_PER_H_FT2_F = 0.14422789;

  private UsUnits() {}

  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) * 5 / 9;
  }

  static double fahrenheit(double celsius) {
    return celsius * 9 / 5 + 32;
  }
}
