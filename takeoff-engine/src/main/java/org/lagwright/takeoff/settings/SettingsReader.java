package org.lagwright.takeoff.settings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.measure.MeasurementPack;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.price.PriceList;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.thickness.ThicknessPacks;

/**
 * Reads a settings file over the defaults, key by key: maps entry by entry, air field by field,
 * lists before the lists of the defaults.
 */
public final class SettingsReader {

  private static final String DEFAULTS = "defaults.yaml";

  private SettingsReader() {}

  /** The settings that hold where the user gives none. */
  public static Settings defaults() {
    SettingsFile defaults = bundled();
    return settings(
        defaults,
        DemandSettings.NONE,
        measurement(null, defaults),
        ThicknessPacks.bundled(),
        LabourNorms.bundled(),
        null);
  }

  /**
   * The user's settings over the defaults; tables beside them as CSV.
   *
   * @throws PackException if a key is unknown or a value impossible; the message names file and
   *     line
   */
  public static Settings read(Path file) {
    return read(file, CsvTables::readFile);
  }

  /**
   * The user's settings over the defaults.
   *
   * @param tables reads a table that the settings name, such as a workbook
   * @throws PackException if a key is unknown or a value impossible; the message names file and
   *     line
   */
  public static Settings read(Path file, Function<Path, DataTable> tables) {
    SettingsFile given = PackReader.readFile(file, SettingsFile.class);
    ThicknessPacks packs = packs(file, given, tables);
    LabourNorms norms = LabourNorms.bundled();
    new SettingsCheck(file, packs)
        .check(given, settings(bundled(), DemandSettings.NONE, List.of(), packs, norms, null));
    SettingsFile merged = given.over(bundled());
    LabourNorms labour = labour(file, merged, packs.materials().ids(), tables);
    PriceTerms price = price(file, merged, packs.materials().ids(), tables);
    return settings(
        merged, demands(file, merged, tables), measurement(file, merged), packs, labour, price);
  }

  private static ThicknessPacks packs(
      Path file, SettingsFile given, Function<Path, DataTable> tables) {
    ThicknessPacks packs = ThicknessPacks.bundled();
    for (String pack : given.packs() == null ? List.<String>of() : given.packs()) {
      packs = packs.with(file.resolveSibling(pack));
    }
    String catalogue = given.catalogue();
    return catalogue == null
        ? packs
        : packs.withCatalogue(tables.apply(file.resolveSibling(catalogue)));
  }

  /** With the rows of the table that the settings name, after their own. */
  private static DemandSettings demands(
      Path file, SettingsFile merged, Function<Path, DataTable> tables) {
    DemandSettings demands = merged.demands();
    if (demands == null) {
      return DemandSettings.NONE;
    }
    String table = demands.specificationFile();
    return table == null
        ? demands
        : demands.plusRows(
            SpecificationTable.rows(
                tables.apply(file.resolveSibling(table)),
                ServicePack.bundled().serviceIds(),
                map(merged.air()).keySet()));
  }

  private static LabourNorms labour(
      Path file, SettingsFile merged, Set<String> materials, Function<Path, DataTable> tables) {
    SettingsFile.LabourEntry entry = merged.labour();
    if (entry == null) {
      return LabourNorms.bundled();
    }
    LabourNorms norms = LabourNorms.bundled().with(map(entry.factors()));
    String table = entry.norms();
    return table == null ? norms : norms.with(tables.apply(file.resolveSibling(table)), materials);
  }

  private static @Nullable PriceTerms price(
      Path file, SettingsFile merged, Set<String> materials, Function<Path, DataTable> tables) {
    SettingsFile.PriceEntry entry = merged.price();
    if (entry == null) {
      return null;
    }
    DataTable table = tables.apply(file.resolveSibling(entry.list()));
    return entry.terms(PriceList.of(table, materials));
  }

  /** Methods by id, and all methods of the files named. */
  private static List<MeasurementMethod> measurement(@Nullable Path file, SettingsFile merged) {
    List<MeasurementMethod> methods = new ArrayList<>();
    for (String name : list(merged.measurement())) {
      if (isFile(name) && file != null) {
        methods.addAll(MeasurementPack.read(file.resolveSibling(name)).methods());
      } else {
        MeasurementPack.bundled().methods().stream()
            .filter(method -> method.id().equals(name))
            .forEach(methods::add);
      }
    }
    return methods;
  }

  /** True for the name of a file with methods of measurement, false for an id. */
  static boolean isFile(String name) {
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  private static SettingsFile bundled() {
    return PackReader.readBundled(SettingsReader.class, DEFAULTS, SettingsFile.class);
  }

  /** The settings of a file that lacks nothing. */
  private static Settings settings(
      SettingsFile whole,
      DemandSettings demands,
      List<MeasurementMethod> measurement,
      ThicknessPacks packs,
      LabourNorms labour,
      @Nullable PriceTerms price) {
    return new Settings(
        required(whole.project(), "project"),
        air(map(whole.air())),
        list(whole.places()),
        required(whole.energyRule(), "energyRule"),
        required(whole.condensationMarginK(), "condensationMarginK"),
        required(whole.surfaceEmissivity(), "surfaceEmissivity"),
        source(required(whole.surfaceCoefficients(), "surfaceCoefficients")),
        required(whole.ground(), "ground"),
        required(whole.joinToleranceMm(), "joinToleranceMm") / 1000,
        map(whole.materials()),
        list(whole.services()),
        map(whole.temperaturesC()),
        map(whole.scope()),
        metres(map(whole.thicknessesMm())),
        demands,
        list(whole.humiditySweep()),
        map(whole.making()),
        map(whole.methods()),
        measurement,
        whole.order() == null ? OrderSettings.NONE : whole.order(),
        map(whole.clearance()),
        units(required(whole.units(), "units")),
        packs,
        labour,
        price);
  }

  private static UnitSystem units(String label) {
    return Stream.of(UnitSystem.values())
        .filter(units -> units.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("unchecked units " + label));
  }

  private static StillAir.Source source(String label) {
    return Stream.of(StillAir.Source.values())
        .filter(source -> source.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("unchecked surfaceCoefficients " + label));
  }

  private static Map<String, Settings.Air> air(Map<String, SettingsFile.AirEntry> entries) {
    Map<String, Settings.Air> air = new LinkedHashMap<>();
    entries.forEach((location, entry) -> air.put(location, required(entry.air(), location)));
    return air;
  }

  private static <T> T required(@Nullable T value, String key) {
    if (value == null) {
      throw new IllegalStateException(DEFAULTS + " lacks " + key);
    }
    return value;
  }

  private static <T> List<T> list(@Nullable List<T> given) {
    return given == null ? List.of() : given;
  }

  private static <T> Map<String, T> map(@Nullable Map<String, T> given) {
    return given == null ? Map.of() : given;
  }

  private static Map<String, Double> metres(Map<String, Double> millimetres) {
    Map<String, Double> metres = new LinkedHashMap<>();
    millimetres.forEach((service, mm) -> metres.put(service, mm / 1000));
    return metres;
  }
}
