package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** The connection points of an element: where, which way, to what. */
public final class PortReader {

  /** Rounding of coordinates. */
  private static final double SAME_PLACE_M = 1e-5;

  /** Rounding of temperatures that are turned from one scale into another. */
  private static final double SAME_TEMPERATURE_K = 0.01;

  /** No medium in a building is colder; nitrogen boils at -196 degC. */
  private static final double COLDEST_C = -200;

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final Placements placements;
  private final int model;

  /** Reads ports of one file. */
  public PortReader(OpenedFile opened) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.properties = opened.properties();
    this.placements = opened.placements();
    this.model = opened.source().index();
  }

  List<Port> portsOf(long element) {
    List<Port> ports = new ArrayList<>();
    for (long id : relations.portsOf(element)) {
      IfcRecord record = file.find(id);
      if (record != null) {
        long other = relations.acrossPort(record.id(), element);
        ports.add(port(record, other == 0 ? null : new ElementKey(model, other)));
      }
    }
    return facing(ports);
  }

  /** True if a port of an element says that it is one of a duct, as those from IFC4 on may. */
  boolean joinDucts(long element) {
    for (long id : relations.portsOf(element)) {
      IfcRecord port = file.find(id);
      if (port != null && "DUCT".equals(port.enumeration("PredefinedType"))) {
        return true;
      }
    }
    return false;
  }

  /**
   * The ports of an element as the file has them, after it was let go of which belong to it.
   *
   * @param joints ports and touching ends that the element has by now
   */
  public List<Port> again(List<Port> joints) {
    List<Port> ports = new ArrayList<>();
    for (Port joint : joints) {
      IfcRecord record = joint.isInFile() ? file.find(joint.step()) : null;
      if (record != null) {
        ports.add(port(record, joint.touching() ? null : joint.connectedTo()));
      }
    }
    return facing(ports);
  }

  /** The ports of an element with directions that point out of it. */
  private static List<Port> facing(List<Port> ports) {
    List<Port> outward = PortAxes.outward(ports);
    return areOnePlace(outward) ? withoutPlace(outward) : outward;
  }

  /** Some exporters put all ports of an element at its origin, which tells nothing of its ends. */
  private static boolean areOnePlace(List<Port> ports) {
    if (ports.size() < 2) {
      return false;
    }
    Point firstM = ports.get(0).positionM();
    Point out = ports.get(0).direction();
    for (Port port : ports) {
      Point atM = port.positionM();
      if (firstM == null || atM == null || !(atM.distanceM(firstM) < SAME_PLACE_M)) {
        return false;
      }
      if (out != null && !out.equals(port.direction())) {
        return false;
      }
    }
    return true;
  }

  private static List<Port> withoutPlace(List<Port> ports) {
    List<Port> unplaced = new ArrayList<>(ports.size());
    for (Port port : ports) {
      unplaced.add(port.withoutPlace());
    }
    return unplaced;
  }

  /** A port with its axis as written. */
  private Port port(IfcRecord record, @Nullable ElementKey other) {
    Frame frame = placements.of(record);
    // a port whose own placement gives no axis has no direction of its own
    boolean hasAxis = placements.givesAxis(record);
    return new Port(
        record.id(),
        frame == null ? null : frame.origin(),
        !hasAxis || frame == null ? null : frame.direction(0, 0, 1),
        record.enumeration("FlowDirection"),
        record.enumeration("SystemType"),
        relations.mayHaveSets(record.id()) ? temperatureC(record.id()) : null,
        other,
        false,
        false);
  }

  /** The first temperature that the properties of a port state; a range of them is none. */
  private @Nullable Double temperatureC(long port) {
    List<Property> stated =
        PropertyNames.listOf(properties.wantedOf(port).properties(), Role.PORT_TEMPERATURE);
    for (Property property : stated) {
      Double celsius = property.number();
      if (celsius != null && isGiven(celsius, property.text())) {
        return celsius;
      }
    }
    return null;
  }

  /** Zero, in whichever unit, and absolute zero stand for a figure that nobody gave. */
  private static boolean isGiven(double celsius, String text) {
    return PropertyLengths.leadingNumber(text) != 0
        && Math.abs(celsius) > SAME_TEMPERATURE_K
        && celsius > COLDEST_C;
  }

  /** Ports that no element owns. */
  public int orphans() {
    int count = 0;
    for (long id : file.ids("IfcDistributionPort")) {
      count += relations.isOwned(id) ? 0 : 1;
    }
    return count;
  }
}
