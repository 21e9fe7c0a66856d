package org.lagwright.ifc.geometry;

import java.util.List;

/**
 * To how many decimals of their unit the coordinates of a mesh were rounded by who wrote them. The
 * corners of a plane face lie off its plane by about as much, which tilts small faces visibly.
 */
final class RoundingStep {

  /** More decimals are no rounding. */
  private static final int MOST_DECIMALS = 6;

  private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};

  /** Share of a step within which a number is a multiple of it. */
  private static final double MULTIPLE = 1e-3;

  /** Finer steps tilt no face that matters. */
  private static final double LEAST_M = 5e-7;

  /**
   * Coarser steps do not count: bodies of whole centimetres are not rounded to them, and what is
   * rounded to millimetres shows its facets no longer.
   */
  private static final double MOST_M = 1e-4;

  private int decimals;
  private double unitM;

  /**
   * Takes in corners as they are written, before anything turns them.
   *
   * @param cornersM in metres
   * @param fileUnitM the unit they are written in
   * @param scale of what they are mapped with
   */
  void note(List<Vec> cornersM, double fileUnitM, double scale) {
    unitM = Math.max(unitM, fileUnitM * scale);
    for (int i = 0; i < cornersM.size() && decimals <= MOST_DECIMALS; i++) {
      Vec corner = cornersM.get(i);
      note(corner.x() / fileUnitM);
      note(corner.y() / fileUnitM);
      note(corner.z() / fileUnitM);
    }
  }

  private void note(double number) {
    while (decimals <= MOST_DECIMALS && !isMultiple(number * POWERS[decimals])) {
      decimals++;
    }
  }

  private static boolean isMultiple(double steps) {
    return Math.abs(steps - Math.rint(steps)) < MULTIPLE;
  }

  /** The step in metres; 0 if the coordinates are not rounded. */
  double stepM() {
    if (decimals > MOST_DECIMALS) {
      return 0;
    }
    double stepM = Math.min(MOST_M, unitM / POWERS[decimals]);
    return stepM < LEAST_M ? 0 : stepM;
  }
}
