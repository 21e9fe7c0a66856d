package org.lagwright.ifc.step;

/**
 * One instance of the file.
 *
 * @param id instance number
 * @param keyword entity name in upper case
 * @param arguments what stands between its brackets
 */
public record StepRecord(long id, String keyword, StepArguments arguments) {}
