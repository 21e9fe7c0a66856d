package org.lagwright.takeoff;

import java.util.Locale;

/** Figures with their unit, as traces and findings show them. */
final class Show {

  private Show() {}

  static String metres(double lengthM) {
    return String.format(Locale.ROOT, "%.3f m", lengthM);
  }

  static String millimetres(double lengthM) {
    return Double.isFinite(lengthM)
        ? String.format(Locale.ROOT, "%.1f mm", lengthM * 1000)
        : "more than any thickness";
  }

  static String squareMetres(double areaM2) {
    return String.format(Locale.ROOT, "%.3f m2", areaM2);
  }

  static String cubicMetres(double volumeM3) {
    return String.format(Locale.ROOT, "%.5f m3", volumeM3);
  }

  static String degrees(double angleDeg) {
    return String.format(Locale.ROOT, "%.1f deg", angleDeg);
  }

  /** A temperature without needless decimals: {@code 6 degC}, {@code 120.4 degC}. */
  static String celsius(double temperatureC) {
    String text = String.format(Locale.ROOT, "%.1f", temperatureC);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " degC";
  }
}
