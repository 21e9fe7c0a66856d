package org.lagwright.takeoff.service;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A temperature of the medium that the model tells.
 *
 * @param celsius degC
 * @param from where it stands: {@code system name}, {@code property Vorlauftemperatur}, {@code
 *     properties of its ports}
 * @param text as it stands there, that of ports in degC
 * @param pressure pressure of saturated steam it follows from, as it stands there; null where the
 *     temperature itself stands there
 * @param gaugeAssumed true where that pressure says neither gauge nor absolute
 * @param otherwise where else the model says what, {@code system name 'Heizung 70/55'}; null where
 *     nothing contradicts
 * @param believed false where no medium of this service has it; then it is shown and not used
 */
public record ToldTemperature(
    double celsius,
    String from,
    String text,
    @Nullable String pressure,
    boolean gaugeAssumed,
    @Nullable String otherwise,
    boolean believed) {

  /** The first that the service can have; where it can have none, the first, to be shown. */
  static @Nullable ToldTemperature first(List<ToldTemperature> all) {
    for (ToldTemperature each : all) {
      if (each.believed()) {
        return each;
      }
    }
    return all.isEmpty() ? null : all.get(0);
  }

  /** The same where the model tells another temperature as well. */
  ToldTemperature beside(ToldTemperature other) {
    String byPressure = other.pressure == null ? "" : " by its " + other.pressure;
    String said = other.from + " '" + other.text + "'" + byPressure;
    return new ToldTemperature(celsius, from, text, pressure, gaugeAssumed, said, believed);
  }
}
