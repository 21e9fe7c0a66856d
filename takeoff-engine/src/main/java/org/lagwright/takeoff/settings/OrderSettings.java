package org.lagwright.takeoff.settings;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the user chose for the order, as written in the settings; null keeps the default.
 *
 * @param figures figures of the order pack that the user changed, by name
 */
public record OrderSettings(@Nullable Map<String, Double> figures) {

  /** The defaults. */
  public static final OrderSettings NONE = new OrderSettings(null);

  public OrderSettings {
    figures = figures == null ? null : new TreeMap<>(figures);
  }

  /** Changed figures by name. */
  public Map<String, Double> changedFigures() {
    return figures == null ? Map.of() : figures;
  }
}
