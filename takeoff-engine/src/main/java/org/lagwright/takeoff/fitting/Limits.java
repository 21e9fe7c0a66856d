package org.lagwright.takeoff.fitting;

import java.util.Map;

/** The limits of the pack as the user left or changed them. */
record Limits(Map<String, Double> values) {

  Limits {
    values = Map.copyOf(values);
  }

  /** A limit written in millimetres, in metres. */
  double metres(String name) {
    return number(name) / 1000;
  }

  /** A limit without unit, or in the unit of its name. */
  double number(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("limit " + name + " is missing from the pack of making");
    }
    return value;
  }
}
