package org.lagwright.takeoff.thickness;

import java.util.Optional;
import org.lagwright.takeoff.material.Conductivity;
import org.lagwright.takeoff.thickness.Demand.Kind;

/** Thickness that keeps a hot surface at or below the temperature of the project for touch. */
final class TouchDemand {

  private static final String SOURCE =
      "limit of the project (demands: touchLimitC); still air after ISO 12241. EN ISO 13732-1 gives"
          + " thresholds of burns, no limits; a bright jacket is hotter at less heat loss";

  private TouchDemand() {}

  static Optional<Demand> find(Surround surround) {
    Conditions conditions = surround.conditions();
    Double limitC = conditions.asked().touchLimitC();
    Double mediumC = conditions.energyC();
    if (limitC == null
        || conditions.exposure().isBuried()
        || mediumC == null
        || mediumC <= conditions.airC()) {
      return Optional.empty();
    }
    Conductivity lambda = surround.material().conductivityBetween(mediumC, limitC);
    double thicknessM =
        Bodies.surfaces(conditions.section()).stream()
            .mapToDouble(
                body ->
                    surround
                        .stillAir()
                        .thicknessForSurfaceM(
                            body, mediumC, limitC, lambda.wPerMK(), Surround.THICKEST_LOOKED_AT_M))
            .max()
            .orElseThrow();
    Figures figures =
        new Figures()
            .number("hottest surface allowed degC", limitC, 1)
            .number("medium temperature degC", mediumC, 1)
            .number("air temperature degC", conditions.airC(), 1)
            .number("emissivity", conditions.emissivity(), 2);
    MaterialFigures.add(figures, surround.material(), lambda);
    figures.millimetres("thickness needed", thicknessM);
    return Optional.of(
        new Demand(Kind.TOUCH, thicknessM, "touch-temperature", SOURCE, figures.toMap()));
  }
}
