package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.lagwright.takeoff.settings.UnitSystem;

/**
 * Writes a workbook. The rows of all tables are streamed, as they may be many; what stands above
 * them is held in memory.
 *
 * @param title of the file
 * @param project in the header of each page
 * @param version version of this program
 * @param units units that its cells are shown in
 * @param sheets in their order
 * @param names for key cells with their references; asked for once all sheets are written
 */
record StreamedBook(
    String title,
    String project,
    String version,
    UnitSystem units,
    List<PlannedSheet> sheets,
    Supplier<Map<String, String>> names) {

  /** Rows of a streamed sheet kept in memory. */
  private static final int WINDOW = 200;

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written, or a table has more rows than a sheet
   */
  void write(OutputStream out) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book, units);
      BookFrame.describe(book, title, version);
      writeHeads(book, styles);
      try (SXSSFWorkbook streaming = new SXSSFWorkbook(book, WINDOW)) {
        streaming.setCompressTempFiles(true);
        for (PlannedSheet planned : sheets) {
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
    for (PlannedSheet planned : sheets) {
      Sheet sheet = BookFrame.sheet(book, project, planned.name(), planned.pagesWide());
      if (planned.table() != null) {
        planned.table().requireRoom();
      }
      planned.content().accept(sheet, styles);
      BookFrame.finish(sheet, planned.table());
    }
    names.get().forEach((name, reference) -> BookFrame.define(book, name, reference));
  }
}
