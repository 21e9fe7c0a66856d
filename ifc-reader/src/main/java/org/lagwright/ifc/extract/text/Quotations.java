package org.lagwright.ifc.extract.text;

/** Marks around a quotation in a text, of which one behind a figure is no sign of inches. */
public final class Quotations {

  private static final String MARKS = "\"\u201C\u201D\u201E";

  private Quotations() {}

  /** The text with a space for each mark of a quotation that has both. */
  public static String unmarked(String text) {
    StringBuilder unmarked = null;
    int start = -1;
    for (int at = 0; at < text.length(); at++) {
      if (MARKS.indexOf(text.charAt(at)) < 0) {
        continue;
      }
      if (start >= 0) {
        unmarked = unmarked == null ? new StringBuilder(text) : unmarked;
        unmarked.setCharAt(start, ' ');
        unmarked.setCharAt(at, ' ');
        start = -1;
      } else if (begins(text, at)) {
        start = at;
      }
    }
    return unmarked == null ? text : unmarked.toString();
  }

  /** Behind a figure the mark stands for inches, and before a space it begins nothing. */
  private static boolean begins(String text, int at) {
    char before = at == 0 ? ' ' : text.charAt(at - 1);
    boolean figure = Sizes.isDigit(before) || FigureCursor.ONE_SIGN_FRACTIONS.indexOf(before) >= 0;
    return !figure && at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1));
  }
}
