package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Property;

/** Which property answers which question, by its name in any of several languages. */
public final class PropertyNames {

  /** The questions of property-names.txt. */
  public enum Role {
    OUTSIDE_DIAMETER,
    INSIDE_DIAMETER,
    WALL,
    NOMINAL,
    NOMINAL_UNIT,
    SECOND_NOMINAL,
    DIAMETER,
    WIDTH,
    HEIGHT,
    SIZE,
    OVERALL_SIZE,
    FORM,
    SHAPE,
    LENGTH,
    ANGLE,
    BEND_RADIUS,
    ECCENTRICITY,
    BRANCH_LENGTH,
    BRANCH_NOMINAL,
    INSULATION_THICKNESS,
    INSULATION_MATERIAL,
    INSULATION_OR_SHUT_OFF,
    LINING_THICKNESS,
    LINING,
    COVERING_THICKNESS,
    EXTERNAL,
    PORT_TEMPERATURE
  }

  /** Roles by bare name as in property-names.txt, as bits: 1 shifted by the ordinal of the role. */
  private static final Map<String, Integer> ROLES = new HashMap<>();

  /**
   * Roles by name as written, since the same few names stand on every element; a file with more
   * names than any real one has is not remembered further.
   */
  private static final Map<String, Integer> SEEN = new ConcurrentHashMap<>();

  private static final int MOST_NAMES = 10_000;

  /** No side of a duct in a building is wider. */
  private static final double LARGEST_SIDE_M = 10;

  /** No pipe or round duct in a building is wider. */
  private static final double LARGEST_DIAMETER_M = 3;

  private static final double THICKEST_WALL_M = 0.2;

  /** No side or wall of a pipe or duct is smaller. */
  private static final double SMALLEST_M = 1e-4;

  private static final double MILLIMETRE_M = 0.001;

  private static final LatePattern WRITTEN =
      new LatePattern("([+-]?\\d+(?:[.,]\\d*)?)\\s*(" + Sizes.UNIT + ")?");
  private static final LatePattern UNIT_IN_BRACKETS =
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

  private static final LatePattern NUMBER = new LatePattern("[+-]?\\d+(\\.\\d*)?");

