package org.lagwright.ifc.extract.property;

import static org.lagwright.ifc.model.PropertyList.UNCOUNTED;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.PropertyList;
import org.lagwright.ifc.packed.PropertySource;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcGlance;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Properties and quantities of an element: those of the occurrence, of the part that declares it,
 * and of its type, merged property by property. Within the same set the occurrence wins; of two in
 * one set the first with a value.
 */
public final class PropertyReader implements PropertySource {

  private final IfcFile file;
  private final Relations relations;
  private final PropertyValues values;

  /** Readings of the sets of a type object or declaring part, which many elements share. */
  private final Map<Long, Gathered> ofTypes = new ConcurrentHashMap<>();

  private final SetPatterns patterns = new SetPatterns();

  /** A property that stands twice in a set with different values. */
  public record Repeated(long set, boolean fromType, Property first, Property second) {}

  /**
   * Properties that answer some question.
   *
   * @param repeated what was noticed on the way
   * @param all how many properties there are, wanted or not; {@link PropertyList#UNCOUNTED} if only
   *     reading them can tell
   */
  public record Reading(List<Property> properties, List<Repeated> repeated, int all) {}

  /** A reading in the making. */
  private final class Gathered {
    final IfcGlance glance = file.glance();
    final List<Property> properties = new ArrayList<>(4);
    final List<Repeated> repeated = new ArrayList<>(0);

    /** Sets of the same name may hold the same properties, which then are one. */
    final NamesSeen sets = new NamesSeen();

    int all;

    void count(String set, int properties) {
      boolean counted = all >= 0 && properties >= 0 && sets.add(set);
      all = counted ? all + properties : UNCOUNTED;
    }

    void addAll(Gathered ofType) {
      for (Property property : ofType.properties) {
        addMissing(properties, property);
      }
      repeated.addAll(ofType.repeated);
      boolean counted = all >= 0 && ofType.all >= 0 && sets.addAll(ofType.sets);
      all = counted ? all + ofType.all : UNCOUNTED;
    }

    Reading reading() {
      // exact size, as one of each is kept for every element
      return new Reading(List.copyOf(properties), List.copyOf(repeated), all);
    }
  }

  /** Reads properties of one file. */
  public PropertyReader(IfcFile file, Relations relations, Units units) {
    this.file = file;
    this.relations = relations;
    this.values = new PropertyValues(units);
  }

  /**
   * All properties that apply to an element, read when asked for.
   *
   * @param count as {@link #wantedOf} told
   */
  @Override
  public PropertyList propertiesOf(long element, int count) {
    return new PropertyList(count) {
      @Override
      protected List<Property> read() {
        return all(element);
      }
    };
  }

  private List<Property> all(long element) {
    Map<String, Property> merged = new LinkedHashMap<>();
    for (long relation : relations.overridesOf(element)) {
      addMissing(merged, readOverride(relation));
    }
    for (long set : relations.propertySetsOf(element)) {
      addMissing(merged, read(set, false));
    }
    for (long set : setsOfType(relations.declaringOf(element))) {
      addMissing(merged, read(set, true));
    }
    for (long set : setsOfType(relations.typeOf(element))) {
      addMissing(merged, read(set, true));
    }
    return List.copyOf(merged.values());
  }

  private static String key(Property property) {
    return (property.set() + "\n" + property.name()).toLowerCase(Locale.ROOT);
  }

  private static void addMissing(Map<String, Property> merged, List<Property> more) {
    for (Property property : more) {
      merged.merge(key(property), property, (old, young) -> old.text().isEmpty() ? young : old);
    }
  }

  /** Those properties of an element that answer some question of {@link PropertyNames}. */
  public Reading wantedOf(long element) {
    Gathered gathered = new Gathered();
    for (long relation : relations.overridesOf(element)) {
      for (Property property : readOverride(relation)) {
        if (PropertyNames.areWanted(property.name())) {
          addMissing(gathered.properties, property);
        }
      }
      gathered.all = UNCOUNTED;
    }
    for (long set : relations.propertySetsOf(element)) {
      addWanted(set, false, gathered);
    }
    long declaring = relations.declaringOf(element);
    if (declaring != 0) {
      gathered.addAll(ofType(declaring));
    }
    long type = relations.typeOf(element);
    if (type != 0) {
      gathered.addAll(ofType(type));
    }
    return gathered.reading();
  }

