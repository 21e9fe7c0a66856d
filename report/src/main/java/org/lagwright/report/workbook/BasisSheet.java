package org.lagwright.report.workbook;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.MaterialFacts;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.settings.DemandSettings;
import org.lagwright.takeoff.settings.Settings;

/** The sheet {@code Basis}: what the figures rest on. */
final class BasisSheet {

  static final String NAME = "Basis";

  private static final int WIDE = 4;

  private final Takeoff takeoff;
  private final String version;

  BasisSheet(Takeoff takeoff, String version) {
    this.takeoff = takeoff;
    this.version = version;
  }

  /** Writes the sheet. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(40, 24, 24, 84);
    writer.title("Basis of the figures");
    writer.note("Written by Lagwright " + version + ". Temperatures in degC, thicknesses in mm.");
    air(writer);
    media(writer);
    choices(writer);
    mappings(writer);
    packs(writer);
    materials(writer);
    sentences(writer, "How the thickness is decided", BasisText.THICKNESS);
    sentences(writer, "How quantities are measured", BasisText.QUANTITIES);
    sentences(writer, "What the account means", BasisText.ACCOUNT);
    sentences(writer, "Cautions", BasisText.CAUTIONS);
  }

  private void air(SheetWriter writer) {
    writer.section("Air around the insulation, by location class", WIDE);
    writer.headings(1, 2, "Location", "Temperature degC", "Relative humidity %", "Source");
    new TreeMap<>(settings().air())
        .forEach(
            (location, air) ->
                writer.row(
                    Entry.text(location),
                    Entry.number(air.temperatureC(), Look.PLAIN),
                    Entry.number(air.relativeHumidityPct(), Look.PLAIN),
                    Entry.text(air.source(), Look.WRAPPED)));
    writer.headings(1, 2, "Over the year", "Mean degC", "Wind m/s", "Emissivity of the finish");
    new TreeMap<>(settings().air())
        .forEach(
            (location, air) ->
                writer.row(
                    Entry.text(location),
                    Entry.number(air.meanTemperatureC(), Look.PLAIN),
                    Entry.number(air.windMPerS(), Look.PLAIN),
                    Entry.number(emissivity(air), Look.PLAIN_LEFT)));
    pair(writer, "Soil round buried pipes", Words.ground(settings().ground()));
    writer.merged(BasisText.LOCATIONS, WIDE);
  }

  private double emissivity(Settings.Air air) {
    return Objects.requireNonNullElse(air.surfaceEmissivity(), settings().surfaceEmissivity());
  }

  /** Temperatures of the services that occur; contradicted ones stand with their colder reading. */
  private void media(SheetWriter writer) {
    writer.section("Temperature of the media", WIDE);
    writer.headings(1, 2, "Service", "For condensation degC", "For energy degC", "Service id");
    takeoff.elements().stream()
        .map(TakenElement::service)
        .filter(service -> service != null && service.isKnown())
        .map(s -> new Medium(s.name(), s.condensationC(), s.energyC(), s.serviceId()))
        .distinct()
        .sorted(Comparator.comparing(Medium::id).thenComparing(Medium::toString))
        .forEach(
            m ->
                writer.row(
                    Entry.text(m.name()),
                    Entry.number(m.condensationC(), Look.PLAIN),
                    Entry.number(m.energyC(), Look.PLAIN),
                    Entry.text(m.id())));
    writer.merged(BasisText.MEDIA, WIDE);
  }

  private record Medium(
      String name, @Nullable Double condensationC, @Nullable Double energyC, String id) {}

  private void choices(SheetWriter writer) {
    writer.section("Choices", WIDE);
    pair(writer, "Energy rule for pipes", settings().energyRule());
    figure(writer, "Margin above the dew point, K", settings().condensationMarginK());
    pair(writer, "Coefficients of still air", settings().surfaceCoefficients().label());
    figure(writer, "Ends touch up to, mm", settings().joinToleranceM() * 1000);
    new TreeMap<>(settings().materials())
        .forEach((kind, id) -> pair(writer, "Material, services of kind " + kind, material(id)));
  }

  /** The id of a material, and its name where a line has it. */
  private String material(String id) {
    return takeoff.lines().stream()
        .filter(line -> line.materialId().equals(id))
        .findFirst()
        .map(line -> id + ": " + Words.material(line))
        .orElse(id);
  }

