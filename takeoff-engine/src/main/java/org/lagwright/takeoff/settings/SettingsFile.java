package org.lagwright.takeoff.settings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.price.PriceList;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.price.PriceTerms.Profit;

/**
 * A settings file as written: whatever is null is not in it.
 *
 * @param joinToleranceMm distance up to which ends touch, millimetres
 * @param thicknessesMm user's own minimum thickness by service id, millimetres
 * @param humiditySweep ids of the services that are shown by humidity
 * @param making changed limits of the rules of making by name
 * @param methods own method of making by form
 * @param measurement ids of methods of measurement, or files with such methods, beside this file
 * @param order choices for the order
 * @param clearance changed gaps between finished surfaces by pair, millimetres
 * @param units metric or us
 * @param packs files with materials or energy rules, beside this file
 * @param catalogue file with a table of stock, beside this file
 * @param labour own norms and factors of labour
 * @param price own price list and what comes on top
 */
record SettingsFile(
    @Nullable String project,
    @Nullable Map<String, AirEntry> air,
    @Nullable List<Settings.PlaceRule> places,
    @Nullable String energyRule,
    @Nullable Double condensationMarginK,
    @Nullable Double surfaceEmissivity,
    @Nullable String surfaceCoefficients,
    Settings.@Nullable Ground ground,
    @Nullable Double joinToleranceMm,
    @Nullable Map<String, String> materials,
    @Nullable List<Settings.ServiceRule> services,
    @Nullable Map<String, Double> temperaturesC,
    @Nullable Map<String, String> scope,
    @Nullable Map<String, Double> thicknessesMm,
    @Nullable DemandSettings demands,
    @Nullable List<String> humiditySweep,
    @Nullable Map<String, Double> making,
    @Nullable Map<String, String> methods,
    @Nullable List<String> measurement,
    @Nullable OrderSettings order,
    @Nullable Map<String, Double> clearance,
    @Nullable String units,
    @Nullable List<String> packs,
    @Nullable String catalogue,
    @Nullable LabourEntry labour,
    @Nullable PriceEntry price) {

  /**
   * Own norms and factors of labour.
   *
   * @param norms file with a table of norms, beside this file
   * @param factors changed factors by id
   */
  record LabourEntry(@Nullable String norms, @Nullable Map<String, Double> factors) {}

  /**
   * Own price list and what comes on top; percentages that are null are 0.
   *
   * @param list file with a table of prices, beside this file
   * @param markupPct profit as percent of the cost
   * @param marginPct profit as percent of the price
   */
  record PriceEntry(
      String list,
      String currency,
      Double labourRatePerH,
      @Nullable Double toolsPct,
      @Nullable Double overheadPct,
      @Nullable Double markupPct,
      @Nullable Double marginPct,
      @Nullable Double taxPct) {

    PriceEntry {
      if (markupPct != null && marginPct != null) {
        throw new IllegalArgumentException("markupPct and marginPct exclude each other.");
      }
      if (labourRatePerH != null) {
        terms(currency, labourRatePerH, toolsPct, overheadPct, markupPct, marginPct, taxPct, NONE);
      }
    }

    private static final PriceList NONE = new PriceList("none", List.of());

    /** The terms with the prices of that list. */
    PriceTerms terms(PriceList prices) {
      return terms(
          currency, labourRatePerH, toolsPct, overheadPct, markupPct, marginPct, taxPct, prices);
    }

    private static PriceTerms terms(
        String currency,
        double labourRatePerH,
        @Nullable Double toolsPct,
        @Nullable Double overheadPct,
        @Nullable Double markupPct,
        @Nullable Double marginPct,
        @Nullable Double taxPct,
        PriceList prices) {
      return new PriceTerms(
          currency,
          labourRatePerH,
          orZero(toolsPct),
          orZero(overheadPct),
          marginPct == null ? orZero(markupPct) : marginPct,
          marginPct == null ? Profit.MARKUP : Profit.MARGIN,
          orZero(taxPct),
          prices);
    }

    private static double orZero(@Nullable Double percent) {
      return percent == null ? 0 : percent;
    }
  }

  /** This file over another: maps entry by entry, air field by field, lists before its lists. */
  SettingsFile over(SettingsFile other) {
    return new SettingsFile(
        first(project, other.project),
        airOver(other.air),
        joined(places, other.places),
        first(energyRule, other.energyRule),
        first(condensationMarginK, other.condensationMarginK),
        first(surfaceEmissivity, other.surfaceEmissivity),
        first(surfaceCoefficients, other.surfaceCoefficients),
        first(ground, other.ground),
        first(joinToleranceMm, other.joinToleranceMm),
        joined(materials, other.materials),
        joined(services, other.services),
        joined(temperaturesC, other.temperaturesC),
        joined(scope, other.scope),
        joined(thicknessesMm, other.thicknessesMm),
        first(demands, other.demands),
        first(humiditySweep, other.humiditySweep),
        joined(making, other.making),
        joined(methods, other.methods),
        first(measurement, other.measurement),
        first(order, other.order),
        joined(clearance, other.clearance),
        first(units, other.units),
        joined(packs, other.packs),
        first(catalogue, other.catalogue),
        first(labour, other.labour),
        first(price, other.price));
  }

  private Map<String, AirEntry> airOver(@Nullable Map<String, AirEntry> before) {
    Map<String, AirEntry> all = joined(null, before);
    joined(air, null).forEach((location, entry) -> all.merge(location, entry, (b, e) -> e.over(b)));
    return all;
  }

  private static <T> @Nullable T first(@Nullable T given, @Nullable T otherwise) {
    return given == null ? otherwise : given;
  }

  private static <T> List<T> joined(@Nullable List<T> given, @Nullable List<T> otherwise) {
    List<T> all = new ArrayList<>(given == null ? List.of() : given);
    all.addAll(otherwise == null ? List.of() : otherwise);
    return all;
  }

  private static <T> Map<String, T> joined(
      @Nullable Map<String, T> given, @Nullable Map<String, T> otherwise) {
    Map<String, T> all = new LinkedHashMap<>(otherwise == null ? Map.of() : otherwise);
    all.putAll(given == null ? Map.of() : given);
    return all;
  }

  /** Air of one location class; what is null keeps its default. */
  record AirEntry(
      @Nullable Double temperatureC,
      @Nullable Double relativeHumidityPct,
      @Nullable Double meanTemperatureC,
      @Nullable Double windMPerS,
      @Nullable Double surfaceEmissivity,
      @Nullable String source) {

    AirEntry {
      Settings.Air.check(
          temperatureC, relativeHumidityPct, meanTemperatureC, windMPerS, surfaceEmissivity);
    }

    /** This entry over the one it changes. */
    AirEntry over(AirEntry before) {
      return new AirEntry(
          first(temperatureC, before.temperatureC),
          first(relativeHumidityPct, before.relativeHumidityPct),
          first(meanTemperatureC, before.meanTemperatureC),
          first(windMPerS, before.windMPerS),
          first(surfaceEmissivity, before.surfaceEmissivity),
          source);
    }

    /**
     * The air itself; null where temperature or humidity is open. The mean is that of the design
     * where it is not told, the air is still.
     */
    Settings.@Nullable Air air() {
      if (temperatureC == null || relativeHumidityPct == null) {
        return null;
      }
      return new Settings.Air(
          temperatureC,
          relativeHumidityPct,
          Objects.requireNonNullElse(meanTemperatureC, temperatureC),
          Objects.requireNonNullElse(windMPerS, 0.0),
          surfaceEmissivity,
          Objects.requireNonNullElse(source, "settings"));
    }
  }
}
