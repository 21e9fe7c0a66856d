package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.lagwright.takeoff.compare.Comparison;
import org.lagwright.takeoff.settings.Settings;

/** Writes {@code comparison.xlsx}: what changed from one revision to the next. */
public final class ComparisonWorkbook {

  private final StreamedBook book;

  /**
   * Prepares the workbook.
   *
   * @param settings that both were taken off with
   * @param before name of the first revision
   * @param now name of the second
   * @param version version of this program
   */
  public ComparisonWorkbook(
      Comparison comparison, Settings settings, String before, String now, String version) {
    ChangesSheet changes = new ChangesSheet(comparison, before, now);
    DifferenceSheet differences = new DifferenceSheet(comparison, before, now, changes);
    book =
        new StreamedBook(
            "Comparison of two revisions",
            settings.project(),
            version,
            settings.units(),
            List.of(
                new PlannedSheet(DifferenceSheet.NAME, 1, differences::write, null),
                new PlannedSheet(ChangesSheet.NAME, 3, changes::write, changes.table())),
            Map::of);
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
