package org.lagwright.takeoff.pack;

/**
 * Names a data pack in the results.
 *
 * @param id stable id: {@code us-ashrae-90.1-pipe}
 * @param version version or edition
 * @param source where its figures come from
 * @param status how far they were checked: {@code verified}, {@code common practice}, {@code from
 *     memory, verify}
 */
public record PackInfo(String id, String version, String source, String status) {}
