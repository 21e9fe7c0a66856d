package org.lagwright.ifc.step;

/**
 * Something wrong in the syntax that reading could step over.
 *
 * @param line line number from 1
 * @param what short phrase, without the file name
 */
public record StepProblem(long line, String what) {}
