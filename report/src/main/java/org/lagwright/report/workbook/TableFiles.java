package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.compare.Comparison;
import org.lagwright.takeoff.settings.UnitSystem;

/** The tables of a workbook as CSV for other programs; see {@link CsvText}. */
public final class TableFiles {

  private final Map<String, Table<?>> tables = new LinkedHashMap<>();

  private final ShownUnits units;

  private TableFiles(String book, UnitSystem system, List<Table<?>> list) {
    units = new ShownUnits(system);
    for (Table<?> table : list) {
      String sheet = table.sheetName().toLowerCase(Locale.ROOT).replace(' ', '-');
      tables.put(book + "-" + sheet + ".csv", table);
    }
  }

  /** The tables of one takeoff. */
  public static TableFiles of(CheckedTakeoff checked) {
    Takeoff takeoff = checked.takeoff();
    Map<String, Table<?>> instead =
        Map.of(
            // results stand in CSV, so it does not matter where the norms are
            HoursSheet.NAME, new HoursSheet(takeoff.labour(), norm -> "A1").table(),
            MeasurementSheet.NAME, new MeasuredLines(takeoff).table());
    List<Table<?>> list = new ArrayList<>();
    for (PlannedSheet planned : new TakeoffSheets(checked, "").list()) {
      Table<?> table = planned.table();
      if (table != null) {
        list.add(instead.getOrDefault(planned.name(), table));
      }
    }
    return new TableFiles("takeoff", takeoff.settings().units(), list);
  }

  /**
   * The tables of a comparison: its elements, and the amounts by service.
   *
   * @param system units that both were taken off with
   */
  public static TableFiles of(Comparison comparison, UnitSystem system) {
    ChangesSheet changes = new ChangesSheet(comparison, "", "");
    DifferenceSheet differences = new DifferenceSheet(comparison, "", "", changes);
    return new TableFiles("comparison", system, List.of(changes.table(), differences.services()));
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
