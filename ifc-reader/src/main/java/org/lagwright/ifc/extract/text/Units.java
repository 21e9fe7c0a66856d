package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * The units of a file: only those that IfcProject.UnitsInContext assigns count, because files hold
 * others besides; where there is no project, as in a part cut out of a model, those of any
 * IfcUnitAssignment. The schema allows one of each kind; where a file assigns more, the first
 * counts and a finding tells of the others. Missing ones are assumed as SI with a finding.
 */
public final class Units {

  private static final String TEMPERATURE = "THERMODYNAMICTEMPERATUREUNIT";

  private static final Map<String, Integer> PREFIX_EXPONENTS =
      Map.ofEntries(
          Map.entry("EXA", 18),
          Map.entry("PETA", 15),
          Map.entry("TERA", 12),
          Map.entry("GIGA", 9),
          Map.entry("MEGA", 6),
          Map.entry("KILO", 3),
          Map.entry("HECTO", 2),
          Map.entry("DECA", 1),
          Map.entry("DECI", -1),
          Map.entry("CENTI", -2),
          Map.entry("MILLI", -3),
          Map.entry("MICRO", -6),
          Map.entry("NANO", -9),
          Map.entry("PICO", -12),
          Map.entry("FEMTO", -15),
          Map.entry("ATTO", -18));

  /** Measure types by the kind of unit their numbers are in. */
  private static final Map<String, String> UNIT_OF_MEASURE =
      Map.ofEntries(
          Map.entry("IFCLENGTHMEASURE", "LENGTHUNIT"),
          Map.entry("IFCPOSITIVELENGTHMEASURE", "LENGTHUNIT"),
          Map.entry("IFCNONNEGATIVELENGTHMEASURE", "LENGTHUNIT"),
          Map.entry("IFCAREAMEASURE", "AREAUNIT"),
          Map.entry("IFCVOLUMEMEASURE", "VOLUMEUNIT"),
          Map.entry("IFCPLANEANGLEMEASURE", "PLANEANGLEUNIT"),
          Map.entry("IFCPOSITIVEPLANEANGLEMEASURE", "PLANEANGLEUNIT"));

  /** What is told of a unit by its kind; of other kinds nothing is read. */
  private static final Map<String, String> WHAT =
      Map.of(
          "LENGTHUNIT",
          "length",
          "AREAUNIT",
          "area",
          "VOLUMEUNIT",
          "volume",
          "PLANEANGLEUNIT",
          "plane angle",
          TEMPERATURE,
          "temperature");

  /** Larger units, and smaller ones than its inverse, are written by mistake. */
  private static final double LARGEST_FACTOR = 1e30;

  /** Rounding of factors as files write them. */
  private static final double FACTOR_TOLERANCE = 1e-6;

  private static final Set<String> DIMENSIONS_OF_POWER_2 = Set.of("SQUARE_METRE");
  private static final Set<String> DIMENSIONS_OF_POWER_3 = Set.of("CUBIC_METRE");

  private final Map<String, Double> factors = new HashMap<>();

  /** The unit that counts, by its kind. */
  private final Map<String, IfcRecord> assigned = new HashMap<>();

  /** Files that assign no unit of temperature write degC. */
  private TemperatureScale temperatures = TemperatureScale.CELSIUS;

  private final List<Finding> findings = new ArrayList<>();
  private final List<Long> unreadable = new ArrayList<>();

  /** Reads the units of one file. */
  public Units(IfcFile file, int model) {
    for (IfcRecord project : file.all("IfcProject")) {
      IfcRecord assignment = project.ref("UnitsInContext");
      if (assignment != null) {
        assignAll(assignment, model);
      }
    }
    if (file.count("IfcProject") == 0) {
      for (IfcRecord assignment : file.all("IfcUnitAssignment")) {
        assignAll(assignment, model);
      }
    }
    assumeIfMissing("LENGTHUNIT", "length", "metre", model);
    assumeIfMissing("PLANEANGLEUNIT", "plane angle", "radian", model);
    factors.putIfAbsent("AREAUNIT", 1.0);
    factors.putIfAbsent("VOLUMEUNIT", 1.0);
  }

  private void assignAll(IfcRecord assignment, int model) {
    for (IfcRecord unit : assignment.refs("Units")) {
      assign(unit, model);
    }
  }

  private void assign(IfcRecord unit, int model) {
    String kind = unit.enumeration("UnitType");
    if (kind == null) {
      return;
    }
    TemperatureScale scale =
        kind.equals(TEMPERATURE) ? TemperatureScale.of(unit) : TemperatureScale.UNKNOWN;
    double factor = kind.equals(TEMPERATURE) ? 1 : factor(unit);
    if (!isUsable(factor)) {
      unreadable.add(unit.id());
      return;
    }
    IfcRecord first = assigned.putIfAbsent(kind, unit);
    String what = WHAT.get(kind);
    if (first == null) {
      factors.put(kind, factor);
      temperatures = kind.equals(TEMPERATURE) ? scale : temperatures;
    } else if (what != null && !isSame(kind, factor, scale)) {
      note(ReadFinding.UNITS_CONFLICT, model, what, written(first), written(unit));
    }
  }

  private void note(ReadFinding code, int model, String... values) {
    findings.add(Finding.ofFile(model, code, Effect.ASSUMED, values));
  }

  private static boolean isUsable(double factor) {
    return factor > 1 / LARGEST_FACTOR && factor < LARGEST_FACTOR;
  }

