package org.lagwright.report.bcf;

/** Versions of the format that are written. */
public enum BcfVersion {
  /** The one that most programs read. */
  V2_1("2.1"),
  V3_0("3.0");

  private final String id;

  BcfVersion(String id) {
    this.id = id;
  }

  /** As the file states it: {@code 2.1}. */
  public String id() {
    return id;
  }
}
