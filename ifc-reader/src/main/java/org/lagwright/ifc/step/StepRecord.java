package org.lagwright.ifc.step;

/**
 * One instance of the file.
 *
 * @param id instance number
 * @param type its keyword
 * @param arguments what stands between its brackets
 */
public record StepRecord(long id, StepKeyword type, StepArguments arguments) {

  /** Entity name in upper case. */
  public String keyword() {
    return type.name();
  }
}
