package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementMethod;

/** The takeoff by each method of measurement, line by line, with the rule beside each number. */
final class MeasuredLines {

  private final Map<String, TakeoffLine> lines = new HashMap<>();
  private final Table<Measured> table;

  /** One row with its method. */
  private record Measured(MeasurementMethod method, Measurement.Row row) {}

  MeasuredLines(Takeoff takeoff) {
    takeoff.lines().forEach(line -> lines.put(line.id(), line));
    List<Measured> rows = new ArrayList<>();
    for (Measurement measurement : takeoff.measurements()) {
      measurement.rows().forEach(row -> rows.add(new Measured(measurement.method(), row)));
    }
    table = new Table<>(MeasurementSheet.NAME, 0, columns(), rows);
  }

  Table<?> table() {
    return table;
  }

  private List<Column<Measured>> columns() {
    return List.of(
        Column.text("Line", 10, entry -> entry.row().lineId()),
        Column.text("Method", 24, entry -> entry.method().id()),
        Column.text("Rule", 80, entry -> entry.row().rule().text()),
        Column.number(
                "Quantity", 15, Look.THREE_DECIMALS, (Measured entry) -> entry.row().quantity())
            .in(entry -> Unit.ofWord(entry.row().rule().of().unit())),
        Column.text("Unit", 15, entry -> entry.row().rule().of().unit()),
        Column.number("Elements", 15, Look.WHOLE, entry -> (double) entry.row().elements().size()),
        Column.text("Form", 18, entry -> Words.form(line(entry).form())),
        Column.text("Size", 30, this::size),
        Column.text("Service", 30, entry -> line(entry).serviceName()),
        Column.text("Source", 40, e -> e.method().sourceOf(e.row().rule())),
        Column.text("Status", 26, e -> e.method().statusOf(e.row().rule()).shown()));
  }

  private TakeoffLine line(Measured entry) {
    return Objects.requireNonNull(lines.get(entry.row().lineId()), entry.row().lineId());
  }

  private String size(Measured entry) {
    String counted = entry.row().size();
    return counted == null ? line(entry).size() : "counted as " + counted;
  }
}
