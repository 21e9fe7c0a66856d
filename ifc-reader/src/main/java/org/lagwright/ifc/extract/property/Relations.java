package org.lagwright.ifc.extract.property;

import java.util.Collections;
import java.util.HashMap;
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

  private final IfcFile file;
  private final RelationTables tables;
  private final Map<Long, String> layerOfItem = new HashMap<>();

  /** Few files have properties of ports. */
  private final boolean portsHaveSets;

  /** Reads the relations of one file, with all threads. */
  public Relations(IfcFile file, Workers workers) {
    this.file = file;
    // most relations of these kinds make one link
    this.tables =
        new RelationTables(
            file,
            file.count("IfcRelDefinesByProperties"),
            file.count("IfcRelConnectsPortToElement"),
            file.count("IfcRelConnectsPorts"));
    long[] ids = file.ids(RelationTables.READ);
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
  private final class Pass implements Workers.Work<RelationTables> {
    private final long[] ids;

    Pass(long[] ids) {
      this.ids = ids;
    }

    @Override
    public RelationTables on(int from, int to) {
      RelationTables found = new RelationTables(file, PIECE, 0, 0);
      for (int i = from; i < to; i++) {
        IfcRecord record = file.find(ids[i]);
        if (record != null) {
          found.add(record);
        }
      }
      return found;
    }

    @Override
    public void take(RelationTables found) {
      tables.addAll(found);
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

  /** All spatial elements that contain it; the schemas allow one. */
  public long[] containersOf(long element) {
    return tables.containerOf.of(element);
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
