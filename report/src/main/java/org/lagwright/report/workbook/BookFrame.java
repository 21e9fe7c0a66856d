package org.lagwright.report.workbook;

import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/** What all workbooks have in common: properties, sheets set up for print, names. */
final class BookFrame {

  /** The date written into the file: equal input shall give equal bytes, whenever it runs. */
  private static final Instant CREATED = Instant.parse("2000-01-01T00:00:00Z");

  private BookFrame() {}

  /** Sets the properties of the file. */
  static void describe(XSSFWorkbook book, String title, String version) {
    var properties = book.getProperties().getCoreProperties();
    properties.setCreator("Lagwright " + version);
    properties.setTitle(title);
    properties.setCreated(Optional.of(Date.from(CREATED)));
  }

  /** A new sheet that prints so many pages wide. */
  static Sheet sheet(XSSFWorkbook book, String project, String name, int pagesWide) {
    Sheet sheet = book.createSheet(name);
    sheet.setDisplayGridlines(false);
    Page.setUp(sheet, project, pagesWide);
    return sheet;
  }

  /**
   * Sets up what is not set up yet: the area to print, titles on each page, what stays when
   * scrolling.
   *
   * @param table the table of the sheet, null where it has none
   */
  static void finish(Sheet sheet, @Nullable Table<?> table) {
    boolean held = table != null && !((XSSFSheet) sheet).getTables().isEmpty();
    CellRangeAddress printed = held && table != null ? table.printed() : written(sheet);
    Workbook book = sheet.getWorkbook();
    book.setPrintArea(
        book.getSheetIndex(sheet),
        0,
        Math.max(printed.getLastColumn(), written(sheet).getLastColumn()),
        0,
        printed.getLastRow());
    if (sheet.getRepeatingRows() == null) {
      sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    }
    if (sheet.getPaneInformation() == null) {
      sheet.createFreezePane(0, 1);
    }
  }

  /** All cells written, and all columns that have a width of their own. */
  private static CellRangeAddress written(Sheet sheet) {
    int columns = 1;
    for (Row row : sheet) {
      columns = Math.max(columns, row.getLastCellNum());
    }
    return new CellRangeAddress(0, Math.max(0, sheet.getLastRowNum()), 0, columns - 1);
  }

  /** Gives a cell or range a name. */
  static void define(XSSFWorkbook book, String name, String reference) {
    Name defined = book.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(reference);
  }
}
