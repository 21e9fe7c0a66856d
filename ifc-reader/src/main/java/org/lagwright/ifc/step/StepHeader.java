package org.lagwright.ifc.step;

/**
 * What the header of an exchange file tells (ISO 10303-21, clause 8).
 *
 * @param schema first identifier of FILE_SCHEMA, upper case
 * @param exporter the program that wrote the file: originating system of FILE_NAME, else its
 *     preprocessor; empty if it has neither
 */
record StepHeader(String schema, String exporter) {}
