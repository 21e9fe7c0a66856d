package org.lagwright.ifc.step;

/**
 * A keyword that occurs in a file.
 *
 * @param name in upper case
 * @param number from 0, for tables kept beside the file
 * @param listed true if its instance numbers are kept in a list
 */
public record StepKeyword(String name, int number, boolean listed) {}
