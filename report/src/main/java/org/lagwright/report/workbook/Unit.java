package org.lagwright.report.workbook;

import java.util.Arrays;
import java.util.Set;

/**
 * A unit of our figures and the customary unit of the United States for it. Foot, inch, gallon and
 * pound are exact by definition; Btu is that of the International Table, 1055.05585262 J (NIST
 * Special Publication 811, appendix B).
 */
enum Unit {
  NONE("", "", 1),
  METRE("m", "ft", 1 / Unit.FOOT_M),
  SQUARE_METRE("m2", "ft2", 1 / (Unit.FOOT_M * Unit.FOOT_M)),
  CUBIC_METRE("m3", "ft3", 1 / (Unit.FOOT_M * Unit.FOOT_M * Unit.FOOT_M)),
  MILLIMETRE("mm", "in", 1 / 25.4),
  CELSIUS("degC", "degF", 1.8),
  KELVIN("K", "degF difference", 1.8),
  WATT_PER_METRE("W/m", "Btu/(h ft)", 3600 / 1055.05585262 * Unit.FOOT_M),
  METRE_PER_SECOND("m/s", "ft/s", 1 / Unit.FOOT_M),
  LITRE("l", "gal", 1 / 3.785411784),
  KILOGRAM_PER_YEAR("kg/year", "lb/year", 1 / 0.45359237),
  HOUR_PER_METRE("h/m", "h/ft", Unit.FOOT_M),
  HOUR_PER_SQUARE_METRE("h/m2", "h/ft2", Unit.FOOT_M * Unit.FOOT_M),
  HOUR_PER_CUBIC_METRE("h/m3", "h/ft3", Unit.FOOT_M * Unit.FOOT_M * Unit.FOOT_M),
  METRE_PER_PIECE("m/pc", "ft/pc", 1 / Unit.FOOT_M),
  AREA_RATIO("m2/m2", "ft2/ft2", 1),
  SQUARE_METRE_PER_METRE("m2/m", "ft2/ft", 1 / Unit.FOOT_M),
  CUBIC_METRE_PER_METRE("m3/m", "ft3/ft", 1 / (Unit.FOOT_M * Unit.FOOT_M)),
  PER_METRE("1/m", "1/ft", Unit.FOOT_M),
  PER_SQUARE_METRE("1/m2", "1/ft2", Unit.FOOT_M * Unit.FOOT_M),
  PER_LITRE("1/l", "1/gal", 3.785411784),
  /** Text that is a unit. */
  WORD("", "", 1),
  /** Text with sizes in it: {@code DN50 / 60.3 mm}. */
  SIZES("", "", 1);

  private static final double FOOT_M = 0.3048;

  /** Headings over text with sizes in it. */
  private static final Set<String> OVER_SIZES =
      Set.of(
          "Size",
          "Ends",
          "Build-up",
          "Layer",
          "Description",
          "What",
          "Each",
          "Sold as",
          "A: size",
          "B: size",
          "Size before",
          "Size now",
          "Thickness by",
          "Insulation in the model",
          "Lining in the model");

  private final String metric;
  private final String us;
  private final double factor;

  Unit(String metric, String us, double factor) {
    this.metric = metric;
    this.us = us;
    this.factor = factor;
  }

  /** The unit that a word names; none where it is no unit of ours. */
  static Unit ofWord(String word) {
    return Arrays.stream(values())
        .filter(unit -> !unit.metric.isEmpty() && unit.metric.equals(word))
        .findFirst()
        .orElse(NONE);
  }

  /** The unit that prices for one such unit have. */
  static Unit perWord(String word) {
    return ofWord("1/" + word);
  }

  /** What stands under a heading: the first word in it that is a unit tells. */
  static Unit ofHeading(String heading) {
    if (OVER_SIZES.contains(heading)) {
      return SIZES;
    }
    return heading.equals("Unit") || heading.equals("Unit of norm")
        ? WORD
        : Arrays.stream(heading.split(" "))
            .map(Unit::ofWord)
            .filter(unit -> unit != NONE)
            .findFirst()
            .orElse(NONE);
  }

  /** Its word in the United States. */
  String us() {
    return us;
  }

  /** A figure in the unit of the United States. */
  double toUs(double figure) {
    return this == CELSIUS ? figure * factor + 32 : figure * factor;
  }
}
