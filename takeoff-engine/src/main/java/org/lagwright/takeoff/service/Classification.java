package org.lagwright.takeoff.service;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The service of an element.
 *
 * @param serviceId id in the services pack, {@code unknown} if nothing tells
 * @param name in words
 * @param condensationC temperature of the medium for condensation, degC; the colder reading where
 *     votes contradict; null where the service has none
 * @param energyC temperature of the medium for the energy rule, degC; null where it has none
 * @param told what the model tells of the temperature, null where it is silent
 * @param votes every hint, winners and losers
 * @param contradiction id of the service that contradicts, null if none
 */
public record Classification(
    String serviceId,
    String name,
    @Nullable Double condensationC,
    @Nullable Double energyC,
    @Nullable ToldTemperature told,
    List<Vote> votes,
    @Nullable String contradiction) {

  /** Service id of elements nobody can tell. */
  public static final String UNKNOWN = "unknown";

  public Classification {
    votes = List.copyOf(votes);
  }

  /** False where nothing told. */
  public boolean isKnown() {
    return !serviceId.equals(UNKNOWN);
  }
}
