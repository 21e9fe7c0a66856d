package org.lagwright.ifc.extract.text;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Goes through the figures in a text, as people write sizes: {@code 400 x 200}, {@code 60,3 mm}. No
 * regular expressions, as every model with sizes in its names asks, and to compile them would take
 * longer than all texts of a small one.
 */
public final class FigureCursor {

  /** A longer one is no size in any unit. */
  private static final int MOST_DIGITS = 4;

  /** A double holds so many digits, whatever they are. */
  private static final int MOST_EXACT_DIGITS = 15;

  private static final String DECIMAL_MARKS = ".,";
  private static final String INCHES = "in";
  private static final Set<String> INCH_SIGNS = Set.of(INCHES, "\"", "''", "\u2033", "\u201D");

  /** Between whole inches and the rest; the point as in {@code 1.1/4"}. */
  private static final String FRACTION_SIGNS = " \u00A0-.";

  private static final String[] UNITS = {
    "mm", "MM", "cm", "\u043c\u043c", "\u0441\u043c", "\"", "''", "\u2033", "\u201D"
  };

  private static final String[] INCH_WORDS = {"inches", "inch", "zoll"};

  /** Fractions of one sign, and their eighths. */
  static final String ONE_SIGN_FRACTIONS = "\u215B\u00BC\u215C\u00BD\u215D\u00BE\u215E";

  private static final String FOOT_SIGNS = "'\u2032";

  /** Of a figure in feet, with or without inches behind it. */
  static final String FEET = "ft";

  /** Between thousands and the rest; the apostrophes as in Switzerland. */
  private static final String THOUSANDS_SIGNS = " \u00A0\u202F\u2009'\u2019";

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

  /** The number that a text consists of; NaN if it is anything else. */
  static double wholeNumber(String text) {
    FigureCursor cursor = new FigureCursor(text);
    Figure figure = cursor.take();
    boolean whole = figure != null && figure.unit == null && cursor.at == text.length();
    return figure != null && whole ? figure.value : Double.NaN;
  }

