package org.lagwright.testmodels.ifc;

import static org.lagwright.testmodels.step.Value.token;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.step.Ref;

/** Writes distribution elements, their types, ports and systems. */
public final class MepWriter {

  private final IfcWriter ifc;

  public MepWriter(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /**
   * The words on an element.
   *
   * @param key names the record within the file
   */
  public record Label(String key, String name, @Nullable String objectType, @Nullable String tag) {

    /** A key and a name only. */
    public static Label of(String key, String name) {
      return new Label(key, name, null, null);
    }
  }

  /**
   * An occurrence. IFC2X3 has no place for the predefined type: there only a type object tells.
   *
   * @param predefined IFC4 enumeration value, null where the type object or nothing tells
   */
  public Ref element(
      ElementClass what,
      Label label,
      @Nullable Ref placement,
      @Nullable Ref shape,
      @Nullable String predefined) {
    List<@Nullable Object> rest = new ArrayList<>();
    rest.add(label.name());
    rest.add(null);
    rest.add(label.objectType());
    rest.add(placement);
    rest.add(shape);
    rest.add(label.tag());
    if (!ifc.schema().isOld()) {
      rest.add(predefined == null ? null : token(predefined));
    }
    return ifc.root(what.occurrence(ifc.schema()), label.key(), rest.toArray());
  }

  /**
   * A type object.
   *
   * @param predefined IFC4 enumeration value, translated for IFC2X3
   * @param sets property sets, may be empty
   * @param maps representation maps, may be empty
   */
  public Ref type(
      ElementClass what, Label label, String predefined, List<Ref> sets, List<Ref> maps) {
    List<@Nullable Object> rest = new ArrayList<>();
    rest.add(label.name());
    rest.add(null);
    rest.add(null);
    rest.add(sets.isEmpty() ? null : sets);
    rest.add(maps.isEmpty() ? null : maps);
    rest.add(label.tag());
    rest.add(label.objectType());
    if (!what.isWithoutPredefinedType(ifc.schema())) {
      rest.add(token(what.predefined(ifc.schema(), predefined)));
    }
    return ifc.root(what.type(), label.key(), rest.toArray());
  }

  /** Says which elements are of a type. */
  public void assignType(String key, List<Ref> elements, Ref type) {
    ifc.root("IfcRelDefinesByType", "typed " + key, null, null, elements, type);
  }

  /**
   * A port. Its placement has Z pointing away from the element, into it for a SINK.
   *
   * @param flow SOURCE, SINK, SOURCEANDSINK or NOTDEFINED
   * @param medium PIPE or DUCT; IFC2X3 has no place for it
   * @param systemType IfcDistributionSystemEnum value; IFC2X3 has no place for it
   */
  public Ref port(
      String key, @Nullable Ref placement, String flow, String medium, String systemType) {
    List<@Nullable Object> rest = new ArrayList<>();
    rest.add(key);
    rest.add(null);
    rest.add(null);
    rest.add(placement);
    rest.add(null);
    rest.add(token(flow));
    if (!ifc.schema().isOld()) {
      rest.add(token(medium));
      rest.add(token(systemType));
    }
    return ifc.root("IfcDistributionPort", "port " + key, rest.toArray());
  }

  /** Gives ports to their element: nested from IFC4 on, one relation each in IFC2X3. */
  public void ownPorts(String key, Ref element, List<Ref> ports) {
    if (ifc.schema().isOld()) {
      ownPortsTheOldWay(key, element, ports);
    } else {
      ifc.root("IfcRelNests", "ports of " + key, null, null, element, ports);
    }
  }

  /** The IFC2X3 relation, which some files of later schemas still use. */
  public void ownPortsTheOldWay(String key, Ref element, List<Ref> ports) {
    for (int i = 0; i < ports.size(); i++) {
      ifc.root(
          "IfcRelConnectsPortToElement",
          "port " + (i + 1) + " of " + key,
          null,
          null,
          ports.get(i),
          element);
    }
  }

  /** Connects a SOURCE to a SINK. */
  public void connect(String key, Ref source, Ref sink) {
    ifc.root("IfcRelConnectsPorts", "joint " + key, null, null, source, sink, null);
  }

  /**
   * A system.
   *
   * @param longName not written in IFC2X3
   * @param predefined IfcDistributionSystemEnum value, not written in IFC2X3
   */
  public Ref system(String key, String name, @Nullable String longName, String predefined) {
    if (ifc.schema().isOld()) {
      return ifc.root("IfcSystem", "system " + key, name, null, null);
    }
    return ifc.root(
        "IfcDistributionSystem", "system " + key, name, null, null, longName, token(predefined));
  }

  /** Puts elements, or ports, into a system. */
  public void group(String key, List<Ref> members, Ref system) {
    ifc.root("IfcRelAssignsToGroup", "members of " + key, null, null, members, null, system);
  }
}
