package org.lagwright.takeoff.heat;

/** Outer radius of insulation up to which more of it lets more heat through. */
public final class CriticalRadius {

  private CriticalRadius() {}

  /**
   * Of a pipe: lambda/h. Source: every heat transfer textbook, such as Holman, chapter 2.
   *
   * @param conductivityWPerMK of the insulation
   * @param coefficientWPerM2K at its outer surface
   * @return metres
   */
  public static double ofPipeM(double conductivityWPerMK, double coefficientWPerM2K) {
    return conductivityWPerMK / coefficientWPerM2K;
  }
}
