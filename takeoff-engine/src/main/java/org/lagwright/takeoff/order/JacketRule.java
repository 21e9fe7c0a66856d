package org.lagwright.takeoff.order;

import org.jspecify.annotations.Nullable;

/**
 * Where a jacket is asked for; the first rule that fits an element decides.
 *
 * @param jacket id of a jacket of the pack, or {@code none}
 * @param location location class, null for all
 * @param service service id, null for all
 */
public record JacketRule(String jacket, @Nullable String location, @Nullable String service) {

  boolean fits(LaggedElement element) {
    return (location == null || location.equals(element.location()))
        && (service == null || service.equals(element.serviceId()));
  }
}
