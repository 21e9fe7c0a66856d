package org.lagwright.report;

/** Makes text from a model fit to be shown: models may hold any character. */
public final class PlainText {

  private PlainText() {}

  /**
   * The text on one line. Control characters, line breaks and marks that turn the writing direction
   * become spaces, so that a name cannot steer a terminal or disguise a line; what no XML or UTF-8
   * file can hold (lone surrogates, U+FFFE, U+FFFF) becomes a question mark.
   */
  public static String oneLine(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().map(PlainText::shownAs).forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private static int shownAs(int codePoint) {
    if (Character.isISOControl(codePoint) || breaksLine(codePoint) || turnsWriting(codePoint)) {
      return ' ';
    }
    return isUnwritable(codePoint) ? '?' : codePoint;
  }

  private static boolean breaksLine(int codePoint) {
    return codePoint == 0x2028 || codePoint == 0x2029;
  }

  private static boolean turnsWriting(int codePoint) {
    return (codePoint >= 0x202A && codePoint <= 0x202E)
        || (codePoint >= 0x2066 && codePoint <= 0x2069);
  }

  private static boolean isUnwritable(int codePoint) {
    return (codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE)
        || codePoint == 0xFFFE
        || codePoint == 0xFFFF;
  }
}