  /**
   * Sets of a type object or declaring part: its own list, and those related to it like to an
   * occurrence.
   */
  private long[] setsOfType(long type) {
    IfcRecord record = type == 0 ? null : file.find(type);
    if (record == null) {
      return Links.NONE;
    }
    long[] listed = record.refIds("HasPropertySets");
    long[] related = relations.propertySetsOf(type);
    long[] sets = Arrays.copyOf(listed, listed.length + related.length);
    System.arraycopy(related, 0, sets, listed.length, related.length);
    return sets;
  }

  /** Two threads may read one at the same time; they read the same. */
  private Gathered ofType(long type) {
    Gathered known = ofTypes.get(type);
    if (known == null) {
      known = wantedOfType(type);
      ofTypes.put(type, known);
    }
    return known;
  }

  private Gathered wantedOfType(long type) {
    Gathered gathered = new Gathered();
    for (long set : setsOfType(type)) {
      addWanted(set, true, gathered);
    }
    return gathered;
  }

  /** Like the other, for the few that are wanted; the same names, whatever their case. */
  private static void addMissing(List<Property> merged, Property property) {
    for (int i = 0; i < merged.size(); i++) {
      Property old = merged.get(i);
      if (old.name().equalsIgnoreCase(property.name())
          && old.set().equalsIgnoreCase(property.set())) {
        if (old.text().isEmpty()) {
          merged.set(i, property);
        }
        return;
      }
    }
    merged.add(property);
  }

  /** The wanted ones of a set; of one with nested or repeated names all are read and compared. */
  private void addWanted(long setId, boolean fromType, Gathered into) {
    IfcRecord set = file.find(setId);
    if (set == null) {
      return;
    }
    String setName = PropertyValues.orEmpty(set.label("Name"));
    SetScan scan = new SetScan(file, patterns, values, setName, fromType, into.glance);
    boolean told = scan.members(set, "HasProperties") && scan.members(set, "Quantities");
    List<Property> wanted = scan.wanted();
    if (!told) {
      List<Property> whole = read(setId, fromType);
      addRepeated(setId, fromType, whole, into.repeated);
      wanted = whole.stream().filter(p -> PropertyNames.areWanted(p.name())).toList();
    }
    for (Property property : wanted) {
      addMissing(into.properties, property);
    }
    into.count(setName, told ? scan.count() : UNCOUNTED);
  }

  private List<Property> read(long setId, boolean fromType) {
    IfcRecord set = file.find(setId);
    if (set == null) {
      return List.of();
    }
    String name = PropertyValues.orEmpty(set.label("Name"));
    List<Property> found = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    for (IfcRecord property : set.refs("HasProperties")) {
      values.property(name, property, fromType, seen, found);
    }
    for (IfcRecord quantity : set.refs("Quantities")) {
      values.quantity(name, quantity, fromType, seen, found);
    }
    return found;
  }

  private static void addRepeated(
      long setId, boolean fromType, List<Property> set, List<Repeated> into) {
    Map<String, Property> first = new HashMap<>();
    for (Property property : set) {
      Property other = first.putIfAbsent(key(property), property);
      boolean differs =
          other != null
              && !other.text().isEmpty()
              && !property.text().isEmpty()
              && !other.text().equals(property.text());
      if (differs) {
        into.add(new Repeated(setId, fromType, other, property));
      }
    }
  }

  /** The overriding properties, under the name of the set that they override. */
  private List<Property> readOverride(long relationId) {
    IfcRecord relation = file.find(relationId);
    if (relation == null) {
      return List.of();
    }
    IfcRecord set = relation.ref("RelatingPropertyDefinition");
    String name = set == null ? "" : PropertyValues.orEmpty(set.label("Name"));
    List<Property> found = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    for (IfcRecord property : relation.refs("OverridingProperties")) {
      values.property(name, property, false, seen, found);
    }
    return List.copyOf(found);
  }
}
