package org.lagwright.takeoff.service;

/**
 * One hint about the service of an element.
 *
 * @param serviceId the service (or family of services) voted for
 * @param from where the hint stands: {@code system name}, {@code property Medium}, {@code
 *     neighbour}
 * @param text the words that were understood, as written
 * @param weight weight from the pack
 */
public record Vote(String serviceId, String from, String text, double weight) {}
