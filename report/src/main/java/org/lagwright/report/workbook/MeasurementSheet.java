package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;
import org.lagwright.takeoff.measure.MeasurementMethod.Rule;
import org.lagwright.takeoff.measure.Reconciliation;

/**
 * The sheet {@code Measurement}: totals by each method that the settings name, why further methods
 * differ from the first, and the sums by service with the rule beside each number. The same by line
 * is {@link MeasuredLines}.
 */
final class MeasurementSheet {

  static final String NAME = "Measurement";

  private static final String METHOD = "Method";
  private static final String QUANTITY = "Quantity";
  private static final String UNIT = "Unit";
  private static final int TOTALS_COLUMNS = 7;
  private static final int[] WIDTHS = {34, 16, 64, 13, 11, 11, 26};

  /** Differences below this are rounding. */
  private static final double SMALL = 1e-6;

  private final List<Measurement> measurements;
  private final List<Reconciliation> reconciliations = new ArrayList<>();
  private final Table<Summed> table;

  /** What one rule of a method measures of one service. */
  private record Summed(
      String service, MeasurementMethod method, Rule rule, double quantity, int elements) {

    Summed plus(Measurement.Row row) {
      double sum = quantity + row.quantity();
      return new Summed(service, method, rule, sum, elements + row.elements().size());
    }
  }

  MeasurementSheet(Takeoff takeoff) {
    this.measurements = takeoff.measurements();
    for (int i = 1; i < measurements.size(); i++) {
      reconciliations.add(Reconciliation.of(measurements.get(0), measurements.get(i)));
    }
    int explained = reconciliations.stream().mapToInt(r -> 4 + differences(r).size()).sum();
    int headingRow = 6 + 2 * measurements.size() + explained;
    table = new Table<>(NAME, headingRow, columns(), rows(takeoff));
  }

  private List<Summed> rows(Takeoff takeoff) {
    Map<String, String> services = new HashMap<>();
    takeoff.lines().forEach(line -> services.put(line.id(), line.serviceName()));
    List<Summed> rows = new ArrayList<>();
    for (Measurement measurement : measurements) {
      for (Rule rule : measurement.method().rules()) {
        Map<String, Summed> byService = new LinkedHashMap<>();
        for (Measurement.Row row : measurement.rows()) {
          if (row.rule().equals(rule)) {
            String service = Objects.requireNonNull(services.get(row.lineId()), row.lineId());
            byService.compute(
                service,
                (name, sum) ->
                    (sum == null ? new Summed(name, measurement.method(), rule, 0, 0) : sum)
                        .plus(row));
          }
        }
        rows.addAll(byService.values());
      }
    }
    return rows;
  }

  private static List<Column<Summed>> columns() {
    return List.of(
        Column.text("Service", 34, Summed::service),
        Column.text(METHOD, 16, row -> row.method().id()),
        Column.wrapped("Rule", 64, row -> row.rule().text()),
        Column.number(QUANTITY, 13, Look.THREE_DECIMALS, Summed::quantity)
            .in(row -> Unit.ofWord(row.rule().of().unit())),
        Column.text(UNIT, 11, row -> row.rule().of().unit()),
        Column.number("Elements", 11, Look.WHOLE, row -> (double) row.elements()),
        Column.wrapped("Status", 26, row -> row.method().statusOf(row.rule()).shown()));
  }

  /** What differs where both methods measure a quantity. */
  private static List<Reconciliation.Row> differences(Reconciliation reconciliation) {
    return reconciliation.rows().stream()
        .filter(row -> reconciliation.isMeasuredByBoth(row.quantity()))
        .filter(row -> Math.abs(row.difference()) > SMALL)
        .toList();
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(WIDTHS);
    writer.title("Measurement");
    writer.note(
        "Every method measures the same elements; the first one is the one that others are compared"
            + " with. Quantities are net: no waste, no allowance.");
    writer.note(
        "By service below, the rule beside each number; by line and size in takeoff.json and, with"
            + " --csv, in takeoff-measurement.csv.");
    writer.headings(3, 6, "Totals", "", "", "Length m", "Pieces", "Area m2", "Volume m3");
    for (Measurement measurement : measurements) {
      totals(writer, measurement);
      writer.note(note(measurement.method()));
    }
    reconciliations.forEach(reconciliation -> explain(writer, reconciliation));
    writer.section("By service", TOTALS_COLUMNS);
    table.writeHeadings(sheet, styles);
    writer.widths(WIDTHS); // the totals need more room than the units of the rows
    sheet.createFreezePane(0, 0); // the headings stand too far down to stay in sight
  }

  private void totals(SheetWriter writer, Measurement measurement) {
    Entry[] row = new Entry[TOTALS_COLUMNS];
    row[0] = Entry.text(measurement.method().id(), Look.TOTAL_TEXT);
    row[1] = Entry.text(measurement.method().name(), Look.TOTAL_TEXT);
    row[2] = Entry.text("", Look.TOTAL_TEXT);
    String methodCell = cell(writer.next(), 0);
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
      Unit unit = Unit.ofWord(row.quantity().unit());
      String difference = cell(writer.next(), 4) + "-" + cell(writer.next(), 3);
      writer.row(
          Entry.text(row.quantity().unit()),
          Entry.text(row.form() == null ? "rounding" : Words.form(row.form())),
          Entry.text(row.why(), Look.WRAPPED),
          writer.in(unit, Entry.number(withoutNoise(row.firstValue()), Look.THREE_DECIMALS)),
          writer.in(unit, Entry.number(withoutNoise(row.otherValue()), Look.THREE_DECIMALS)),
          writer.in(unit, Entry.live(difference, row.difference(), Look.THREE_DECIMALS)));
    }
    writer.note(apart(reconciliation));
  }

  /** Sums that differ from nothing by rounding of the arithmetic only are nothing. */
  private static double withoutNoise(double value) {
    return Math.abs(value) < SMALL ? 0 : value;
  }

  private static String apart(Reconciliation reconciliation) {
    String apart =
        Stream.of(Quantity.values())
            .filter(quantity -> !reconciliation.isMeasuredByBoth(quantity))
            .map(Quantity::words)
            .collect(Collectors.joining(", "));
    return apart.isEmpty() ? "" : "Not measured by both: " + apart + ".";
  }

  private static String note(MeasurementMethod method) {
    String note = method.note() == null ? "" : " " + method.note();
    return method.source() + "; " + method.status().shown() + "." + note;
  }
}
