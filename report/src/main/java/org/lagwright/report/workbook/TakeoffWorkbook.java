package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.takeoff.settings.Settings;

/** Writes {@code takeoff.xlsx}. Equal takeoffs give equal bytes. */
public final class TakeoffWorkbook {

  private final StreamedBook book;

  /**
   * Prepares the workbook of one takeoff.
   *
   * @param version version of this program
   */
  public TakeoffWorkbook(CheckedTakeoff checked, String version) {
    TakeoffSheets sheets = new TakeoffSheets(checked, version);
    Settings settings = checked.takeoff().settings();
    book =
        new StreamedBook(
            "Insulation takeoff",
            settings.project(),
            version,
            settings.units(),
            sheets.list(),
            sheets::names);
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written, or a table has more rows than a sheet
   */
  public void write(OutputStream out) throws IOException {
    book.write(out);
  }
}
