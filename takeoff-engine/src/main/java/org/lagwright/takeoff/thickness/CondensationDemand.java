package org.lagwright.takeoff.thickness;

import java.util.Comparator;
import org.lagwright.takeoff.heat.AmbientAir;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.material.Conductivity;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.moistair.MoistAir;

/**
 * Smallest thickness that keeps the surface at or above dew point and margin. The surface stands at
 * that temperature, so the mean temperature, the conductivity and the coefficient are those of the
 * limit itself.
 */
final class CondensationDemand {

  private static final String RULE = "condensation-still-air";

  private static final String SOURCE =
      "Surface at or above dew point and margin: heat flow after ISO 12241, coefficient of still air as"
          + " named in the figures, with radiation; dew point after Hyland-Wexler, ASHRAE Handbook of Fundamentals 2017, chapter 1, equations 5 and 6";

  private CondensationDemand() {}

  /** Thickness is infinite where none up to 1 m is enough, as in saturated air. */
  static Demand of(Conditions conditions, double mediumC, MaterialFamily material) {
    double dewPointC = MoistAir.dewPointC(conditions.airC(), conditions.relativeHumidityPct());
    double lowestC = dewPointC + conditions.marginK();
    Figures figures = inputs(conditions, mediumC, dewPointC, lowestC);
    if (mediumC >= lowestC) {
      figures.text("result", "the medium is not colder than the surface may be");
      return new Demand(Demand.Kind.CONDENSATION, 0, RULE, SOURCE, figures.toMap());
    }
    if (lowestC >= conditions.airC()) {
      figures.text("result", "out of reach: no surface in this air stays above that temperature");
      return new Demand(
          Demand.Kind.CONDENSATION, Double.POSITIVE_INFINITY, RULE, SOURCE, figures.toMap());
    }
    return limit(conditions, mediumC, lowestC, material, figures);
  }

  private static Demand limit(
      Conditions conditions,
      double mediumC,
      double lowestC,
      MaterialFamily material,
      Figures figures) {
    AmbientAir air = new Surround(conditions, material).stillAir();
    Conductivity lambda = material.conductivityBetween(mediumC, lowestC);
    Sized sized =
        Bodies.surfaces(conditions.section()).stream()
            .map(body -> sized(air, body, mediumC, lowestC, lambda))
            .max(Comparator.comparingDouble(Sized::thicknessM))
            .orElseThrow();
    MaterialFigures.add(figures, material, lambda);
    figures
        .number("surface coefficient W/(m2 K)", sized.coefficientWPerM2K(), 2)
        .millimetres("thickness needed", sized.thicknessM());
    return new Demand(Demand.Kind.CONDENSATION, sized.thicknessM(), RULE, SOURCE, figures.toMap());
  }

  private record Sized(double thicknessM, double coefficientWPerM2K) {}

  private static Sized sized(
      AmbientAir air, Body body, double mediumC, double lowestC, Conductivity lambda) {
    double thicknessM =
        air.thicknessForSurfaceM(
            body, mediumC, lowestC, lambda.wPerMK(), Surround.THICKEST_LOOKED_AT_M);
    double coverM = Math.min(thicknessM, Surround.THICKEST_LOOKED_AT_M);
    return new Sized(thicknessM, air.coefficientWPerM2K(body, coverM, lowestC));
  }

  private static Figures inputs(
      Conditions conditions, double mediumC, double dewPointC, double lowestC) {
    return new Figures()
        .number("air temperature degC", conditions.airC(), 1)
        .number("relative humidity %", conditions.relativeHumidityPct(), 1)
        .number("dew point degC", dewPointC, 2)
        .number("margin K", conditions.marginK(), 2)
        .number("lowest surface temperature degC", lowestC, 2)
        .number("medium temperature degC", mediumC, 1)
        .number("emissivity", conditions.emissivity(), 2)
        .text("still air", conditions.exposure().stillAir().inWords());
  }
}
