package org.lagwright.ifc.extract;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.threads.Workers;

/**
 * Who belongs to whom: one pass over the relationship records, by instance number. Both ways of
 * attaching ports are read in every schema, because exporters mix them.
 */
final class Relations {

  private static final int PIECE = 512;

  private final IfcFile file;
  private final Links typeOf = new Links();
  private final Links propertySetsOf = new Links();
  private final Links overridesOf = new Links();
  private final Links groupsOf = new Links();
  private final Links containerOf = new Links();
  private final Links referencesOf = new Links();
  private final Links aggregateOf = new Links();
  private final Links nestOf = new Links();
  private final Links partsOf = new Links();
  private final Links portsOf = new Links();
  private final Links ownerOfPort = new Links();
  private final Links partnerOfPort = new Links();
  private final Links materialsOf = new Links();
  private final Links coveringsOf = new Links();
  private final Map<Long, String> layerOfItem = new HashMap<>();
  private final Set<Long> types = new LinkedHashSet<>();

  Relations(IfcFile file, Workers workers) {
    this.file = file;
    // these are most of the relations of a file by far
    read(workers, "IfcRelDefinesByProperties", propertySetsOf, overridesOf);
    read("IfcRelDefinesByType");
    read("IfcRelAssignsToGroup");
    read("IfcRelReferencedInSpatialStructure");
    read("IfcRelContainedInSpatialStructure");
    read("IfcRelAggregates");
    read("IfcRelNests");
    read(workers, "IfcRelConnectsPortToElement", portsOf, ownerOfPort);
    read(workers, "IfcRelConnectsPorts", partnerOfPort);
    read("IfcRelAssociatesMaterial");
    read("IfcRelCoversBldgElements");
    read("IfcPresentationLayerAssignment");
    List<Links> all =
        List.of(
            propertySetsOf,
            portsOf,
            ownerOfPort,
            partnerOfPort,
            typeOf,
            overridesOf,
            groupsOf,
            containerOf,
            aggregateOf,
            nestOf,
            partsOf,
            materialsOf,
            coveringsOf,
            referencesOf);
    workers.inOrder(all.size(), 1, new Closing(all));
  }

  private record Closing(List<Links> all) implements Workers.Work<Links> {
    @Override
    public Links on(int at, int next) {
      return all.get(at).close();
    }
  }

  private void read(String entity) {
    for (long id : file.ids(entity)) {
      IfcRecord record = file.find(id);
      if (record != null) {
        take(entity, record);
      }
    }
  }

  private void take(String entity, IfcRecord r) {
    switch (entity) {
      case "IfcRelDefinesByType" -> typed(r);
      case "IfcRelAssignsToGroup" -> link(groupsOf, r, "RelatedObjects", "RelatingGroup");
      case "IfcRelReferencedInSpatialStructure" ->
          link(referencesOf, r, "RelatedElements", "RelatingStructure");
      case "IfcRelContainedInSpatialStructure" ->
          link(containerOf, r, "RelatedElements", "RelatingStructure");
      case "IfcRelAggregates" -> decomposed(r);
      case "IfcRelNests" -> nested(r);
      case "IfcRelAssociatesMaterial" -> link(materialsOf, r, "RelatedObjects", "RelatingMaterial");
      case "IfcRelCoversBldgElements" -> covered(r);
      case "IfcPresentationLayerAssignment" -> layer(r);
      default -> throw new IllegalArgumentException(entity);
    }
  }

  private void read(Workers workers, String entity, Links... into) {
    Pass pass = new Pass(entity, into);
    workers.inOrder(pass.ids.length, PIECE, pass);
  }

  /** Goes through the relations of an entity, some at a time. */
  private final class Pass implements Workers.Work<Links[]> {
    private final String entity;
    private final long[] ids;
    private final Links[] into;

    Pass(String entity, Links... into) {
      this.entity = entity;
      this.ids = file.ids(entity);
      this.into = into;
    }

    @Override
    public Links[] on(int from, int to) {
      Links[] found = new Links[into.length];
      for (int i = 0; i < found.length; i++) {
        found[i] = new Links();
      }
      for (int i = from; i < to; i++) {
        IfcRecord record = file.find(ids[i]);
        if (record != null) {
          read(record, found);
        }
      }
      return found;
    }

    private void read(IfcRecord r, Links[] found) {
      switch (entity) {
        case "IfcRelDefinesByProperties" -> properties(r, found[0], found[1]);
        case "IfcRelConnectsPortToElement" ->
            attach(r.refId("RelatedElement"), r.refId("RelatingPort"), found[0], found[1]);
        case "IfcRelConnectsPorts" -> connected(r, found[0]);
        default -> throw new IllegalArgumentException(entity);
      }
    }

    @Override
    public void take(Links[] found) {
      for (int i = 0; i < found.length; i++) {
        into[i].addAll(found[i]);
      }
    }
  }

