package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Nominal pipe sizes in inches and the DN that stands for the same pipe: ASME B36.10M and ISO 6708,
 * from memory.
 */
public final class InchSizes {

  /** By definition since 1959. */
  public static final double METRES_PER_INCH = 0.0254;

  static final double METRES_PER_FOOT = 0.3048;

  /** Figures are rounded to hundredths of a millimetre. */
  private static final double WITHIN_MM = 0.05;

  private static final double[] INCHES = {
    0.125, 0.25, 0.375, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6
  };

  private static final int[] DN = {6, 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 90, 100, 125, 150};

  /** From 8 inches on a size of so many inches is DN 25 times as many. */
  private static final int DN_PER_INCH = 25;

  private static final int LARGEST_INCHES = 48;

  private static final String SIGNS = "\"\u2033\u201D";

  /** Sizes of pipes and their threads, behind which whole figures are in inches. */
  private static final String[] NAMES = {"NPS", "Rp"};

  /**
   * Behind DN only what has a sign is in inches, behind other threads a fraction too: EN 10226-1,
   * ISO 228-1, ASME B1.20.1, from memory. Whole and decimal figures there may be anything.
   */
  private static final String[] SHORT_NAMES = {"DN", "Rc", "BSP", "NPT", "R", "G"};

  private InchSizes() {}

  /** True if a file counts in feet or inches. */
  public static boolean isUnit(double lengthUnitM) {
    return Math.abs(lengthUnitM - METRES_PER_INCH) < 1e-6
        || Math.abs(lengthUnitM - METRES_PER_FOOT) < 1e-6;
  }

  /** The DN of a nominal size in millimetres that is one of whole or half inches; 0 if none is. */
  public static int dn(double mm) {
    double inches = mm / (1000 * METRES_PER_INCH);
    for (int i = 0; i < INCHES.length; i++) {
      if (Math.abs(inches - INCHES[i]) * 1000 * METRES_PER_INCH < WITHIN_MM) {
        return DN[i];
      }
    }
    long whole = Math.round(inches);
    boolean large = whole >= 8 && whole <= LARGEST_INCHES && whole % 2 == 0;
    return large && Math.abs(inches - whole) * 1000 * METRES_PER_INCH < WITHIN_MM
        ? (int) whole * DN_PER_INCH
        : 0;
  }

  /**
   * The DN of each size in inches that a text holds: behind the names of such sizes, NPS and those
   * of pipe threads, else with a sign of inches, which some write behind DN too.
   */
  public static List<Integer> in(String text) {
    if (!mayBeNamed(text) && !mayHoldSigned(text)) {
      return List.of();
    }
    List<Integer> sizes = new ArrayList<>(2);
    FigureCursor cursor = new FigureCursor(text);
    for (int at = 0; at < text.length(); at++) {
      int figure = behindName(NAMES, text, at);
      int signed = figure > 0 ? 0 : behindName(SHORT_NAMES, text, at);
      if (figure > 0 || signed > 0) {
        cursor.goTo(figure + signed);
        add(text, cursor, text.charAt(at) != 'D', figure > 0, sizes);
      }
    }
    if (sizes.isEmpty()) {
      addBehindSigns(text, sizes);
      cursor.goTo(0);
      while (cursor.next()) {
        add(text, cursor, false, false, sizes);
      }
    }
    return sizes;
  }

  /** A figure right behind the sign of a diameter, which is a letter, does not stand by itself. */
  private static void addBehindSigns(String text, List<Integer> to) {
    FigureCursor cursor = new FigureCursor(text);
    for (int at = 1; at < text.length(); at++) {
      boolean sign = Sizes.ROUND_SIGNS.indexOf(text.charAt(at - 1)) >= 0;
      if (sign && Character.isLetter(text.charAt(at - 1)) && Sizes.isDigit(text.charAt(at))) {
        cursor.goTo(at);
        add(text, cursor, false, false, to);
      }
    }
  }

