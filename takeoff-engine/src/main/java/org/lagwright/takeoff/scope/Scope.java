package org.lagwright.takeoff.scope;

import java.util.Locale;

/** Whether an element gets insulation. */
public enum Scope {
  IN,
  OUT,
  ASK;

  /** The name used in files we write. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
