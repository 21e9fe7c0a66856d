package org.lagwright.ifc.extract.text;

import org.jspecify.annotations.Nullable;

/**
 * Finds nominal diameters such as {@code DN 50} in texts. Written out, as every model with pipes
 * asks, and many of them ask no regular expression, of which the first takes 5 ms.
 */
public final class DnInText {

  private static final int MOST_DIGITS = 4;

  /** DN, in Latin and in Cyrillic letters, capital and small. */
  private static final String FIRST_LETTERS = "Dd\u0414\u0434";

  private static final String SECOND_LETTERS = "Nn\u0423\u0443";

  /** One of them may stand between letters and figure. */
  private static final String BETWEEN = Sizes.SPACES + "-_";

  /**
   * A nominal diameter in millimetres.
   *
   * @param from place of its first letter
   * @param to place behind its last digit
   */
  record Dn(int dn, int from, int to) {}

  private DnInText() {}

  /** True if the letters stand somewhere in a text. */
  static boolean mayBeIn(String text) {
    for (int i = 1; i < text.length(); i++) {
      if (isLetters(text, i - 1)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isLetters(String text, int at) {
    int first = FIRST_LETTERS.indexOf(text.charAt(at));
    int second = first < 0 ? -1 : SECOND_LETTERS.indexOf(text.charAt(at + 1));
    return second >= 0 && first / 2 == second / 2;
  }

  /** The first one from a place on; null if there is none. */
  public static @Nullable Dn next(String text, int from) {
    for (int at = from; at + 2 < text.length(); at++) {
      Dn dn = at(text, at);
      if (dn != null) {
        return dn;
      }
    }
    return null;
  }

  /** The one whose letters stand at a place; null if there is none. */
  static @Nullable Dn at(String text, int at) {
    if (at + 2 >= text.length() || !isLetters(text, at)) {
      return null;
    }
    int figure = at + 2;
    figure += BETWEEN.indexOf(text.charAt(figure)) >= 0 ? 1 : 0;
    int end = figure;
    while (end < text.length() && Sizes.isDigit(text.charAt(end))) {
      end++;
    }
    boolean number = end > figure && end - figure <= MOST_DIGITS;
    return number && isFree(text, at - 1) && endsAt(text, end) && !isInches(text, figure)
        ? new Dn(Integer.parseInt(text, figure, end, 10), at, end)
        : null;
  }

  private static boolean endsAt(String text, int end) {
    return isFree(text, end) || (text.startsWith("mm", end) && isFree(text, end + 2));
  }

  /** True if no letter or digit stands at a place. */
  private static boolean isFree(String text, int at) {
    return at < 0 || at >= text.length() || !Character.isLetterOrDigit(text.charAt(at));
  }

  /** What has a sign of inches, or a fraction of them, is a size in inches. */
  private static boolean isInches(String text, int at) {
    FigureCursor cursor = new FigureCursor(text);
    cursor.goTo(at);
    FigureCursor.Figure figure = cursor.takeInches();
    return figure != null && InchSizes.isSigned(figure);
  }
}
