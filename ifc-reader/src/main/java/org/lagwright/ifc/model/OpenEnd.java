package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * An end of an element that its own file connects to nothing.
 *
 * @param positionM world position in metres
 * @param outward unit vector pointing away from the element, null where unknown
 * @param section outer section there, null where unknown
 */
public record OpenEnd(Point positionM, @Nullable Point outward, @Nullable Section section) {}
