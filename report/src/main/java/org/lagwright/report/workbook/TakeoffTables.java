package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.takeoff.Takeoff;

/** The tables of the workbook as CSV for other programs; see {@link CsvText}. */
public final class TakeoffTables {

  private final Map<String, Table<?>> tables = new LinkedHashMap<>();

  private final ShownUnits units;

  /** Prepares the tables of one takeoff. */
  public TakeoffTables(CheckedTakeoff checked) {
    units = new ShownUnits(checked.takeoff().settings().units());
    Takeoff takeoff = checked.takeoff();
    Map<String, Table<?>> instead =
        Map.of(
            // results stand in CSV, so it does not matter where the norms are
            HoursSheet.NAME, new HoursSheet(takeoff.labour(), norm -> "A1").table(),
            MeasurementSheet.NAME, new MeasuredLines(takeoff).table());
    for (PlannedSheet planned : new TakeoffSheets(checked, "").list()) {
      Table<?> table = planned.table();
      if (table != null) {
        add(instead.getOrDefault(planned.name(), table));
      }
    }
  }

  private void add(Table<?> table) {
    tables.put(fileName(table.sheetName()), table);
  }

  private static String fileName(String sheet) {
    return "takeoff-" + sheet.toLowerCase(Locale.ROOT).replace(' ', '-') + ".csv";
  }

  /** Names of the files. */
  public List<String> names() {
    return List.copyOf(tables.keySet());
  }

  /**
   * Writes one; the stream stays open.
   *
   * @param name of {@link #names}
   * @throws IOException if the stream cannot be written
   */
  public void write(String name, OutputStream out) throws IOException {
    Table<?> table = tables.get(name);
    if (table == null) {
      throw new IllegalArgumentException("no table " + name);
    }
    CsvText.write(table, units, out);
  }
}
