package org.lagwright.takeoff;

/**
 * The account of a run.
 *
 * @param read elements read from all models
 * @param onLines elements on takeoff lines
 * @param leftOut elements left out, each with a finding of effect LEFT_OUT
 * @param outOfScope elements out of scope, each with a reason
 * @param insulatedLengthM metres of insulated straight pipe and duct
 * @param insulatedPieces fittings, valves and other counted items that get insulation
 * @param outerAreaM2 outer surface of the insulation
 * @param volumeM3 volume of insulation
 */
public record Totals(
    int read,
    int onLines,
    int leftOut,
    int outOfScope,
    double insulatedLengthM,
    int insulatedPieces,
    double outerAreaM2,
    double volumeM3) {

  public Totals {
    if (read != onLines + leftOut + outOfScope) {
      throw new IllegalStateException(
          "elements do not add up: read "
              + read
              + ", on lines "
              + onLines
              + ", left out "
              + leftOut
              + ", out of scope "
              + outOfScope);
    }
  }
}
