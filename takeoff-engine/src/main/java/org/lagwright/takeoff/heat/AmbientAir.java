package org.lagwright.takeoff.heat;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A surface in air that exchanges heat by convection and radiation.
 *
 * <p>The inside surface is taken to be as warm as the medium (no film, no pipe wall): for metal
 * pipes and ducts that is right within a few tenths of a kelvin and on the safe side for
 * condensation.
 *
 * @param airC air and surroundings, degC
 * @param emissivity of the surface for long waves, 0 to 1
 * @param convection how the air moves
 */
public record AmbientAir(double airC, double emissivity, Convection convection) {

  private static final double TEMPERATURE_ACCURACY_K = 1e-7;
  private static final double THICKNESS_ACCURACY_M = 1e-9;

  /** Most answers are thinner; the search doubles it until one is enough, metres. */
  private static final double FIRST_LOOK_M = 0.03;

  private static final int MAX_EVALUATIONS = 500;
  private static final int SOLVER_ORDER = 5;

  public AmbientAir {
    if (!Double.isFinite(airC) || !(emissivity >= 0 && emissivity <= 1)) {
      throw new IllegalArgumentException(
          "emissivity must lie between 0 and 1 and the air be finite, not "
              + emissivity
              + " and "
              + airC);
    }
  }

  /** Still air after ISO 12241: level pipes, upright sides. */
  public AmbientAir(double airC, double emissivity) {
    this(airC, emissivity, Convection.still());
  }

  /** Coefficient of the outer surface: convection and radiation, W/(m2 K). */
  public double coefficientWPerM2K(Body body, double coverM, double surfaceC) {
    return convection.coefficientWPerM2K(body, coverM, surfaceC, airC)
        + Radiation.coefficientWPerM2K(emissivity, surfaceC, airC);
  }

  /** Heat flow of the bare body at this surface temperature. */
  public HeatFlow bare(Body body, double surfaceC) {
    return leaving(body, 0, surfaceC);
  }

  /**
   * Heat flow and surface temperature under layers of insulation, iterated: coefficient and
   * conductivities follow the temperatures.
   *
   * @param mediumC inner surface, degC
   */
  public HeatFlow insulated(Body body, Cover cover, double mediumC) {
    if (mediumC == airC) {
      return leaving(body, cover.thicknessM(), airC);
    }
    double coverM = cover.thicknessM();
    double surfaceC =
        solver(TEMPERATURE_ACCURACY_K)
            .solve(
                MAX_EVALUATIONS,
                ts -> leaving(body, coverM, ts).flow() - cover.conducted(body, mediumC, ts),
                Math.min(mediumC, airC),
                Math.max(mediumC, airC));
    return leaving(body, coverM, surfaceC);
  }

  private HeatFlow leaving(Body body, double coverM, double surfaceC) {
    double h = coefficientWPerM2K(body, coverM, surfaceC);
    return new HeatFlow(h * body.surfaceM2(coverM) * (surfaceC - airC), surfaceC, h);
  }

  /**
   * Smallest thickness that brings the surface to a temperature between medium and air: not colder
   * for a cold medium (condensation), not hotter for a hot one (touch).
   *
   * <p>Source: balance of the heat through the insulation and at the surface at that temperature;
   * for a constant coefficient it is the closed form De ln(De/Di) = (2 lambda/h) (ts - ti)/(ta -
   * ts) of the trade handbooks.
   *
   * @param mediumC inner surface, degC
   * @param targetC surface temperature to be reached, degC
   * @param conductivityWPerMK integral mean between both
   * @param upToM thickest cover looked at, metres
   * @return metres; 0 where the bare surface already lies on the right side, positive infinity
   *     where no thickness up to the limit is enough
   */
  public double thicknessForSurfaceM(
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
    double towardsAir = mediumC <= airC ? 1 : -1;
    if (towardsAir * (mediumC - targetC) >= 0) {
      return 0;
    }
    if (towardsAir * (targetC - airC) >= 0) {
      return Double.POSITIVE_INFINITY;
    }
    // Rises with the thickness, also over the step between laminar and turbulent.
    UnivariateFunction surplus =
        coverM ->
            towardsAir
                * ((airC - targetC)
                        * coefficientByCoverM.applyAsDouble(coverM)
                        * body.surfaceM2(coverM)
                        * body.layerResistance(0, coverM, conductivityWPerMK)
                    - (targetC - mediumC));
    return firstAtOrAboveZero(surplus, upToM);
  }

  /**
   * Smallest thickness that keeps the heat flow at or below a limit, above the critical radius:
   * below it a thin cover may let more through than none.
   *
   * @param mediumC inner surface, degC
   * @param limit largest heat flow in either direction, watt per metre of run, or per square metre
   *     of a flat surface, above 0
   * @param upToM thickest cover looked at, metres
   * @return metres; 0 where the bare body keeps the limit, positive infinity where no thickness up
   *     to the limit is enough
   */
  public double thicknessForFlowM(
      Body body, double mediumC, double limit, ConductivityCurve conductivity, double upToM) {
    if (Math.abs(bare(body, mediumC).flow()) <= limit) {
      return 0;
    }
    return firstAtOrAboveZero(
        coverM ->
            coverM == 0
                ? limit - Math.abs(bare(body, mediumC).flow())
                : limit - Math.abs(insulated(body, Cover.of(coverM, conductivity), mediumC).flow()),
        upToM);
  }

  private static double firstAtOrAboveZero(UnivariateFunction surplus, double upToM) {
    double fromM = 0;
    double toM = Math.min(FIRST_LOOK_M, upToM);
    while (surplus.value(toM) < 0) {
      if (toM >= upToM) {
        return Double.POSITIVE_INFINITY;
      }
      fromM = toM;
      toM = Math.min(2 * toM, upToM);
    }
    return solver(THICKNESS_ACCURACY_M)
        .solve(MAX_EVALUATIONS, surplus, fromM, toM, AllowedSolution.ABOVE_SIDE);
  }

  private static BracketingNthOrderBrentSolver solver(double accuracy) {
    return new BracketingNthOrderBrentSolver(accuracy, SOLVER_ORDER);
  }
}
