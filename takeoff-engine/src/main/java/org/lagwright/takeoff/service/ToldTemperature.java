package org.lagwright.takeoff.service;

/**
 * A temperature of the medium that the model tells.
 *
 * @param celsius degC
 * @param from where it stands: {@code system name}, {@code property Vorlauftemperatur}
 * @param text as it stands there
 * @param believed false where no medium of this service has it; then it is shown and not used
 */
public record ToldTemperature(double celsius, String from, String text, boolean believed) {}
