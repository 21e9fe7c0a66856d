package org.lagwright.report.enrich;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.append.GlobalId;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.append.IfcAppender.NewRecord;
import org.lagwright.ifc.append.StepValue;
import org.lagwright.ifc.extract.HostReader;
import org.lagwright.ifc.extract.HostReader.Host;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.body.ElementBodies;
import org.lagwright.takeoff.body.ElementBodies.LayerBodies;

/**
 * Writes coverings and what relates them. IFC2X3 wants a covering in the storey of its element and
 * a relation that says what it covers; IFC4 and IFC4X3 want it as a part of the element, placed
 * relative to it, and in no storey.
 */
final class CoveringWriter {

  private final IfcAppender to;
  private final HostReader hosts;
  private final long ownerHistory;
  private final SharedRecords shared;
  private final BodyWriter bodies;
  private final SetWriter sets;
  private final boolean asParts;
  private final Map<Long, List<Long>> byContainer = new LinkedHashMap<>();

  CoveringWriter(IfcAppender to, HostReader hosts, String origin) {
    this.to = to;
    this.hosts = hosts;
    this.asParts = to.schema() != IfcSchema.IFC2X3;
    this.shared = new SharedRecords(to);
    this.ownerHistory = asParts ? 0 : shared.ownerHistory(hosts.ownerHistory(), origin);
    this.bodies = new BodyWriter(to, shared, hosts.units());
    this.sets = new SetWriter(to, hosts, ownerHistory, origin);
  }

  /** A record of an IfcRoot. */
  private NewRecord root(String entity, String globalId) {
    return to.record(entity).text("GlobalId", globalId).ref("OwnerHistory", ownerHistory);
  }

  /**
   * Writes the coverings of one element.
   *
   * @param ids GlobalIds of the layers
   */
  void add(TakenElement taken, TakeoffLine line, ElementBodies.Made made, List<String> ids) {
    long element = taken.element().key().step();
    Host host = hosts.host(element);
    LocalFrame local = LocalFrame.of(host, asParts);
    List<Long> coverings = new ArrayList<>();
    for (int i = 0; i < ids.size(); i++) {
      LayerBodies layer = made.layers().get(i);
      long covering = covering(layer, ids, i, local, host, line);
      coverings.add(covering);
      sets.add(covering, ids.get(i), taken, line, layer, ids.size());
    }
    if (asParts) {
      root("IfcRelAggregates", GlobalId.of("lagwright/parts/" + ids.get(0)))
          .ref("RelatingObject", element)
          .refs("RelatedObjects", coverings)
          .add();
    } else {
      root("IfcRelCoversBldgElements", GlobalId.of("lagwright/covers/" + ids.get(0)))
          .ref("RelatingBuildingElement", element)
          .refs("RelatedCoverings", coverings)
          .add();
      byContainer
          .computeIfAbsent(hosts.containerOf(element), k -> new ArrayList<>())
          .addAll(coverings);
    }
  }

  private long covering(
      LayerBodies layer,
      List<String> ids,
      int index,
      LocalFrame local,
      Host host,
      TakeoffLine line) {
    String of = ids.size() > 1 ? ", layer " + (index + 1) + " of " + ids.size() : "";
    String name = "Insulation " + Words.millimetres(layer.layer().thicknessM()) + " mm" + of;
    LocalFrame own = layer.bodies().isEmpty() ? local : local.at(BodyWriter.first(layer.bodies()));
    NewRecord covering =
        root("IfcCovering", ids.get(index))
            .text("Name", name)
            .text("Tag", line.id())
            .ref("ObjectPlacement", shared.placement(own, hosts.units().lengthM()))
            .set("PredefinedType", StepValue.enumeration("INSULATION"));
    if (!layer.bodies().isEmpty()) {
      covering.ref("Representation", bodies.shape(layer.bodies(), own, host.context()));
    }
    return covering.add();
  }

  /** Writes what is common to many coverings. */
  void finish() {
    sets.finish();
    byContainer.forEach(
        (container, coverings) -> {
          if (container != 0) {
            root("IfcRelContainedInSpatialStructure", containmentId(container, coverings))
                .refs("RelatedElements", coverings)
                .ref("RelatingStructure", container)
                .add();
          }
        });
  }

  private static String containmentId(long container, List<Long> coverings) {
    return GlobalId.of("lagwright/contained/" + container + "/" + coverings.get(0));
  }
}