  private static void figure(SheetWriter writer, String label, double figure) {
    writer.row(Entry.text(label), Entry.number(figure, Look.PLAIN_LEFT));
  }

  private void mappings(SheetWriter writer) {
    writer.section("Given by the user", WIDE);
    int before = writer.next();
    settings().services().forEach(s -> contains(writer, s.contains(), "service " + s.service()));
    settings().places().forEach(p -> contains(writer, p.contains(), "location " + p.location()));
    new TreeMap<>(settings().temperaturesC())
        .forEach((id, degC) -> pair(writer, "Temperature of " + id, Words.plain(degC) + " degC"));
    pairs(writer, "Scope of ", settings().scope());
    new TreeMap<>(settings().thicknessesM())
        .forEach((id, m) -> pair(writer, "Least thickness of " + id, Words.millimetres(m) + " mm"));
    demands(writer);
    if (writer.next() == before) {
      writer.row(Entry.text("Nothing; all choices are the program's own."));
    }
  }

  private void demands(SheetWriter writer) {
    DemandSettings demands = settings().demands();
    pairs(writer, "Largest heat flow W/m of ", shown(demands.heatLosses()));
    if (demands.touchLimitC() != null) {
      figure(writer, "Hottest surface allowed, degC", demands.touchLimitC());
    }
    DemandSettings.FrostRule frost = demands.frost();
    if (frost != null) {
      pair(writer, "Frost protection", frost.toString());
    }
    if (demands.tariffs() != null) {
      demands.tariffs().forEach((kind, t) -> pair(writer, "Tariff of " + kind, t.toString()));
    }
    if (demands.insulation() != null) {
      pair(writer, "Price of insulation", demands.insulation().toString());
    }
    if (!demands.rows().isEmpty()) {
      figure(writer, "Rows of the project specification", demands.rows().size());
    }
  }

  private static Map<String, String> shown(Map<String, Double> figures) {
    Map<String, String> shown = new TreeMap<>();
    figures.forEach((key, figure) -> shown.put(key, Words.plain(figure)));
    return shown;
  }

  private void packs(SheetWriter writer) {
    writer.section("Data packs", WIDE);
    writer.headings(WIDE, WIDE, "Pack", "Version", "Status", "Source");
    for (PackInfo pack : takeoff.packs()) {
      writer.row(
          Entry.text(pack.id(), Look.WRAPPED),
          Entry.text(pack.version(), Look.WRAPPED),
          Entry.text(pack.status(), Look.WRAPPED),
          Entry.text(pack.source(), Look.WRAPPED));
    }
  }

  /** The materials that the settings choose, with the figures the thickness rests on. */
  private void materials(SheetWriter writer) {
    writer.section("Materials chosen", WIDE);
    writer.headings(WIDE, WIDE, "Material", "Property", "Status", "Figures and source");
    new TreeSet<>(settings().materials().values())
        .stream()
            .flatMap(id -> settings().packs().materials().findFamily(id).stream())
            .forEach(family -> facts(writer, family));
  }

  private static void facts(SheetWriter writer, MaterialFamily family) {
    for (MaterialFacts.Fact fact : MaterialFacts.of(family)) {
      writer.row(
          Entry.text(family.id(), Look.WRAPPED),
          Entry.text(fact.property(), Look.WRAPPED),
          Entry.text(fact.status(), Look.WRAPPED),
          Entry.text(fact.figures(), Look.WRAPPED));
    }
  }

  private static void sentences(SheetWriter writer, String title, List<String> sentences) {
    writer.section(title, WIDE);
    sentences.forEach(sentence -> writer.merged(sentence, WIDE));
  }

  private Settings settings() {
    return takeoff.settings();
  }

  private static void contains(SheetWriter writer, String text, String means) {
    pair(writer, "Names containing '" + text + "'", means);
  }

  private static void pairs(SheetWriter writer, String label, Map<String, String> values) {
    new TreeMap<>(values).forEach((key, value) -> pair(writer, label + key, value));
  }

  private static void pair(SheetWriter writer, String label, String value) {
    writer.row(Entry.text(label), Entry.text(value));
  }
}
