package org.lagwright.report.json;

import org.jspecify.annotations.Nullable;

/** JSON has neither NaN nor infinity; a number of a takeoff that is one of them is our own bug. */
final class Finite {

  private Finite() {}

  /** The number itself. */
  static double number(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("JSON cannot hold " + number);
    }
    return number;
  }

  /** The number itself, null where there is none. */
  static @Nullable Double orNull(@Nullable Double number) {
    return number == null ? null : number(number);
  }
}
