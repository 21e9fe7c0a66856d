package org.lagwright.takeoff.scope;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Kind;

/**
 * What the scope rules look at.
 *
 * @param ifcClass IFC class, and type where there is one, for the reason
 * @param serviceId id of the service, null where an element carries none
 * @param serviceName service in words
 * @param serviceScope in, out, ask or unknown, after the settings
 * @param settingsScope what the settings say for the service, null if nothing
 * @param rivalName the service that contradicts, in words; null where none
 * @param rivalScope its scope after the settings; null where none
 * @param because the service's own reason
 * @param location location class
 * @param statusText what the property Status says, null if nothing
 * @param status which status that is, as the pack names it; null where none
 * @param host what a covering covers, in words
 */
public record ScopeFacts(
    Kind kind,
    String ifcClass,
    @Nullable String serviceId,
    String serviceName,
    @Nullable String serviceScope,
    @Nullable String settingsScope,
    @Nullable String rivalName,
    @Nullable String rivalScope,
    String because,
    String location,
    @Nullable String statusText,
    @Nullable String status,
    String host) {}
