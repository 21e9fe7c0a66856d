package org.lagwright.ifc.extract;

import java.util.Set;
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
  private static final Set<String> INCH_SIGNS = Set.of(INCHES, "\"", "''", "\u2033", "\u201D");

  /** Between whole inches and the rest. */
  private static final String FRACTION_SIGNS = " -";

  private static final String[] UNITS = {
    "mm", "cm", "\u043c\u043c", "\u0441\u043c", "\"", "''", "\u2033", "\u201D"
  };

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

  /** The metres that a text consists of, with its unit; NaN if it is anything else. */
  static double wholeM(String text) {
    FigureCursor cursor = new FigureCursor(text);
    Figure figure = cursor.take();
    boolean whole = figure != null && figure.unit != null && cursor.at == text.length();
    return figure != null && whole ? figure.metres(null) : Double.NaN;
  }

  /** The only figure of a text in metres, if it has a unit; 0 if there is none or another one. */
  static double onlyM(String text) {
    FigureCursor cursor = new FigureCursor(text);
    Figure only = cursor.next() ? cursor.take() : null;
    return only != null && only.unit != null && !cursor.next() ? only.metres(null) : 0;
  }

  /**
   * Goes on to the next figure that stands by itself.
   *
   * @return false if there is none
   */
  boolean next() {
    while (at < text.length() && !isAtFigure()) {
      at++;
    }
    return at < text.length();
  }

  /** True if a figure that stands by itself begins here. */
  boolean isAtFigure() {
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
    double inches = mark ? Double.NaN : fraction(value);
    return inches > 0
        ? new Figure(inches, digits <= 2, "\"")
        : new Figure(value, digits <= 2 && decimals <= 2, takeUnit());
  }

  /**
   * Takes the rest of inches as {@code 12 1/2"}, {@code 1-1/2"} or {@code 3/4"}.
   *
   * @param whole the figure before it, or the numerator
   * @return NaN, and stays here, if there is no fraction of inches
   */
  private double fraction(double whole) {
    int before = at;
    double part = over(whole);
    double inches = part;
    if (!(part > 0) && isOneOf(FRACTION_SIGNS, at) && isDigit(at + 1)) {
      at++;
      int numerator = at;
      skipDigits();
      part = at - numerator > 2 ? Double.NaN : over(Integer.parseInt(text, numerator, at, 10));
      inches = whole + part;
    }
    if (part > 0 && INCH_SIGNS.contains(String.valueOf(takeUnit()))) {
      return inches;
    }
    at = before;
    return Double.NaN;
  }

  /** A part of an inch: halves down to sixty-fourths. */
  private double over(double numerator) {
    int from = at + 1;
    if (!isOneOf("/", at) || !isDigit(from)) {
      return Double.NaN;
    }
    at = from;
    int digits = skipDigits();
    int denominator = digits > 2 ? 0 : Integer.parseInt(text, from, at, 10);
    boolean common = Integer.bitCount(denominator) == 1 && denominator > 1 && denominator <= 64;
    return common && numerator < denominator ? numerator / denominator : Double.NaN;
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