  /** True if a further unit of a kind is worth as much as the one that counts. */
  private boolean isSame(String kind, double factor, TemperatureScale scale) {
    return kind.equals(TEMPERATURE)
        ? scale == temperatures
        : Math.abs(factor / unit(kind) - 1) < FACTOR_TOLERANCE;
  }

  /** {@code millimetre}, {@code foot}. */
  private static String written(IfcRecord unit) {
    String name = name(unit);
    String prefix = unit.is("IfcSIUnit") ? unit.enumeration("Prefix") : null;
    String written = (prefix == null ? "" : prefix) + (name == null ? unit : name);
    return written.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static @Nullable String name(IfcRecord unit) {
    return unit.is("IfcSIUnit") ? unit.enumeration("Name") : unit.text("Name");
  }

  /** SI value of one unit; NaN where the record does not tell. */
  public static double factor(IfcRecord unit) {
    return factor(unit, 0);
  }

  private static double factor(IfcRecord unit, int depth) {
    if (unit.is("IfcSIUnit")) {
      return siFactor(unit);
    }
    IfcRecord measure = unit.ref("ConversionFactor");
    IfcRecord base = measure == null ? null : measure.ref("UnitComponent");
    if (measure == null || base == null || depth > 5) {
      return Double.NaN;
    }
    return measure.number("ValueComponent") * factor(base, depth + 1);
  }

  private static double siFactor(IfcRecord unit) {
    String prefix = unit.enumeration("Prefix");
    String name = unit.enumeration("Name");
    int exponent = prefix == null ? 0 : PREFIX_EXPONENTS.getOrDefault(prefix, 0);
    if (name != null && DIMENSIONS_OF_POWER_2.contains(name)) {
      exponent *= 2;
    } else if (name != null && DIMENSIONS_OF_POWER_3.contains(name)) {
      exponent *= 3;
    }
    return Math.pow(10, exponent);
  }

  private void assumeIfMissing(String kind, String what, String assumed, int model) {
    if (factors.putIfAbsent(kind, 1.0) == null) {
      note(ReadFinding.UNITS_ASSUMED, model, what, assumed);
    }
  }

  /** What geometry needs. */
  public GeometryUnits geometry() {
    return new GeometryUnits(lengthM(), unit("PLANEANGLEUNIT"));
  }

  /** Metres in one length unit of the file. */
  public double lengthM() {
    return unit("LENGTHUNIT");
  }

  /** Square metres in one area unit of the file. */
  public double areaM2() {
    return unit("AREAUNIT");
  }

  /** Cubic metres in one volume unit of the file. */
  public double volumeM3() {
    return unit("VOLUMEUNIT");
  }

  private double unit(String kind) {
    return factors.getOrDefault(kind, 1.0);
  }

  /**
   * A property's value in SI: metres, square and cubic metres, radians; temperatures in degC; other
   * measures as written. NaN where the unit of a temperature does not tell what it is.
   *
   * @param measure IFC type of the value, null if untyped
   * @param ownUnit the property's own unit record, null if it has none
   */
  public double toSi(double value, @Nullable String measure, @Nullable IfcRecord ownUnit) {
    if (ownUnit != null && TEMPERATURE.equals(ownUnit.enumeration("UnitType"))) {
      return TemperatureScale.of(ownUnit).celsius(value);
    }
    if ("IFCTHERMODYNAMICTEMPERATUREMEASURE".equals(measure)) {
      return temperatures.celsius(value);
    }
    String kind = measure == null ? null : UNIT_OF_MEASURE.get(measure);
    if (ownUnit != null) {
      double factor = factor(ownUnit);
      return isUsable(factor) ? value * factor : value;
    }
    return kind == null ? value : value * unit(kind);
  }

  /**
   * degC of a temperature without a unit of its own, on the scale of the file, where that or a type
   * is missing on the scale that its name says. NaN where one of them is degF and the other not, as
   * nothing tells which of them is wrong.
   *
   * @param typed true if the value says that it is a temperature
   */
  public double celsius(String name, double value, boolean typed) {
    TemperatureScale said = TemperatureScale.inName(name);
    if (said == TemperatureScale.UNKNOWN) {
      return temperatures.celsius(value);
    }
    if (!typed || !assigned.containsKey(TEMPERATURE)) {
      return said.celsius(value);
    }
    boolean fahrenheit = temperatures == TemperatureScale.FAHRENHEIT;
    return fahrenheit == (said == TemperatureScale.FAHRENHEIT)
        ? temperatures.celsius(value)
        : Double.NaN;
  }

  /**
   * The measure of a value with its own unit: a bare number in a unit of length or angle is a
   * length or an angle, and must not be taken for one in the unit of the file.
   */
  public static @Nullable String measure(@Nullable String written, @Nullable IfcRecord ownUnit) {
    String kind = ownUnit == null ? null : ownUnit.enumeration("UnitType");
    if ("LENGTHUNIT".equals(kind)) {
      return written == null || !written.contains("LENGTHMEASURE") ? "IFCLENGTHMEASURE" : written;
    }
    boolean angle = "PLANEANGLEUNIT".equals(kind);
    return angle && (written == null || !written.contains("PLANEANGLE"))
        ? "IFCPLANEANGLEMEASURE"
        : written;
  }

  /** Units of the file that tell no factor. */
  public List<Long> unreadable() {
    return List.copyOf(unreadable);
  }

  /** What had to be assumed. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }
}
