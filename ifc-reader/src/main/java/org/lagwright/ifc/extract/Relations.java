package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepArguments;

/**
 * Who belongs to whom: one pass over the relationship records, by instance number. Both ways of
 * attaching ports are read in every schema, because exporters mix them.
 */
final class Relations {

  private static final Set<Long> NONE = Set.of();

  private final Map<Long, Long> typeOf = new HashMap<>();
  private final Map<Long, Set<Long>> propertySetsOf = new HashMap<>();
  private final Map<Long, Set<Long>> overridesOf = new HashMap<>();
  private final Map<Long, Set<Long>> groupsOf = new HashMap<>();
  private final Map<Long, Long> containerOf = new HashMap<>();
  private final Map<Long, Set<Long>> referencesOf = new HashMap<>();
  private final Map<Long, Long> wholeOf = new HashMap<>();
  private final Map<Long, Set<Long>> partsOf = new HashMap<>();
  private final Map<Long, Set<Long>> portsOf = new HashMap<>();
  private final Map<Long, Long> ownerOfPort = new HashMap<>();
  private final Map<Long, Long> partnerOfPort = new HashMap<>();
  private final Map<Long, Set<Long>> materialsOf = new HashMap<>();
  private final Map<Long, Set<Long>> coveringsOf = new HashMap<>();
  private final Map<Long, String> layerOfItem = new HashMap<>();

  Relations(IfcFile file) {
    file.all("IfcRelDefinesByType")
        .forEach(r -> each(r, "RelatedObjects", id -> typeOf.put(id, r.refId("RelatingType"))));
    file.all("IfcRelDefinesByProperties").forEach(this::properties);
    file.all("IfcRelAssignsToGroup")
        .forEach(r -> each(r, "RelatedObjects", id -> add(groupsOf, id, r.refId("RelatingGroup"))));
    file.all("IfcRelReferencedInSpatialStructure").forEach(this::referenced);
    file.all("IfcRelContainedInSpatialStructure").forEach(this::contained);
    file.all("IfcRelAggregates").forEach(this::decomposed);
    file.all("IfcRelNests").forEach(r -> nested(file, r));
    file.all("IfcRelConnectsPortToElement")
        .forEach(r -> attach(r.refId("RelatedElement"), r.refId("RelatingPort")));
    file.all("IfcRelConnectsPorts").forEach(this::connected);
    file.all("IfcRelAssociatesMaterial")
        .forEach(
            r ->
                each(r, "RelatedObjects", id -> add(materialsOf, id, r.refId("RelatingMaterial"))));
    file.all("IfcRelCoversBldgElements")
        .forEach(
            r ->
                each(
                    r,
                    "RelatedCoverings",
                    id -> add(coveringsOf, r.refId("RelatingBuildingElement"), id)));
    file.all("IfcPresentationLayerAssignment").forEach(this::layer);
  }

  private interface Taker {
    void take(long id);
  }

  private static void each(IfcRecord relation, String attribute, Taker taker) {
    for (long id : relation.refIds(attribute)) {
      taker.take(id);
    }
  }

  private static void add(Map<Long, Set<Long>> map, long key, long value) {
    if (value != 0) {
      map.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(value);
    }
  }

  /** One set, or from IFC4 on several sets in a list wrapped in a typed value. */
  private void properties(IfcRecord r) {
    List<Long> sets = new ArrayList<>();
    if (r.refId("RelatingPropertyDefinition") != 0) {
      sets.add(r.refId("RelatingPropertyDefinition"));
    } else {
      StepArguments inside = r.insideTyped("RelatingPropertyDefinition");
      for (long id : inside.references(0)) {
        sets.add(id);
      }
    }
    each(r, "RelatedObjects", id -> sets.forEach(set -> add(propertySetsOf, id, set)));
    if (r.is("IfcRelOverridesProperties")) {
      each(r, "RelatedObjects", id -> add(overridesOf, id, r.id()));
    }
  }

  private void referenced(IfcRecord r) {
    each(r, "RelatedElements", id -> add(referencesOf, id, r.refId("RelatingStructure")));
  }

  private void contained(IfcRecord r) {
    each(r, "RelatedElements", id -> containerOf.put(id, r.refId("RelatingStructure")));
  }

  private void decomposed(IfcRecord r) {
    each(
        r,
        "RelatedObjects",
        id -> {
          wholeOf.put(id, r.refId("RelatingObject"));
          add(partsOf, r.refId("RelatingObject"), id);
        });
  }

  private void nested(IfcFile file, IfcRecord r) {
    each(
        r,
        "RelatedObjects",
        id -> {
          IfcRecord part = file.find(id);
          if (part != null && part.is("IfcPort")) {
            attach(r.refId("RelatingObject"), id);
          } else {
            wholeOf.putIfAbsent(id, r.refId("RelatingObject"));
          }
        });
  }

  private void attach(long element, long port) {
    if (element != 0 && port != 0) {
      add(portsOf, element, port);
      ownerOfPort.putIfAbsent(port, element);
    }
  }

  private void connected(IfcRecord r) {
    long a = r.refId("RelatingPort");
    long b = r.refId("RelatedPort");
    if (a != 0 && b != 0 && a != b) {
      partnerOfPort.putIfAbsent(a, b);
      partnerOfPort.putIfAbsent(b, a);
    }
  }

  private void layer(IfcRecord assignment) {
    String name = assignment.text("Name");
    if (name != null && !name.isBlank()) {
      each(assignment, "AssignedItems", id -> layerOfItem.putIfAbsent(id, name));
    }
  }

  /** Instance number of the type object, 0 if none. */
  long typeOf(long element) {
    return typeOf.getOrDefault(element, 0L);
  }

  Set<Long> propertySetsOf(long element) {
    return propertySetsOf.getOrDefault(element, NONE);
  }

  /** IFC2X3 relations that override single properties of the element. */
  Set<Long> overridesOf(long element) {
    return overridesOf.getOrDefault(element, NONE);
  }

  Set<Long> groupsOf(long element) {
    return groupsOf.getOrDefault(element, NONE);
  }

  /** Spatial element that contains it, 0 if none. */
  long containerOf(long element) {
    return containerOf.getOrDefault(element, 0L);
  }

  /** Spatial elements that it is referenced in without being contained. */
  Set<Long> referencesOf(long element) {
    return referencesOf.getOrDefault(element, NONE);
  }

  /** What it is aggregated or nested under, 0 if nothing. */
  long wholeOf(long element) {
    return wholeOf.getOrDefault(element, 0L);
  }

  Set<Long> partsOf(long element) {
    return partsOf.getOrDefault(element, NONE);
  }

  Set<Long> portsOf(long element) {
    return portsOf.getOrDefault(element, NONE);
  }

  /** Element on the other side of a port, 0 if nothing is connected. */
  long acrossPort(long port) {
    Long partner = partnerOfPort.get(port);
    return partner == null ? 0 : ownerOfPort.getOrDefault(partner, 0L);
  }

  /** True if some element owns the port. */
  boolean isOwned(long port) {
    return ownerOfPort.containsKey(port);
  }

  Set<Long> materialsOf(long object) {
    return materialsOf.getOrDefault(object, NONE);
  }

  Set<Long> coveringsOf(long element) {
    return coveringsOf.getOrDefault(element, NONE);
  }

  /** Presentation layer of a representation or item, null if none. */
  @Nullable String layerOf(long item) {
    return layerOfItem.get(item);
  }
}
