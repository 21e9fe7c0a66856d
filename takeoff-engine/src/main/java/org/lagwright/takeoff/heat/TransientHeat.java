package org.lagwright.takeoff.heat;

/** What heat flow does to a medium along a run and in time. */
public final class TransientHeat {

  /** Density of ice, kg/m3. From memory, as the freezing time of ISO 12241 is quoted; verify. */
  private static final double ICE_KG_PER_M3 = 920;

  /** Heat of fusion of water, J/kg. From memory, verify. */
  private static final double FUSION_J_PER_KG = 334e3;

  private TransientHeat() {}

  /**
   * Temperature at the end of a run: ta + (t0 - ta) exp(-U L/(m c)). Source: ISO 12241, temperature
   * drop along a pipe (from memory); the form for ducts in Cengel, example 8-6.
   *
   * @param startC medium at the beginning, degC
   * @param airC surroundings, degC
   * @param transmittanceWPerMK heat flow per metre and kelvin
   * @param lengthM length of the run, metres
   * @param massFlowKgPerS flow, above 0
   * @param heatCapacityJPerKgK of the medium
   * @return degC
   */
  public static double endOfRunC(
      double startC,
      double airC,
      double transmittanceWPerMK,
      double lengthM,
      double massFlowKgPerS,
      double heatCapacityJPerKgK) {
    double exponent = transmittanceWPerMK * lengthM / (massFlowKgPerS * heatCapacityJPerKgK);
    return airC + (startC - airC) * Math.exp(-exponent);
  }

  /**
   * Time until a standing medium reaches a temperature between its own and that of the air.
   *
   * @param startC medium at the beginning, degC
   * @param endC temperature reached, degC, on the way to the air
   * @param airC surroundings, degC
   * @param transmittanceWPerK heat flow per kelvin; per metre of run as the heat capacity
   * @param heatCapacityJPerK of medium and wall
   * @return seconds; infinite where the air never brings it there
   */
  public static double timeToReachS(
      double startC,
      double endC,
      double airC,
      double transmittanceWPerK,
      double heatCapacityJPerK) {
    double left = (endC - airC) / (startC - airC);
    if (left >= 1) {
      return 0;
    }
    return left <= 0
        ? Double.POSITIVE_INFINITY
        : -heatCapacityJPerK / transmittanceWPerK * Math.log(left);
  }

  /**
   * Time from water at 0 degC until a share of it is ice: share x rho x fusion x bore area/heat
   * flow. Insulation only delays freezing. Source: ISO 12241, freezing of standing water (from
   * memory, verify).
   *
   * @param iceShare 0 to 1; a quarter is usual, as valves then begin to block
   * @param boreM inside diameter of the pipe, metres
   * @param flowWPerM heat flow to the air from 0 degC, per metre of run, above 0
   * @return seconds
   */
  public static double freezingTimeS(double iceShare, double boreM, double flowWPerM) {
    double boreAreaM2 = Math.PI * boreM * boreM / 4;
    return iceShare * ICE_KG_PER_M3 * FUSION_J_PER_KG * boreAreaM2 / flowWPerM;
  }
}
