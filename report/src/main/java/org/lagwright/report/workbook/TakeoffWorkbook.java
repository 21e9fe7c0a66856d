package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.workbook.TakeoffSheets.Planned;

/**
 * Writes {@code takeoff.xlsx}. The rows of all tables are streamed, as they may be many; what
 * stands above them is held in memory. Equal takeoffs give equal bytes.
 */
public final class TakeoffWorkbook {

  /** Rows of a streamed sheet kept in memory. */
  private static final int WINDOW = 200;

  private final String project;
  private final String version;
  private final TakeoffSheets sheets;

  /**
   * Prepares the workbook of one takeoff.
   *
   * @param version version of this program
   */
  public TakeoffWorkbook(CheckedTakeoff checked, String version) {
    this.project = checked.takeoff().settings().project();
    this.version = version;
    sheets = new TakeoffSheets(checked, version);
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written, or a table has more rows than a sheet
   */
  public void write(OutputStream out) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book);
      BookFrame.describe(book, "Insulation takeoff", version);
      writeHeads(book, styles);
      try (SXSSFWorkbook streaming = new SXSSFWorkbook(book, WINDOW)) {
        streaming.setCompressTempFiles(true);
        for (Planned planned : sheets.list()) {
          if (planned.table() != null) {
            planned.table().writeRows(streaming.getSheet(planned.name()), styles);
          }
        }
        streaming.write(out);
      }
    } catch (OpenXML4JRuntimeException e) {
      throw new IOException(e.getMessage(), e); // wraps what the stream threw
    }
  }

  private void writeHeads(XSSFWorkbook book, Styles styles) throws IOException {
    for (Planned planned : sheets.list()) {
      Sheet sheet = BookFrame.sheet(book, project, planned.name(), planned.pagesWide());
      if (planned.table() != null) {
        planned.table().requireRoom();
      }
      planned.content().accept(sheet, styles);
      BookFrame.finish(sheet, planned.table());
    }
    sheets.names().forEach((name, reference) -> BookFrame.define(book, name, reference));
  }
}
