package org.lagwright.report.workbook;

import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.lagwright.report.PlainText;

/** Makes text from a model fit for a cell. */
final class CellText {

  private static final int LIMIT = SpreadsheetVersion.EXCEL2007.getMaxTextLength();
  private static final String CUT = " [cut]";

  /** Spreadsheets read {@code _x0041_} as a character code; GlobalIds may contain just that. */
  private static final Pattern LOOKS_LIKE_CODE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private CellText() {}

  /** One line, at most as long as a cell may hold, shown exactly as it stands. */
  static String of(String text) {
    String exact = LOOKS_LIKE_CODE.matcher(PlainText.oneLine(text)).replaceAll("_x005F_");
    if (exact.length() <= LIMIT) {
      return exact;
    }
    int end = LIMIT - CUT.length();
    if (Character.isHighSurrogate(exact.charAt(end - 1))) {
      end--;
    }
    return exact.substring(0, end) + CUT;
  }
}
