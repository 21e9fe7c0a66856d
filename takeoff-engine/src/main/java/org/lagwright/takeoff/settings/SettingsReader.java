package org.lagwright.takeoff.settings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackReader;
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
    return overlay(EMPTY, bundled(), ThicknessPacks.bundled());
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
    SettingsFile defaults = bundled();
    ThicknessPacks packs = packs(file, given, tables);
    new SettingsCheck(file, packs).check(given, overlay(EMPTY, defaults, packs));
    Settings settings = overlay(given, defaults, packs);
    String table = settings.demands().specificationFile();
    return table == null ? settings : withRows(settings, tables.apply(file.resolveSibling(table)));
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

  private static Settings withRows(Settings s, DataTable table) {
    DemandSettings demands =
        s.demands()
            .plusRows(
                SpecificationTable.rows(
                    table, ServicePack.bundled().serviceIds(), s.air().keySet()));
    return new Settings(
        s.project(),
        s.air(),
        s.places(),
        s.energyRule(),
        s.condensationMarginK(),
        s.surfaceEmissivity(),
        s.joinToleranceM(),
        s.materials(),
        s.services(),
        s.temperaturesC(),
        s.scope(),
        s.thicknessesM(),
        demands,
        s.making(),
        s.methods(),
        s.order(),
        s.packs());
  }

  private static final SettingsFile EMPTY =
      new SettingsFile(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, null, null);

  private static SettingsFile bundled() {
    return PackReader.readBundled(SettingsReader.class, DEFAULTS, SettingsFile.class);
  }

  private static Settings overlay(SettingsFile given, SettingsFile defaults, ThicknessPacks packs) {
    return new Settings(
        first(given.project(), defaults.project(), "project"),
        air(map(given.air()), air(map(defaults.air()), Map.of())),
        lists(given.places(), defaults.places()),
        first(given.energyRule(), defaults.energyRule(), "energyRule"),
        first(given.condensationMarginK(), defaults.condensationMarginK(), "condensationMarginK"),
        first(given.surfaceEmissivity(), defaults.surfaceEmissivity(), "surfaceEmissivity"),
        first(given.joinToleranceMm(), defaults.joinToleranceMm(), "joinToleranceMm") / 1000,
        maps(given.materials(), defaults.materials()),
        lists(given.services(), defaults.services()),
        maps(given.temperaturesC(), defaults.temperaturesC()),
        maps(given.scope(), defaults.scope()),
        metres(maps(given.thicknessesMm(), defaults.thicknessesMm())),
        given.demands() == null ? DemandSettings.NONE : given.demands(),
        maps(given.making(), defaults.making()),
        maps(given.methods(), defaults.methods()),
        given.order() == null ? OrderSettings.NONE : given.order(),
        packs);
  }

  private static Map<String, Settings.Air> air(
      Map<String, SettingsFile.AirEntry> given, Map<String, Settings.Air> before) {
    Map<String, Settings.Air> air = new LinkedHashMap<>(before);
    given.forEach(
        (location, entry) -> {
          Settings.Air over = entry.over(before.get(location));
          if (over == null) {
            throw new IllegalStateException("air '" + location + "' is incomplete");
          }
          air.put(location, over);
        });
    return air;
  }

  private static <T> T first(@Nullable T given, @Nullable T otherwise, String key) {
    if (given != null) {
      return given;
    }
    if (otherwise == null) {
      throw new IllegalStateException(DEFAULTS + " lacks " + key);
    }
    return otherwise;
  }

  private static <T> List<T> lists(@Nullable List<T> given, @Nullable List<T> otherwise) {
    List<T> joined = new ArrayList<>(given == null ? List.of() : given);
    joined.addAll(otherwise == null ? List.of() : otherwise);
    return joined;
  }

  private static <T> Map<String, T> maps(
      @Nullable Map<String, T> given, @Nullable Map<String, T> otherwise) {
    Map<String, T> joined = new LinkedHashMap<>(map(otherwise));
    joined.putAll(map(given));
    return joined;
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
