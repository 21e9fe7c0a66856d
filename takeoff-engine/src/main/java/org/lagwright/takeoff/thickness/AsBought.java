package org.lagwright.takeoff.thickness;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.heat.HeatFlow;

/** What the thickness bought does: surface temperature and heat flow, added to each demand. */
final class AsBought {

  private AsBought() {}

  /** The demand with the figures of the thickness bought; layers count as one material. */
  static Demand proven(Demand demand, Surround surround, double boughtM) {
    Double mediumC = medium(demand.kind(), surround.conditions());
    if (mediumC == null) {
      return demand;
    }
    Map<String, String> figures = new LinkedHashMap<>(demand.figures());
    figures.putAll(figures(surround, mediumC, boughtM));
    return new Demand(demand.kind(), demand.thicknessM(), demand.rule(), demand.source(), figures);
  }

  private static @Nullable Double medium(Demand.Kind kind, Conditions conditions) {
    return switch (kind) {
      case CONDENSATION -> conditions.condensationC();
      case ENERGY_RULE, HEAT_LOSS, TOUCH, ECONOMIC -> conditions.energyC();
      case FROST, SPECIFICATION, USER -> null;
    };
  }

  private static Map<String, String> figures(Surround surround, double mediumC, double boughtM) {
    HeatFlow surface = surround.worstSurface(boughtM, mediumC);
    return new Figures()
        .millimetres("thickness bought", boughtM)
        .number("surface temperature as bought degC", surface.surfaceC(), 2)
        .number("surface coefficient as bought W/(m2 K)", surface.coefficientWPerM2K(), 2)
        .number("heat flow bare W/m", surround.flowWPerM(0, mediumC), 1)
        .number("heat flow insulated W/m", surround.flowWPerM(boughtM, mediumC), 1)
        .toMap();
  }
}
