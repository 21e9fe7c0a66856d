package org.lagwright.takeoff.thickness;

import java.util.Comparator;
import org.lagwright.takeoff.heat.AmbientAir;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.ConductivityCurve;
import org.lagwright.takeoff.heat.Convection;
import org.lagwright.takeoff.heat.Cover;
import org.lagwright.takeoff.heat.HeatFlow;
import org.lagwright.takeoff.material.MaterialFamily;

/** One element with its air and one material: what the demands compute on. */
record Surround(Conditions conditions, MaterialFamily material) {

  /** Nobody builds more than this; beyond it another answer is needed, metres. */
  static final double THICKEST_LOOKED_AT_M = 1;

  /** Still design air, for condensation and touch: wind would only help. */
  AmbientAir stillAir() {
    Convection still = conditions.exposure().stillAir().convection();
    return new AmbientAir(conditions.airC(), conditions.emissivity(), still);
  }

  /** What the heat flows into over the year. */
  AmbientAir mean() {
    return meanAt(conditions.exposure().meanC());
  }

  /** The same at another temperature, degC. */
  AmbientAir meanAt(double temperatureC) {
    Exposure exposure = conditions.exposure();
    Exposure.Soil soil = exposure.soil();
    return soil == null
        ? new AmbientAir(
            temperatureC,
            exposure.emissivity(),
            Convection.windy(exposure.windMPerS(), exposure.stillAir().convection()))
        : new AmbientAir(
            temperatureC, 0, Convection.throughSoil(soil.depthM(), soil.conductivityWPerMK()));
  }

  /** The surroundings of the heat flow, in the figures of a proof. */
  Figures meanFigures(double mediumC) {
    Exposure exposure = conditions.exposure();
    Exposure.Soil soil = exposure.soil();
    Figures figures = new Figures().number("medium temperature degC", mediumC, 1);
    return soil == null
        ? figures
            .number("mean air temperature degC", exposure.meanC(), 1)
            .number("wind m/s", exposure.windMPerS(), 1)
        : figures
            .number("mean ground temperature degC", exposure.meanC(), 1)
            .number("depth of the axis m", soil.depthM(), 2)
            .number("conductivity of the soil W/(m K)", soil.conductivityWPerMK(), 2);
  }

  /** Body for the heat flow of a metre of run. */
  Body whole() {
    return Bodies.whole(conditions.section());
  }

  ConductivityCurve curve() {
    return material::meanWPerMK;
  }

  Cover cover(double thicknessM) {
    return Cover.of(thicknessM, curve());
  }

  /**
   * The surface farthest from the temperature of the design air, or of the soil, under a thickness
   * above 0.
   */
  HeatFlow worstSurface(double thicknessM, double mediumC) {
    AmbientAir air = conditions.exposure().isBuried() ? mean() : stillAir();
    Cover cover = cover(thicknessM);
    return Bodies.surfaces(conditions.section()).stream()
        .map(body -> air.insulated(body, cover, mediumC))
        .max(Comparator.comparingDouble(h -> Math.abs(h.surfaceC() - air.airC())))
        .orElseThrow();
  }

  /** Heat flow per metre of run over the year, W/m; bare at 0. */
  double flowWPerM(double thicknessM, double mediumC) {
    return thicknessM == 0
        ? mean().bare(whole(), mediumC).flow()
        : mean().insulated(whole(), cover(thicknessM), mediumC).flow();
  }
}
