package org.lagwright.takeoff.clearance;

/** Why two elements do not fit; the worst first. */
public enum Cause {
  /** They overlap without any insulation. */
  BARE_CLASH("bare clash", "Move one of them; they overlap without insulation."),
  /** They overlap with the insulation that was taken off, and would not without. */
  INSULATION_CLASH("insulation clash", "Move one of them, or insulate with a thinner material."),
  /** Less room between them than wanted. */
  TOO_CLOSE("too close", "Widen the gap, or agree how insulation and jacket are put on here.");

  /** Less is drawing accuracy; common practice, no source. */
  private static final double TOLERANCE_M = 0.0001;

  private final String label;
  private final String suggestion;

  Cause(String label, String suggestion) {
    this.label = label;
    this.suggestion = suggestion;
  }

  /** Why there is too little room, by the gap with insulation and without, metres. */
  static Cause of(double gapM, double bareGapM) {
    if (bareGapM < -TOLERANCE_M) {
      return BARE_CLASH;
    }
    return gapM < -TOLERANCE_M ? INSULATION_CLASH : TOO_CLOSE;
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