  static {
    for (String line : Resource.lines("property-names.txt")) {
      int colon = line.indexOf(':');
      Role role = Role.valueOf(line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_'));
      for (String name : line.substring(colon + 1).split(",")) {
        String bare = name.trim();
        ROLES.put(bare, ROLES.getOrDefault(bare, 0) | bit(role));
      }
    }
  }

  private PropertyNames() {}

  /** What is asked of an element when its place and its insulation are told. */
  private static final int ASKED_LAST =
      bit(Role.INSULATION_THICKNESS)
          | bit(Role.INSULATION_MATERIAL)
          | bit(Role.INSULATION_OR_SHUT_OFF)
          | bit(Role.LINING_THICKNESS)
          | bit(Role.LINING)
          | bit(Role.COVERING_THICKNESS)
          | bit(Role.EXTERNAL);

  /**
   * What is read as a plain length. A name in inches or feet answers no other question: texts of
   * sizes are read by themselves, and so many inches of pipe are its nominal size.
   */
  private static final int LENGTHS =
      bit(Role.OUTSIDE_DIAMETER)
          | bit(Role.INSIDE_DIAMETER)
          | bit(Role.WALL)
          | bit(Role.WIDTH)
          | bit(Role.HEIGHT)
          | bit(Role.LENGTH)
          | bit(Role.BEND_RADIUS)
          | bit(Role.ECCENTRICITY)
          | bit(Role.BRANCH_LENGTH)
          | bit(Role.INSULATION_THICKNESS)
          | bit(Role.LINING_THICKNESS)
          | bit(Role.COVERING_THICKNESS);

  private static final int DIAMETERS =
      bit(Role.OUTSIDE_DIAMETER) | bit(Role.INSIDE_DIAMETER) | bit(Role.DIAMETER);

  /** A role as a bit of {@link #roles}. */
  public static int bit(Role role) {
    return 1 << role.ordinal();
  }

  /** Properties that answer a question, in the order of the element. */
  public static List<Property> listOf(List<Property> properties, Role role) {
    List<Property> found = List.of();
    for (int i = 0; i < properties.size(); i++) {
      Property property = properties.get(i);
      if (answers(property, role)) {
        found = found.isEmpty() ? new ArrayList<>(2) : found;
        found.add(property);
      }
    }
    return found;
  }

  /** True if one of the properties answers a question. */
  public static boolean anyAnswers(List<Property> properties, Role role) {
    for (int i = 0; i < properties.size(); i++) {
      if (answers(properties.get(i), role)) {
        return true;
      }
    }
    return false;
  }

  /** True if a property answers a question. */
  public static boolean answers(Property property, Role role) {
    return (roles(property.name()) & bit(role)) != 0;
  }

  /** True for a property that is still asked for once its element is measured. */
  public static boolean areAskedLast(Property property) {
    return (roles(property.name()) & ASKED_LAST) != 0;
  }

  /** True if a property of this name answers some question. */
  public static boolean areWanted(String name) {
    return roles(name) != 0;
  }

  /** The questions that a property of this name answers, as bits. */
  public static int roles(String name) {
    Integer known = SEEN.get(name);
    if (known == null) {
      known = rolesAsWritten(name);
      if (known == 0) {
        known = NameCode.rolesWithout(name);
      }
      if (known != 0 && isInInchesOrFeet(name)) {
        known &= LENGTHS;
      }
      if (SEEN.size() < MOST_NAMES) {
        SEEN.put(name, known);
      }
    }
    return known;
  }

  /** The questions that a name answers as it is, with or without a unit at its end. */
  static int rolesAsWritten(String name) {
    String bare = bare(name);
    int roles = ROLES.getOrDefault(bare, 0);
    return roles == 0 ? ROLES.getOrDefault(withoutUnit(bare, Words.fold(name)), 0) : roles;
  }

  /** A bare name without the unit that it ends in, also without an {@code in} before that. */
  private static String withoutUnit(String bare, String folded) {
    int from = unitAtEnd(folded);
    if (from < 0) {
      return bare;
    }
    String named = bare.substring(0, Math.max(0, bare.length() - (folded.length() - from)));
    boolean in = folded.substring(0, from).trim().endsWith(" in");
    return in ? named.substring(0, named.length() - 2) : named;
  }

  /** The name without case, accents, spaces, punctuation, and a unit in brackets. */
  private static String bare(String name) {
    StringBuilder bare = new StringBuilder(name.length());
    String folded = Words.fold(name);
    if (folded.indexOf('(') >= 0 || folded.indexOf('[') >= 0) {
      folded = UNIT_IN_BRACKETS.matcher(folded).replaceAll("");
    }
    for (int i = 0; i < folded.length(); i++) {
      if (Character.isLetterOrDigit(folded.charAt(i))) {
        bare.append(folded.charAt(i));
      }
    }
    return bare.toString();
  }

  /**
   * A length in metres that is above zero. Untyped numbers and texts are taken in the length unit
   * of the file, unless the name says another one.
   *
   * @param lengthUnitM metres in one length unit of the file
   */
  public static Optional<Double> lengthM(Property property, double lengthUnitM) {
    double lengthM = offsetM(property, lengthUnitM);
    return ShapeMeasurer.isPossible(lengthM) ? Optional.of(lengthM) : Optional.empty();
  }

  /**
   * A length as in {@link #lengthM}. A bare figure is in millimetres where that of a diameter in
   * the same set must be.
   */
  public static Optional<Double> lengthBesideM(
      Property property, List<Property> beside, double lengthUnitM) {
    Optional<Double> lengthM = lengthM(property, lengthUnitM);
    boolean millimetres =
        lengthM.isPresent()
            && lengthUnitM > MILLIMETRE_M
            && isBare(property)
            && isInMillimetres(property.set(), beside, lengthUnitM);
    return millimetres ? Optional.of(lengthM.get() * MILLIMETRE_M / lengthUnitM) : lengthM;
  }

  /** True if a bare diameter in a set is too large for the unit of the file. */
  private static boolean isInMillimetres(String set, List<Property> properties, double unitM) {
    for (Property p : properties) {
      if (p.set().equals(set) && (roles(p.name()) & DIAMETERS) != 0 && isBare(p)) {
        Optional<Double> asWrittenM = lengthM(p, unitM);
        if (asWrittenM.isPresent()
            && asWrittenM.get() > LARGEST_DIAMETER_M
            && diameterM(p, unitM).isPresent()) {
          return true;
        }
      }
    }
    return false;
  }

  /** True for a figure whose unit is not said: not by its type, its name, or behind it. */
  public static boolean isBare(Property property) {
    return !isTyped(property)
        && unitOf(property.name()) == null
        && (property.number() != null || Double.isFinite(leadingNumber(property.text())));
  }

  /** A length as in {@link #lengthM} that may be zero or less; NaN if it is no figure. */
  public static double offsetM(Property property, double lengthUnitM) {
    Double number = property.number();
    return number != null
        ? number * (isTyped(property) ? 1 : unitInName(property.name(), lengthUnitM))
        : written(property.text(), unitInName(property.name(), lengthUnitM));
  }

  /** True for a number that says it is a length. */
  public static boolean isTyped(Property property) {
    return property.measure() != null && property.measure().contains("LENGTHMEASURE");
  }

  /** A length as text, with its unit or without: {@code 9.15}, {@code 25 mm}; NaN if it is none. */
  private static double written(String text, double bareUnitM) {
    Matcher m = WRITTEN.matcher(text.trim());
    if (!m.matches()) {
      return FigureCursor.wholeM(text.trim());
    }
    double unitM = m.group(2) == null ? bareUnitM : Sizes.unitM(m.group(2));
    return Double.parseDouble(m.group(1).replace(',', '.')) * unitM;
  }

  /**
   * A side in metres. Bare numbers that would be larger than anything that is built are
   * millimetres.
   */
  public static Optional<Double> sizeM(Property property, double lengthUnitM) {
    return upTo(LARGEST_SIDE_M, property, lengthUnitM);
  }

  /** The diameter of a pipe or round duct in metres; bare numbers as in {@link #sizeM}. */
  public static Optional<Double> diameterM(Property property, double lengthUnitM) {
    return isTyped(property)
        ? sizeM(property, lengthUnitM)
        : upTo(LARGEST_DIAMETER_M, property, lengthUnitM);
  }

  /** The wall of a pipe in metres; bare numbers as in {@link #sizeM}. */
  public static Optional<Double> wallM(Property property, double lengthUnitM) {
    return upTo(THICKEST_WALL_M, property, lengthUnitM);
  }

  private static Optional<Double> upTo(double largestM, Property property, double lengthUnitM) {
    Optional<Double> lengthM = lengthM(property, lengthUnitM);
    if (lengthM.isEmpty() || (lengthM.get() <= largestM && lengthM.get() >= SMALLEST_M)) {
      return lengthM;
    }
    if (isTyped(property)) {
      double namedM = asNamedM(property);
      boolean possible = namedM >= SMALLEST_M && namedM <= largestM;
      lengthM = possible ? Optional.of(namedM) : lengthM;
    }
    if (lengthM.get() <= largestM) {
      return lengthM;
    }
    boolean unitIsSaid = isTyped(property) || unitOf(property.name()) != null;
    double asMm = lengthM.get() * MILLIMETRE_M / lengthUnitM;
    return unitIsSaid || asMm > largestM ? Optional.empty() : Optional.of(asMm);
  }

  /**
   * What a length that is typed, and so in the unit of the file, would be in the unit that its name
   * says: some write {@code Length (mm)} = 6000 into a file in metres. 0 if the name says no unit.
   */
  public static double asNamedM(Property property) {
    String unit = isTyped(property) ? unitOf(property.name()) : null;
    double namedM = unit == null ? 0 : leadingNumber(property.text()) * Sizes.unitM(unit);
    return namedM > 0 ? namedM : 0;
  }

  private static double unitInName(String name, double lengthUnitM) {
    String unit = unitOf(name);
    return unit == null ? lengthUnitM : Sizes.unitM(unit);
  }

  private static boolean isInInchesOrFeet(String name) {
    String unit = unitOf(name);
    return unit != null && InchSizes.isUnit(Sizes.unitM(unit));
  }

  /** The unit of length that a name says; null if it says none. */
  private static @Nullable String unitOf(String name) {
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

  /** The numbers of a list, as values of lists are written; one of any other text. */
  public static double[] leadingNumbers(String text) {
    String[] figures = text.split(", ", -1);
    double[] numbers = new double[figures.length];
    for (int i = 0; i < figures.length; i++) {
      numbers[i] = leadingNumber(figures[i]);
    }
    return numbers;
  }

  /** The number a text consists of; NaN if it is not just a number. */
  public static double leadingNumber(String text) {
    String trimmed = text.trim().replace(',', '.');
    return NUMBER.matcher(trimmed).matches() ? Double.parseDouble(trimmed) : Double.NaN;
  }
}
