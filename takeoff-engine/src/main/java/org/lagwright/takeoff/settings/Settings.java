package org.lagwright.takeoff.settings;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.service.UserMapping;
import org.lagwright.takeoff.thickness.ThicknessPacks;

/**
 * Everything a user can choose, defaults filled in. Read with {@link SettingsReader}.
 *
 * @param project name shown on the outputs
 * @param air air by location class ({@code indoor}, {@code unheated}, {@code outdoor}, {@code
 *     plant-room})
 * @param places which storey, space or system name means which location class; first match wins
 * @param energyRule id of the energy rule pack, or {@code none}
 * @param condensationMarginK how far the surface must stay above the dew point, kelvin
 * @param surfaceEmissivity long-wave emissivity of the finished surface, 0 to 1
 * @param surfaceCoefficients whose coefficients hold in still air
 * @param ground the soil round buried pipes
 * @param joinToleranceM distance up to which ends touch where the model connects nothing, metres
 * @param materials material family by service kind ({@code cold}, {@code hot}, {@code air})
 * @param services user's mapping of names to services; first match wins over all votes
 * @param temperaturesC user's medium temperature by service id, degC
 * @param scope user's decision by service id: in, out
 * @param thicknessesM user's own minimum thickness by service id, metres
 * @param demands what the project asks for beside condensation and energy rule
 * @param humiditySweep ids of the services whose thickness is shown by humidity; empty for all cold
 *     ones
 * @param making limits of the rules of making that the user changed, by name
 * @param methods user's own method of making by form: {@code bend} to {@code notched-tube}
 * @param measurement methods of measurement, the first is the one that others are compared with
 * @param order what the user chose for the order
 * @param clearanceMm gaps wanted between finished surfaces that the user changed, by pair, mm
 * @param units units of workbook and tables
 * @param packs materials and energy rules to choose from
 * @param labour norms and factors of labour, with those of the user
 * @param price what a price is reckoned with; null where the user gives no prices
 */
public record Settings(
    String project,
    Map<String, Air> air,
    List<PlaceRule> places,
    String energyRule,
    double condensationMarginK,
    double surfaceEmissivity,
    StillAir.Source surfaceCoefficients,
    Ground ground,
    double joinToleranceM,
    Map<String, String> materials,
    List<ServiceRule> services,
    Map<String, Double> temperaturesC,
    Map<String, String> scope,
    Map<String, Double> thicknessesM,
    DemandSettings demands,
    List<String> humiditySweep,
    Map<String, Double> making,
    Map<String, String> methods,
    List<MeasurementMethod> measurement,
    OrderSettings order,
    Map<String, Double> clearanceMm,
    UnitSystem units,
    ThicknessPacks packs,
    LabourNorms labour,
    @Nullable PriceTerms price) {

  static final double LARGEST_MARGIN_K = 20;
  static final double LOWEST_EMISSIVITY = 0.01;

  /** Harder wind blows for hours a year, which no mean is. */
  static final double FASTEST_WIND_M_PER_S = 40;

  /** Wider gaps are gaps. */
  static final double LARGEST_JOIN_TOLERANCE_M = 0.05;

  public Settings {
    air = sorted(air);
    places = List.copyOf(places);
    materials = sorted(materials);
    services = List.copyOf(services);
    temperaturesC = sorted(temperaturesC);
    scope = sorted(scope);
    thicknessesM = sorted(thicknessesM);
    humiditySweep = List.copyOf(humiditySweep);
    making = sorted(making);
    methods = sorted(methods);
    measurement = List.copyOf(measurement);
    clearanceMm = sorted(clearanceMm);
    requireBetween("condensationMarginK", condensationMarginK, 0, LARGEST_MARGIN_K);
    requireBetween("surfaceEmissivity", surfaceEmissivity, LOWEST_EMISSIVITY, 1);
    requireBetween("joinToleranceM", joinToleranceM, 0, LARGEST_JOIN_TOLERANCE_M);
  }

  /** An order of its own, so that outputs do not change from run to run. */
  private static <T> Map<String, T> sorted(Map<String, T> map) {
    return Collections.unmodifiableMap(new TreeMap<>(map));
  }

  /**
   * Air around the insulation of one location class.
   *
   * @param temperatureC design dry-bulb temperature for condensation and touch, degC
   * @param relativeHumidityPct design relative humidity, 1 to 100
   * @param meanTemperatureC mean over the time the services run, for heat flow, saving and least
   *     cost, degC; for {@code buried} that of the ground
   * @param windMPerS speed of the air for the heat flow, metres per second, 0 is still;
   *     condensation and touch are always reckoned in still air
   * @param surfaceEmissivity of the finish here, 0 to 1; null for that of all locations
   * @param source where the figures come from
   */
  public record Air(
      double temperatureC,
      double relativeHumidityPct,
      double meanTemperatureC,
      double windMPerS,
      @Nullable Double surfaceEmissivity,
      String source) {

    public Air {
      check(temperatureC, relativeHumidityPct, meanTemperatureC, windMPerS, surfaceEmissivity);
    }

    /** Still air with the design temperature all the year round. */
    public static Air still(double temperatureC, double relativeHumidityPct, String source) {
      return new Air(temperatureC, relativeHumidityPct, temperatureC, 0, null, source);
    }

    static void check(
        @Nullable Double temperatureC,
        @Nullable Double relativeHumidityPct,
        @Nullable Double meanTemperatureC,
        @Nullable Double windMPerS,
        @Nullable Double surfaceEmissivity) {
      requireBetween("temperatureC", temperatureC, -60, 80);
      requireBetween("relativeHumidityPct", relativeHumidityPct, 1, 100);
      requireBetween("meanTemperatureC", meanTemperatureC, -60, 80);
      requireBetween("windMPerS", windMPerS, 0, FASTEST_WIND_M_PER_S);
      requireBetween("surfaceEmissivity", surfaceEmissivity, LOWEST_EMISSIVITY, 1);
    }
  }

  /**
   * Soil round buried pipes.
   *
   * @param depthM from the surface of the ground to the axis, metres
   * @param soilWPerMK conductivity of the soil
   * @param source where the figures come from, null where the user does not tell
   */
  public record Ground(double depthM, double soilWPerMK, @Nullable String source) {
    public Ground {
      requireBetween("depthM", depthM, 0.1, 20);
      requireBetween("soilWPerMK", soilWPerMK, 0.1, 5);
    }
  }

  /**
   * A name that means a location class.
   *
   * @param contains text looked for in storey, space and system names, any case
   * @param location location class
   */
  public record PlaceRule(String contains, String location) {
    public PlaceRule {
      requireText("contains", contains);
      requireText("location", location);
    }
  }

  /**
   * A name that means a service.
   *
   * @param contains text looked for, any case
   * @param in {@code system}, {@code name} or {@code type}; null for all of them
   * @param service service id
   */
  public record ServiceRule(String contains, @Nullable String in, String service) {
    public ServiceRule {
      requireText("contains", contains);
      requireText("service", service);
      if (in != null && !List.of("system", "name", "type").contains(in)) {
        throw new IllegalArgumentException("in '" + in + "' is none of system, name, type.");
      }
    }

    /** The same for the classification of services. */
    public UserMapping mapping() {
      return new UserMapping(contains, in, service);
    }
  }

  private static void requireBetween(
      String key, @Nullable Double value, double least, double most) {
    if (value != null && !(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          key + " must lie between " + least + " and " + most + ", was " + value + ".");
    }
  }

  private static void requireText(String key, @Nullable String text) {
    if (text == null || text.isBlank()) {
      throw new IllegalArgumentException(key + " is missing.");
    }
  }
}
