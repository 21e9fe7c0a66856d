package org.lagwright.ifc.extract.property;

import static org.lagwright.ifc.model.PropertyList.UNCOUNTED;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.PropertyList;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcGlance;
import org.lagwright.ifc.schema.IfcRecord;

/** Looks through the members of one set by their names, and reads those that are wanted. */
final class SetScan {
  private final IfcFile file;
  private final SetPatterns patterns;
  private final PropertyValues values;
  private final String setName;
  private final boolean fromType;
  private final IfcGlance glance;
  private @Nullable NamesSeen names;
  private final List<Property> wanted = new ArrayList<>();

  private int count;

  /** Scans with the patterns of one file. */
  SetScan(
      IfcFile file,
      SetPatterns patterns,
      PropertyValues values,
      String setName,
      boolean fromType,
      IfcGlance glance) {
    this.file = file;
    this.patterns = patterns;
    this.values = values;
    this.setName = setName;
    this.fromType = fromType;
    this.glance = glance;
  }

  /** False if the set must be read as a whole. */
  boolean members(IfcRecord set, String attribute) {
    long[] ids = idsOf(set, attribute);
    if (ids.length == 0) {
      return true;
    }
    SetPattern.Key key = new SetPattern.Key(setName, ids.length);
    List<SetPattern> known = patterns.of(key);
    if (areLikeOne(known, ids)) {
      return true;
    }
    SetPattern.Learner learner = patterns.want(known) ? new SetPattern.Learner() : null;
    if (!oneByOne(ids, learner)) {
      return false;
    }
    SetPattern learnt = learner == null ? null : learner.pattern(ids.length);
    if (learnt != null) {
      patterns.add(key, learnt);
    }
    return true;
  }

  private static long[] idsOf(IfcRecord set, String attribute) {
    long[] ids = set.refIds(attribute);
    long single = ids.length == 0 ? set.refId(attribute) : 0;
    return single == 0 ? ids : new long[] {single};
  }

  /** The members that are wanted, of all lists that were told whole. */
  List<Property> wanted() {
    return wanted;
  }

  /** How many members have a value; {@link PropertyList#UNCOUNTED} if some must be read to tell. */
  int count() {
    return count;
  }

  private boolean areLikeOne(List<SetPattern> known, long[] ids) {
    for (int i = 0; i < known.size(); i++) {
      if (areLike(known.get(i), ids)) {
        return true;
      }
    }
    return false;
  }

  private boolean areLike(SetPattern pattern, long[] ids) {
    int values = pattern.valuesIn(ids, glance);
    if (values < 0) {
      return false;
    }
    for (int at : pattern.wanted()) {
      read(Objects.requireNonNull(file.find(ids[at])));
    }
    count = count >= 0 ? count + values : UNCOUNTED;
    return true;
  }

  private boolean oneByOne(long[] ids, SetPattern.@Nullable Learner learner) {
    for (long id : ids) {
      if (glance.at(id) && !member(id, learner)) {
        return false;
      }
    }
    return true;
  }

  private boolean member(long id, SetPattern.@Nullable Learner learner) {
    String name = PropertyValues.orEmpty(glance.name());
    names = names == null ? new NamesSeen() : names;
    if (!names.add(name)
        || glance.is("IfcComplexProperty")
        || glance.is("IfcPhysicalComplexQuantity")) {
      return false;
    }
    boolean isWanted = PropertyNames.areWanted(name);
    if (learner != null) {
      learner.learn(glance, isWanted);
    }
    if (isWanted) {
      read(Objects.requireNonNull(file.find(id)));
    }
    int values = values();
    count = count >= 0 && values >= 0 ? count + values : UNCOUNTED;
    return true;
  }

  private void read(IfcRecord member) {
    if (member.is("IfcPhysicalQuantity")) {
      values.quantity(setName, member, fromType, new HashSet<>(), wanted);
    } else {
      values.property(setName, member, fromType, new HashSet<>(), wanted);
    }
  }

  private int values() {
    if (glance.is("IfcPropertySingleValue")) {
      return glance.has("NominalValue") ? 1 : 0;
    }
    if (!glance.is("IfcPhysicalSimpleQuantity")) {
      return UNCOUNTED;
    }
    int values = 0;
    for (PropertyValues.Quantity kind : PropertyValues.Quantity.values()) {
      values += glance.has(kind.attribute) ? 1 : 0;
    }
    return values;
  }
}
