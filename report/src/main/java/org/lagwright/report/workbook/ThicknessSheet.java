package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.ThicknessGroup;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Proof;

/** The sheet {@code Thickness}: for each group why it is so thick, and what the surface does. */
final class ThicknessSheet {

  static final String NAME = "Thickness";

  private static final int HEADING_ROW = 3;

  private final Table<ThicknessGroup> table;

  ThicknessSheet(Takeoff takeoff) {
    String money = currency(takeoff);
    List<Column<ThicknessGroup>> columns = new ArrayList<>(what());
    for (Demand.Kind kind : Demand.Kind.values()) {
      columns.add(Column.numbers(heading(kind) + " mm", 13, g -> needed(g, kind)));
    }
    columns.addAll(result());
    columns.addAll(saving(money));
    table = new Table<>(NAME, HEADING_ROW, columns, ThicknessGroup.of(takeoff));
  }

  private static String currency(Takeoff takeoff) {
    String currency = takeoff.settings().demands().currency();
    return currency == null ? "money" : currency;
  }

  private static List<Column<ThicknessGroup>> what() {
    return List.of(
        Column.text("Service", 36, ThicknessGroup::service),
        Column.wrapped("Size", 34, g -> String.join("; ", g.sizes())),
        Column.wrapped("Lines", 20, g -> String.join(" ", g.lines())),
        Column.number("Elements", 10, Look.WHOLE, g -> (double) g.elements()),
        Column.number("Length m", 10, Look.TWO_DECIMALS, ThicknessGroup::lengthM),
        Column.wrapped("What says so (elements)", 50, g -> String.join("; ", g.votesInWords())),
        Column.text("Location", 14, g -> g.decision().location()),
        Column.number("Medium degC", 10, Look.PLAIN, g -> figure(g, Proof::mediumC)),
        Column.number("Air degC", 9, Look.PLAIN, g -> figure(g, Proof::airC)),
        Column.number("Humidity %", 10, Look.PLAIN, g -> find(g, Proof::relativeHumidityPct)),
        Column.number("Dew point degC", 10, Look.TWO_DECIMALS, g -> find(g, Proof::dewPointC)));
  }

  private static List<Column<ThicknessGroup>> result() {
    return List.of(
        Column.text("Governs", 24, g -> governing(g, d -> Words.demand(d.kind()))),
        Column.text("Rule", 34, g -> governing(g, Demand::rule)),
        Column.wrapped("Source of the rule", 50, g -> governing(g, Demand::source)),
        Column.text("Status", 30, g -> governing(g, d -> d.figures().get("row status"))),
        Column.text("Build-up", 26, g -> g.decision().layersInWords()),
        Column.number("Bought mm", 10, Look.PLAIN, g -> Words.roundedMm(g.decision().totalM())),
        Column.number("Surface degC", 10, Look.TWO_DECIMALS, g -> figure(g, Proof::surfaceC)),
        Column.number(
            "Surface above dew point K",
            12,
            Look.TWO_DECIMALS,
            g -> find(g, Proof::aboveDewPointK)),
        Column.number("Medium of flow degC", 10, Look.PLAIN, g -> figure(g, Proof::heatMediumC)),
        Column.number("Mean degC", 9, Look.PLAIN, g -> figure(g, ThicknessSheet::meanC)),
        Column.number("Wind m/s", 9, Look.PLAIN, g -> figure(g, ThicknessSheet::windMPerS)),
        Column.number("Bare W/m", 10, Look.TWO_DECIMALS, g -> figure(g, Proof::bareWPerM)),
        Column.number(
            "Insulated W/m", 10, Look.TWO_DECIMALS, g -> figure(g, Proof::insulatedWPerM)));
  }

  private static List<Column<ThicknessGroup>> saving(String money) {
    return List.of(
        Column.number(
            "Saved heat kWh/year", 12, Look.TWO_DECIMALS, g -> saved(g, Proof.Saving::heatKWh)),
        Column.number(
            "Saved energy kWh/year", 12, Look.TWO_DECIMALS, g -> saved(g, Proof.Saving::energyKWh)),
        Column.number(
            "Saved " + money + "/year", 12, Look.TWO_DECIMALS, g -> saved(g, Proof.Saving::cost)),
        Column.number(
            "Saved CO2 kg/year", 12, Look.TWO_DECIMALS, g -> saved(g, Proof.Saving::co2Kg)));
  }

  private static String heading(Demand.Kind kind) {
    String words = Words.demand(kind);
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Empty where the demand does not apply; words where no thickness meets it. */
  private static Entry needed(ThicknessGroup group, Demand.Kind kind) {
    return group.decision().demands().stream()
        .filter(d -> d.kind() == kind)
        .findFirst()
        .map(d -> Entry.number(Words.roundedMm(d.thicknessM()), Look.PLAIN))
        .orElseGet(() -> Entry.number(null, Look.PLAIN));
  }

  private static @Nullable String governing(
      ThicknessGroup group, Function<Demand, @Nullable String> text) {
    Demand governing = group.decision().governing();
    return governing == null ? null : text.apply(governing);
  }

  private static @Nullable Double figure(ThicknessGroup group, ToDoubleFunction<Proof> figure) {
    Proof proof = group.decision().proof();
    return proof == null ? null : figure.applyAsDouble(proof);
  }

  private static @Nullable Double find(
      ThicknessGroup group, Function<Proof, @Nullable Double> figure) {
    Proof proof = group.decision().proof();
    return proof == null ? null : figure.apply(proof);
  }

  private static double meanC(Proof proof) {
    return proof.conditions().exposure().meanC();
  }

  private static double windMPerS(Proof proof) {
    return proof.conditions().exposure().windMPerS();
  }

  private static @Nullable Double saved(
      ThicknessGroup group, ToDoubleFunction<Proof.Saving> figure) {
    Proof.Saving saving = group.savingPerYear();
    return saving == null ? null : figure.applyAsDouble(saving);
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Thickness, demand by demand");
    writer.note(
        "The largest demand governs; the next stock build-up is bought. Surface: in still design air."
            + " Heat flow: at mean temperature and wind. Saving: straight pieces"
            + " against bare ones, where 'demands: tariffs' in the settings tells what energy costs.");
    table.writeHeadings(sheet, styles);
  }
}
