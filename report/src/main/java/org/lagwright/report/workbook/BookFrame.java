package org.lagwright.report.workbook;

import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

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

  /** Gives a cell or range a name. */
  static void define(XSSFWorkbook book, String name, String reference) {
    Name defined = book.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(reference);
  }
}
