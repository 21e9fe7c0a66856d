package org.lagwright.ifc.model;

/**
 * The file a model was read from.
 *
 * @param index position on the command line, from 0
 * @param name file name without folders
 * @param sha256 SHA-256 of the bytes read, lower-case hex
 * @param schema schema identifier as written in FILE_SCHEMA
 */
public record ModelFile(int index, String name, String sha256, String schema) {}
