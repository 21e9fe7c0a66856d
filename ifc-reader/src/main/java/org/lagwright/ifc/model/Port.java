package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * A connection point of an element.
 *
 * @param step instance number of the IfcDistributionPort
 * @param positionM world position in metres, null where the port has no placement
 * @param direction unit vector pointing away from the element, null where unknown
 * @param flow flow direction as written (SOURCE, SINK, SOURCEANDSINK, NOTDEFINED), null if absent
 * @param systemType system type as written (HEATING, CHILLEDWATER ...), null if absent
 * @param connectedTo the element on the other side, null where nothing is connected
 */
public record Port(
    long step,
    @Nullable Point positionM,
    @Nullable Point direction,
    @Nullable String flow,
    @Nullable String systemType,
    @Nullable ElementKey connectedTo) {}