  /** The metres that a text consists of, with its unit; NaN if it is anything else. */
  public static double wholeM(String text) {
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
   * The only figure of a text in metres, if it is in millimetres; NaN if there is none or another.
   *
   * @param bareToo true if a figure without unit is in millimetres, and may follow letters
   */
  public static double onlyMm(String text, boolean bareToo) {
    int from = 0;
    while (from < text.length() && !Sizes.isDigit(text.charAt(from))) {
      from++;
    }
    FigureCursor cursor = new FigureCursor(text);
    cursor.at = from;
    boolean free = from < text.length() && (bareToo || cursor.isAtFigure());
    Figure only = free ? cursor.take() : null;
    if (only == null || (only.unit == null ? !bareToo : !only.unit.equalsIgnoreCase("mm"))) {
      return Double.NaN;
    }
    for (int i = cursor.at; i < text.length(); i++) {
      if (Sizes.isDigit(text.charAt(i))) {
        return Double.NaN;
      }
    }
    return only.metres(null);
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
    return (isDigit(at) || isOneOf(ONE_SIGN_FRACTIONS, at)) && (at == 0 || !goesOnFrom(at - 1));
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
    return take(false);
  }

  /** Takes a figure likewise, where fractions are inches even without their sign. */
  @Nullable Figure takeInches() {
    return take(true);
  }

  private @Nullable Figure take(boolean inches) {
    int start = at;
    int digits = skipDigits();
    double pointed =
        digits > 0 && digits <= 2 && isOneOf(".", at)
            ? fraction(decimal(start, 0), inches)
            : Double.NaN;
    if (pointed > 0) {
      return new Figure(pointed, true, "\"");
    }
    boolean mark = isOneOf(DECIMAL_MARKS, at) && isDigit(at + 1);
    at += mark ? 1 : 0;
    int decimals = mark ? skipDigits() : 0;
    boolean goesOn = isOneOf(DECIMAL_MARKS, at) && isDigit(at + 1);
    if (digits > MOST_DIGITS || goesOn) {
      return null;
    }
    if (digits == 0) {
      return takeOneSign(inches);
    }
    double value = decimal(start, decimals);
    double withFraction = mark ? Double.NaN : fraction(value, inches);
    if (withFraction > 0) {
      // an in behind 1/2 may be a word
      boolean word = withFraction < 1 && text.startsWith(INCHES, at - INCHES.length());
      return new Figure(withFraction, digits <= 2, word ? INCHES : "\"");
    }
    return isOneOf(FOOT_SIGNS, at) && !isTwice(at) && !areThousandsBehind(at)
        ? takeFeet(value)
        : new Figure(value, digits <= 2 && decimals <= 2, takeUnit());
  }

  /**
   * The number from a place to here.
   *
   * @param decimals how many of its digits stand behind the mark
   */
  private double decimal(int start, int decimals) {
    if (at - start > MOST_EXACT_DIGITS) {
      return Double.parseDouble(text.substring(start, at).replace(',', '.'));
    }
    // both are exact, so one division rounds as parsing does, and is sooner translated
    long digits = 0;
    for (int i = start; i < at; i++) {
      digits = isDigit(i) ? digits * 10 + (text.charAt(i) - '0') : digits;
    }
    double power = 1;
    for (int i = 0; i < decimals; i++) {
      power *= 10;
    }
    return digits / power;
  }

  /** A fraction of one sign without whole inches; null, and past it, if it is no size. */
  private @Nullable Figure takeOneSign(boolean signless) {
    if (!isOneOf(ONE_SIGN_FRACTIONS, at)) {
      return null;
    }
    double inches = fraction(0, signless);
    at += inches > 0 ? 0 : 1;
    return inches > 0 ? new Figure(inches, true, "\"") : null;
  }

  /** True for three digits behind a sign, as no inches behind feet have. */
  private boolean areThousandsBehind(int sign) {
    return isDigit(sign + 1) && isDigit(sign + 2) && isDigit(sign + 3) && !isDigit(sign + 4);
  }

  private boolean isTwice(int place) {
    return place + 1 < text.length() && text.charAt(place) == text.charAt(place + 1);
  }

  /** Takes the sign of feet, and inches behind it as in {@code 1'-4"}. */
  private Figure takeFeet(double feet) {
    int behindFeet = ++at;
    skipSpace();
    at += isOneOf("-", at) ? 1 : 0;
    skipSpace();
    Figure rest = isDigit(at) ? take() : null;
    String unit = rest == null ? null : rest.unit;
    if (rest == null || unit == null || !INCH_SIGNS.contains(unit) || rest.value >= 12) {
      at = behindFeet;
      return new Figure(feet, false, FEET);
    }
    return new Figure(feet + rest.value / 12, false, FEET);
  }

  /**
   * Takes a side, which may have its thousands apart as {@code 1 200} or {@code 1'200}: at the
   * start of a text, behind a sign of multiplication, or with a sign that does not break the line.
   * Elsewhere the first figure may be a number of something.
   */
  @Nullable Figure takeSide(boolean behindSign) {
    int start = at;
    Figure figure = take();
    boolean thousands =
        figure != null
            && figure.unit == null
            && at - start == 1
            && isOneOf(THOUSANDS_SIGNS, at)
            && (start == 0 || behindSign || !isOneOf(" ", at))
            && areThousandsBehind(at);
    if (figure == null || !thousands) {
      return figure;
    }
    at++;
    Figure rest = take();
    return rest == null ? null : new Figure(figure.value * 1000 + rest.value, false, rest.unit);
  }

  /**
   * Takes the rest of inches as {@code 12 1/2"}, {@code 1-1/2"} or {@code 3/4"}.
   *
   * @param whole the figure before it, or the numerator
   * @param signless true if those of one digit need no sign of inches
   * @return NaN, and stays here, if there is no fraction of inches
   */
  private double fraction(double whole, boolean signless) {
    int before = at;
    double inches = oneSign(whole);
    inches = inches > 0 ? inches : over(whole);
    if (!(inches > 0) && isOneOf(FRACTION_SIGNS, at) && isDigit(at + 1)) {
      at++;
      int numerator = at;
      skipDigits();
      double part =
          at - numerator > 2 ? Double.NaN : over(Integer.parseInt(text, numerator, at, 10));
      inches = whole + part;
    }
    boolean alone = signless && (isOneOf("/", at - 2) || isOneOf(ONE_SIGN_FRACTIONS, at - 1));
    if (inches > 0 && (INCH_SIGNS.contains(String.valueOf(takeUnit())) || alone)) {
      return inches;
    }
    at = before;
    return Double.NaN;
  }

  /** Whole inches with a fraction of one sign behind them. */
  private double oneSign(double whole) {
    int sign = at + (isOneOf(FRACTION_SIGNS, at) ? 1 : 0);
    int eighths = sign < text.length() ? ONE_SIGN_FRACTIONS.indexOf(text.charAt(sign)) + 1 : 0;
    at = eighths > 0 ? sign + 1 : at;
    return eighths > 0 ? whole + eighths / 8.0 : Double.NaN;
  }

  /**
   * A part of an inch: halves down to sixty-fourths, and the five and six quarters that pipes are
   * called by; stays here if there is none.
   */
  private double over(double numerator) {
    int before = at;
    at++;
    int digits = isOneOf("/", before) ? skipDigits() : 0;
    int denominator = digits == 0 || digits > 2 ? 0 : Integer.parseInt(text, before + 1, at, 10);
    boolean common = Integer.bitCount(denominator) == 1 && denominator > 1 && denominator <= 64;
    boolean quarters = denominator == 4 && (numerator == 5 || numerator == 6);
    if (common && (numerator < denominator || quarters)) {
      return numerator / denominator;
    }
    at = before;
    return Double.NaN;
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
    if (takeInchWord()) {
      return "\"";
    }
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

  /** Behind a word of inches; stays here if there is none. */
  private boolean takeInchWord() {
    for (String each : INCH_WORDS) {
      int end = at + each.length();
      if (text.regionMatches(true, at, each, 0, each.length()) && !isLetter(end)) {
        at = end;
        return true;
      }
    }
    return false;
  }

  /** Takes the sign of metres, which stands behind the last of two sides. */
  boolean takeMetres() {
    int before = at;
    skipSpace();
    boolean metres = isOneOf("m", at) && !isDigit(at + 1) && !isLetter(at + 1);
    at = metres ? at + 1 : before;
    return metres;
  }

  /**
   * Takes the letter of a width behind it as in {@code 500W} or {@code 500 (B)}, if there is one.
   */
  void takeSideLetter() {
    int before = at;
    skipSpace();
    boolean bracket = isOneOf("(", at);
    at += bracket ? 1 : 0;
    boolean letter = isOneOf("BbWw", at) && (bracket ? isOneOf(")", at + 1) : !isLetter(at + 1));
    at = letter ? at + (bracket ? 2 : 1) : before;
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

  /** Goes past spaces. */
  void skipSpace() {
    while (isOneOf(Sizes.SPACES, at)) {
      at++;
    }
  }

  private boolean isDigit(int place) {
    return place < text.length() && Sizes.isDigit(text.charAt(place));
  }

  private boolean isOneOf(String signs, int place) {
    return place >= 0 && place < text.length() && signs.indexOf(text.charAt(place)) >= 0;
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
