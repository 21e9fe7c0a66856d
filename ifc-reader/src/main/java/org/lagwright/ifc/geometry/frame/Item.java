package org.lagwright.ifc.geometry.frame;

import org.lagwright.ifc.schema.IfcRecord;

/**
 * One item of a body representation.
 *
 * @param frame takes its coordinates (in metres) to the world; mapped items are already resolved
 */
public record Item(IfcRecord record, Frame frame) {}
