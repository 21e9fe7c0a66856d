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
    Figures added = new Figures().millimetres("thickness bought", boughtM);
    switch (demand.kind()) {
      case CONDENSATION -> surface(added, surround, surround.conditions().condensationC(), boughtM);
      case TOUCH -> surface(added, surround, surround.conditions().energyC(), boughtM);
      case ENERGY_RULE, HEAT_LOSS, ECONOMIC ->
          flow(added, surround, surround.conditions().energyC(), boughtM);
      case FROST, SPECIFICATION, USER -> {
        return demand;
      }
    }
    Map<String, String> figures = new LinkedHashMap<>(demand.figures());
    added.toMap().forEach(figures::putIfAbsent);
    return new Demand(demand.kind(), demand.thicknessM(), demand.rule(), demand.source(), figures);
  }

  private static void surface(
      Figures figures, Surround surround, @Nullable Double mediumC, double boughtM) {
    if (mediumC != null) {
      HeatFlow surface = surround.worstSurface(boughtM, mediumC);
      figures
          .number("surface temperature as bought degC", surface.surfaceC(), 2)
          .number("surface coefficient as bought W/(m2 K)", surface.coefficientWPerM2K(), 2);
    }
  }

  private static void flow(
      Figures figures, Surround surround, @Nullable Double mediumC, double boughtM) {
    if (mediumC != null) {
      figures
          .add(surround.meanFigures(mediumC))
          .number("heat flow bare W/m", surround.flowWPerM(0, mediumC), 1)
          .number("heat flow insulated W/m", surround.flowWPerM(boughtM, mediumC), 1);
    }
  }
}
