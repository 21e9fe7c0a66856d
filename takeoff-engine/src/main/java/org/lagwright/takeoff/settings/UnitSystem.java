package org.lagwright.takeoff.settings;

/** Units of workbook and tables; everything else, and every reckoning, is in SI. */
public enum UnitSystem {
  METRIC("metric"),
  US("us");

  private final String label;

  UnitSystem(String label) {
    this.label = label;
  }

  /** The name in settings and outputs. */
  public String label() {
    return label;
  }
}
