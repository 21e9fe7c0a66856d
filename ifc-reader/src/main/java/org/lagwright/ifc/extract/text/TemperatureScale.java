package org.lagwright.ifc.extract.text;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.DegreesInName;
import org.lagwright.ifc.schema.IfcRecord;

/** The scale that temperatures are written in. */
public enum TemperatureScale {
  CELSIUS,
  KELVIN,
  FAHRENHEIT,
  RANKINE,

  /** A unit that says neither by its name nor by its factor what it is; nothing follows from it. */
  UNKNOWN;

  /**
   * Below this no medium in a building is that cold in kelvin; the value is degC (files do that).
   */
  private static final double COLDEST_KELVIN = 150;

  private static final double ZERO_CELSIUS_K = 273.15;
  private static final double ZERO_CELSIUS_R = 491.67;
  private static final double ZERO_CELSIUS_F = 32;
  private static final double PER_KELVIN = 1.8;

  /** Stands for the degree sign in some names, and counts as a letter. */
  private static final char MASCULINE_ORDINAL = '\u00BA';

  /** Rounding of factors as files write them. */
  private static final double FACTOR_TOLERANCE = 1e-3;

  /** Stems of words for temperature, folded: of most languages, of Czech, Finnish and Russian. */
  private static final String[] STEMS = {
    "temp", "teplot", "lampotila", "\u0442\u0435\u043c\u043f\u0435\u0440\u0430\u0442\u0443\u0440"
  };

  private static final Remembered<Boolean> NAMED = new Remembered<>();

  /** Units made of units are followed so far. */
  private static final int MAX_DEPTH = 5;

  /** By the name of a unit, and where that tells nothing by what one degree of it is. */
  static TemperatureScale of(IfcRecord unit) {
    return of(unit, 0);
  }

  private static TemperatureScale of(IfcRecord unit, int depth) {
    TemperatureScale named = named(Units.name(unit));
    return named != UNKNOWN || depth > MAX_DEPTH ? named : byFactor(unit, depth);
  }

  /** The scale that the name of a property says; unknown if it says none. */
  static TemperatureScale inName(String property) {
    return named(DegreesInName.unit(property));
  }

  /** True if the name of a property says that it is a temperature. */
  public static boolean isNamed(String property) {
    Boolean known = NAMED.find(property);
    return known == null ? NAMED.keep(property, readNamed(property)) : known;
  }

  private static boolean readNamed(String property) {
    String folded = Words.fold(property);
    for (String stem : STEMS) {
      if (folded.contains(stem)) {
        return true;
      }
    }
    return inName(property) != UNKNOWN;
  }

  /** {@code KELVIN}, {@code DEGREE_CELSIUS}, {@code °F}, {@code deg F}, {@code Fahrenheit}. */
  private static TemperatureScale named(@Nullable String name) {
    String upper = name == null ? "" : name.toUpperCase(Locale.ROOT);
    for (TemperatureScale scale : values()) {
      if (scale != UNKNOWN && upper.contains(scale.name())) {
        return scale;
      }
    }
    return switch (withoutDegree(upper)) {
      case "C" -> CELSIUS;
      case "K" -> KELVIN;
      case "F" -> FAHRENHEIT;
      case "R" -> RANKINE;
      default -> UNKNOWN;
    };
  }

  /** The letters of a name, without a degree before them. */
  private static String withoutDegree(String upper) {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < upper.length(); i++) {
      char c = upper.charAt(i);
      if (Character.isLetter(c) && c != MASCULINE_ORDINAL) {
        letters.append(c);
      }
    }
    String left = letters.toString();
    for (String degree : new String[] {"DEGREES", "DEGREE", "DEG"}) {
      if (left.startsWith(degree)) {
        return left.substring(degree.length());
      }
    }
    return left;
  }

  /**
   * One degree Fahrenheit is 5/9 kelvin, and nobody writes degrees Rankine without saying so;
   * kelvin with another zero are degC.
   */
  private static TemperatureScale byFactor(IfcRecord unit, int depth) {
    IfcRecord conversion = unit.ref("ConversionFactor");
    IfcRecord base = conversion == null ? null : conversion.ref("UnitComponent");
    double factor = conversion == null ? Double.NaN : conversion.number("ValueComponent");
    if (base == null) {
      return UNKNOWN;
    }
    TemperatureScale of = of(base, depth + 1);
    boolean metric = of == KELVIN || of == CELSIUS;
    if (metric && Math.abs(factor - 1 / PER_KELVIN) < FACTOR_TOLERANCE) {
      return FAHRENHEIT;
    }
    if (metric && Math.abs(factor - 1) < FACTOR_TOLERANCE) {
      double offset = unit.number("ConversionOffset");
      return Double.isFinite(offset) && offset != 0 ? CELSIUS : of;
    }
    return UNKNOWN;
  }

  /** A temperature in degC; impossible kelvins count as degC; NaN on an unknown scale. */
  double celsius(double value) {
    return switch (this) {
      case CELSIUS -> value;
      case KELVIN -> Math.abs(value) >= COLDEST_KELVIN ? value - ZERO_CELSIUS_K : value;
      case FAHRENHEIT -> (value - ZERO_CELSIUS_F) / PER_KELVIN;
      case RANKINE -> (value - ZERO_CELSIUS_R) / PER_KELVIN;
      case UNKNOWN -> Double.NaN;
    };
  }
}
