package org.lagwright.ifc.model;

/**
 * The file a model was read from.
 *
 * @param index position on the command line, from 0
 * @param name file name without folders
 * @param sha256 SHA-256 of the bytes read, lower-case hex
 * @param schema schema identifier as written in FILE_SCHEMA
 * @param exporter the program that wrote the file, as its header names it; empty if it does not
 */
public record ModelFile(int index, String name, String sha256, String schema, String exporter) {

  /** A file that does not tell what wrote it. */
  public ModelFile(int index, String name, String sha256, String schema) {
    this(index, name, sha256, schema, "");
  }

  /** The same file with the hash of its bytes. */
  public ModelFile withSha256(String hash) {
    return new ModelFile(index, name, hash, schema, exporter);
  }
}
