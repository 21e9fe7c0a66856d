package org.lagwright.ifc.extract.text;

/** Marks around a quotation in a text, of which one behind a figure is no sign of inches. */
public final class Quotations {

  private static final String MARKS = "\"\u201C\u201D\u201E";

  private Quotations() {}

  /** The text with a space for each mark of a quotation that has both. */
  public static String unmarked(String text) {
    if (text.indexOf('"') < 0 && text.indexOf('\u201C') < 0 && text.indexOf('\u201D') < 0) {
      return text;
    }
    StringBuilder unmarked = new StringBuilder(text);
    int start = -1;
    for (int at = 0; at < text.length(); at++) {
      boolean mark = MARKS.indexOf(text.charAt(at)) >= 0;
      if (mark && start >= 0) {
        unmarked.setCharAt(start, ' ');
        unmarked.setCharAt(at, ' ');
        start = -1;
      } else if (mark && begins(text, at)) {
        start = at;
      }
    }
    return unmarked.toString();
  }

  /** Behind a figure the mark stands for inches, and before a space it begins nothing. */
  private static boolean begins(String text, int at) {
    char before = at == 0 ? ' ' : text.charAt(at - 1);
    boolean figure = Sizes.isDigit(before) || FigureCursor.ONE_SIGN_FRACTIONS.indexOf(before) >= 0;
    return !figure && at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1));
  }
}
