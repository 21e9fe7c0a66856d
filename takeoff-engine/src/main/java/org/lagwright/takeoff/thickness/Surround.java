package org.lagwright.takeoff.thickness;

import java.util.Comparator;
import org.lagwright.takeoff.heat.AmbientAir;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.ConductivityCurve;
import org.lagwright.takeoff.heat.Cover;
import org.lagwright.takeoff.heat.HeatFlow;
import org.lagwright.takeoff.material.MaterialFamily;

/** One element with its air and one material: what the demands compute on. */
record Surround(Conditions conditions, MaterialFamily material) {

  /** Nobody builds more than this; beyond it another answer is needed, metres. */
  static final double THICKEST_LOOKED_AT_M = 1;

  AmbientAir air() {
    return airAt(conditions.airC());
  }

  AmbientAir airAt(double airC) {
    return new AmbientAir(airC, conditions.emissivity());
  }

  /** Body for the heat flow of a metre of run. */
  Body whole() {
    return Bodies.whole(conditions.section());
  }

  ConductivityCurve curve() {
    return (oneC, otherC) -> material.conductivityBetween(oneC, otherC).wPerMK();
  }

  Cover cover(double thicknessM) {
    return Cover.of(thicknessM, curve());
  }

  /** The surface farthest from the temperature of the air under a thickness above 0. */
  HeatFlow worstSurface(double thicknessM, double mediumC) {
    AmbientAir air = air();
    Cover cover = cover(thicknessM);
    return Bodies.surfaces(conditions.section()).stream()
        .map(body -> air.insulated(body, cover, mediumC))
        .max(Comparator.comparingDouble(h -> Math.abs(h.surfaceC() - air.airC())))
        .orElseThrow();
  }

  /** Heat flow per metre of run, W/m; bare at 0. */
  double flowWPerM(double thicknessM, double mediumC) {
    return thicknessM == 0
        ? air().bare(whole(), mediumC).flow()
        : air().insulated(whole(), cover(thicknessM), mediumC).flow();
  }
}
