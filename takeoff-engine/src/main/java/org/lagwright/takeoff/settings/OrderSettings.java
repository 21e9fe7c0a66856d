package org.lagwright.takeoff.settings;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.order.HangerPack;
import org.lagwright.takeoff.order.JacketRule;

/**
 * What the user chose for the order, as written in the settings; null keeps the default.
 *
 * @param figures figures of the order pack that the user changed, by name
 * @param jackets where a jacket is asked for; the first row that fits an element decides
 * @param hangers id of the table of hanger spacing, or {@code none}
 */
public record OrderSettings(
    @Nullable Map<String, Double> figures,
    @Nullable List<JacketRule> jackets,
    @Nullable String hangers) {

  /** The defaults. */
  public static final OrderSettings NONE = new OrderSettings(null, null, null);

  public OrderSettings {
    figures = figures == null ? null : new TreeMap<>(figures);
  }

  /** Changed figures by name. */
  public Map<String, Double> changedFigures() {
    return figures == null ? Map.of() : figures;
  }

  /** Rows of jackets. */
  public List<JacketRule> jacketRules() {
    return jackets == null ? List.of() : jackets;
  }

  /** The table of hanger spacing. */
  public String hangerTable() {
    return hangers == null ? HangerPack.DEFAULT_TABLE : hangers;
  }
}
