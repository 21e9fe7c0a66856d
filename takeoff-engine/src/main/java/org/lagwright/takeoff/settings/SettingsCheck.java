package org.lagwright.takeoff.settings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.clearance.ClearancePack;
import org.lagwright.takeoff.fitting.MakingPack;
import org.lagwright.takeoff.fitting.Method;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.labour.LabourFactor;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.measure.MeasurementPack;
import org.lagwright.takeoff.order.HangerPack;
import org.lagwright.takeoff.order.JacketRule;
import org.lagwright.takeoff.order.OrderPack;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.thickness.ThicknessChooser;
import org.lagwright.takeoff.thickness.ThicknessPacks;

/** Checks that the names in a settings file mean something, and says where one does not. */
final class SettingsCheck {

  private static final Set<String> MATERIAL_KINDS = Set.of("air", "cold", "hot");
  private static final double COLDEST_MEDIUM_C = -200;
  private static final double HOTTEST_MEDIUM_C = 700;
  private static final double THINNEST_MM = 1;
  private static final double THICKEST_MM = 500;
  private static final double LEAST_LIMIT = 0.01;
  private static final double LARGEST_LIMIT = 10_000;

  private final Path file;
  private final List<String> lines;
  private final Set<String> serviceIds = ServicePack.bundled().serviceIds();
  private final ThicknessChooser chooser;

