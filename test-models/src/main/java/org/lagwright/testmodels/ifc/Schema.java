package org.lagwright.testmodels.ifc;

import java.util.Locale;

/** The three schemas we write. */
public enum Schema {
  /** IFC2X3 TC1. */
  IFC2X3("IFC2X3"),
  /** IFC4 ADD2 TC1. */
  IFC4("IFC4"),
  /** IFC4X3 ADD2. */
  IFC4X3("IFC4X3_ADD2");

  private final String id;

  Schema(String id) {
    this.id = id;
  }

  /** The name in FILE_SCHEMA. */
  public String id() {
    return id;
  }

  /** The name used in our file names. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True for IFC2X3, the schema without leaf classes, with an owner history on every root. */
  public boolean isOld() {
    return this == IFC2X3;
  }
}
