package org.lagwright.ifc.extract;

import org.jspecify.annotations.Nullable;

/**
 * Goes through the figures in a text, as people write sizes: {@code 400 x 200}, {@code 60,3 mm}. No
 * regular expressions, as every model with sizes in its names asks, and to compile them would take
 * longer than all texts of a small one.
 */
final class FigureCursor {

  /** A longer one is no size in any unit. */
  private static final int MOST_DIGITS = 4;

  private static final String DECIMAL_MARKS = ".,";
  private static final String INCHES = "in";
  private static final String[] UNITS = {"mm", "cm", "\u043c\u043c", "\u0441\u043c", "\"", "''"};

  private final String text;
  private int at;

  /**
   * A figure as it is written.
   *
   * @param isShort if it has up to two digits before the decimal mark and behind it
   * @param unit null if none stands behind it
   */
  record Figure(double value, boolean isShort, @Nullable String unit) {

    /**
     * The figure in metres.
     *
     * @param otherUnit of a figure without one of its own; null for millimetres
     */
    double metres(@Nullable String otherUnit) {
      String itsUnit = unit == null ? otherUnit : unit;
      return value * (itsUnit == null ? 0.001 : Sizes.unitM(itsUnit));
    }
  }

  FigureCursor(String text) {
    this.text = text;
  }

  /**
   * Goes on to the next figure that stands by itself.
   *
   * @return false if there is none
   */
  boolean next() {
    while (at < text.length() && !beginsHere()) {
      at++;
    }
    return at < text.length();
  }

  private boolean beginsHere() {
    return isDigit(at) && (at == 0 || !goesOnFrom(at - 1));
  }

  private boolean goesOnFrom(int place) {
    return isDigit(place)
        || Character.isLetter(text.charAt(place))
        || isOneOf(DECIMAL_MARKS, place);
  }

  /**
   * Takes the figure that stands here, and its unit if it has one.
   *
   * @return null if there is none, or what stands here is no size: a longer number, a date
   */
  @Nullable Figure take() {
    int start = at;
    int digits = skipDigits();
    boolean mark = isOneOf(DECIMAL_MARKS, at) && isDigit(at + 1);
    at += mark ? 1 : 0;
    int decimals = mark ? skipDigits() : 0;
    boolean goesOn = isOneOf(DECIMAL_MARKS, at) && isDigit(at + 1);
    if (digits == 0 || digits > MOST_DIGITS || goesOn) {
      return null;
    }
    double value = Double.parseDouble(text.substring(start, at).replace(',', '.'));
    return new Figure(value, digits <= 2 && decimals <= 2, takeUnit());
  }

  private int skipDigits() {
    int from = at;
    while (isDigit(at)) {
      at++;
    }
    return at - from;
  }

  private @Nullable String takeUnit() {
    int before = at;
    skipSpace();
    String unit = unit();
    at = unit == null ? before : at + unit.length();
    return unit;
  }

  private @Nullable String unit() {
    for (String each : UNITS) {
      if (text.startsWith(each, at)) {
        return each;
      }
    }
    // an in may begin the word inlet
    return text.startsWith(INCHES, at) && !isLetter(at + INCHES.length()) ? INCHES : null;
  }

  private boolean isLetter(int place) {
    return place < text.length()
        && Character.isLetter(text.charAt(place))
        && !isOneOf(Sizes.TIMES_SIGNS, place);
  }

  /** Takes one of some signs, and spaces around it; stays here if there is none. */
  boolean takeSign(String signs) {
    int before = at;
    skipSpace();
    if (!isOneOf(signs, at)) {
      at = before;
      return false;
    }
    at++;
    skipSpace();
    return true;
  }

  private void skipSpace() {
    while (isOneOf(Sizes.SPACES, at)) {
      at++;
    }
  }

  private boolean isDigit(int place) {
    return place < text.length() && Sizes.isDigit(text.charAt(place));
  }

  private boolean isOneOf(String signs, int place) {
    return place < text.length() && signs.indexOf(text.charAt(place)) >= 0;
  }

  /** Place in the text: behind what was taken last. */
  int at() {
    return at;
  }

  /** Goes to a place in the text. */
  void goTo(int place) {
    at = place;
  }
}
