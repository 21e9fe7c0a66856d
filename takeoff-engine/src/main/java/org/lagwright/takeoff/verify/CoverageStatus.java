package org.lagwright.takeoff.verify;

/** How what a model shows on an element stands to what is required there. */
public enum CoverageStatus {
  /** As thick as required, of a material that fits. */
  COVERED("covered"),
  /** Thinner than required. */
  TOO_THIN("too thin"),
  /** Clearly thicker than what would be bought. */
  TOO_THICK("too thick"),
  /** Thick enough, but named a material of another family. */
  WRONG_MATERIAL("wrong material"),
  /** Nothing is shown. */
  BARE("bare"),
  /** Something is shown without its thickness, or nothing tells what is required. */
  UNKNOWN("unknown");

  private final String label;

  CoverageStatus(String label) {
    this.label = label;
  }

  /** In words: {@code too thin}. */
  public String label() {
    return label;
  }
}
