package org.lagwright.takeoff.thickness;

import java.util.Optional;
import org.lagwright.takeoff.thickness.Demand.Kind;

/** Thickness that keeps the heat flow per metre at or below a limit of the project. */
final class HeatLossDemand {

  private static final String SOURCE =
      "limit of the project (demands: heatLossWPerM); heat flow at the mean air and wind of the"
          + " location after ISO 12241 with radiation, integral mean of the conductivity";

  private HeatLossDemand() {}

  static Optional<Demand> find(Surround surround) {
    Conditions conditions = surround.conditions();
    Double limit = conditions.asked().heatLossWPerM();
    Double mediumC = conditions.energyC();
    if (limit == null || mediumC == null) {
      return Optional.empty();
    }
    double thicknessM =
        surround
            .mean()
            .thicknessForFlowM(
                surround.whole(), mediumC, limit, surround.curve(), Surround.THICKEST_LOOKED_AT_M);
    Figures figures =
        surround
            .meanFigures(mediumC)
            .number("largest heat flow W/m", limit, 1)
            .number("heat flow bare W/m", surround.flowWPerM(0, mediumC), 1)
            .millimetres("thickness needed", thicknessM);
    return Optional.of(
        new Demand(Kind.HEAT_LOSS, thicknessM, "heat-loss-limit", SOURCE, figures.toMap()));
  }
}
