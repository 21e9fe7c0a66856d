package org.lagwright.takeoff.service;

import org.jspecify.annotations.Nullable;

/**
 * A temperature of the medium that the model tells.
 *
 * @param celsius degC
 * @param from where it stands: {@code system name}, {@code property Vorlauftemperatur}, {@code
 *     properties of its ports}
 * @param text as it stands there, that of ports in degC
 * @param pressure pressure of saturated steam it follows from, as it stands there; null where the
 *     temperature itself stands there
 * @param gaugeAssumed true where that pressure says neither gauge nor absolute
 * @param otherwise what a property of the same name says elsewhere, as it stands there; null where
 *     nothing contradicts
 * @param believed false where no medium of this service has it; then it is shown and not used
 */
public record ToldTemperature(
    double celsius,
    String from,
    String text,
    @Nullable String pressure,
    boolean gaugeAssumed,
    @Nullable String otherwise,
    boolean believed) {}
