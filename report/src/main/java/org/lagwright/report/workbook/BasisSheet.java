package org.lagwright.report.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.settings.Settings;

/** The sheet {@code Basis}: what the figures rest on. */
final class BasisSheet {

  static final String NAME = "Basis";

  private static final int WIDE = 4;

  /** Method of this takeoff; no standard method of measurement is claimed. */
  private static final List<String> METHOD =
      List.of(
          "Straight and flexible pieces are measured in metres along the centre line, as modelled,"
              + " without allowance for waste or cutting.",
          "Fittings, valves and other bodies are counted in pieces; their length is in no line of"
              + " straight pieces.",
          "Outer area is that of the outer surface of the insulation, volume that of the insulation"
              + " itself. Where the geometry does not allow them they are 0.",
          "Each demand gives a thickness; the largest governs and is rounded up to a stock"
              + " build-up. All demands of an element are in takeoff.json and under 'explain'.",
          "Every element read is in exactly one place: on a line, left out with a finding, or out of"
              + " scope with a reason.");

  /** Cautions of the trade, in our words; common practice, no source. */
  private static final List<String> CAUTIONS =
      List.of(
          "These results are estimates. Local codes, the authority having jurisdiction and licensed"
              + " practice decide; have a qualified engineer check them before they are used.",
          "A thickness from an energy table does not by itself prevent condensation, nor does it"
              + " protect against touch. Check each; the largest governs.",
          "Freedom from condensation holds only for the air stated here. Fog, rain, wash-down and air"
              + " near saturation cannot be met by thickness.",
          "Cold work stands or falls with an unbroken vapour barrier at joints, supports, ends and"
              + " valve stems; fibrous material on cold work needs a vapour retarder.",
          "Check the temperature limits of insulation, adhesive and facing, with a reserve for"
              + " surges.",
          "Fire: check reaction to fire of the whole build-up, plenums and escape routes, and seal"
              + " penetrations as tested.",
          "Supports are thermal bridges and carry load; they are not in the result for a straight"
              + " pipe.",
          "Insulation only delays freezing. Where water can stand, trace heating or draining is"
              + " needed.",
          "Moisture under insulation corrodes steel. Choose coating and material for the temperature"
              + " range.",
          "Drinking water: hot lines stay hot and cold lines stay cold for hygiene, not for energy"
              + " alone.",
          "Test for leaks before insulating. Keep nameplates, sensors, drains and test points free;"
              + " do not cover what must stay bare, such as some safety valves and fire-rated joints.",
          "Outdoors, foam needs protection from sun and weather.",
          "Before removing old insulation have it examined for asbestos. Wear protection against"
              + " fibre dust; let hot surfaces cool; ventilate where solvents are used; hot work and"
              + " work at height need their permits.");

  private final Takeoff takeoff;
  private final String version;

  BasisSheet(Takeoff takeoff, String version) {
    this.takeoff = takeoff;
    this.version = version;
  }

  /** Writes the sheet. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(40, 22, 22, 90);
    writer.title("Basis of the figures");
    writer.note("Written by Lagwright " + version + ".");
    air(writer);
    choices(writer);
    mappings(writer);
    packs(writer);
    sentences(writer, "How it is measured", METHOD);
    sentences(writer, "Cautions", CAUTIONS);
  }

  private void air(SheetWriter writer) {
    writer.section("Air around the insulation", WIDE);
    writer.headings(1, 2, "Location", "Temperature degC", "Relative humidity %", "Source");
    new TreeMap<>(settings().air())
        .forEach(
            (location, air) ->
                writer.row(
                    Entry.text(location),
                    Entry.number(air.temperatureC(), Look.PLAIN),
                    Entry.number(air.relativeHumidityPct(), Look.PLAIN),
                    Entry.text(air.source(), Look.WRAPPED)));
  }

  private void choices(SheetWriter writer) {
    writer.section("Choices", WIDE);
    writer.row(Entry.text("Energy rule"), Entry.text(settings().energyRule()));
    writer.row(
        Entry.text("Margin above the dew point, K"),
        Entry.number(settings().condensationMarginK(), Look.PLAIN_LEFT));
    writer.row(
        Entry.text("Emissivity of the finished surface"),
        Entry.number(settings().surfaceEmissivity(), Look.PLAIN_LEFT));
    pairs(writer, "Material for ", settings().materials());
  }

  private void mappings(SheetWriter writer) {
    writer.section("Given by the user", WIDE);
    int before = writer.next();
    settings().services().forEach(s -> contains(writer, s.contains(), "service " + s.service()));
    settings().places().forEach(p -> contains(writer, p.contains(), "location " + p.location()));
    new TreeMap<>(settings().temperaturesC())
        .forEach((id, degC) -> pair(writer, "Temperature of " + id, number(degC) + " degC"));
    pairs(writer, "Scope of ", settings().scope());
    new TreeMap<>(settings().thicknessesM())
        .forEach((id, m) -> pair(writer, "Least thickness of " + id, Words.millimetres(m) + " mm"));
    if (writer.next() == before) {
      writer.row(Entry.text("Nothing; all choices are the program's own."));
    }
  }

  private void packs(SheetWriter writer) {
    writer.section("Data packs", WIDE);
    writer.headings(WIDE, WIDE, "Pack", "Version", "Status", "Source");
    for (PackInfo pack : takeoff.packs()) {
      writer.row(
          Entry.text(pack.id()),
          Entry.text(pack.version(), Look.WRAPPED),
          Entry.text(pack.status(), Look.WRAPPED),
          Entry.text(pack.source(), Look.WRAPPED));
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
    pair(writer, "Names with '" + text + "'", means);
  }

  private static void pairs(SheetWriter writer, String label, Map<String, String> values) {
    new TreeMap<>(values).forEach((key, value) -> pair(writer, label + key, value));
  }

  private static void pair(SheetWriter writer, String label, String value) {
    writer.row(Entry.text(label), Entry.text(value));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%s", value);
  }
}
