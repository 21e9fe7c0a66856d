package org.lagwright.ifc.extract.property;

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
public final class Relations {

  /** Relations that one thread reads before it hands them on. */
  private static final int PIECE = 512;

  private static final List<String> READ =
      List.of(
          "IfcRelDefinesByProperties",
          "IfcRelConnectsPortToElement",
          "IfcRelConnectsPorts",
          "IfcRelDefinesByType",
          "IfcRelDefinesByObject",
          "IfcRelAssignsToGroup",
          "IfcRelReferencedInSpatialStructure",
          "IfcRelContainedInSpatialStructure",
          "IfcRelAggregates",
          "IfcRelNests",
          "IfcRelAssociatesMaterial",
          "IfcRelCoversBldgElements",
          "IfcRelCoversSpaces");

  private final IfcFile file;
  private final Tables tables;
  private final Map<Long, String> layerOfItem = new HashMap<>();

  /** Few files have properties of ports. */
  private final boolean portsHaveSets;

  /** What relations tell: those of the whole file, or of some of them. */
  private static final class Tables {
    final Links typeOf = new Links();
    final Links declaringOf = new Links();
    final Links propertySetsOf;
    final Links overridesOf = new Links();
    final Links groupsOf = new Links();
    final Links containerOf = new Links();
    final Links referencesOf = new Links();
    final Links aggregateOf = new Links();
    final Links nestOf = new Links();
    final Links partsOf = new Links();
    final Links portsOf;
    final Links ownerOfPort;
    final Links partnerOfPort;
    final Links materialsOf = new Links();
    final Links coveringsOf = new Links();
    final Links roomsOf = new Links();
    final Set<Long> types = new LinkedHashSet<>();
    final Set<Long> declaring = new LinkedHashSet<>();

    /** All of them, those that mostly are the largest first. */
    final List<Links> all;

    Tables(int sets, int ports, int connections) {
      propertySetsOf = new Links(sets);
      portsOf = new Links(ports);
      ownerOfPort = new Links(ports);
      partnerOfPort = new Links(2 * connections);
      all =
          List.of(
              propertySetsOf,
              portsOf,
              ownerOfPort,
              partnerOfPort,
              typeOf,
              declaringOf,
              overridesOf,
              groupsOf,
              containerOf,
              aggregateOf,
              nestOf,
              partsOf,
              materialsOf,
              coveringsOf,
              referencesOf,
              roomsOf);
    }

    void addAll(Tables more) {
      for (int i = 0; i < all.size(); i++) {
        all.get(i).addAll(more.all.get(i));
      }
      types.addAll(more.types);
      declaring.addAll(more.declaring);
    }
  }

  /** Reads the relations of one file, with all threads. */
  public Relations(IfcFile file, Workers workers) {
    this.file = file;
    // most relations of these kinds make one link
    this.tables =
        new Tables(
            file.count("IfcRelDefinesByProperties"),
            file.count("IfcRelConnectsPortToElement"),
            file.count("IfcRelConnectsPorts"));
    long[] ids = file.ids(READ);
    workers.inOrder(ids.length, PIECE, new Pass(ids));
    readLayers();
    workers.inOrder(tables.all.size(), 1, new Closing(tables.all));
    this.portsHaveSets = tables.ownerOfPort.sharesAKeyWith(tables.propertySetsOf);
  }

  private record Closing(List<Links> all) implements Workers.Work<Links> {
    @Override
    public Links on(int at, int next) {
      return all.get(at).close();
    }
  }

  /** Goes through relations, some at a time. */
  private final class Pass implements Workers.Work<Tables> {
    private final long[] ids;

    Pass(long[] ids) {
      this.ids = ids;
    }

    @Override
    public Tables on(int from, int to) {
      Tables found = new Tables(PIECE, 0, 0);
      for (int i = from; i < to; i++) {
        IfcRecord record = file.find(ids[i]);
        if (record != null) {
          read(record, found);
        }
      }
      return found;
    }

