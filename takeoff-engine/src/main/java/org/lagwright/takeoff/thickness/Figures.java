package org.lagwright.takeoff.thickness;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/** Collects the figures of a proof in order, each formatted with fixed decimals. */
final class Figures {

  private final Map<String, String> byName = new LinkedHashMap<>();

  /** Adds a number; the name ends in its unit. */
  Figures number(String name, double value, int decimals) {
    byName.put(name, Double.isInfinite(value) ? "out of reach" : fixed(value, decimals));
    return this;
  }

  /** Adds a length given in metres as millimetres. */
  Figures millimetres(String what, double lengthM) {
    return number(what + " mm", lengthM * 1000, 1);
  }

  /** Adds words. */
  Figures text(String name, String value) {
    byName.put(name, value);
    return this;
  }

  /** Adds all figures of another. */
  Figures add(Figures other) {
    byName.putAll(other.byName);
    return this;
  }

  Map<String, String> toMap() {
    return byName;
  }

  /** Rounded half up; several times faster than a format string. */
  private static String fixed(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
