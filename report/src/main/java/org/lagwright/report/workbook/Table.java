package org.lagwright.report.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;

/**
 * Rows of one kind under a row of headings. Its place is known before it is written, so that
 * formulas on other sheets can refer to it.
 *
 * @param sheetName a name that needs no quotes in formulas
 * @param headingRow position of the headings, from 0
 */
record Table<T>(String sheetName, int headingRow, List<Column<T>> columns, List<T> rows) {

  /** Rows that decide how wide columns are; the sheet may be far longer. */
  private static final int ROWS_LOOKED_AT = 1000;

  /** Headings further down would take the whole screen with what stands above them. */
  private static final int LAST_FROZEN_ROW = 14;

  Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** Cells of a column without its heading, with the sheet: {@code Takeoff!$K$6:$K$40}. */
  String range(String heading) {
    String letter = CellReference.convertNumToColString(position(heading));
    return sheetName
        + "!$"
        + letter
        + "$"
        + (headingRow + 2)
        + ":$"
        + letter
        + "$"
        + (lastRow() + 1);
  }

  /** Position of a column, from 0. */
  int position(String heading) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).heading().equals(heading)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no column " + heading + " on sheet " + sheetName);
  }

  /** Position of the last row, from 0; an empty table has one empty row so that ranges exist. */
  private int lastRow() {
    return headingRow + Math.max(1, rows.size());
  }

  /** Sets the widths, for rows above the table whose height depends on them. */
  void setWidths(Sheet sheet) {
    List<T> first = rows.subList(0, Math.min(ROWS_LOOKED_AT, rows.size()));
    for (int i = 0; i < columns.size(); i++) {
      sheet.setColumnWidth(i, columns.get(i).width(first) * 256);
    }
  }

  /** Writes headings, widths, filter, frozen and repeated rows. */
  void writeHeadings(Sheet sheet, Styles styles) {
    setWidths(sheet);
    List<Entry> headings = new ArrayList<>();
    for (Column<T> column : columns) {
      String heading = styles.units().heading(column.heading());
      headings.add(new Entry.Text(heading, column.headingLook()));
    }
    write(sheet.createRow(headingRow), headings, styles);
    boolean near = headingRow <= LAST_FROZEN_ROW;
    sheet.createFreezePane(1, near ? headingRow + 1 : 0);
    defineTable((XSSFSheet) sheet);
    sheet.setRepeatingRows(new CellRangeAddress(headingRow, headingRow, -1, -1));
    sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
  }

  /** Rows with a filter, under a name that formulas of the user can say. */
  private void defineTable(XSSFSheet sheet) {
    AreaReference area =
        new AreaReference(
            new CellReference(headingRow, 0),
            new CellReference(lastRow(), columns.size() - 1),
            SpreadsheetVersion.EXCEL2007);
    XSSFTable table = sheet.createTable(area);
    String name = sheetName.replaceAll("\\W", "_") + "_table";
    table.setName(name);
    table.setDisplayName(name);
    table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
  }

  /**
   * Makes sure that the sheet can hold all rows.
   *
   * @throws IOException if not; nothing is left out in silence
   */
  void requireRoom() throws IOException {
    int most = SpreadsheetVersion.EXCEL2007.getLastRowIndex() - headingRow;
    if (rows.size() > most) {
      throw new IOException(
          "the sheet "
              + sheetName
              + " would need "
              + rows.size()
              + " rows, a workbook holds "
              + most
              + "; take off fewer models at once");
    }
  }

  /** Cells from the first one of the sheet to the last one of this table, for printing. */
  CellRangeAddress printed() {
    return new CellRangeAddress(0, lastRow(), 0, columns.size() - 1);
  }

  /** Writes the rows; the sheet may be a streaming one. */
  void writeRows(Sheet sheet, Styles styles) {
    int position = headingRow + 1;
    for (T item : rows) {
      List<Entry> entries = columns.stream().map(c -> c.shown(item, styles.units())).toList();
      write(sheet.createRow(position++), entries, styles);
    }
  }

  private static void write(Row row, List<Entry> entries, Styles styles) {
    for (int i = 0; i < entries.size(); i++) {
      entries.get(i).put(row, i, styles);
    }
    RowHeight.fit(row, entries);
  }
}
