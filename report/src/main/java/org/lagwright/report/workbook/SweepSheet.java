package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.report.Words;
import org.lagwright.takeoff.HumiditySweep;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.thickness.Proof;

/** The sheet {@code Humidity}: what a cold service would need in drier and damper air. */
final class SweepSheet {

  static final String NAME = "Humidity";

  private static final int HEADING_ROW = 3;

  private final Table<HumiditySweep> table;

  SweepSheet(Takeoff takeoff) {
    List<Column<HumiditySweep>> columns = new ArrayList<>();
    columns.add(Column.text("Service", 36, s -> s.group().service()));
    columns.add(Column.wrapped("Size", 34, s -> String.join("; ", s.group().sizes())));
    columns.add(Column.text("Location", 14, s -> s.group().decision().location()));
    columns.add(Column.number("Medium degC", 10, Look.PLAIN, s -> proof(s).mediumC()));
    columns.add(Column.number("Air degC", 9, Look.PLAIN, s -> proof(s).airC()));
    columns.add(
        Column.number("Humidity here %", 10, Look.PLAIN, s -> proof(s).relativeHumidityPct()));
    columns.add(
        Column.number(
            "Bought mm", 10, Look.PLAIN, s -> Words.roundedMm(s.group().decision().totalM())));
    for (int i = 0; i < HumiditySweep.HUMIDITIES_PCT.size(); i++) {
      int step = i;
      columns.add(
          Column.numbers(
              "mm at " + HumiditySweep.HUMIDITIES_PCT.get(i) + " %", 10, s -> needed(s, step)));
    }
    table = new Table<>(NAME, HEADING_ROW, columns, HumiditySweep.of(takeoff));
  }

  private static Proof proof(HumiditySweep sweep) {
    Proof proof = sweep.group().decision().proof();
    if (proof == null) {
      throw new IllegalStateException("a sweep without proof");
    }
    return proof;
  }

  private static Entry needed(HumiditySweep sweep, int step) {
    double neededM = sweep.steps().get(step).neededM();
    return Double.isFinite(neededM)
        ? Entry.number(Words.roundedMm(neededM), Look.PLAIN)
        : Entry.text("out of reach", Look.TEXT);
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Thickness against condensation by humidity of the air");
    writer.note(
        "Thickness needed in mm at the air temperature of the location, before rounding up to stock;"
            + " 0 where the surface stays dry bare. Near saturation no thickness helps.");
    table.writeHeadings(sheet, styles);
  }
}