    @Override
    public void take(Tables found) {
      tables.addAll(found);
    }
  }

  /** Asks for the most frequent ones first. */
  private void read(IfcRecord r, Tables found) {
    if (r.is("IfcRelDefinesByProperties")) {
      properties(r, found);
    } else if (r.is("IfcRelConnectsPortToElement")) {
      attach(r.refId("RelatedElement"), r.refId("RelatingPort"), found);
    } else if (r.is("IfcRelConnectsPorts")) {
      connected(r, found.partnerOfPort);
    } else if (r.is("IfcRelDefinesByType")) {
      typed(r, found);
    } else if (r.is("IfcRelDefinesByObject")) {
      found.declaring.add(r.refId("RelatingObject"));
      link(found.declaringOf, r, "RelatedObjects", "RelatingObject");
    } else if (r.is("IfcRelAssignsToGroup")) {
      link(found.groupsOf, r, "RelatedObjects", "RelatingGroup");
    } else if (r.is("IfcRelContainedInSpatialStructure")) {
      link(found.containerOf, r, "RelatedElements", "RelatingStructure");
    } else if (r.is("IfcRelReferencedInSpatialStructure")) {
      link(found.referencesOf, r, "RelatedElements", "RelatingStructure");
    } else if (r.is("IfcRelAggregates")) {
      decomposed(r, found);
    } else if (r.is("IfcRelNests")) {
      nested(r, found);
    } else if (r.is("IfcRelAssociatesMaterial")) {
      link(found.materialsOf, r, "RelatedObjects", "RelatingMaterial");
    } else if (r.is("IfcRelCoversBldgElements")) {
      covered(r, found.coveringsOf);
    } else if (r.is("IfcRelCoversSpaces")) {
      for (long id : r.refIds("RelatedCoverings")) {
        found.roomsOf.add(id, r.id());
      }
    } else {
      throw new IllegalArgumentException(r.entityName());
    }
  }

