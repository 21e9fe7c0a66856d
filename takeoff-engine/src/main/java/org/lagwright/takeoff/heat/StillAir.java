package org.lagwright.takeoff.heat;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A surface in still air that exchanges heat by free convection and radiation.
 *
 * <p>The inside surface is taken to be as warm as the medium (no film, no pipe wall): for metal
 * pipes and ducts that is right within a few tenths of a kelvin and on the safe side for
 * condensation.
 *
 * @param airC air and surroundings, degC
 * @param emissivity of the surface for long waves, 0 to 1
 */
public record StillAir(double airC, double emissivity) {

  private static final double TEMPERATURE_ACCURACY_K = 1e-9;
  private static final double THICKNESS_ACCURACY_M = 1e-9;
  private static final int MAX_EVALUATIONS = 500;
  private static final int SOLVER_ORDER = 5;

  public StillAir {
    if (!Double.isFinite(airC) || !(emissivity >= 0 && emissivity <= 1)) {
      throw new IllegalArgumentException(
          "emissivity must lie between 0 and 1 and the air be finite, not "
              + emissivity
              + " and "
              + airC);
    }
  }

  /** Coefficient of the outer surface: convection and radiation, W/(m2 K). */
  public double coefficientWPerM2K(Body body, double coverM, double surfaceC) {
    return body.convectionWPerM2K(coverM, surfaceC - airC)
        + Radiation.coefficientWPerM2K(emissivity, surfaceC, airC);
  }

  /** Heat flow of the bare body at this surface temperature. */
  public HeatFlow bare(Body body, double surfaceC) {
    double h = coefficientWPerM2K(body, 0, surfaceC);
    return new HeatFlow(h * body.surfaceM2(0) * (surfaceC - airC), surfaceC, h);
  }

  /**
   * Heat flow and surface temperature under one thickness of one material, iterated: coefficient
   * and conductivity follow the surface temperature.
   *
   * @param coverM thickness, metres, above 0
   * @param mediumC inner surface, degC
   * @param conductivityAtMeanC W/(m K) by the mean of inner and outer surface in degC
   */
  public HeatFlow insulated(
      Body body, double coverM, double mediumC, DoubleUnaryOperator conductivityAtMeanC) {
    double surfaceC =
        mediumC == airC
            ? airC
            : new BracketingNthOrderBrentSolver(TEMPERATURE_ACCURACY_K, SOLVER_ORDER)
                .solve(
                    MAX_EVALUATIONS,
                    ts -> surplus(body, coverM, mediumC, ts, conductivityAtMeanC),
                    Math.min(mediumC, airC),
                    Math.max(mediumC, airC));
    double h = coefficientWPerM2K(body, coverM, surfaceC);
    return new HeatFlow(h * body.surfaceM2(coverM) * (surfaceC - airC), surfaceC, h);
  }

  /** What leaves a surface of this temperature to the air less what reaches it from inside. */
  private double surplus(
      Body body,
      double coverM,
      double mediumC,
      double surfaceC,
      DoubleUnaryOperator conductivityAtMeanC) {
    double lambda = conductivityAtMeanC.applyAsDouble((mediumC + surfaceC) / 2);
    double leaving =
        coefficientWPerM2K(body, coverM, surfaceC) * body.surfaceM2(coverM) * (surfaceC - airC);
    return leaving - (mediumC - surfaceC) / body.layerResistance(0, coverM, lambda);
  }

  /**
   * Smallest thickness that keeps the surface of a cold body at or above a temperature.
   *
   * <p>Source: balance of the heat through the insulation and from the air at that surface
   * temperature; for a constant coefficient it is the closed form De ln(De/Di) = (2 lambda/h) (ts -
   * ti)/(ta - ts) of the trade handbooks.
   *
   * @param mediumC inner surface, degC
   * @param targetC lowest surface temperature allowed, degC
   * @param conductivityWPerMK at the mean of both
   * @param upToM thickest cover looked at, metres
   * @return metres; 0 where the medium is not colder than the target, positive infinity where no
   *     thickness up to the limit is enough
   */
  public double thicknessAgainstCondensationM(
      Body body, double mediumC, double targetC, double conductivityWPerMK, double upToM) {
    return smallestThicknessM(
        body,
        mediumC,
        targetC,
        conductivityWPerMK,
        coverM -> coefficientWPerM2K(body, coverM, targetC),
        upToM);
  }

  /** The same with a coefficient given by the thickness of the cover. */
  double smallestThicknessM(
      Body body,
      double mediumC,
      double targetC,
      double conductivityWPerMK,
      DoubleUnaryOperator coefficientByCoverM,
      double upToM) {
    if (mediumC >= targetC) {
      return 0;
    }
    if (targetC >= airC) {
      return Double.POSITIVE_INFINITY;
    }
    // Rises with the thickness, also over the step between laminar and turbulent.
    UnivariateFunction warmth =
        coverM ->
            (airC - targetC)
                    * coefficientByCoverM.applyAsDouble(coverM)
                    * body.surfaceM2(coverM)
                    * body.layerResistance(0, coverM, conductivityWPerMK)
                - (targetC - mediumC);
    if (warmth.value(upToM) < 0) {
      return Double.POSITIVE_INFINITY;
    }
    return new BracketingNthOrderBrentSolver(THICKNESS_ACCURACY_M, SOLVER_ORDER)
        .solve(MAX_EVALUATIONS, warmth, 0, upToM, AllowedSolution.ABOVE_SIDE);
  }
}
