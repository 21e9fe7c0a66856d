package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;
import org.lagwright.takeoff.measure.Reconciliation;

/**
 * The sheet {@code Measurement}: the takeoff by each method that the settings name, with the rule
 * beside each number, totals by method, and why further methods differ from the first.
 */
final class MeasurementSheet {

  static final String NAME = "Measurement";

  private static final String METHOD = "Method";
  private static final String QUANTITY = "Quantity";
  private static final String UNIT = "Unit";
  private static final int TOTALS_COLUMNS = 7;

  /** Differences below this are rounding. */
  private static final double SMALL = 1e-6;

  private final List<Measurement> measurements;
  private final List<Reconciliation> reconciliations = new ArrayList<>();
  private final Map<String, TakeoffLine> lines = new HashMap<>();
  private final Table<Measured> table;

  /** One row with its method. */
  private record Measured(MeasurementMethod method, Measurement.Row row) {}

  MeasurementSheet(Takeoff takeoff) {
    this.measurements = takeoff.measurements();
    takeoff.lines().forEach(line -> lines.put(line.id(), line));
    List<Measured> rows = new ArrayList<>();
    for (Measurement measurement : measurements) {
      measurement.rows().forEach(row -> rows.add(new Measured(measurement.method(), row)));
    }
    for (int i = 1; i < measurements.size(); i++) {
      reconciliations.add(Reconciliation.of(measurements.get(0), measurements.get(i)));
    }
    int explained = reconciliations.stream().mapToInt(r -> 4 + differences(r).size()).sum();
    int headingRow = 4 + measurements.size() + explained;
    table = new Table<>(NAME, headingRow, columns(), rows);
  }

  private List<Column<Measured>> columns() {
    return List.of(
        Column.text("Line", 10, entry -> entry.row().lineId()),
        Column.text(METHOD, 24, entry -> entry.method().id()),
        Column.wrapped("Rule", 80, entry -> entry.row().rule().text()),
        Column.number(QUANTITY, 15, Look.THREE_DECIMALS, entry -> entry.row().quantity()),
        Column.numbers(UNIT, 15, entry -> Entry.text(entry.row().rule().of().unit(), Look.TEXT)),
        Column.number("Elements", 15, Look.WHOLE, entry -> (double) entry.row().elements().size()),
        Column.numbers("Form", 18, entry -> Entry.text(Words.form(line(entry).form()))),
        Column.text("Size", 30, this::size),
        Column.text("Service", 30, entry -> line(entry).serviceName()),
        Column.wrapped("Source", 40, e -> e.method().sourceOf(e.row().rule())),
        Column.wrapped("Status", 26, e -> e.method().statusOf(e.row().rule()).shown()));
  }

  /** What differs where both methods measure a quantity. */
  private static List<Reconciliation.Row> differences(Reconciliation reconciliation) {
    return reconciliation.rows().stream()
        .filter(row -> reconciliation.isMeasuredByBoth(row.quantity()))
        .filter(row -> Math.abs(row.difference()) > SMALL)
        .toList();
  }

  private TakeoffLine line(Measured entry) {
    TakeoffLine line = lines.get(entry.row().lineId());
    if (line == null) {
      throw new IllegalStateException("no line " + entry.row().lineId());
    }
    return line;
  }

  private String size(Measured entry) {
    @Nullable String counted = entry.row().size();
    return counted == null ? line(entry).size() : "counted as " + counted;
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(10, 24, 80, 15, 15, 15, 18);
    writer.title("Measurement");
    writer.note(
        "Every method measures the same elements; the first one is the one that others are compared"
            + " with. The rule stands beside each number. Quantities are net: no waste, no allowance.");
    writer.headings(3, 6, "Totals", "", "", "Length m", "Pieces", "Area m2", "Volume m3");
    measurements.forEach(measurement -> totals(writer, measurement));
    reconciliations.forEach(reconciliation -> explain(writer, reconciliation));
    table.writeHeadings(sheet, styles);
  }

  private void totals(SheetWriter writer, Measurement measurement) {
    Entry[] row = new Entry[TOTALS_COLUMNS];
    row[0] = Entry.text("", Look.TOTAL_TEXT);
    row[1] = Entry.text(measurement.method().id(), Look.TOTAL_TEXT);
    row[2] = Entry.text(measurement.method().name(), Look.TOTAL_TEXT);
    String methodCell = cell(writer.next(), 1);
    int column = 3;
    for (Quantity quantity :
        List.of(Quantity.LENGTH, Quantity.PIECES, Quantity.AREA, Quantity.VOLUME)) {
      String formula =
          "SUMIFS("
              + table.range(QUANTITY)
              + ","
              + table.range(METHOD)
              + ","
              + methodCell
              + ","
              + table.range(UNIT)
              + ",\""
              + quantity.unit()
              + "\")";
      row[column++] = Entry.live(formula, measurement.total(quantity), Look.TOTAL_THREE_DECIMALS);
    }
    writer.row(row);
  }

  private void explain(SheetWriter writer, Reconciliation reconciliation) {
    MeasurementMethod first = reconciliation.first().method();
    MeasurementMethod other = reconciliation.other().method();
    writer.section("Why " + other.id() + " differs from " + first.id(), TOTALS_COLUMNS);
    writer.headings(3, 5, "Unit", "Form", "Why", first.id(), other.id(), "Difference", "");
    for (Reconciliation.Row row : differences(reconciliation)) {
      String difference = cell(writer.next(), 4) + "-" + cell(writer.next(), 3);
      writer.row(
          Entry.text(row.quantity().unit()),
          Entry.text(row.form() == null ? "rounding" : Words.form(row.form())),
          Entry.text(row.why(), Look.WRAPPED),
          Entry.number(row.firstValue(), Look.THREE_DECIMALS),
          Entry.number(row.otherValue(), Look.THREE_DECIMALS),
          Entry.live(difference, row.difference(), Look.THREE_DECIMALS));
    }
    writer.note(note(reconciliation));
  }

  private static String note(Reconciliation reconciliation) {
    String apart =
        Stream.of(Quantity.values())
            .filter(quantity -> !reconciliation.isMeasuredByBoth(quantity))
            .map(Quantity::words)
            .collect(Collectors.joining(", "));
    String text = apart.isEmpty() ? "" : " Not measured by both: " + apart + ".";
    return note(reconciliation.other().method()) + text;
  }

  private static String note(MeasurementMethod method) {
    String note = method.note() == null ? "" : " " + method.note();
    return method.id() + ": " + method.source() + "; " + method.status().shown() + "." + note;
  }
}
