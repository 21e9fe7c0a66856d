package org.lagwright.ifc.extract.property;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** What relations tell, by instance number: those of a whole file, or of some of them. */
final class RelationTables {

  /** The relations that are read. */
  static final List<String> READ =
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

  RelationTables(IfcFile file, int sets, int ports, int connections) {
    this.file = file;
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

  /** Takes over what others tell. */
  void addAll(RelationTables more) {
    for (int i = 0; i < all.size(); i++) {
      all.get(i).addAll(more.all.get(i));
    }
    types.addAll(more.types);
    declaring.addAll(more.declaring);
  }

  /** Adds what a relation tells; asks for the most frequent ones first. */
  void add(IfcRecord r) {
    if (r.is("IfcRelDefinesByProperties")) {
      properties(r);
    } else if (r.is("IfcRelConnectsPortToElement")) {
      attach(r.refId("RelatedElement"), r.refId("RelatingPort"));
    } else if (r.is("IfcRelConnectsPorts")) {
      connected(r);
    } else if (r.is("IfcRelDefinesByType")) {
      typed(r);
    } else if (r.is("IfcRelDefinesByObject")) {
      declaring.add(r.refId("RelatingObject"));
      link(declaringOf, r, "RelatedObjects", "RelatingObject");
    } else if (r.is("IfcRelAssignsToGroup")) {
      link(groupsOf, r, "RelatedObjects", "RelatingGroup");
    } else if (r.is("IfcRelContainedInSpatialStructure")) {
      link(containerOf, r, "RelatedElements", "RelatingStructure");
    } else if (r.is("IfcRelReferencedInSpatialStructure")) {
      link(referencesOf, r, "RelatedElements", "RelatingStructure");
    } else if (r.is("IfcRelAggregates")) {
      decomposed(r);
    } else if (r.is("IfcRelNests")) {
      nested(r);
    } else if (r.is("IfcRelAssociatesMaterial")) {
      link(materialsOf, r, "RelatedObjects", "RelatingMaterial");
    } else if (r.is("IfcRelCoversBldgElements")) {
      covered(r);
    } else if (r.is("IfcRelCoversSpaces")) {
      for (long id : r.refIds("RelatedCoverings")) {
        roomsOf.add(id, r.id());
      }
    } else {
      throw new IllegalArgumentException(r.entityName());
    }
  }

  /** One set, or from IFC4 on several sets in a list wrapped in a typed value. */
  private void properties(IfcRecord r) {
    long set = r.refId("RelatingPropertyDefinition");
    long[] sets =
        set != 0 ? new long[] {set} : r.insideTyped("RelatingPropertyDefinition").references(0);
    boolean overrides = r.is("IfcRelOverridesProperties");
    for (long id : r.refIds("RelatedObjects")) {
      for (long each : sets) {
        propertySetsOf.add(id, each);
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
        attach(whole, id);
      } else {
        nestOf.add(id, whole);
      }
    }
  }

  private void attach(long element, long port) {
    portsOf.add(element, port);
    ownerOfPort.add(port, element);
  }

  private void connected(IfcRecord r) {
    long a = r.refId("RelatingPort");
    long b = r.refId("RelatedPort");
    if (a != b) {
      partnerOfPort.add(a, b);
      partnerOfPort.add(b, a);
    }
  }
}
