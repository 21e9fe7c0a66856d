package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.readiness.Readiness;
import org.lagwright.takeoff.readiness.ReadinessRow;
import org.lagwright.takeoff.settings.UnitSystem;

/** What models miss, by requirement, exporting program and type of element, as CSV. */
public final class ReadinessTable {

  private ReadinessTable() {}

  /**
   * Writes it, the worst first; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Readiness readiness, OutputStream out) throws IOException {
    List<ReadinessRow> rows = new ArrayList<>(readiness.worst());
    readiness.rows().stream().filter(row -> row.missing() == 0).forEach(rows::add);
    CsvText.write(
        new Table<>("Readiness", 0, columns(), rows), new ShownUnits(UnitSystem.METRIC), out);
  }

  private static List<Column<ReadinessRow>> columns() {
    return List.of(
        Column.text("Requirement", 30, row -> row.requirement().title()),
        Column.text("Need", 10, row -> row.requirement().need().label()),
        Column.text("Exporting program", 30, row -> row.group().exporter()),
        Column.text("Class", 20, row -> row.group().ifcClass()),
        Column.text("Type", 30, row -> row.group().typeName()),
        Column.number("Elements", 9, Look.PLAIN, row -> (double) row.elements()),
        Column.number("As asked", 9, Look.PLAIN, row -> (double) row.asAsked()),
        Column.number("Worked out", 9, Look.PLAIN, row -> (double) row.workedOut()),
        Column.number("Missing", 9, Look.PLAIN, row -> (double) row.missing()),
        Column.text("Ask", 60, row -> row.requirement().ask()),
        Column.text("Such as", 60, row -> String.join(" ", row.examples())));
  }
}
