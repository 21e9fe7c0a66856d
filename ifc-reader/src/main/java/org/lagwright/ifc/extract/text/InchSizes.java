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
   * The DN of each size in inches that a text holds: behind the names of such sizes, NPS and that
   * of a pipe thread, else with a sign of inches, which some write behind DN too.
   */
  public static List<Integer> in(String text) {
    if (!mayBeNamed(text) && !mayHoldSigned(text)) {
      return List.of();
    }
    List<Integer> sizes = new ArrayList<>(2);
    FigureCursor cursor = new FigureCursor(text);
    for (int at = 0; at < text.length(); at++) {
      int figure = behindName(text, at);
      if (figure > 0) {
        cursor.goTo(figure);
        add(text, cursor, text.charAt(at) != 'D', sizes);
      }
    }
    if (sizes.isEmpty()) {
      addBehindSigns(text, sizes);
      cursor.goTo(0);
      while (cursor.next()) {
        add(text, cursor, false, sizes);
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
        add(text, cursor, false, to);
      }
    }
  }

  /** True if a text may hold NPS or Rp; behind DN only what has a sign is in inches. */
  private static boolean mayBeNamed(String text) {
    for (int i = 1; i < text.length(); i++) {
      char c = text.charAt(i);
      char before = text.charAt(i - 1);
      if ((c == 'P' && before == 'N') || (c == 'p' && before == 'R')) {
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
      boolean figure =
          Sizes.isDigit(c) || (c > '\u007F' && FigureCursor.ONE_SIGN_FRACTIONS.indexOf(c) >= 0);
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

  /** Place of the figure behind a name of sizes in inches; 0 if none stands there. */
  private static int behindName(String text, int at) {
    String name = text.charAt(at) == 'N' ? "NPS" : text.charAt(at) == 'D' ? "DN" : "Rp";
    if (!text.startsWith(name, at) || (at > 0 && Character.isLetter(text.charAt(at - 1)))) {
      return 0;
    }
    int figure = at + name.length();
    while (figure < text.length() && Sizes.SPACES.indexOf(text.charAt(figure)) >= 0) {
      figure++;
    }
    return figure < text.length() && Sizes.isDigit(text.charAt(figure)) ? figure : 0;
  }

  /** Adds the figures that stand there, as far as they are nominal sizes in inches. */
  private static void add(String text, FigureCursor cursor, boolean named, List<Integer> to) {
    do {
      int from = cursor.at();
      FigureCursor.Figure figure = named ? cursor.takeInches() : cursor.take();
      boolean inches =
          figure != null
              && (isSigned(figure) || (named && figure.unit() == null))
              && !isBehindFeet(text, from)
              && !isRestOfWord(text, from, figure);
      int dn = figure != null && inches ? dn(figure.value() * 1000 * METRES_PER_INCH) : 0;
      if (dn > 0) {
        to.add(dn);
      }
    } while (cursor.takeSign(Sizes.TIMES_SIGNS));
  }

  /** True for a fraction whose whole inches stand in a word, as in R1 1/2". */
  private static boolean isRestOfWord(String text, int from, FigureCursor.Figure figure) {
    return figure.value() < 1
        && from > 1
        && (text.charAt(from - 1) == ' ' || text.charAt(from - 1) == '-')
        && Sizes.isDigit(text.charAt(from - 2));
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
