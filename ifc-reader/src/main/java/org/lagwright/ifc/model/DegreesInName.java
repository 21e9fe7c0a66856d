package org.lagwright.ifc.model;

/**
 * The unit of temperature that some write behind the name of a property: {@code Supply Temperature
 * (°F)}, {@code Temperatur in °C}.
 */
public final class DegreesInName {

  /** The sign of a degree, and the ordinal that looks like it. */
  private static final String DEGREES = "\u00B0\u00BA";

  private static final String UNITS = "CFK";
  private static final String IN = " in";

  private DegreesInName() {}

  /** {@code °F}, or {@code K} if it stands in brackets; empty if the name says none. */
  public static String unit(String name) {
    int from = from(name);
    boolean bracketed = from >= 0 && isBracket(name, from, "([");
    return from < 0
        ? ""
        : name.substring(from + (bracketed ? 1 : 0), name.length() - (bracketed ? 1 : 0));
  }

  /** The name without its unit, and without an {@code in} before that. */
  public static String without(String name) {
    int from = from(name);
    if (from < 0) {
      return name;
    }
    String bare = name.substring(0, from).strip();
    return bare.endsWith(IN) ? bare.substring(0, bare.length() - IN.length()) : bare;
  }

  /** Where the unit begins, or its bracket; -1 if there is none. */
  private static int from(String name) {
    int last = name.length() - 1;
    boolean bracketed = isBracket(name, last, ")]");
    int letter = bracketed ? last - 1 : last;
    if (letter < 2 || UNITS.indexOf(name.charAt(letter)) < 0) {
      return -1;
    }
    boolean degree = DEGREES.indexOf(name.charAt(letter - 1)) >= 0;
    int from = letter - (degree ? 1 : 0) - (bracketed ? 1 : 0);
    boolean clear = bracketed ? isBracket(name, from, "([") : degree;
    return clear && from > 0 ? from : -1;
  }

  private static boolean isBracket(String name, int at, String brackets) {
    return at >= 0 && brackets.indexOf(name.charAt(at)) >= 0;
  }
}
