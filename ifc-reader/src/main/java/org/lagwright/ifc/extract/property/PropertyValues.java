package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.Remembered;
import org.lagwright.ifc.extract.text.TemperatureScale;
import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepArguments;

/** Decodes single properties and quantities, of whichever kind, into values in SI units. */
final class PropertyValues {

  /** Complex properties and quantities of one set that are followed, each of them once. */
  private static final int MAX_COMPLEX = 100;

  private static final String TEMPERATURE = "IFCTHERMODYNAMICTEMPERATUREMEASURE";

  /** Types of values that do not say what they measure. */
  private static final Set<String> PLAIN =
      Set.of(
          "IFCREAL",
          "IFCINTEGER",
          "IFCNUMERICMEASURE",
          "IFCTEXT",
          "IFCLABEL",
          "IFCIDENTIFIER",
          "IFCDESCRIPTIVEMEASURE");

  /** Kinds of simple quantities that are read. */
  enum Quantity {
    LENGTH("LengthValue"),
    AREA("AreaValue"),
    VOLUME("VolumeValue"),
    COUNT("CountValue"),
    WEIGHT("WeightValue");

    final String attribute;

    Quantity(String attribute) {
      this.attribute = attribute;
    }
  }

  private final Units units;

  /** Values and measure types, of which millions are equal. */
  private final Remembered<String> texts = new Remembered<>();

  PropertyValues(Units units) {
    this.units = units;
  }

  /**
   * Adds what one property gives: nothing, a value, or those of a complex property.
   *
   * @param seen complex properties on the way, each of which is followed once
   */
  void property(String set, IfcRecord p, boolean fromType, Set<Long> seen, List<Property> found) {
    String name = orEmpty(p.label("Name"));
    if (p.is("IfcPropertySingleValue")) {
      single(set, name, p, fromType, found);
    } else if (p.is("IfcPropertyEnumeratedValue")) {
      listed(set, name, p, "EnumerationValues", fromType, found);
    } else if (p.is("IfcPropertyListValue")) {
      listed(set, name, p, "ListValues", fromType, found);
    } else if (p.is("IfcPropertyBoundedValue")) {
      bounded(set, name, p, fromType, found);
    } else if (p.is("IfcComplexProperty") && seen.size() < MAX_COMPLEX && seen.add(p.id())) {
      for (IfcRecord part : p.refs("HasProperties")) {
        property(set + "." + name, part, fromType, seen, found);
      }
    }
  }

  private void single(
      String set, String name, IfcRecord p, boolean fromType, List<Property> found) {
    if (!p.has("NominalValue")) {
      return;
    }
    String measure = Units.measure(p.valueType("NominalValue"), p.ref("Unit"));
    String text = p.label("NominalValue");
    // a figure that is written as text, and has a unit of length of its own or is a temperature
    boolean figure =
        measure != null && measure.contains("LENGTHMEASURE") || isTemperature(name, measure);
    double number =
        text != null && figure ? PropertyLengths.leadingNumber(text) : p.number("NominalValue");
    String enumerated = p.enumeration("NominalValue");
    String shown =
        text != null ? text : enumerated != null ? enumerated : inside(p, "NominalValue");
    found.add(
        new Property(
            set,
            name,
            once(shown),
            si(name, number, measure, p.ref("Unit")),
            measure == null ? null : once(measure),
            false,
            fromType,
            p.id()));
  }

  /** One object for equal texts, as far as they are remembered. */
  private String once(String text) {
    String known = texts.find(text);
    return known == null ? texts.keep(text, text) : known;
  }

  /** The figures inside a typed value: {@code 60.3} of {@code IFCPOSITIVELENGTHMEASURE(60.3)}. */
  private static String inside(IfcRecord p, String attribute) {
    StepArguments typed = p.insideTyped(attribute);
    return typed.size() == 0 ? p.raw(attribute) : typed.raw(0);
  }

