package org.lagwright.ifc.model;

/**
 * A value that was found but not chosen.
 *
 * @param why why it lost, as a short phrase
 */
public record Candidate<T>(T value, How how, Evidence evidence, String why) {}
