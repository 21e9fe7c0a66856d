package org.lagwright.takeoff.verify;

/**
 * Elements of one status.
 *
 * @param elements how many
 * @param lengthM metres of straight pieces
 * @param areaM2 outer surface in square metres
 */
public record CoverageSum(int elements, double lengthM, double areaM2) {

  /** Of nothing. */
  public static final CoverageSum NONE = new CoverageSum(0, 0, 0);

  /** Sum of two. */
  public CoverageSum plus(CoverageSum other) {
    return new CoverageSum(
        elements + other.elements, lengthM + other.lengthM, areaM2 + other.areaM2);
  }
}
