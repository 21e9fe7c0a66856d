package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepArguments;

/**
 * Properties and quantities of an element: those of the occurrence and of its type, merged property
 * by property. Within the same set the occurrence wins; of two in one set the first with a value.
 */
final class PropertyReader {

  /** Complex properties of one set that are followed, each of them once. */
  private static final int MAX_COMPLEX = 100;

  private final IfcFile file;
  private final Relations relations;
  private final Units units;

  /**
   * Sets are shared by many elements, so each is decoded once for occurrences and once for types.
   */
  private final Map<Long, List<Property>> occurrenceSets = new HashMap<>();

  private final Map<Long, List<Property>> typeSets = new HashMap<>();

  /** Values that an IFC2X3 IfcRelOverridesProperties puts in the place of those of its set. */
  private final Map<Long, List<Property>> overrides = new HashMap<>();

  /** A name that stands twice in a set, and in how many sets it does. */
  private static final class Duplicate {
    final Property first;
    final Property second;
    int count;

    Duplicate(Property first, Property second) {
      this.first = first;
      this.second = second;
    }
  }

  private final Map<String, Duplicate> duplicates = new LinkedHashMap<>();

  PropertyReader(IfcFile file, Relations relations, Units units) {
    this.file = file;
    this.relations = relations;
    this.units = units;
  }

  /** All properties that apply to an element. */
  List<Property> propertiesOf(long element) {
    Map<String, Property> merged = new LinkedHashMap<>();
    for (long relation : relations.overridesOf(element)) {
      addMissing(merged, overrides.computeIfAbsent(relation, this::readOverride));
    }
    for (long set : relations.propertySetsOf(element)) {
      addMissing(merged, occurrenceSets.computeIfAbsent(set, id -> read(id, false)));
    }
    long type = relations.typeOf(element);
    for (long set : setsOfType(type)) {
      addMissing(merged, typeSets.computeIfAbsent(set, id -> read(id, true)));
    }
    return List.copyOf(merged.values());
  }

  /** Sets of a type object: its own list, and those related to it like to an occurrence. */
  private Collection<Long> setsOfType(long type) {
    List<Long> sets = new ArrayList<>();
    IfcRecord record = type == 0 ? null : file.find(type);
    if (record != null) {
      for (long id : record.refIds("HasPropertySets")) {
        sets.add(id);
      }
      sets.addAll(relations.propertySetsOf(type));
    }
    return sets;
  }

  private static String key(Property property) {
    return (property.set() + "\n" + property.name()).toLowerCase(Locale.ROOT);
  }

  private static void addMissing(Map<String, Property> merged, List<Property> more) {
    for (Property property : more) {
      merged.merge(key(property), property, (old, young) -> old.text().isEmpty() ? young : old);
    }
  }

  private List<Property> read(long setId, boolean fromType) {
    IfcRecord set = file.find(setId);
    if (set == null) {
      return List.of();
    }
    String name = orEmpty(set.text("Name"));
    List<Property> found = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    for (IfcRecord property : set.refs("HasProperties")) {
      property(name, property, fromType, seen, found);
    }
    for (IfcRecord quantity : set.refs("Quantities")) {
      quantity(name, quantity, fromType, found);
    }
    noteDuplicates(found);
    return List.copyOf(found);
  }

  private void noteDuplicates(List<Property> set) {
    Map<String, Property> first = new HashMap<>();
    for (Property property : set) {
      Property other = first.putIfAbsent(key(property), property);
      boolean differs =
          other != null
              && !other.text().isEmpty()
              && !property.text().isEmpty()
              && !other.text().equals(property.text());
      if (differs) {
        duplicates.computeIfAbsent(key(property), k -> new Duplicate(other, property)).count++;
      }
    }
  }

  /** Properties that stand twice in a set with different values; one finding for each name. */
  List<Finding> findings(int model) {
    return duplicates.values().stream()
        .map(
            d ->
                Finding.ofFile(
                    model,
                    ReadFinding.DUPLICATE_PROPERTY,
                    Effect.NONE,
                    d.first.set() + "." + d.first.name(),
                    d.first.text(),
                    d.second.text(),
                    String.valueOf(d.count)))
        .toList();
  }

  /** The overriding properties, under the name of the set that they override. */
  private List<Property> readOverride(long relationId) {
    IfcRecord relation = file.find(relationId);
    if (relation == null) {
      return List.of();
    }
    IfcRecord set = relation.ref("RelatingPropertyDefinition");
    String name = set == null ? "" : orEmpty(set.text("Name"));
    List<Property> found = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    for (IfcRecord property : relation.refs("OverridingProperties")) {
      property(name, property, false, seen, found);
    }
    return List.copyOf(found);
  }

  /**
   * @param seen complex properties on the way, each of which is followed once
   */
  private void property(
      String set, IfcRecord p, boolean fromType, Set<Long> seen, List<Property> found) {
    String name = orEmpty(p.text("Name"));
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
    double number = p.number("NominalValue");
    String text = p.text("NominalValue");
    String enumerated = p.enumeration("NominalValue");
    String shown =
        text != null ? text : enumerated != null ? enumerated : inside(p, "NominalValue");
    found.add(
        new Property(
            set,
            name,
            shown,
            si(number, measure, p.ref("Unit")),
            measure,
            false,
            fromType,
            p.id()));
  }

  /** The figures inside a typed value: {@code 60.3} of {@code IFCPOSITIVELENGTHMEASURE(60.3)}. */
  private static String inside(IfcRecord p, String attribute) {
    StepArguments typed = p.insideTyped(attribute);
    return typed.size() == 0 ? p.raw(attribute) : typed.raw(0);
  }

  private @Nullable Double si(double number, @Nullable String measure, @Nullable IfcRecord unit) {
    return Double.isFinite(number) ? units.toSi(number, measure, unit) : null;
  }

  /** Lists and enumerations: one text of all members, the number of the first. */
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
    found.add(
        new Property(
            set,
            name,
            String.join(", ", texts),
            si(values.number(0), measure, p.ref("Unit")),
            measure,
            false,
            fromType,
            p.id()));
  }

  /** The set point if there is one, else a range as text without a number. */
  private void bounded(
      String set, String name, IfcRecord p, boolean fromType, List<Property> found) {
    double setPoint = p.number("SetPointValue");
    String measure = Units.measure(p.valueType("SetPointValue"), p.ref("Unit"));
    String range = inside(p, "LowerBoundValue") + " to " + inside(p, "UpperBoundValue");
    found.add(
        new Property(
            set,
            name,
            Double.isFinite(setPoint) ? inside(p, "SetPointValue") : range,
            si(setPoint, measure, p.ref("Unit")),
            measure,
            false,
            fromType,
            p.id()));
  }

  private void quantity(String set, IfcRecord q, boolean fromType, List<Property> found) {
    for (String kind : List.of("Length", "Area", "Volume", "Count", "Weight")) {
      String attribute = kind + "Value";
      if (q.has(attribute)) {
        String measure = "IFC" + kind.toUpperCase(Locale.ROOT) + "MEASURE";
        found.add(
            new Property(
                set,
                orEmpty(q.text("Name")),
                q.raw(attribute),
                si(q.number(attribute), measure, q.ref("Unit")),
                measure,
                true,
                fromType,
                q.id()));
      }
    }
  }

  private static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }
}
