package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * A system or group that elements belong to.
 *
 * @param predefinedType IfcDistributionSystemEnum value as written, null if absent
 */
public record MepSystem(
    long step,
    String globalId,
    String name,
    @Nullable String longName,
    @Nullable String objectType,
    @Nullable String predefinedType) {}
