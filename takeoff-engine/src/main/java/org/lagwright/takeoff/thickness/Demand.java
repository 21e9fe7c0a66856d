package org.lagwright.takeoff.thickness;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * One demand on the insulation of an element.
 *
 * @param kind which demand
 * @param thicknessM thickness it needs, metres; 0 where it is met without insulation; positive
 *     infinity where no thickness meets it, as in saturated air
 * @param rule id of the rule or method
 * @param source where the rule comes from
 * @param figures the figures it was computed from, with their units in the key, for the proof; they
 *     keep their order
 */
public record Demand(
    Kind kind, double thicknessM, String rule, String source, Map<String, String> figures) {

  public Demand {
    figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
  }

  /** False where no thickness meets it. */
  public boolean isReachable() {
    return Double.isFinite(thicknessM);
  }

  /** The kinds of demand. */
  public enum Kind {
    CONDENSATION,
    ENERGY_RULE,
    HEAT_LOSS,
    TOUCH,
    FROST,
    ECONOMIC,
    SPECIFICATION,
    USER;

    /** The name used in files we write: {@code energy-rule}. */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
