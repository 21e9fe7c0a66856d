package org.lagwright.ifc.extract.text;

import org.lagwright.ifc.model.Form;

/**
 * The figure beside the word for a bend, as in {@code Bogen 45 DN50} or {@code 90 Elbow}. It has no
 * unit, so it counts as an angle only where nothing around it speaks of a length, a range or a
 * list.
 */
public final class BendAngleInText {

  private static final String BETWEEN = Sizes.SPACES + "_-";

  /** Words behind a figure that make it a length, or the first of two sides. */
  private static final String LENGTHS = " mm cm m in inch inches zoll ft feet x мм см м х ";

  /** Angles of one or two digits. */
  private static final int MOST_DIGITS = 2;

  private static final Remembered<Double> KNOWN = new Remembered<>();

  private BendAngleInText() {}

  /** The figure; NaN if there is none, or more than one. */
  public static double figure(String text) {
    Double known = KNOWN.find(text);
    return known == null ? KNOWN.keep(text, read(Words.fold(text))) : known;
  }

  private static double read(String folded) {
    double found = Double.NaN;
    for (Word word : Words.of(Form.BEND)) {
      int at = word.indexIn(folded);
      if (at >= 0) {
        double figure = beside(folded, at, at + word.text().length());
        if (!Double.isNaN(figure) && !Double.isNaN(found) && figure != found) {
          return Double.NaN;
        }
        found = Double.isNaN(figure) ? found : figure;
      }
    }
    return found;
  }

  private static double beside(String folded, int at, int wordEnd) {
    int from = skip(folded, Word.endOfCompound(folded, wordEnd), BETWEEN);
    int to = endOfFigure(folded, from);
    if (to > from) {
      return isBare(folded, to) ? number(folded, from, to) : Double.NaN;
    }
    int before = endOfFigure(folded, 0);
    boolean begins =
        before > 0 && skip(folded, before, BETWEEN) == Word.startOfCompound(folded, at);
    return begins ? number(folded, 0, before) : Double.NaN;
  }

  private static int skip(String text, int from, String signs) {
    int at = from;
    while (at < text.length() && signs.indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }

  /** Behind the last digit of a figure, with its decimals; where it begins if it is too long. */
  private static int endOfFigure(String text, int from) {
    int end = endOfDigits(text, from);
    if (end == from || end - from > MOST_DIGITS) {
      return from;
    }
    boolean point = end < text.length() && (text.charAt(end) == '.' || text.charAt(end) == ',');
    int decimals = point ? endOfDigits(text, end + 1) : end;
    return decimals > end + 1 ? decimals : end;
  }

  private static int endOfDigits(String text, int from) {
    int end = from;
    while (end < text.length() && Sizes.isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static double number(String text, int from, int to) {
    return Double.parseDouble(text.substring(from, to).replace(',', '.'));
  }

  /** True if the figure that ends here stands for itself; behind a colon follows a number. */
  private static boolean isBare(String text, int end) {
    if (end == text.length() || text.charAt(end) == ':') {
      return true;
    }
    char next = text.charAt(end);
    int behind = skip(text, end, BETWEEN + "(),;");
    boolean another = next != ')' && behind < text.length() && Sizes.isDigit(text.charAt(behind));
    if (behind == end || another) {
      return false;
    }
    String word = text.substring(behind, Word.endOfCompound(text, behind));
    return word.isEmpty() ? behind == text.length() : !LENGTHS.contains(" " + word + " ");
  }
}
