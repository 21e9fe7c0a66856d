package org.lagwright.ifc.extract;

/**
 * What the user may choose about reading.
 *
 * @param joinToleranceM distance in metres up to which two ends of one size touch and count as
 *     connected where the file does not connect them; 0 joins nothing
 */
public record ReadOptions(double joinToleranceM) {

  /** Wider gaps are gaps; ends in public files lie within it. */
  public static final double LARGEST_JOIN_TOLERANCE_M = 0.05;

  /** Ends within 2 mm touch. */
  public static final ReadOptions DEFAULT = new ReadOptions(0.002);

  public ReadOptions {
    if (!(joinToleranceM >= 0 && joinToleranceM <= LARGEST_JOIN_TOLERANCE_M)) {
      throw new IllegalArgumentException(
          "join tolerance must lie between 0 and "
              + LARGEST_JOIN_TOLERANCE_M
              + " m, was "
              + joinToleranceM);
    }
  }
}
