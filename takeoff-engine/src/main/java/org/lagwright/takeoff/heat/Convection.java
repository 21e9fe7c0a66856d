package org.lagwright.takeoff.heat;

import org.lagwright.takeoff.heat.Body.Cylinder;

/** Heat exchange of an outer surface with the air by movement of the air. */
@FunctionalInterface
public interface Convection {

  /**
   * Coefficient of convection.
   *
   * @param body what is insulated
   * @param coverM thickness of its cover, metres
   * @param surfaceC outer surface, degC
   * @param airC air, degC
   * @return W/(m2 K)
   */
  double coefficientWPerM2K(Body body, double coverM, double surfaceC, double airC);

  /** Still air after ISO 12241: level pipes, upright sides of ducts. */
  static Convection still() {
    return (body, coverM, surfaceC, airC) ->
        body instanceof Cylinder
            ? FreeConvection.levelCylinderWPerM2K(body.convectionLengthM(coverM), surfaceC - airC)
            : FreeConvection.verticalSurfaceWPerM2K(
                body.convectionLengthM(coverM), surfaceC - airC);
  }

  /**
   * Still air after ISO 12241 along risers.
   *
   * @param heightM height of the riser, metres, above 0
   */
  static Convection stillAlongRiser(double heightM) {
    return (body, coverM, surfaceC, airC) ->
        FreeConvection.verticalSurfaceWPerM2K(heightM, surfaceC - airC);
  }

  /**
   * Wind after ISO 12241, across pipes and along flat surfaces; never less than in still air. That
   * the larger of both counts is our choice, the standard takes one or the other.
   *
   * @param windMPerS speed of the air, metres per second, 0 or more
   */
  static Convection windy(double windMPerS) {
    if (!(windMPerS >= 0 && Double.isFinite(windMPerS))) {
      throw new IllegalArgumentException("wind must be 0 or more m/s, was " + windMPerS);
    }
    Convection still = still();
    if (windMPerS == 0) {
      return still;
    }
    return (body, coverM, surfaceC, airC) -> {
      double lengthM = body.convectionLengthM(coverM);
      double forced =
          body instanceof Cylinder
              ? ForcedConvection.cylinderWPerM2K(lengthM, windMPerS)
              : ForcedConvection.flatWPerM2K(lengthM, windMPerS);
      return Math.max(forced, still.coefficientWPerM2K(body, coverM, surfaceC, airC));
    };
  }

  /** Still air after the correlations of Churchill and Chu: level cylinders, upright plates. */
  static Convection churchillChu() {
    return (body, coverM, surfaceC, airC) ->
        body instanceof Cylinder
            ? ChurchillChu.levelCylinderWPerM2K(body.convectionLengthM(coverM), surfaceC, airC)
            : ChurchillChu.uprightPlateWPerM2K(body.convectionLengthM(coverM), surfaceC, airC);
  }
}
