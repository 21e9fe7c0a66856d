package org.lagwright.takeoff.thickness;

import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.Body.Cylinder;

/** Thickness of a rule carried over to a material of another conductivity. */
public final class OtherConductivity {

  private static final double ACCURACY_M = 1e-10;
  private static final int MAX_EVALUATIONS = 500;
  private static final int SOLVER_ORDER = 5;

  /** Nobody builds more than this round a pipe, metres. */
  private static final double THICKEST_M = 5;

  private OtherConductivity() {}

  /**
   * T = r ((1 + t/r)^(K/k) - 1), the formula under the pipe tables of 90.1. Any unit of length, any
   * unit of conductivity.
   *
   * @param tabulated thickness of the table, t
   * @param pipeRadius outside radius of the pipe, r
   * @param conductivity of the material at the mean temperature of the row, K
   * @param rated conductivity the table holds for, k
   */
  public static double powerLaw(
      double tabulated, double pipeRadius, double conductivity, double rated) {
    return pipeRadius * (Math.pow(1 + tabulated / pipeRadius, conductivity / rated) - 1);
  }

  /**
   * Thickness with the heat flow of the table, the coefficient at the outer surface included: what
   * reproduces the figures published for the German rules.
   *
   * @param tabulatedM thickness of the table, metres
   * @param outsideDiameterM of the pipe, metres
   * @param conductivityWPerMK of the material
   * @param ratedWPerMK conductivity the table holds for
   * @param coefficientWPerM2K at the outer surface
   * @return metres; infinite where the material cannot reach it
   */
  public static double equalHeatFlowM(
      double tabulatedM,
      double outsideDiameterM,
      double conductivityWPerMK,
      double ratedWPerMK,
      double coefficientWPerM2K) {
    Body pipe = new Cylinder(outsideDiameterM);
    double wanted = resistance(pipe, tabulatedM, ratedWPerMK, coefficientWPerM2K);
    return thicknessForResistanceM(pipe, wanted, conductivityWPerMK, coefficientWPerM2K);
  }

  /**
   * Smallest thickness that reaches a resistance, the coefficient at the outer surface included.
   *
   * @param resistance in the unit of {@link Body}
   * @return metres; 0 where the bare body reaches it, infinite where nothing does
   */
  static double thicknessForResistanceM(
      Body body, double resistance, double conductivityWPerMK, double coefficientWPerM2K) {
    if (1 / (coefficientWPerM2K * body.surfaceM2(0)) >= resistance) {
      return 0;
    }
    if (resistance(body, THICKEST_M, conductivityWPerMK, coefficientWPerM2K) < resistance) {
      return Double.POSITIVE_INFINITY;
    }
    return new BracketingNthOrderBrentSolver(ACCURACY_M, SOLVER_ORDER)
        .solve(
            MAX_EVALUATIONS,
            d -> resistance(body, d, conductivityWPerMK, coefficientWPerM2K) - resistance,
            0,
            THICKEST_M,
            AllowedSolution.ABOVE_SIDE);
  }

  private static double resistance(Body body, double coverM, double wPerMK, double hWPerM2K) {
    return body.layerResistance(0, coverM, wPerMK) + 1 / (hWPerM2K * body.surfaceM2(coverM));
  }
}
