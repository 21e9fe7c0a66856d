package org.lagwright.report.bimserver;

/**
 * A revision that the server has.
 *
 * @param id what the server calls it
 * @param number in its project, from 1
 * @param projectId what the server calls its project
 * @param project name; of a sub-project its path
 * @param schema as the server names it, such as {@code ifc4}
 */
public record Revision(long id, long number, long projectId, String project, String schema) {

  /** Project and number, as in an address. */
  @Override
  public String toString() {
    return project + "@" + number;
  }
}