  SettingsCheck(Path file, ThicknessPacks packs) {
    this.file = file;
    this.chooser = new ThicknessChooser(packs);
    try {
      this.lines = Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void check(SettingsFile given, Settings defaults) {
    Set<String> locations = checkAir(given, defaults);
    checkRules(given, locations);
    checkMaterials(given);
    checkSurfaces(given);
    checkModels(given);
    checkTemperatures(given);
    checkScope(given);
    checkThicknesses(given);
    if (given.demands() != null) {
      checkDemands(given.demands(), locations);
    }
    checkMaking(given);
    checkMeasurement(given);
    if (given.order() != null) {
      checkOrder(given.order(), locations);
    }
    checkClearance(given);
    checkLabour(given, defaults);
  }

  /** Checks the air, and tells which location classes there are then. */
  private Set<String> checkAir(SettingsFile given, Settings defaults) {
    Set<String> locations = new TreeSet<>(defaults.air().keySet());
    entries(given.air(), "air").forEach((key, entry) -> checkAir(key, entry, defaults));
    locations.addAll(entries(given.air(), "air").keySet());
    return locations;
  }

  private void checkRules(SettingsFile given, Set<String> locations) {
    for (Settings.PlaceRule rule : items(given.places(), "places")) {
      requireOneOf("places", rule.location(), locations, "location class");
    }
    for (Settings.ServiceRule rule : items(given.services(), "services")) {
      requireOneOf("services", rule.service(), serviceIds, "service");
    }
    for (String id : items(given.humiditySweep(), "humiditySweep")) {
      requireOneOf("humiditySweep", id, serviceIds, "service");
    }
  }

  private void checkMaterials(SettingsFile given) {
    entries(given.materials(), "materials")
        .forEach(
            (kind, material) -> {
              requireOneOf("materials", kind, MATERIAL_KINDS, "kind of material");
              requireInPacks("materials", kind, ThicknessChooser.NO_ENERGY_RULE, material);
            });
    if (given.energyRule() != null) {
      requireInPacks("energyRule", "energyRule", given.energyRule());
    }
  }

  /** What condensation and heat flow are worked out with. */
  private void checkSurfaces(SettingsFile given) {
    checkNumber("condensationMarginK", given.condensationMarginK(), 0, Settings.LARGEST_MARGIN_K);
    checkNumber("surfaceEmissivity", given.surfaceEmissivity(), Settings.LOWEST_EMISSIVITY, 1);
    if (given.surfaceCoefficients() != null) {
      List<String> known = Stream.of(StillAir.Source.values()).map(StillAir.Source::label).toList();
      requireOneOf(
          "surfaceCoefficients", given.surfaceCoefficients(), known, "set of surface coefficients");
    }
  }

  /** How models are read and their sizes written. */
  private void checkModels(SettingsFile given) {
    if (given.units() != null) {
      List<String> known = Stream.of(UnitSystem.values()).map(UnitSystem::label).toList();
      requireOneOf("units", given.units(), known, "system of units");
    }
    double largestGapMm = Settings.LARGEST_JOIN_TOLERANCE_M * 1000;
    checkNumber("joinToleranceMm", given.joinToleranceMm(), 0, largestGapMm);
  }

  private void checkClearance(SettingsFile given) {
    Set<String> pairs = ClearancePack.bundled().gaps().keySet();
    entries(given.clearance(), "clearance")
        .forEach(
            (pair, mm) -> {
              requireOneOf("clearance", pair, pairs, "pair of a clearance");
              requireBetween("clearance", pair, mm, 0, ClearancePack.WantedGap.MOST_MM);
            });
  }

  private void checkOrder(OrderSettings order, Set<String> locations) {
    OrderPack pack = OrderPack.bundled();
    Set<String> names = new TreeSet<>(pack.figures().keySet());
    entries(order.figures(), "figures")
        .forEach(
            (name, value) -> {
              requireOneOf("figures", name, names, "figure of the order");
              double least = pack.figure(name).leastValue();
              requireBetween("figures", name, value, least, LARGEST_LIMIT);
            });
    Set<String> jackets = new TreeSet<>(pack.jackets().stream().map(OrderPack.Jacket::id).toList());
    jackets.add(OrderPack.NO_JACKET);
    for (JacketRule row : items(order.jackets(), "jackets")) {
      requireOneOf("jackets", row.jacket(), jackets, "jacket");
      if (row.location() != null) {
        requireOneOf("jackets", row.location(), locations, "location class");
      }
      if (row.service() != null) {
        requireOneOf("jackets", row.service(), serviceIds, "service");
      }
    }
    if (order.hangers() != null) {
      requireOneOf("hangers", order.hangers(), HangerPack.bundled().choices(), "table of hangers");
    }
  }

  private void checkLabour(SettingsFile given, Settings defaults) {
    if (given.labour() == null) {
      return;
    }
    entries(given.labour().factors(), "factors")
        .forEach(
            (id, value) -> {
              requireOneOf("factors", id, defaults.labour().factorIds(), "factor of labour");
              requireBetween("factors", id, value, LabourFactor.LEAST, LabourFactor.MOST);
            });
  }

  private void checkMeasurement(SettingsFile given) {
    Set<String> methods =
        new TreeSet<>(
            MeasurementPack.bundled().methods().stream().map(MeasurementMethod::id).toList());
    for (String name : items(given.measurement(), "measurement")) {
      if (!SettingsReader.isFile(name)) {
        requireOneOf("measurement", name, methods, "method of measurement");
      }
    }
  }

  private void checkMaking(SettingsFile given) {
    Set<String> limits = new TreeSet<>(MakingPack.bundled().limits().keySet());
    entries(given.making(), "making")
        .forEach(
            (name, value) -> {
              requireOneOf("making", name, limits, "limit of making");
              requireBetween("making", name, value, LEAST_LIMIT, LARGEST_LIMIT);
            });
    Set<String> forms = new TreeSet<>(Stream.of(Form.values()).map(Form::label).toList());
    Set<String> methods = new TreeSet<>(Stream.of(Method.values()).map(Method::label).toList());
    entries(given.methods(), "methods")
        .forEach(
            (form, method) -> {
              requireOneOf("methods", form, forms, "form");
              requireOneOf("methods", method, methods, "method of making");
            });
  }

  private void checkNumber(String key, @Nullable Double value, double least, double most) {
    if (value != null) {
      requireBetween(key, key, value, least, most);
    }
  }

  private void checkAir(String location, SettingsFile.AirEntry entry, Settings defaults) {
    if (!defaults.air().containsKey(location) && entry.air() == null) {
      throw refused(
          "air",
          location,
          "a new location class needs temperatureC and relativeHumidityPct",
          "Add the missing one.");
    }
  }

  private void checkTemperatures(SettingsFile given) {
    entries(given.temperaturesC(), "temperaturesC")
        .forEach(
            (id, tC) -> {
              requireOneOf("temperaturesC", id, serviceIds, "service");
              requireBetween("temperaturesC", id, tC, COLDEST_MEDIUM_C, HOTTEST_MEDIUM_C);
            });
  }

  private void checkScope(SettingsFile given) {
    entries(given.scope(), "scope")
        .forEach(
            (id, decision) -> {
              if (id.equals(Classification.UNKNOWN)) {
                requireOneOf("scope", decision, Set.of("out"), "decision on unknown services");
              } else {
                requireOneOf("scope", id, serviceIds, "service");
                requireOneOf("scope", decision, Set.of("in", "out"), "decision");
              }
            });
  }

  private void checkThicknesses(SettingsFile given) {
    entries(given.thicknessesMm(), "thicknessesMm")
        .forEach(
            (id, mm) -> {
              requireOneOf("thicknessesMm", id, serviceIds, "service");
              requireBetween("thicknessesMm", id, mm, THINNEST_MM, THICKEST_MM);
            });
  }

  private void checkDemands(DemandSettings demands, Set<String> locations) {
    entries(demands.heatLossWPerM(), "heatLossWPerM")
        .forEach(
            (id, limit) -> {
              requireOneOf("heatLossWPerM", id, serviceIds, "service");
              requireBetween("heatLossWPerM", id, limit, 0.1, 100_000);
            });
    entries(demands.tariffs(), "tariffs")
        .keySet()
        .forEach(kind -> requireOneOf("tariffs", kind, MATERIAL_KINDS, "kind of service"));
    DemandSettings.FrostRule frost = demands.frost();
    if (frost != null) {
      items(frost.locations(), "locations")
          .forEach(location -> requireOneOf("frost", location, locations, "location class"));
      items(frost.services(), "services")
          .forEach(id -> requireOneOf("frost", id, serviceIds, "service"));
    }
    for (DemandSettings.SpecificationRow row : items(demands.specification(), "specification")) {
      if (row.service() != null) {
        requireOneOf("specification", row.service(), serviceIds, "service");
      }
      if (row.location() != null) {
        requireOneOf("specification", row.location(), locations, "location class");
      }
    }
  }

  private void requireInPacks(String section, String word, String energyRule, String... materials) {
    try {
      chooser.requireKnown(energyRule, List.of(materials));
    } catch (PackException e) {
      throw new PackException(place(section, word) + e.getMessage(), e);
    }
  }

  private void requireOneOf(String section, String word, Collection<String> known, String what) {
    if (!known.contains(word)) {
      throw refused(
          section,
          word,
          "'" + word + "' is no " + what,
          "Known: " + String.join(", ", new TreeSet<>(known)) + ".");
    }
  }

  private void requireBetween(String section, String id, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      String what = section.equals(id) ? id : section + " of " + id;
      String range = value + " is not between " + least + " and " + most;
      throw refused(section, id, what + " is impossible: " + range, "Correct the value.");
    }
  }

  /** The entries of a map, none of them without a value. */
  private <T> Map<String, T> entries(@Nullable Map<String, T> map, String section) {
    if (map == null) {
      return Map.of();
    }
    map.forEach(
        (key, value) -> {
          if (value == null) {
            throw refused(section, key, "'" + key + "' has no value", "Write one, or drop it.");
          }
        });
    return map;
  }

  private <T> List<T> items(@Nullable List<T> list, String section) {
    if (list == null) {
      return List.of();
    }
    for (T item : list) {
      if (item == null) {
        throw refused(section, section, "an entry is empty", "Fill it, or drop it.");
      }
    }
    return list;
  }

  private PackException refused(String section, String word, String what, String advice) {
    return new PackException(place(section, word) + what + ". " + advice);
  }

  /**
   * Line and column in which a word stands, looked for from its section on; YAML keeps neither for
   * values.
   */
  private String place(String section, String word) {
    Pattern heading = Pattern.compile("^\\s*[\"']?" + Pattern.quote(section) + "[\"']?\\s*:.*");
    Pattern wanted = Pattern.compile("(?<![\\w-])" + Pattern.quote(word) + "(?![\\w-])");
    int from = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (heading.matcher(lines.get(i)).matches()) {
        from = i;
        break;
      }
    }
    for (int i = from; i < lines.size(); i++) {
      Matcher found = wanted.matcher(lines.get(i));
      if (found.find()) {
        return file + ":" + (i + 1) + ":" + (found.start() + 1) + ": ";
      }
    }
    return file + ":" + (from + 1) + ":1: ";
  }
}
