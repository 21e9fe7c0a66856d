package org.lagwright.takeoff.settings;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A settings file as written: whatever is null is not in it.
 *
 * @param joinToleranceMm distance up to which ends touch, millimetres
 * @param thicknessesMm user's own minimum thickness by service id, millimetres
 * @param making changed limits of the rules of making by name
 * @param methods own method of making by form
 * @param order choices for the order
 * @param packs files with materials or energy rules, beside this file
 * @param catalogue file with a table of stock, beside this file
 */
record SettingsFile(
    @Nullable String project,
    @Nullable Map<String, AirEntry> air,
    @Nullable List<Settings.PlaceRule> places,
    @Nullable String energyRule,
    @Nullable Double condensationMarginK,
    @Nullable Double surfaceEmissivity,
    @Nullable Double joinToleranceMm,
    @Nullable Map<String, String> materials,
    @Nullable List<Settings.ServiceRule> services,
    @Nullable Map<String, Double> temperaturesC,
    @Nullable Map<String, String> scope,
    @Nullable Map<String, Double> thicknessesMm,
    @Nullable DemandSettings demands,
    @Nullable Map<String, Double> making,
    @Nullable Map<String, String> methods,
    @Nullable OrderSettings order,
    @Nullable List<String> packs,
    @Nullable String catalogue) {

  /** Air of one location class; what is null keeps its default. */
  record AirEntry(
      @Nullable Double temperatureC,
      @Nullable Double relativeHumidityPct,
      @Nullable String source) {

    AirEntry {
      if (temperatureC != null) {
        Settings.Air.requireTemperature(temperatureC);
      }
      if (relativeHumidityPct != null) {
        Settings.Air.requireHumidity(relativeHumidityPct);
      }
    }

    /** This entry over the air it changes; null if that leaves something open. */
    Settings.@Nullable Air over(Settings.@Nullable Air before) {
      Double tC = temperatureC;
      Double humidityPct = relativeHumidityPct;
      if (before != null) {
        tC = Objects.requireNonNullElse(tC, before.temperatureC());
        humidityPct = Objects.requireNonNullElse(humidityPct, before.relativeHumidityPct());
      }
      if (tC == null || humidityPct == null) {
        return null;
      }
      return new Settings.Air(tC, humidityPct, Objects.requireNonNullElse(source, "settings"));
    }
  }
}
