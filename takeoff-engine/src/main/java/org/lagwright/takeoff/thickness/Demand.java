package org.lagwright.takeoff.thickness;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * One demand on the insulation of an element.
 *
 * @param kind which demand
 * @param thicknessM thickness it needs, metres; 0 where it is met without insulation
 * @param rule id of the rule or method
 * @param source where the rule comes from
 * @param figures the figures it was computed from, with their units in the key, for the proof
 */
public record Demand(
    Kind kind, double thicknessM, String rule, String source, Map<String, String> figures) {

  public Demand {
    figures = Map.copyOf(new TreeMap<>(figures));
  }

  /** The kinds of demand. */
  public enum Kind {
    CONDENSATION,
    ENERGY_RULE,
    USER;

    /** The name used in files we write: {@code energy-rule}. */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
