package org.lagwright.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures with their unit, as traces and findings show them. */
final class Show {

  private Show() {}

  static String metres(double lengthM) {
    return fixed(lengthM, 3) + " m";
  }

  static String millimetres(double lengthM) {
    return Double.isFinite(lengthM) ? fixed(lengthM * 1000, 1) + " mm" : "more than any thickness";
  }

  static String squareMetres(double areaM2) {
    return fixed(areaM2, 3) + " m2";
  }

  static String cubicMetres(double volumeM3) {
    return fixed(volumeM3, 5) + " m3";
  }

  static String conductivity(double wPerMK) {
    return fixed(wPerMK, 2) + " W/(m K)";
  }

  static String degrees(double angleDeg) {
    return fixed(angleDeg, 1) + " deg";
  }

  /** A temperature without needless decimals: {@code 6 degC}, {@code 120.4 degC}. */
  static String celsius(double temperatureC) {
    String text = fixed(temperatureC, 1);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " degC";
  }

  /** Air as {@code 26 degC, 80 % relative humidity}. */
  static String air(double temperatureC, double relativeHumidityPct) {
    return celsius(temperatureC) + ", " + fixed(relativeHumidityPct, 0) + " % relative humidity";
  }

  /** Rounded half up; several times faster than a format string, which traces need. */
  private static String fixed(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
