package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.lagwright.ifc.model.Section;

/** Sizes as people write them. */
public final class Sizes {

  /** Smaller figures in names are no sides of a duct. */
  public static final double SMALLEST_SIDE_M = 0.01;

  /** No side of a duct in a building is wider. */
  static final double LARGEST_SIDE_M = 10;

  /** Units that people write behind a length. */
  static final String UNIT = "mm|\u043c\u043c|\u0441\u043c|\u043c|cm|m|in|\"|''|ft";

  private static final LatePattern DN_ENDS =
      new LatePattern(
          "(?<![\\d.,/])(?:DN\\s?)?(\\d{2,4}(?:\\s?/\\s?(?:DN\\s?)?\\d{2,4}){1,2})(?![\\d.,/])");

  /** Both sides of a flat oval with a stroke between them, once for each end. */
  private static final LatePattern OVAL_ENDS =
      new LatePattern(
          "\\d\\s?(?:mm)?\\s?/\\s?\\d{2,4}\\s?(?:mm)?\\s?-\\s?"
              + "(?:\\d{2,4}\\s?(?:mm)?\\s?/\\s?\\d|\\d{2,4}\\s?(?:mm)?\\s?[\u00f8\u00d8\u2300])");

  private static final LatePattern ANGLE =
      new LatePattern(
          "(?iu)(?<![\\d.,])(\\d{1,3}(?:[.,]\\d+)?)[\\s-]?"
              + "(?:\u00B0|\u00BA|deg|grad|\u0433\u0440\u0430\u0434)");

  /** How the words for degrees begin. */
  private static final String[] DEGREES = {
    "deg", "Deg", "DEG", "grad", "Grad", "GRAD", "\u0433\u0440\u0430\u0434"
  };

  /** What {@code \s} is, and spaces that do not break the line. */
  static final String SPACES = " \t\n\u000B\f\r\u00A0\u202F";

  /** Signs between two sides. */
  static final String TIMES_SIGNS = "xX\u00D7\u0445\u0425*";

  /** Signs of a diameter. */
  static final String ROUND_SIGNS = "\u00D8\u00F8\u2300\u2205";

  /** One of them stands in every text that has a diameter. */
  private static final String DIAMETER_SIGNS = "=\u03A6\u03C6" + ROUND_SIGNS;

  private static final Remembered<Optional<Section>> DIAMETERS = new Remembered<>();
  private static final Remembered<Optional<Section>> ALL_SIDES = new Remembered<>();
  private static final Remembered<Optional<Integer>> NOMINALS = new Remembered<>();
  private static final Remembered<Optional<Double>> OUTSIDES = new Remembered<>();

  private Sizes() {}

  /** The first nominal diameter in a text, such as 80 in {@code DN80/50}. */
  public static Optional<Integer> dn(String text) {
    if (!DnInText.mayBeIn(text)) {
      return Optional.empty();
    }
    Optional<Integer> known = NOMINALS.find(text);
    return known == null ? NOMINALS.keep(text, readDn(text)) : known;
  }

  private static Optional<Integer> readDn(String text) {
    DnInText.Dn first = DnInText.next(text, 0);
    return first == null ? Optional.empty() : Optional.of(first.dn());
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isInWord(String text, int at) {
    return at >= 0
        && at < text.length()
        && (text.charAt(at) == '_' || Character.isLetterOrDigit(text.charAt(at)));
  }

  /** Two sides as in {@code 400x1000} or {@code 305 mm x305 mm}; millimetres unless it says. */
  public static Optional<Section> sides(String text) {
    if (!multiplies(text)) {
      return Optional.empty();
    }
    Optional<Section> known = ALL_SIDES.find(text);
    return known == null ? ALL_SIDES.keep(text, SizesInText.sides(text, null)) : known;
  }

  /** A diameter as in {@code d=300 mm}, {@code 300 mm dia.} or {@code 350 mm} before a sign. */
  public static Optional<Section> diameter(String text) {
    if (!mayHoldDiameter(text)) {
      return Optional.empty();
    }
    Optional<Section> known = DIAMETERS.find(text);
    return known == null ? DIAMETERS.keep(text, SizesInText.diameter(text, null)) : known;
  }

  /** True if a text may have one of the signs or words that a diameter is told by. */
  public static boolean mayHoldDiameter(String text) {
    return hasAny(text, DIAMETER_SIGNS) || DiameterInWords.mayBeIn(text);
  }

  /** True for a diameter that may be the nominal size, as only a word tells of it. */
  public static boolean isPlainDiameter(String text) {
    return DiameterInWords.mayBeIn(text) && SizesInText.isPlainDiameter(text);
  }

  /** True if a text has a sign that stands between two sides, or before a diameter. */
  static boolean hasPairOrRound(String text) {
    return hasAny(text, TIMES_SIGNS) || hasAny(text, ROUND_SIGNS);
  }

  /** Most texts hold none of the signs that a size is told by. */
  private static boolean hasAny(String text, String signs) {
    for (int i = 0; i < text.length(); i++) {
      if (signs.indexOf(text.charAt(i)) >= 0) {
        return true;
      }
    }
    return false;
  }

  /** True if a digit stands behind a sign of multiplication or H, next to it or behind spaces. */
  public static boolean multiplies(String text) {
    boolean behindSign = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (behindSign && isDigit(c)) {
        return true;
      }
      behindSign =
          isTimes(c)
              || c == 'H'
              || c == 'h'
              || (behindSign && (c == '=' || c == ':' || SPACES.indexOf(c) >= 0));
    }
    return false;
  }

  private static boolean isTimes(char c) {
    return TIMES_SIGNS.indexOf(c) >= 0;
  }

