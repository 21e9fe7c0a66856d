package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;

/**
 * Nominal pipe sizes in inches and the DN that stands for the same pipe: ASME B36.10M and ISO 6708,
 * from memory.
 */
final class InchSizes {

  static final double METRES_PER_INCH = 0.0254;
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
  static boolean isUnit(double lengthUnitM) {
    return Math.abs(lengthUnitM - METRES_PER_INCH) < 1e-6
        || Math.abs(lengthUnitM - METRES_PER_FOOT) < 1e-6;
  }

  /** The DN of a nominal size in millimetres that is one of whole or half inches; 0 if none is. */
  static int dn(double mm) {
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

  /** The DN of each size with a sign of inches, or behind NPS, that a text holds. */
  static List<Integer> in(String text) {
    List<Integer> sizes = List.of();
    int nps = text.indexOf("NPS");
    boolean signed = text.contains("''");
    for (int i = 0; i < SIGNS.length() && !signed; i++) {
      signed = text.indexOf(SIGNS.charAt(i)) >= 0;
    }
    if (!signed && nps < 0) {
      return sizes;
    }
    sizes = new ArrayList<>(2);
    FigureCursor cursor = new FigureCursor(text);
    while (cursor.next()) {
      do {
        int dn = dn(text, nps, cursor);
        if (dn > 0) {
          sizes.add(dn);
        }
      } while (cursor.takeSign(Sizes.TIMES_SIGNS));
    }
    return sizes;
  }

  /** Takes the figure that stands there; 0 if it is no nominal size in inches. */
  private static int dn(String text, int nps, FigureCursor cursor) {
    int from = cursor.at();
    FigureCursor.Figure figure = cursor.take();
    boolean inches = figure != null && (isSigned(figure) || isBehindNps(text, nps, from));
    return figure != null && inches && !isBehindFeet(text, from)
        ? dn(figure.value() * 1000 * METRES_PER_INCH)
        : 0;
  }

  /** An {@code in} may be a word. */
  private static boolean isSigned(FigureCursor.Figure figure) {
    String unit = figure.unit();
    return unit != null && (SIGNS.contains(unit) || unit.equals("''"));
  }

  private static boolean isBehindNps(String text, int nps, int at) {
    return nps >= 0 && at > nps && text.substring(nps + 3, at).isBlank();
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
