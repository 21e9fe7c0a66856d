package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakeoffLine;

/**
 * The sheet {@code Takeoff}: one row a line, totals above the headings so that sorting spares them.
 */
final class LinesSheet {

  static final String NAME = "Takeoff";
  static final String SERVICE = "Service";
  static final String KIND = "Kind";
  static final String FORM = "Form";
  static final String SIZE = "Size";
  static final String UNIT = "Unit";
  static final String QUANTITY = "Quantity";
  static final String AREA = "Outer area m2";
  static final String VOLUME = "Volume m3";
  static final String ELEMENTS = "Elements";
  static final String METRE = "m";
  static final String PIECES = "pcs";

  private static final int HEADING_ROW = 5;

  private final Table<TakeoffLine> table;

  LinesSheet(List<TakeoffLine> lines) {
    table = new Table<>(NAME, HEADING_ROW, columns(), lines);
  }

  private static List<Column<TakeoffLine>> columns() {
    return List.of(
        Column.text("Line", 10, TakeoffLine::id),
        Column.text(SERVICE, 40, TakeoffLine::serviceName),
        Column.text(KIND, 16, l -> Words.kind(l.kind())),
        Column.text(FORM, 16, l -> Words.form(l.form())),
        Column.text(SIZE, 34, TakeoffLine::size),
        Column.text("Location", 16, TakeoffLine::location),
        Column.text("Material", 50, Words::material),
        Column.text("Build-up", 30, TakeoffLine::layers),
        Column.number("Thickness mm", 11, Look.PLAIN, l -> Words.roundedMm(l.thicknessM())),
        Column.text(UNIT, 7, TakeoffLine::unit),
        Column.numbers(QUANTITY, 12, LinesSheet::quantity).in(l -> Unit.ofWord(l.unit())),
        Column.number(AREA, 11, Look.TWO_DECIMALS, TakeoffLine::outerAreaM2),
        Column.number(VOLUME, 10, Look.THREE_DECIMALS, TakeoffLine::volumeM3),
        Column.number(ELEMENTS, 11, Look.WHOLE, l -> (double) l.elements().size()),
        Column.text("Governing rule", 44, TakeoffLine::rule));
  }

  private static Entry quantity(TakeoffLine line) {
    Look look = line.unit().equals(PIECES) ? Look.ALIGNED_WHOLE : Look.TWO_DECIMALS;
    return Entry.number(line.quantity(), look);
  }

  /** The rows, for formulas on other sheets. */
  Table<TakeoffLine> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Takeoff");
    writer.above(table);
    totals(writer, "Measured in metres", METRE);
    totals(writer, "Counted in pieces", PIECES);
    shown(writer);
    table.writeHeadings(sheet, styles);
  }

  private void totals(SheetWriter writer, String label, String unit) {
    Entry[] row = labelled(label);
    int unitColumn = table.position(UNIT);
    row[unitColumn] = Entry.text(unit, Look.TOTAL_TEXT);
    String unitCell = cell(writer.next(), unitColumn);
    row[table.position(QUANTITY)] =
        writer.in(
            Unit.ofWord(unit),
            ofUnit(
                QUANTITY,
                unitCell,
                unit,
                TakeoffLine::quantity,
                unit.equals(PIECES) ? Look.TOTAL_ALIGNED_WHOLE : Look.TOTAL_TWO_DECIMALS));
    row[table.position(AREA)] =
        ofUnit(AREA, unitCell, unit, TakeoffLine::outerAreaM2, Look.TOTAL_TWO_DECIMALS);
    row[table.position(VOLUME)] =
        ofUnit(VOLUME, unitCell, unit, TakeoffLine::volumeM3, Look.TOTAL_THREE_DECIMALS);
    row[table.position(ELEMENTS)] =
        ofUnit(ELEMENTS, unitCell, unit, l -> l.elements().size(), Look.TOTAL_WHOLE);
    writer.row(row);
  }

  private Entry ofUnit(
      String heading,
      String unitCell,
      String unit,
      ToDoubleFunction<TakeoffLine> value,
      Look look) {
    double sum = table.rows().stream().filter(l -> l.unit().equals(unit)).mapToDouble(value).sum();
    String formula =
        "SUMIFS(" + table.range(heading) + "," + table.range(UNIT) + "," + unitCell + ")";
    return Entry.live(formula, sum, look);
  }

  /** Follows the filter: what the rows now shown add up to. */
  private void shown(SheetWriter writer) {
    Entry[] row = labelled("Rows shown (follows the filter)");
    row[table.position(AREA)] = subtotal(AREA, TakeoffLine::outerAreaM2, Look.TOTAL_TWO_DECIMALS);
    row[table.position(VOLUME)] =
        subtotal(VOLUME, TakeoffLine::volumeM3, Look.TOTAL_THREE_DECIMALS);
    row[table.position(ELEMENTS)] = subtotal(ELEMENTS, l -> l.elements().size(), Look.TOTAL_WHOLE);
    writer.row(row);
  }

  private Entry subtotal(String heading, ToDoubleFunction<TakeoffLine> value, Look look) {
    double sum = table.rows().stream().mapToDouble(value).sum();
    return Entry.live("SUBTOTAL(109," + table.range(heading) + ")", sum, look);
  }

  private Entry[] labelled(String label) {
    Entry[] row = new Entry[table.position(ELEMENTS) + 1];
    row[0] = Entry.text(label, Look.TOTAL_TEXT);
    for (int i = 1; i < row.length; i++) {
      row[i] = new Entry.Blank(Look.TOTAL_TEXT);
    }
    return row;
  }
}
