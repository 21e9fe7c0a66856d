package org.lagwright.report.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.Row;

/**
 * Sets the height of rows with text of several lines. Some programs fit rows when they open a file,
 * others show them as they stand.
 */
final class RowHeight {

  private static final float TITLE_POINTS = 26;
  private static final float SECTION_POINTS = 22;
  private static final float LINE_POINTS = 13.5f;

  /** Room above and below the lines of a row. */
  private static final float MARGIN_POINTS = 3.5f;

  /** More than a screen holds; spreadsheets allow 409 points. */
  private static final int MOST_LINES = 25;

  /** Widths are counted in digits of the standard font; our letters are narrower. */
  private static final double LETTERS_PER_CHARACTER = 1.25;

  private static final double BOLD_LETTERS_PER_CHARACTER = 0.95;

  private RowHeight() {}

  /** Makes the row as high as its entries need in the columns of its sheet. */
  static void fit(Row row, List<Entry> entries) {
    float points = points(1);
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      int characters = isBroken(entry) ? row.getSheet().getColumnWidth(i) / 256 : 0;
      points = Math.max(points, points(entry, characters));
    }
    row.setHeightInPoints(points);
  }

  /** Makes the row as high as one text needs across so many characters. */
  static void fit(Row row, Entry entry, int characters) {
    row.setHeightInPoints(points(entry, characters));
  }

  /** True where the width decides about the lines; to ask for it costs more than all the rest. */
  private static boolean isBroken(Entry entry) {
    return switch (entry.look()) {
      case WRAPPED, HEADING, HEADING_RIGHT -> true;
      default -> false;
    };
  }

  private static float points(Entry entry, int characters) {
    return switch (entry.look()) {
      case TITLE -> TITLE_POINTS;
      case SECTION -> SECTION_POINTS;
      case WRAPPED -> points(lines(entry, characters * LETTERS_PER_CHARACTER));
      case HEADING, HEADING_RIGHT -> points(lines(entry, characters * BOLD_LETTERS_PER_CHARACTER));
      default -> points(1);
    };
  }

  private static float points(int lines) {
    return LINE_POINTS * Math.min(MOST_LINES, lines) + MARGIN_POINTS;
  }

  /** Lines of a text that is broken between words. */
  private static int lines(Entry entry, double letters) {
    String text = entry instanceof Entry.Text shown ? shown.text() : "";
    int lines = 1;
    double used = 0;
    for (String word : text.split(" ", -1)) {
      if (used > 0 && used + 1 + word.length() > letters) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? 1 : 0) + word.length();
      lines += (int) Math.max(0, Math.ceil(used / letters) - 1);
      used = used > letters ? used % letters : used;
    }
    return lines;
  }
}
