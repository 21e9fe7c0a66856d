package org.lagwright.takeoff.heat;

import org.lagwright.takeoff.heat.Body.Cylinder;

/** Heat exchange of an outer surface with what surrounds it, radiation aside. */
@FunctionalInterface
public interface Convection {

  /** Largest outer diameter by twice the depth for which the shape factor is taken. */
  double DEEPEST_SHARE = 0.999;

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
        FreeConvection.verticalSurfaceWPerM2K(upright(body, coverM, heightM), surfaceC - airC);
  }

  /** Sides of ducts keep their own extent. */
  private static double upright(Body body, double coverM, double heightM) {
    return body instanceof Cylinder ? heightM : body.convectionLengthM(coverM);
  }

  /** Wind over still air of level pipes after ISO 12241. */
  static Convection windy(double windMPerS) {
    return windy(windMPerS, still());
  }

  /**
   * Wind after ISO 12241, across pipes and along flat surfaces; never less than in still air. That
   * the larger of both counts is our choice, the standard takes one or the other.
   *
   * @param windMPerS speed of the air, metres per second, 0 or more
   * @param still what holds without wind
   */
  static Convection windy(double windMPerS, Convection still) {
    if (!(windMPerS >= 0 && Double.isFinite(windMPerS))) {
      throw new IllegalArgumentException("wind must be 0 or more m/s, was " + windMPerS);
    }
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

  /**
   * Not air but soil round a pipe, as the coefficient that its resistance amounts to; for a body
   * that is no cylinder that of a cylinder of its surface. Source: {@link Buried}.
   *
   * @param depthM from the surface of the ground to the axis, metres; a cover that reaches the
   *     surface of the ground has as good as no soil round it
   * @param soilWPerMK conductivity of the soil
   */
  static Convection throughSoil(double depthM, double soilWPerMK) {
    return (body, coverM, surfaceC, airC) -> {
      double surfaceM2 = body.surfaceM2(coverM);
      double outerM = Math.min(surfaceM2 / Math.PI, DEEPEST_SHARE * 2 * depthM);
      return 1 / (surfaceM2 * Buried.soilResistanceMKPerW(depthM, outerM, soilWPerMK));
    };
  }

  /** Still air after the correlations of Churchill and Chu: level cylinders, upright plates. */
  static Convection churchillChu() {
    return (body, coverM, surfaceC, airC) ->
        body instanceof Cylinder
            ? ChurchillChu.levelCylinderWPerM2K(body.convectionLengthM(coverM), surfaceC, airC)
            : ChurchillChu.uprightPlateWPerM2K(body.convectionLengthM(coverM), surfaceC, airC);
  }

  /**
   * Still air along risers after Churchill and Chu.
   *
   * @param heightM height of the riser, metres, above 0
   */
  static Convection churchillChuAlongRiser(double heightM) {
    return (body, coverM, surfaceC, airC) ->
        ChurchillChu.uprightPlateWPerM2K(upright(body, coverM, heightM), surfaceC, airC);
  }
}
