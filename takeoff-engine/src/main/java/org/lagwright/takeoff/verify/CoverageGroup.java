package org.lagwright.takeoff.verify;

/**
 * What coverage is told by.
 *
 * @param service service in words
 * @param size size in words; empty where it is not known
 * @param location location class; empty where no thickness was decided
 * @param storey name of the storey; empty where the model does not tell
 */
public record CoverageGroup(String service, String size, String location, String storey) {}
