package org.lagwright.ifc.extract;

import org.jspecify.annotations.Nullable;

/**
 * Finds nominal diameters such as {@code DN 50} in texts. Written out, as every model with pipes
 * asks, and many of them ask no regular expression, of which the first takes 5 ms.
 */
final class DnInText {

  private static final int MOST_DIGITS = 4;

  /**
   * A nominal diameter in millimetres.
   *
   * @param from place of its first letter
   * @param to place behind its last digit
   */
  record Dn(int dn, int from, int to) {}

  private DnInText() {}

  /** The first one from a place on; null if there is none. */
  static @Nullable Dn next(String text, int from) {
    for (int at = text.indexOf("DN", from); at >= 0; at = text.indexOf("DN", at + 1)) {
      int figure = at + 2;
      figure += figure < text.length() && Sizes.SPACES.indexOf(text.charAt(figure)) >= 0 ? 1 : 0;
      int end = figure;
      while (end < text.length() && Sizes.isDigit(text.charAt(end))) {
        end++;
      }
      boolean number = end > figure && end - figure <= MOST_DIGITS;
      if (number && !Sizes.isInWord(text, at - 1) && !Sizes.isInWord(text, end)) {
        return new Dn(Integer.parseInt(text, figure, end, 10), at, end);
      }
    }
    return null;
  }
}