  private @Nullable Double si(
      String name, double number, @Nullable String measure, @Nullable IfcRecord unit) {
    if (!Double.isFinite(number)) {
      return null;
    }
    double si =
        unit == null && isTemperature(name, measure)
            ? units.celsius(name, number, TEMPERATURE.equals(measure))
            : units.toSi(number, measure, unit);
    return Double.isFinite(si) ? si : null;
  }

  /** True for what says by its type, or where it has none by its name, that it is a temperature. */
  private static boolean isTemperature(String name, @Nullable String measure) {
    boolean plain = measure == null || PLAIN.contains(measure);
    return TEMPERATURE.equals(measure) || (plain && TemperatureScale.isNamed(name));
  }

  /**
   * Lists and enumerations: one text of all members, the number of the first; of temperatures none
   * if they differ, as of flow and return.
   */
  private void listed(
      String set,
      String name,
      IfcRecord p,
      String attribute,
      boolean fromType,
      List<Property> found) {
    StepArguments values = p.list(attribute);
    if (values.size() == 0) {
      return;
    }
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      StepArguments typed = values.typed(i);
      texts.add(values.text(i).orElse(typed.size() == 0 ? values.raw(i) : typed.raw(0)));
    }
    String measure = Units.measure(values.keyword(0).orElse(null), p.ref("Unit"));
    boolean differ = isTemperature(name, measure) && Set.copyOf(texts).size() > 1;
    found.add(
        new Property(
            set,
            name,
            String.join(", ", texts),
            differ ? null : si(name, values.number(0), measure, p.ref("Unit")),
            measure,
            false,
            fromType,
            p.id()));
  }

  /** The set point if there is one, or equal bounds; else a range as text without a number. */
  private void bounded(
      String set, String name, IfcRecord p, boolean fromType, List<Property> found) {
    String lower = inside(p, "LowerBoundValue");
    String upper = inside(p, "UpperBoundValue");
    boolean hasSetPoint = Double.isFinite(p.number("SetPointValue"));
    String attribute = hasSetPoint || !lower.equals(upper) ? "SetPointValue" : "LowerBoundValue";
    double value = p.number(attribute);
    String measure = Units.measure(p.valueType(attribute), p.ref("Unit"));
    found.add(
        new Property(
            set,
            name,
            Double.isFinite(value) ? inside(p, attribute) : lower + " to " + upper,
            si(name, value, measure, p.ref("Unit")),
            measure,
            false,
            fromType,
            p.id()));
  }

  /**
   * Adds the values of one quantity, or those of a complex quantity; a layer's are not those of the
   * element.
   *
   * @param seen complex quantities on the way, each of which is followed once
   */
  void quantity(String set, IfcRecord q, boolean fromType, Set<Long> seen, List<Property> found) {
    if (q.is("IfcPhysicalComplexQuantity")) {
      if (!isOfALayer(q) && seen.size() < MAX_COMPLEX && seen.add(q.id())) {
        for (IfcRecord part : q.refs("HasQuantities")) {
          quantity(set + "." + orEmpty(q.label("Name")), part, fromType, seen, found);
        }
      }
      return;
    }
    simple(set, q, fromType, found);
  }

  /** The schemas give {@code layer} as their first example of what such quantities are told by. */
  private static boolean isOfALayer(IfcRecord complex) {
    return Words.fold(orEmpty(complex.label("Discrimination"))).contains("layer");
  }

  private void simple(String set, IfcRecord q, boolean fromType, List<Property> found) {
    for (Quantity kind : Quantity.values()) {
      String attribute = kind.attribute;
      if (q.has(attribute)) {
        String measure = "IFC" + kind + "MEASURE";
        found.add(
            new Property(
                set,
                orEmpty(q.label("Name")),
                q.raw(attribute),
                si("", q.number(attribute), measure, q.ref("Unit")),
                measure,
                true,
                fromType,
                q.id()));
      }
    }
  }

  static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }
}
