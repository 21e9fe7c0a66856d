package org.lagwright.takeoff.service;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row of the services pack.
 *
 * @param id stable id: {@code chilled-water-flow}
 * @param name in words
 * @param family family it belongs to: {@code chilled}
 * @param direction flow, return, suction, liquid or hot-gas; null where the family has only one
 *     service, or where the direction is not told
 * @param like id of the service whose temperatures stand in while the direction is not told
 * @param kind cold, hot, air or ambient
 * @param medium water, glycol, air, refrigerant, steam, gas, waste
 * @param condensationC medium temperature for the dew point, degC; null where it has none
 * @param energyC medium temperature for energy rules, degC; null where it has none
 * @param basis where the temperatures come from
 * @param status how far they were checked
 * @param scope in, out or ask
 * @param reason why, to stand after the service's name
 * @param material which material of the settings: cold, hot, air
 */
public record Service(
    String id,
    String name,
    String family,
    @Nullable String direction,
    @Nullable String like,
    String kind,
    String medium,
    @Nullable Double condensationC,
    @Nullable Double energyC,
    String basis,
    String status,
    String scope,
    String reason,
    String material) {

  public Service {
    require("kind", kind, List.of("cold", "hot", "air", "ambient"));
    require("scope", scope, List.of("in", "out", "ask"));
    require("material", material, List.of("cold", "hot", "air"));
    if (like != null && (condensationC != null || energyC != null)) {
      throw new IllegalArgumentException(id + " has both 'like' and temperatures of its own.");
    }
  }

  /** True where flow or return is not told and the more demanding one stands in. */
  public boolean directionAssumed() {
    return like != null;
  }

  private static void require(String key, String value, List<String> allowed) {
    if (!allowed.contains(value)) {
      throw new IllegalArgumentException(key + " '" + value + "' is none of " + allowed + ".");
    }
  }
}
