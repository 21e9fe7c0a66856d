package org.lagwright.report.bimserver;

/**
 * A revision that the server has.
 *
 * @param id what the server calls it
 * @param number in its project, from 1
 * @param project name; of a sub-project its path
 * @param schema as the server names it, such as {@code ifc4}
 */
public record Revision(long id, long number, String project, String schema) {}