  /** One set, or from IFC4 on several sets in a list wrapped in a typed value. */
  private static void properties(IfcRecord r, Tables found) {
    long set = r.refId("RelatingPropertyDefinition");
    long[] sets =
        set != 0 ? new long[] {set} : r.insideTyped("RelatingPropertyDefinition").references(0);
    boolean overrides = r.is("IfcRelOverridesProperties");
    for (long id : r.refIds("RelatedObjects")) {
      for (long each : sets) {
        found.propertySetsOf.add(id, each);
      }
      if (overrides) {
        found.overridesOf.add(id, r.id());
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

  private static void typed(IfcRecord r, Tables found) {
    found.types.add(r.refId("RelatingType"));
    link(found.typeOf, r, "RelatedObjects", "RelatingType");
  }

  private static void covered(IfcRecord r, Links coveringsOf) {
    long covered = r.refId("RelatingBuildingElement");
    for (long id : r.refIds("RelatedCoverings")) {
      coveringsOf.add(covered, id);
    }
  }

  private static void decomposed(IfcRecord r, Tables found) {
    long whole = r.refId("RelatingObject");
    for (long id : r.refIds("RelatedObjects")) {
      found.aggregateOf.add(id, whole);
      found.partsOf.add(whole, id);
    }
  }

  private void nested(IfcRecord r, Tables found) {
    long whole = r.refId("RelatingObject");
    for (long id : r.refIds("RelatedObjects")) {
      IfcRecord part = file.find(id);
      if (part != null && part.is("IfcPort")) {
        attach(whole, id, found);
      } else {
        found.nestOf.add(id, whole);
      }
    }
  }

  private static void attach(long element, long port, Tables found) {
    found.portsOf.add(element, port);
    found.ownerOfPort.add(port, element);
  }

  private static void connected(IfcRecord r, Links partners) {
    long a = r.refId("RelatingPort");
    long b = r.refId("RelatedPort");
    if (a != b) {
      partners.add(a, b);
      partners.add(b, a);
    }
  }

  private void readLayers() {
    for (long id : file.ids("IfcPresentationLayerAssignment")) {
      IfcRecord assignment = file.find(id);
      if (assignment != null) {
        layer(assignment);
      }
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
  public long typeOf(long element) {
    return tables.typeOf.last(element);
  }

  /** The object that declares what a part of a whole like others is, 0 if none. */
  long declaringOf(long element) {
    return tables.declaringOf.last(element);
  }

  /** True for a part of a type that is not built: it declares what parts of occurrences are. */
  public boolean onlyDeclares(long element) {
    boolean declares = !tables.declaring.isEmpty() && tables.declaring.contains(element);
    IfcRecord whole = declares ? file.find(wholeOf(element)) : null;
    return whole != null && whole.is("IfcTypeObject");
  }

  /** Everything that is the type of something. */
  public Set<Long> types() {
    return Collections.unmodifiableSet(tables.types);
  }

  /** Instance numbers of the property and quantity sets of an element. */
  public long[] propertySetsOf(long element) {
    return tables.propertySetsOf.of(element);
  }

  /** True if some port may have properties; false without looking where the file has none. */
  public boolean mayHaveSets(long port) {
    return portsHaveSets && tables.propertySetsOf.has(port);
  }

  /** IFC2X3 relations that override single properties of the element. */
  long[] overridesOf(long element) {
    return tables.overridesOf.of(element);
  }

  /** Instance numbers of the groups and systems an element is in. */
  public long[] groupsOf(long element) {
    return tables.groupsOf.of(element);
  }

  /** Spatial element that contains it, 0 if none. */
  public long containerOf(long element) {
    return tables.containerOf.last(element);
  }

  /** Spatial elements that it is referenced in without being contained. */
  public long[] referencesOf(long element) {
    return tables.referencesOf.of(element);
  }

  /** What it is aggregated or nested under, 0 if nothing. */
  public long wholeOf(long element) {
    long aggregate = tables.aggregateOf.last(element);
    return aggregate != 0 ? aggregate : tables.nestOf.first(element);
  }

  /** Instance numbers of what an element is made of. */
  public long[] partsOf(long element) {
    return tables.partsOf.of(element);
  }

  /** Instance numbers of the ports of an element, by either relation. */
  public long[] portsOf(long element) {
    return tables.portsOf.of(element);
  }

  /**
   * Element on the other side of a port, 0 if nothing is connected. Of several the first counts
   * that is another element than the port's own.
   */
  public long acrossPort(long port, long element) {
    long owner = ownerOf(tables.partnerOfPort.first(port), element);
    if (owner == 0) {
      for (long partner : tables.partnerOfPort.of(port)) {
        owner = owner == 0 ? ownerOf(partner, element) : owner;
      }
    }
    return owner;
  }

  private long ownerOf(long port, long butNot) {
    long owner = port == 0 ? 0 : tables.ownerOfPort.first(port);
    return owner == butNot ? 0 : owner;
  }

  /** Lets go of what is on the other side of ports, once all of them were read. */
  public void forgetPartners() {
    tables.partnerOfPort.clear();
    tables.ownerOfPort.clear();
  }

  /**
   * Lets go of all but what properties, places and single elements are read by, once all elements
   * are made.
   */
  public void forgetBelongings() {
    for (Links links :
        List.of(tables.portsOf, tables.groupsOf, tables.partsOf, tables.coveringsOf)) {
      links.clear();
    }
  }

  /** True if some element owns the port. */
  public boolean isOwned(long port) {
    return tables.ownerOfPort.has(port);
  }

  /** Materials of an element; of its type if it has none of its own. */
  public long[] materialsOf(long element) {
    long[] own = tables.materialsOf.of(element);
    return own.length == 0 ? tables.materialsOf.of(typeOf(element)) : own;
  }

  /** Instance numbers of the coverings of an element. */
  public long[] coveringsOf(long element) {
    return tables.coveringsOf.of(element);
  }

  /** True for a covering of the floor, the walls or the ceiling of a room. */
  public boolean isOfRoom(long covering) {
    return tables.roomsOf.has(covering);
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
