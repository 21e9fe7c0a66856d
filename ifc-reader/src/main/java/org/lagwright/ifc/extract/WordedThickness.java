package org.lagwright.ifc.extract;

import java.util.Optional;
import java.util.regex.Matcher;

/** What texts such as "elastomeric foam 25 mm" tell of insulation. */
final class WordedThickness {

  private static final LatePattern MILLIMETRES =
      new LatePattern("(\\d+(?:[.,]\\d+)?)\\s*mm(?![\\p{L}\\d\u00B2\u00B3])");

  private static final LatePattern FIGURES =
      new LatePattern("\\d+(?:[.,]\\d+)?\\s*(?:mm|cm|m|in)?(?!\\p{L})");

  private static final LatePattern WORD = new LatePattern("\\p{L}{2}");

  /** Signs between figures of a size or a range, or before a diameter. */
  private static final String OF_A_SIZE = "/x\u00D7*=\u00D8\u00F8\u2300\u2205+";

  private WordedThickness() {}

  /** The one figure in millimetres, in metres; empty if there are more, or if it may be a size. */
  static Optional<Double> metres(String text) {
    Matcher found = MILLIMETRES.matcher(text);
    if (!found.find() || isOfASize(text.substring(0, found.start()))) {
      return Optional.empty();
    }
    double thicknessM = Double.parseDouble(found.group(1).replace(',', '.')) / 1000;
    return found.find() || !Thicknesses.isPossible(thicknessM)
        ? Optional.empty()
        : Optional.of(thicknessM);
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
    return Sizes.isDigit(last) || sign || range || Words.line(word) != null;
  }

  /** True if a text says that there is insulation: it has words, and none of them denies it. */
  static boolean says(String text) {
    String words = FIGURES.matcher(text).replaceAll(" ");
    return WORD.matcher(words).find() && !Words.isNone(text);
  }

  /** True for a single word that denies insulation, and for one such before its name. */
  static boolean denies(String text) {
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
