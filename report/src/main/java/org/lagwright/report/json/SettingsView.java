package org.lagwright.report.json;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.settings.DemandSettings;
import org.lagwright.takeoff.settings.OrderSettings;
import org.lagwright.takeoff.settings.Settings;

/** The settings used. Maps are sorted: equal runs give equal files. */
record SettingsView(
    String project,
    Map<String, Settings.Air> air,
    List<Settings.PlaceRule> places,
    String energyRule,
    double condensationMarginK,
    double surfaceEmissivity,
    String surfaceCoefficients,
    Settings.Ground ground,
    double joinToleranceM,
    Map<String, String> materials,
    List<Settings.ServiceRule> services,
    Map<String, Double> temperaturesC,
    Map<String, String> scope,
    Map<String, Double> thicknessesM,
    DemandSettings demands,
    List<String> humiditySweep,
    Map<String, Double> making,
    Map<String, String> methods,
    List<String> measurement,
    OrderSettings order,
    Map<String, Double> clearanceMm,
    String units) {

  static SettingsView of(Settings settings) {
    return new SettingsView(
        settings.project(),
        new TreeMap<>(settings.air()),
        settings.places(),
        settings.energyRule(),
        settings.condensationMarginK(),
        settings.surfaceEmissivity(),
        settings.surfaceCoefficients().label(),
        settings.ground(),
        settings.joinToleranceM(),
        new TreeMap<>(settings.materials()),
        settings.services(),
        new TreeMap<>(settings.temperaturesC()),
        new TreeMap<>(settings.scope()),
        new TreeMap<>(settings.thicknessesM()),
        settings.demands(),
        settings.humiditySweep(),
        new TreeMap<>(settings.making()),
        new TreeMap<>(settings.methods()),
        settings.measurement().stream().map(MeasurementMethod::id).toList(),
        settings.order(),
        new TreeMap<>(settings.clearanceMm()),
        settings.units().label());
  }
}
