package org.lagwright.takeoff.reference;

import java.util.HashMap;
import java.util.Map;
import org.lagwright.takeoff.heat.AirProperties;

/** Inputs of a worked example: {@code D=0.1 ts=165}. */
record Inputs(Map<String, Double> values) {

  static Inputs of(String text) {
    Map<String, Double> values = new HashMap<>();
    for (String pair : text.split(" ", -1)) {
      String[] parts = pair.split("=", -1);
      values.put(parts[0], Double.parseDouble(parts[1]));
    }
    return new Inputs(values);
  }

  double get(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("no input " + name + " in " + values.keySet());
    }
    return value;
  }

  /** Air with the properties the example prints. */
  AirProperties air() {
    return new AirProperties(get("k"), get("nu"), get("Pr"), get("beta"));
  }

  /** Surface against air, kelvin. */
  double differenceK() {
    return get("ts") - get("ta");
  }
}