  /** True if a text may hold a name of sizes in inches other than DN, which needs a sign. */
  private static boolean mayBeNamed(String text) {
    for (int i = 1; i < text.length(); i++) {
      char c = text.charAt(i - 1);
      if ((c == 'N' || c == 'B' || c == 'R' || c == 'G')
          && (behindName(NAMES, text, i - 1) > 0 || behindName(SHORT_NAMES, text, i - 1) > 0)) {
        return true;
      }
    }
    return false;
  }

  /** True if a sign of inches, or the first letter of a word for them, stands behind a figure. */
  private static boolean mayHoldSigned(String text) {
    boolean behindFigure = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean figure = isFigure(c);
      if (behindFigure && !figure) {
        if (SIGNS.indexOf(c) >= 0 || "'iIzZ".indexOf(c) >= 0) {
          return true;
        }
        behindFigure = Sizes.SPACES.indexOf(c) >= 0;
      } else {
        behindFigure = figure;
      }
    }
    return false;
  }

  /** Place of the figure behind one of some names of sizes; 0 if none stands there. */
  private static int behindName(String[] names, String text, int at) {
    for (String name : names) {
      if (text.startsWith(name, at) && (at == 0 || !Character.isLetter(text.charAt(at - 1)))) {
        int figure = at + name.length();
        while (figure < text.length() && Sizes.SPACES.indexOf(text.charAt(figure)) >= 0) {
          figure++;
        }
        return figure < text.length() && isFigure(text.charAt(figure)) ? figure : 0;
      }
    }
    return 0;
  }

  private static boolean isFigure(char c) {
    return Sizes.isDigit(c) || (c > '\u007F' && FigureCursor.ONE_SIGN_FRACTIONS.indexOf(c) >= 0);
  }

  /**
   * Adds the figures that stand there, as far as they are nominal sizes in inches.
   *
   * @param fractions true if fractions are such without a sign
   * @param whole true if whole figures are such without a sign
   */
  private static void add(
      String text, FigureCursor cursor, boolean fractions, boolean whole, List<Integer> to) {
    do {
      int from = cursor.at();
      FigureCursor.Figure figure = fractions ? cursor.takeInches() : cursor.take();
      boolean inches =
          figure != null
              && (isSigned(figure) || (whole && figure.unit() == null))
              && !isBehindFeet(text, from)
              && !isRestOfWord(text, from, figure);
      int dn = figure != null && inches ? dn(figure.value() * 1000 * METRES_PER_INCH) : 0;
      if (dn > 0) {
        to.add(dn);
      }
    } while (cursor.takeSign(Sizes.TIMES_SIGNS));
  }

  /**
   * True for a fraction or its lower figure, of which the rest stands in a word: KH1 1/2", KH3/4".
   */
  private static boolean isRestOfWord(String text, int from, FigureCursor.Figure figure) {
    if (from < 2 || !Sizes.isDigit(text.charAt(from - 2))) {
      return false;
    }
    char before = text.charAt(from - 1);
    boolean lower = before == '/' && from > 2 && Character.isLetter(text.charAt(from - 3));
    return lower || (figure.value() < 1 && (before == ' ' || before == '-'));
  }

  /** An {@code in} may be a word. */
  static boolean isSigned(FigureCursor.Figure figure) {
    String unit = figure.unit();
    return unit != null && (SIGNS.contains(unit) || unit.equals("''"));
  }

  /** The inches of {@code 10'-6"} are no size, and seconds of an angle are no inches. */
  private static boolean isBehindFeet(String text, int at) {
    int before = at - 1;
    while (before >= 0 && (text.charAt(before) == ' ' || text.charAt(before) == '-')) {
      before--;
    }
    boolean foot = before >= 0 && text.charAt(before) == '\'';
    return foot && (before == 0 || text.charAt(before - 1) != '\'');
  }
}
