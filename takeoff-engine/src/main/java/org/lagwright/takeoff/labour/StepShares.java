package org.lagwright.takeoff.labour;

import org.lagwright.takeoff.pack.SourceStatus;

/**
 * How the hours of one kind of work divide over the steps before the jacket; together 1.
 *
 * @param work {@code tube}, {@code sheet}, {@code section}, {@code fitting}
 */
public record StepShares(
    String work, double measureAndCut, double fit, double glueAndSeal, SourceStatus status) {

  private static final double ROUNDING = 1e-9;

  public StepShares {
    double sum = measureAndCut + fit + glueAndSeal;
    if (measureAndCut < 0 || fit < 0 || glueAndSeal < 0 || Math.abs(sum - 1) > ROUNDING) {
      throw new IllegalArgumentException(work + ": the shares must add up to 1, were " + sum + ".");
    }
  }

  /** The share of a step; a jacket has a norm of its own. */
  public double share(TradeStep step) {
    return switch (step) {
      case MEASURE_AND_CUT -> measureAndCut;
      case FIT -> fit;
      case GLUE_AND_SEAL -> glueAndSeal;
      case JACKET -> 0;
    };
  }
}
