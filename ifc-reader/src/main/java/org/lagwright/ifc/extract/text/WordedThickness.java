package org.lagwright.ifc.extract.text;

import java.util.Optional;
import java.util.regex.Matcher;

/** What texts such as "elastomeric foam 25 mm" tell of insulation. */
public final class WordedThickness {

  /** From its first digit on and all of them: a long row of digits is gone through once. */
  private static final String FIGURE = "(?<!\\d)(\\d++(?:[.,]\\d++)?)";

  private static final LatePattern MILLIMETRES =
      new LatePattern(FIGURE + "\\s*(?:mm|мм)(?![\\p{L}\\d\u00B2\u00B3])");

  private static final LatePattern FIGURES =
      new LatePattern("\\d+(?:[.,]\\d+)?\\s*(?:mm|мм|cm|m|in)?(?!\\p{L})");

  /** The lower end of a range; figures below ten number types. */
  private static final LatePattern RANGE =
      new LatePattern("(?:.*[^\\p{L}\\d.,])?[1-9]\\d+ *[-\u2013]");

  /** So many layers of one thickness, or one thickness and another: 2 x 25 mm, 13 mm + 19 mm. */
  private static final LatePattern LAYERS =
      new LatePattern(
          "([2-4])\\s*[xX\u00D7*]\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm|мм)(?![\\p{L}\\d\u00B2\u00B3])");

  private static final LatePattern SUM =
      new LatePattern(
          FIGURE
              + "\\s*(?:mm|мм)?\\s*\\+\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm|мм)"
              + "(?![\\p{L}\\d\u00B2\u00B3])");

  private static final LatePattern DIGIT = new LatePattern("\\d");

  private static final LatePattern WORD = new LatePattern("\\p{L}{2}");

  /** Signs between figures of a size or a range, or before a diameter. */
  private static final String OF_A_SIZE = "/x\u00D7*=\u00D8\u00F8\u2300\u2205+";

  private static final String BETWEEN_WORDS = " -:,(";

  private static final double CENTIMETRE_M = 0.01;

  /** More of them are the length or the breadth of a piece. */
  private static final double MOST_CENTIMETRES_M = 0.1;

  private WordedThickness() {}

  /**
   * The one figure in millimetres, centimetres or inches, in metres; empty if there are more, or if
   * it may be a size.
   */
  public static Optional<Double> metres(String text) {
    Optional<Double> together = ofLayers(text);
    if (together.isPresent() || Words.tellsOfLayers(text)) {
      return together;
    }
    Matcher found = MILLIMETRES.matcher(text);
    if (!found.find()) {
      return inOtherUnit(text);
    }
    if (isOfASize(text.substring(0, found.start()))) {
      return Optional.empty();
    }
    double thicknessM = figure(found.group(1)) / 1000;
    return found.find() || !Thicknesses.isPossible(thicknessM)
        ? Optional.empty()
        : Optional.of(thicknessM);
  }

  /** What several layers are together, if a text has no other figures than theirs. */
  private static Optional<Double> ofLayers(String text) {
    if (text.indexOf('+') < 0 && !Sizes.multiplies(text)) {
      return Optional.empty();
    }
    Matcher sum = SUM.matcher(text);
    Matcher times = LAYERS.matcher(text);
    double mm = 0;
    if (haveAllFigures(sum, text)) {
      mm = figure(sum.group(1)) + figure(sum.group(2));
    } else if (haveAllFigures(times, text)) {
      mm = figure(times.group(1)) * figure(times.group(2));
    }
    return Thicknesses.isPossible(mm / 1000) ? Optional.of(mm / 1000) : Optional.empty();
  }

  private static boolean haveAllFigures(Matcher layers, String text) {
    return layers.find()
        && !DIGIT.matcher(text.substring(0, layers.start())).find()
        && !DIGIT.matcher(text.substring(layers.end())).find();
  }

  private static double figure(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }

  /** The only figure of a text, in inches or centimetres. */
  private static Optional<Double> inOtherUnit(String text) {
    FigureCursor cursor = new FigureCursor(text);
    int from = cursor.next() ? cursor.at() : 0;
    FigureCursor.Figure figure = cursor.take();
    String unit = figure == null ? null : figure.unit();
    if (figure == null || unit == null) {
      return Optional.empty();
    }
    double thicknessM = figure.metres(null);
    boolean centimetres = Sizes.unitM(unit) == CENTIMETRE_M && thicknessM <= MOST_CENTIMETRES_M;
    if (!centimetres && Sizes.unitM(unit) != InchSizes.METRES_PER_INCH) {
      return Optional.empty();
    }
    boolean ofASize =
        isOfASize(text.substring(0, from)) || Words.line(wordBehind(text, cursor.at())) != null;
    return ofASize || cursor.next() || !Thicknesses.isPossible(thicknessM)
        ? Optional.empty()
        : Optional.of(thicknessM);
  }

  /** The figure right beside a word for insulated, in metres: {@code gedaemmt 30 mm}. */
  public static Optional<Double> ofInsulated(String text) {
    Optional<Double> thicknessM = Words.isDenial(text) ? Optional.empty() : metres(text);
    Matcher found = MILLIMETRES.matcher(text);
    if (thicknessM.isEmpty() || !found.find()) {
      return Optional.empty();
    }
    return Words.isInsulated(wordBefore(text, found.start()))
            || Words.isInsulated(wordBehind(text, found.end()))
        ? thicknessM
        : Optional.empty();
  }

  private static String wordBefore(String text, int at) {
    int end = at;
    while (end > 0 && BETWEEN_WORDS.indexOf(text.charAt(end - 1)) >= 0) {
      end--;
    }
    return text.substring(Word.startOfCompound(text, end), end);
  }

  private static String wordBehind(String text, int at) {
    int start = at;
    while (start < text.length() && BETWEEN_WORDS.indexOf(text.charAt(start)) >= 0) {
      start++;
    }
    return text.substring(start, Word.endOfCompound(text, start));
  }

  /** True if a figure behind this text is no thickness: a second side, or the size of a pipe. */
  private static boolean isOfASize(String before) {
    String text = before.stripTrailing();
    if (text.isEmpty()) {
      return false;
    }
    char last = text.charAt(text.length() - 1);
    String word = text.substring(Word.startOfCompound(text, text.length()));
    boolean sign = word.length() < 2 && OF_A_SIZE.indexOf(Character.toLowerCase(last)) >= 0;
    boolean range =
        last == '-' && text.length() > 1 && Sizes.isDigit(text.charAt(text.length() - 2));
    return Sizes.isDigit(last)
        || sign
        || range
        || Words.line(word) != null
        || RANGE.matcher(text).matches();
  }

  /** True if a text says that there is insulation: it has words, and none of them denies it. */
  public static boolean says(String text) {
    String words = FIGURES.matcher(text).replaceAll(" ");
    return WORD.matcher(words).find() && !Words.isNone(text);
  }

  /** True for a single word that denies insulation, and for one such before its name. */
  public static boolean denies(String text) {
    String trimmed = text.trim();
    int gap = trimmed.indexOf(' ');
    String first = gap < 0 ? trimmed : trimmed.substring(0, gap);
    for (int i = 0; i < first.length(); i++) {
      if (!Character.isLetter(first.charAt(i))) {
        return false;
      }
    }
    return first.length() > 1
        && Words.isDenial(first)
        && (gap < 0 || Words.isInsulation(trimmed.substring(gap)));
  }
}