  private static boolean hasAngleUnit(String text) {
    if (text.indexOf('\u00B0') >= 0 || text.indexOf('\u00BA') >= 0) {
      return true;
    }
    for (String word : DEGREES) {
      if (text.contains(word)) {
        return true;
      }
    }
    return false;
  }

  /** The outside diameter in metres in {@code 22 x 1 mm}, where the second figure is a wall. */
  public static Optional<Double> outsideDiameterAndWall(String text) {
    if (!multiplies(text)) {
      return Optional.empty();
    }
    Optional<Double> known = OUTSIDES.find(text);
    return known == null ? OUTSIDES.keep(text, SizesInText.outsideDiameterBeforeWall(text)) : known;
  }

  /**
   * Sizes of the ends of a duct fitting as in {@code 315/315/250} or, from rectangular to round,
   * {@code 315 mmx450 mm-350 mm} with a diameter sign; empty if the text gives fewer than two, or
   * sides of flat ovals as in {@code 400/200-300/200}, which programs write with a stroke.
   */
  public static List<Section> ductEnds(String text) {
    boolean ovals = text.contains("/") && text.contains("-") && OVAL_ENDS.matcher(text).find();
    if (ovals || !mayHoldEnds(text)) {
      return List.of();
    }
    List<Section> apart = SizesInText.ends(text, null);
    return apart.size() > 1 ? List.copyOf(apart) : roundEnds(text);
  }

  /** True if a text has one of the signs that stand between the sizes of two ends. */
  public static boolean mayHoldEnds(String text) {
    return hasAny(text, "-/");
  }

  private static List<Section> roundEnds(String text) {
    List<Section> round = new ArrayList<>();
    for (int mm : ends(text)) {
      if (mm >= 50) {
        round.add(new Section.Round(mm / 1000.0));
      }
    }
    return List.copyOf(round);
  }

  /**
   * Nominal sizes of the ends of a pipe fitting as in {@code 80 mm-50 mm} with signs of a diameter.
   */
  public static List<Integer> mmEnds(String text) {
    if (text.indexOf('-') < 0 || !hasAny(text, ROUND_SIGNS)) {
      return List.of();
    }
    List<Integer> ends = new ArrayList<>();
    for (String part : text.split("-", -1)) {
      Optional<Section> end = diameter(part);
      double mm = end.isPresent() ? end.get().largestSideM() * 1000 : 0;
      if (end.isEmpty()
          || Math.abs(mm - Math.rint(mm)) > 0.01
          || PipeSizes.forNominal((int) Math.rint(mm)).isEmpty()) {
        return List.of();
      }
      ends.add((int) Math.rint(mm));
    }
    return ends;
  }

  /** Nominal sizes of the ends of a pipe fitting as in {@code DN80/80/25} or {@code 80/50}. */
  public static List<Integer> dnEnds(String text) {
    List<Integer> ends = ends(text);
    for (int dn : ends) {
      if (PipeSizes.forNominal(dn).isEmpty()) {
        return List.of();
      }
    }
    return ends;
  }

  private static List<Integer> ends(String text) {
    if (!text.contains("/")) {
      return List.of();
    }
    Matcher m = DN_ENDS.matcher(text);
    List<Integer> ends = new ArrayList<>();
    boolean found = m.find() && !isSide(text, m.start(), m.end());
    for (String end : found ? m.group(1).split("[^\\d]+", -1) : new String[0]) {
      ends.add(Integer.parseInt(end));
    }
    return List.copyOf(ends);
  }

  /** True if a place is one of two sides, as 200/300 is in 400x200/300x200. */
  private static boolean isSide(String text, int from, int to) {
    int before = skipSpaces(text, from - 1, -1);
    int behind = skipSpaces(text, to, 1);
    return (isTimesAt(text, before) && endsFigure(text, skipSpaces(text, before - 1, -1)))
        || (isTimesAt(text, behind) && isDigitAt(text, skipSpaces(text, behind + 1, 1)));
  }

  private static int skipSpaces(String text, int from, int step) {
    int at = from;
    while (at >= 0 && at < text.length() && SPACES.indexOf(text.charAt(at)) >= 0) {
      at += step;
    }
    return at;
  }

  private static boolean isTimesAt(String text, int at) {
    return at >= 0 && at < text.length() && isTimes(text.charAt(at));
  }

  private static boolean isDigitAt(String text, int at) {
    return at >= 0 && at < text.length() && isDigit(text.charAt(at));
  }

  /** A figure ends in a digit, or in mm, cm or the sign of inches behind it. */
  private static boolean endsFigure(String text, int at) {
    return isDigitAt(text, at) || (at > 0 && (text.charAt(at) == 'm' || text.charAt(at) == '"'));
  }

  /** Metres in a unit as people write it. */
  static double unitM(String unit) {
    return switch (unit) {
      case "m", "\u043c" -> 1;
      case "cm", "\u0441\u043c" -> 0.01;
      case "in", "inch", "inches", "\"", "''", "\u2033", "\u201D" -> InchSizes.METRES_PER_INCH;
      case "ft", "foot", "feet" -> InchSizes.METRES_PER_FOOT;
      default -> 0.001;
    };
  }

  /** An angle in degrees as in {@code Bend 45°}; only what a bend can have. */
  public static Optional<Double> angleDeg(String text) {
    if (!hasAngleUnit(text)) {
      return Optional.empty();
    }
    Matcher m = ANGLE.matcher(text);
    while (m.find()) {
      double angle = Double.parseDouble(m.group(1).replace(',', '.'));
      if (angle > 0 && angle <= 180) {
        return Optional.of(angle);
      }
    }
    return Optional.empty();
  }
}
