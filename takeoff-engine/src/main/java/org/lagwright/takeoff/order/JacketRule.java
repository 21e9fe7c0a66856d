package org.lagwright.takeoff.order;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a jacket is asked for; the first rule that fits an element decides.
 *
 * @param jacket id of a jacket of the pack, or {@code none}
 * @param location location class, null for all
 * @param service service id, null for all
 */
public record JacketRule(String jacket, @Nullable String location, @Nullable String service) {

  private boolean fits(String itsLocation, String itsService) {
    return (location == null || location.equals(itsLocation))
        && (service == null || service.equals(itsService));
  }

  /** The id of the jacket that goes onto a service at a location, empty where none does. */
  public static Optional<String> find(List<JacketRule> rules, String location, String service) {
    return rules.stream()
        .filter(rule -> rule.fits(location, service))
        .findFirst()
        .map(JacketRule::jacket)
        .filter(jacket -> !jacket.equals(OrderPack.NO_JACKET));
  }
}
