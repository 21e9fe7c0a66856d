package org.lagwright.takeoff.thickness;

import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.heat.StillAir;

/**
 * What surrounds the insulation.
 *
 * @param airC design dry bulb, for condensation and touch in still air, -60 to 80 degC
 * @param relativeHumidityPct relative humidity of that air, 1 to 100 %
 * @param meanC mean of the air over the time the service runs, for heat flow and saving, degC; in
 *     the ground that of the soil
 * @param windMPerS speed of the air for the heat flow, metres per second, 0 is still
 * @param emissivity of the finished surface for long waves, 0 to 1; the low end is the safe one
 *     against condensation
 * @param stillAir which coefficients hold in still air
 * @param soil soil round a buried pipe, null in air
 */
public record Exposure(
    double airC,
    double relativeHumidityPct,
    double meanC,
    double windMPerS,
    double emissivity,
    StillAir stillAir,
    @Nullable Soil soil) {

  public Exposure {
    require(airC >= -60 && airC <= 80, "air must be from -60 to 80 degC", airC);
    require(meanC >= -60 && meanC <= 80, "mean must be from -60 to 80 degC", meanC);
    require(
        relativeHumidityPct >= 1 && relativeHumidityPct <= 100,
        "relative humidity must be from 1 to 100 %",
        relativeHumidityPct);
    require(windMPerS >= 0 && windMPerS <= 60, "wind must be from 0 to 60 m/s", windMPerS);
    require(emissivity >= 0 && emissivity <= 1, "emissivity must be from 0 to 1", emissivity);
  }

  /**
   * Soil round a pipe.
   *
   * @param depthM from the surface of the ground to the axis, metres, above 0
   * @param conductivityWPerMK of the soil, above 0
   */
  public record Soil(double depthM, double conductivityWPerMK) {
    public Soil {
      require(depthM > 0, "depth must be above 0 m", depthM);
      require(conductivityWPerMK > 0, "soil must conduct", conductivityWPerMK);
    }
  }

  /** Still air with the design temperature all the year round. */
  public static Exposure still(double airC, double relativeHumidityPct, double emissivity) {
    return new Exposure(airC, relativeHumidityPct, airC, 0, emissivity, StillAir.LEVEL, null);
  }

  /** The same in design air of another humidity. */
  Exposure at(double humidityPct) {
    return new Exposure(airC, humidityPct, meanC, windMPerS, emissivity, stillAir, soil);
  }

  /** True in the ground, where there is neither dew nor anything to touch. */
  public boolean isBuried() {
    return soil != null;
  }

  private static void require(boolean holds, String what, double value) {
    if (!holds) {
      throw new IllegalArgumentException(what + ", was " + value);
    }
  }
}
