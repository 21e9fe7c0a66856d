package org.lagwright.ifc.model;

import java.util.function.Supplier;

/**
 * The file a model was read from.
 *
 * @param index position on the command line, from 0
 * @param name file name without folders
 * @param fingerprint gives {@link #sha256}, perhaps only after the file has been read for it
 * @param schema schema identifier as written in FILE_SCHEMA
 * @param exporter the program that wrote the file, as its header names it; empty if it does not
 */
public record ModelFile(
    int index, String name, Supplier<String> fingerprint, String schema, String exporter) {

  /** A fingerprint that is there already. */
  private record Known(String sha256) implements Supplier<String> {
    @Override
    public String get() {
      return sha256;
    }
  }

  /** A file whose fingerprint is known. */
  public ModelFile(int index, String name, String sha256, String schema, String exporter) {
    this(index, name, new Known(sha256), schema, exporter);
  }

  /** A file that does not tell what wrote it. */
  public ModelFile(int index, String name, String sha256, String schema) {
    this(index, name, sha256, schema, "");
  }

  /** The same file with the fingerprint of its bytes. */
  public ModelFile with(Supplier<String> itsFingerprint) {
    return new ModelFile(index, name, itsFingerprint, schema, exporter);
  }

  /**
   * SHA-256 of the bytes, lower-case hex. The first call may have to wait for it.
   *
   * @throws org.lagwright.ifc.source.ModelException if the file can no longer be read
   */
  public String sha256() {
    return fingerprint.get();
  }
}
