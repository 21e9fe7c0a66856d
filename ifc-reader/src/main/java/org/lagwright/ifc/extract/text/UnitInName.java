package org.lagwright.ifc.extract.text;

import org.jspecify.annotations.Nullable;

/** The unit of length that the name of a property says. */
final class UnitInName {

  private static final LatePattern IN_BRACKETS =
      new LatePattern(
          "[\\[(](?:\u00B0[cf]|k|mm|cm|m|\u043c\u043c|\u0441\u043c|\u043c|in|inch|inches|\"|''|ft|feet|foot|\u00B0|deg|grad)[\\])]");

  /** Units of length in names, millimetres first, which are written without a gap too. */
  private static final String[] UNITS = {
    "mm",
    "cm",
    "m",
    "\u043c\u043c",
    "\u0441\u043c",
    "\u043c",
    "inch",
    "inches",
    "ft",
    "feet",
    "foot"
  };

  /** Units of length in names if they stand in brackets; otherwise they may mean an inlet. */
  private static final String[] UNITS_IN_BRACKETS = {"in", "\"", "''"};

  private UnitInName() {}

  /** A folded name without a unit in brackets, of whatever quantity. */
  static String withoutBracketed(String folded) {
    return folded.indexOf('(') >= 0 || folded.indexOf('[') >= 0
        ? IN_BRACKETS.matcher(folded).replaceAll("")
        : folded;
  }

  /** A bare name without the unit that it ends in, also without an {@code in} before that. */
  static String withoutUnit(String bare, String folded) {
    int from = unitAtEnd(folded);
    if (from < 0) {
      return bare;
    }
    String named = bare.substring(0, Math.max(0, bare.length() - (folded.length() - from)));
    boolean in = folded.substring(0, from).trim().endsWith(" in");
    return in ? named.substring(0, named.length() - 2) : named;
  }

  static boolean isInInchesOrFeet(String name) {
    String unit = unitOf(name);
    return unit != null && InchSizes.isUnit(Sizes.unitM(unit));
  }

  /** The unit of length that a name says; null if it says none. */
  static @Nullable String unitOf(String name) {
    String folded = Words.fold(name);
    String bracketed = bracketed(UNITS, folded);
    bracketed = bracketed == null ? bracketed(UNITS_IN_BRACKETS, folded) : bracketed;
    int from = bracketed == null ? unitAtEnd(folded) : -1;
    return from < 0 ? bracketed : folded.substring(from);
  }

  private static @Nullable String bracketed(String[] units, String folded) {
    for (String unit : units) {
      if (folded.contains("(" + unit + ")") || folded.contains("[" + unit + "]")) {
        return unit;
      }
    }
    return null;
  }

  /**
   * Where the unit begins that a folded name ends in, as a word of its own; {@code mm} may also
   * stand right behind a name; -1 if there is none.
   */
  private static int unitAtEnd(String folded) {
    for (String unit : UNITS) {
      int from = folded.length() - unit.length();
      boolean apart = from > 0 && !Character.isLetterOrDigit(folded.charAt(from - 1));
      if (folded.endsWith(unit) && (apart || (from > 0 && unit.equals(UNITS[0])))) {
        return from;
      }
    }
    return -1;
  }
}
