package org.lagwright.report.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.Row;

/**
 * Sets the height of rows with text of several lines. Some programs fit rows when they open a file,
 * others show them as they stand.
 */
final class RowHeight {

  private static final float TITLE_POINTS = 24;
  private static final float SECTION_POINTS = 19;
  static final float LINE_POINTS = 15;

  /** Widths are counted in digits of the standard font; our letters are a little narrower. */
  private static final double LETTERS_PER_CHARACTER = 1.1;

  private RowHeight() {}

  /** Makes the row as high as its entries need in the columns of its sheet. */
  static void fit(Row row, List<Entry> entries) {
    float points = LINE_POINTS;
    for (int i = 0; i < entries.size(); i++) {
      points = Math.max(points, points(entries.get(i), row.getSheet().getColumnWidth(i) / 256));
    }
    row.setHeightInPoints(points);
  }

  private static float points(Entry entry, int characters) {
    return switch (entry.look()) {
      case TITLE -> TITLE_POINTS;
      case SECTION -> SECTION_POINTS;
      case WRAPPED, HEADING, HEADING_RIGHT -> LINE_POINTS * lines(entry, characters);
      default -> LINE_POINTS;
    };
  }

  /** Lines of a text, and no more than a screen holds: rows may be 409 points high at most. */
  static int lines(Entry entry, int characters) {
    int length = entry instanceof Entry.Text text ? text.text().length() : 0;
    return Math.min(25, 1 + (int) (length / (characters * LETTERS_PER_CHARACTER)));
  }
}
