package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.CutRow;
import org.lagwright.report.CutRow.Whole;
import org.lagwright.takeoff.order.OrderList;

/** The sheet {@code Cutting plan}: which pieces come out of which tube, section, sheet or roll. */
final class CuttingSheet {

  static final String NAME = "Cutting plan";

  private static final int HEADING_ROW = 3;

  private final Table<CutRow> table;

  CuttingSheet(OrderList order) {
    List<Column<CutRow>> columns = new ArrayList<>();
    columns.add(Column.text("Item", 8, CutRow::itemId));
    columns.add(Column.text("Piece", 12, CutRow::numbers));
    columns.add(Column.text("Each", 18, row -> whole(row, Whole::pack)));
    columns.add(Column.text("What", 34, row -> whole(row, CuttingSheet::withoutMaterial)));
    columns.add(Column.number("Used %", 8, Look.PLAIN, row -> whole(row, CuttingSheet::percent)));
    columns.add(Column.number("Rest m", 9, Look.THREE_DECIMALS, row -> whole(row, Whole::restM)));
    columns.add(Column.number("Cuts", 7, Look.WHOLE, row -> (double) row.times()));
    columns.add(Column.number("Width m", 10, Look.THREE_DECIMALS, row -> row.placed().widthM()));
    columns.add(Column.number("Length m", 10, Look.THREE_DECIMALS, row -> row.placed().lengthM()));
    columns.add(Column.text("For", 36, row -> row.placed().purpose()));
    columns.add(Column.number("Across m", 10, Look.THREE_DECIMALS, row -> row.placed().acrossM()));
    columns.add(Column.number("Along m", 10, Look.THREE_DECIMALS, row -> row.placed().alongM()));
    table = new Table<>(NAME, HEADING_ROW, columns, CutRow.of(order));
  }

  private static <T> @Nullable T whole(CutRow row, Function<Whole, T> value) {
    Whole whole = row.first();
    return whole == null ? null : value.apply(whole);
  }

  /** Item and material stand on the sheet Order. */
  private static String withoutMaterial(Whole whole) {
    return whole.description().replaceFirst(";.*", "");
  }

  private static double percent(Whole whole) {
    return Math.round(whole.usedShare() * 1000) / 10.0;
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Cutting plan");
    if (table.rows().isEmpty()) {
      writer.note("Nothing in the order is cut by a plan.");
      return;
    }
    writer.note(
        "The first row of each piece of stock tells what it is, its material stands on the sheet Order; the"
            + " rows below, what else is cut from it."
            + " Pieces of a bend in one length are turned half round each, so that neighbours share a"
            + " cut.");
    writer.note(
        "Of sheets and rolls: width across and length along; across and along tell where the corner"
            + " nearest to the beginning lies. Every cut goes from edge to edge of what is left.");
    table.writeHeadings(sheet, styles);
  }
}