  /** One set, or from IFC4 on several sets in a list wrapped in a typed value. */
  private static void properties(IfcRecord r, Links setsOf, Links overridesOf) {
    long set = r.refId("RelatingPropertyDefinition");
    long[] sets =
        set != 0 ? new long[] {set} : r.insideTyped("RelatingPropertyDefinition").references(0);
    boolean overrides = r.is("IfcRelOverridesProperties");
    for (long id : r.refIds("RelatedObjects")) {
      for (long each : sets) {
        setsOf.add(id, each);
      }
      if (overrides) {
        overridesOf.add(id, r.id());
      }
    }
  }

  /** Links each of the related to what relates them. */
  private static void link(Links links, IfcRecord r, String related, String relating) {
    long one = r.refId(relating);
    for (long id : r.refIds(related)) {
      links.add(id, one);
    }
  }

  private void typed(IfcRecord r) {
    types.add(r.refId("RelatingType"));
    link(typeOf, r, "RelatedObjects", "RelatingType");
  }

  private void covered(IfcRecord r) {
    long covered = r.refId("RelatingBuildingElement");
    for (long id : r.refIds("RelatedCoverings")) {
      coveringsOf.add(covered, id);
    }
  }

  private void decomposed(IfcRecord r) {
    long whole = r.refId("RelatingObject");
    for (long id : r.refIds("RelatedObjects")) {
      aggregateOf.add(id, whole);
      partsOf.add(whole, id);
    }
  }

  private void nested(IfcRecord r) {
    long whole = r.refId("RelatingObject");
    for (long id : r.refIds("RelatedObjects")) {
      IfcRecord part = file.find(id);
      if (part != null && part.is("IfcPort")) {
        attach(whole, id, portsOf, ownerOfPort);
      } else {
        nestOf.add(id, whole);
      }
    }
  }

  private static void attach(long element, long port, Links portsOf, Links ownerOfPort) {
    portsOf.add(element, port);
    ownerOfPort.add(port, element);
  }

  private static void connected(IfcRecord r, Links partners) {
    long a = r.refId("RelatingPort");
    long b = r.refId("RelatedPort");
    if (a != b) {
      partners.add(a, b);
      partners.add(b, a);
    }
  }

  private void layer(IfcRecord assignment) {
    String name = assignment.text("Name");
    if (name != null && !name.isBlank()) {
      for (long id : assignment.refIds("AssignedItems")) {
        layerOfItem.putIfAbsent(id, name);
      }
    }
  }

  /** Instance number of the type object, 0 if none. */
  long typeOf(long element) {
    return typeOf.last(element);
  }

  /** Everything that is the type of something. */
  Set<Long> types() {
    return Collections.unmodifiableSet(types);
  }

  long[] propertySetsOf(long element) {
    return propertySetsOf.of(element);
  }

  /** IFC2X3 relations that override single properties of the element. */
  long[] overridesOf(long element) {
    return overridesOf.of(element);
  }

  long[] groupsOf(long element) {
    return groupsOf.of(element);
  }

  /** Spatial element that contains it, 0 if none. */
  long containerOf(long element) {
    return containerOf.last(element);
  }

  /** Spatial elements that it is referenced in without being contained. */
  long[] referencesOf(long element) {
    return referencesOf.of(element);
  }

  /** What it is aggregated or nested under, 0 if nothing. */
  long wholeOf(long element) {
    long aggregate = aggregateOf.last(element);
    return aggregate != 0 ? aggregate : nestOf.first(element);
  }

  long[] partsOf(long element) {
    return partsOf.of(element);
  }

  long[] portsOf(long element) {
    return portsOf.of(element);
  }

  /** Element on the other side of a port, 0 if nothing is connected. */
  long acrossPort(long port) {
    long partner = partnerOfPort.first(port);
    return partner == 0 ? 0 : ownerOfPort.first(partner);
  }

  /** Lets go of what is on the other side of ports, once all of them were read. */
  void forgetPartners() {
    partnerOfPort.clear();
    ownerOfPort.clear();
  }

  /** Lets go of all but what properties and places are read by, once all elements are made. */
  void forgetBelongings() {
    for (Links links : List.of(portsOf, groupsOf, partsOf, materialsOf, coveringsOf)) {
      links.clear();
    }
  }

  /** True if some element owns the port. */
  boolean isOwned(long port) {
    return ownerOfPort.has(port);
  }

  long[] materialsOf(long object) {
    return materialsOf.of(object);
  }

  long[] coveringsOf(long element) {
    return coveringsOf.of(element);
  }

  /** True if the file puts anything on a presentation layer. */
  boolean hasLayers() {
    return !layerOfItem.isEmpty();
  }

  /** Presentation layer of a representation or item, null if none. */
  @Nullable String layerOf(long item) {
    return layerOfItem.get(item);
  }
}
