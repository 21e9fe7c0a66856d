package org.lagwright.takeoff.clearance;

/** Why two elements do not fit; the worst first. */
public enum Cause {
  /** They overlap without any insulation. */
  BARE_CLASH("bare clash", "Move one of them; they overlap without insulation."),
  /** They overlap with the insulation that was taken off, and would not without. */
  INSULATION_CLASH("insulation clash", "Move one of them, or insulate with a thinner material."),
  /** Less room between them than wanted. */
  TOO_CLOSE("too close", "Widen the gap, or agree how insulation and jacket are put on here.");

  private final String label;
  private final String suggestion;

  Cause(String label, String suggestion) {
    this.label = label;
    this.suggestion = suggestion;
  }

  /** The words shown to users. */
  public String label() {
    return label;
  }

  /** What to do, one sentence. */
  public String suggestion() {
    return suggestion;
  }
}
