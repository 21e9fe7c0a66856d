package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * A connection point of an element: a port of the file, or an end of its body that touches another
 * one where the file has no port.
 *
 * @param step instance number of the IfcDistributionPort, 0 for an end without port
 * @param positionM world position in metres, null where the port has no placement
 * @param direction unit vector pointing away from the element, null where unknown
 * @param flow flow direction as written (SOURCE, SINK, SOURCEANDSINK, NOTDEFINED), null if absent
 * @param systemType system type as written (HEATING, CHILLEDWATER ...), null if absent
 * @param temperatureC temperature of what flows there by the port's own properties, degC, null
 *     where they state none
 * @param connectedTo the element on the other side, null where nothing is connected
 * @param touching true if the file does not say what is on the other side; it was found because the
 *     ends touch
 * @param tap true for a joint between an end and the side of a straight piece, on both of them
 */
public record Port(
    long step,
    @Nullable Point positionM,
    @Nullable Point direction,
    @Nullable String flow,
    @Nullable String systemType,
    @Nullable Double temperatureC,
    @Nullable ElementKey connectedTo,
    boolean touching,
    boolean tap) {

  /** A port as the file has it, of which no temperature is stated. */
  public Port(
      long step,
      @Nullable Point positionM,
      @Nullable Point direction,
      @Nullable String flow,
      @Nullable String systemType,
      @Nullable ElementKey connectedTo) {
    this(step, positionM, direction, flow, systemType, null, connectedTo, false, false);
  }

  /** A joint that the file has no port of. */
  public static Port withoutRecord(
      Point positionM, @Nullable Point direction, ElementKey connectedTo, boolean tap) {
    return new Port(0, positionM, direction, null, null, null, connectedTo, true, tap);
  }

  /** This port with another element on the other side. */
  public Port connectedTo(ElementKey other) {
    return new Port(
        step, positionM, direction, flow, systemType, temperatureC, other, touching, tap);
  }

  /** This port as the file has it, with nothing on the other side. */
  public Port unconnected() {
    return new Port(step, positionM, direction, flow, systemType, temperatureC, null, false, false);
  }

  /** This port where nothing tells of its place. */
  public Port withoutPlace() {
    return new Port(step, null, null, flow, systemType, temperatureC, connectedTo, touching, tap);
  }

  /** This port facing the other way. */
  public Port reversed() {
    Point out = direction;
    return out == null
        ? this
        : new Port(
            step,
            positionM,
            new Point(-out.x(), -out.y(), -out.z()),
            flow,
            systemType,
            temperatureC,
            connectedTo,
            touching,
            tap);
  }

  /** True if the file has a record of this port. */
  public boolean isInFile() {
    return step != 0;
  }

  /** This port as a joint with the side of a straight piece. */
  public Port atTheSide() {
    return new Port(
        step, positionM, direction, flow, systemType, temperatureC, connectedTo, touching, true);
  }

  /** This port with an element on the other side that touches it, with its end or its side. */
  public Port touching(ElementKey other, Point atM, @Nullable Point outward, boolean atItsSide) {
    return new Port(
        step,
        positionM == null ? atM : positionM,
        direction == null ? outward : direction,
        flow,
        systemType,
        temperatureC,
        other,
        connectedTo == null || touching,
        atItsSide);
  }
}
