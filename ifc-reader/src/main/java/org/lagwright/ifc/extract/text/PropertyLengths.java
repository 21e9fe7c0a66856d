package org.lagwright.ifc.extract.text;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Property;

/** Lengths, sizes and figures that properties hold, in metres, whatever their unit. */
public final class PropertyLengths {

  /** No pipe or round duct in a building is wider. */
  private static final double LARGEST_DIAMETER_M = 3;

  private static final double THICKEST_WALL_M = 0.2;

  /** No side or wall of a pipe or duct is smaller. */
  private static final double SMALLEST_M = 1e-4;

  private static final double MILLIMETRE_M = 0.001;

  private static final LatePattern WRITTEN =
      new LatePattern("([+-]?\\d+(?:[.,]\\d*)?)\\s*(" + Sizes.UNIT + ")?");

  private static final LatePattern NUMBER = new LatePattern("[+-]?\\d+(\\.\\d*)?");

  /** Parts of the names of measures whose figures are no lengths. */
  private static final String[] OTHER_MEASURES = {
    "AREA",
    "VOLUM",
    "MASS",
    "WEIGHT",
    "PRESSURE",
    "POWER",
    "FORCE",
    "VELOCITY",
    "TEMPERATURE",
    "THERMAL",
    "ANGLE",
    "TIME",
    "MONETARY"
  };

  private static final int DIAMETERS =
      PropertyNames.bit(PropertyNames.Role.OUTSIDE_DIAMETER)
          | PropertyNames.bit(PropertyNames.Role.INSIDE_DIAMETER)
          | PropertyNames.bit(PropertyNames.Role.DIAMETER);

  private PropertyLengths() {}

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
      if (p.set().equals(set) && (PropertyNames.roles(p.name()) & DIAMETERS) != 0 && isBare(p)) {
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
        && UnitInName.unitOf(property.name()) == null
        && Double.isFinite(figure(property));
  }

  /** The figure that a value consists of, whatever its unit; NaN if it is none. */
  public static double figure(Property property) {
    Double number = property.number();
    return number == null ? leadingNumber(property.text()) : number;
  }

  /** A length as in {@link #lengthM} that may be zero or less; NaN if it is no figure. */
  public static double offsetM(Property property, double lengthUnitM) {
    Double number = property.number();
    if (number != null && measuresOther(property)) {
      return Double.NaN;
    }
    return number != null
        ? number * (isTyped(property) ? 1 : unitInName(property.name(), lengthUnitM))
        : written(property.text(), unitInName(property.name(), lengthUnitM));
  }

  /** True for a number that says it is a length. */
  public static boolean isTyped(Property property) {
    return property.measure() != null && property.measure().contains("LENGTHMEASURE");
  }

  /**
   * True if a value says that it is another quantity; plain numbers, counts and ratios may be any.
   */
  public static boolean measuresOther(Property property) {
    String measure = property.measure();
    if (measure != null && !isTyped(property)) {
      for (String other : OTHER_MEASURES) {
        if (measure.contains(other)) {
          return true;
        }
      }
    }
    return false;
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
    return upTo(Sizes.LARGEST_SIDE_M, property, lengthUnitM);
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
    boolean unitIsSaid = isTyped(property) || UnitInName.unitOf(property.name()) != null;
    double asMm = lengthM.get() * MILLIMETRE_M / lengthUnitM;
    return unitIsSaid || asMm > largestM ? Optional.empty() : Optional.of(asMm);
  }

  /**
   * What a length that is typed, and so in the unit of the file, would be in the unit that its name
   * says: some write {@code Length (mm)} = 6000 into a file in metres. 0 if the name says no unit.
   */
  public static double asNamedM(Property property) {
    String unit = isTyped(property) ? UnitInName.unitOf(property.name()) : null;
    double namedM = unit == null ? 0 : leadingNumber(property.text()) * Sizes.unitM(unit);
    return namedM > 0 ? namedM : 0;
  }

  private static double unitInName(String name, double lengthUnitM) {
    String unit = UnitInName.unitOf(name);
    return unit == null ? lengthUnitM : Sizes.unitM(unit);
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
