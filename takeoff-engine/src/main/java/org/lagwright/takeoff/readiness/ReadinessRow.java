package org.lagwright.takeoff.readiness;

import java.util.List;
import java.util.stream.Stream;

/**
 * How the elements of one type, written by one program, meet a requirement.
 *
 * @param examples GlobalIds of some that miss it, at most {@value #MOST_EXAMPLES}; of files their
 *     names
 */
public record ReadinessRow(
    Requirement requirement,
    Group group,
    int asAsked,
    int workedOut,
    int missing,
    List<String> examples) {

  /** GlobalIds that a row names. */
  public static final int MOST_EXAMPLES = 5;

  public ReadinessRow {
    examples = List.copyOf(examples);
  }

  /**
   * Elements of one type.
   *
   * @param exporter the program that wrote the file, as its header has it; empty if it does not say
   * @param ifcClass class of the elements; {@code IfcProject} for what concerns whole files
   * @param typeName name of their type object, empty if they have none
   */
  public record Group(String exporter, String ifcClass, String typeName) {}

  /** Elements, or files, that it concerns. */
  public int elements() {
    return asAsked + workedOut + missing;
  }

  /** Of both, as if they were of one type. */
  ReadinessRow plus(ReadinessRow other) {
    return new ReadinessRow(
        requirement,
        group,
        asAsked + other.asAsked,
        workedOut + other.workedOut,
        missing + other.missing,
        Stream.concat(examples.stream(), other.examples.stream()).limit(MOST_EXAMPLES).toList());
  }
}
