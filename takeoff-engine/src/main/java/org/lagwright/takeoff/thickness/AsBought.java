package org.lagwright.takeoff.thickness;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.HeatFlow;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.material.MaterialFamily;

/** What the thickness bought does: surface temperature and heat flow, added to each demand. */
final class AsBought {

  private AsBought() {}

  /** The demand with the figures of the thickness bought; layers count as one material. */
  static Demand proven(
      Demand demand, Conditions conditions, MaterialFamily material, double boughtM) {
    Double mediumC = medium(demand.kind(), conditions);
    if (mediumC == null) {
      return demand;
    }
    Map<String, String> figures = new LinkedHashMap<>(demand.figures());
    figures.putAll(figures(conditions, mediumC, material, boughtM));
    return new Demand(demand.kind(), demand.thicknessM(), demand.rule(), demand.source(), figures);
  }

  private static @Nullable Double medium(Demand.Kind kind, Conditions conditions) {
    return switch (kind) {
      case CONDENSATION -> conditions.condensationC();
      case ENERGY_RULE -> conditions.energyC();
      case USER -> null;
    };
  }

  private static Map<String, String> figures(
      Conditions conditions, double mediumC, MaterialFamily material, double boughtM) {
    StillAir air = new StillAir(conditions.airC(), conditions.emissivity());
    DoubleUnaryOperator lambda = meanC -> material.conductivityAt(meanC).wPerMK();
    Section section = conditions.section();
    HeatFlow surface = worstSurface(section, air, boughtM, mediumC, lambda);
    Body whole = Bodies.whole(section);
    return new Figures()
        .millimetres("thickness bought", boughtM)
        .number("surface temperature as bought degC", surface.surfaceC(), 2)
        .number("surface coefficient as bought W/(m2 K)", surface.coefficientWPerM2K(), 2)
        .number("heat flow bare W/m", air.bare(whole, mediumC).flow(), 1)
        .number("heat flow insulated W/m", flow(air, whole, boughtM, mediumC, lambda), 1)
        .toMap();
  }

  /** The surface farthest from the temperature of the air. */
  private static HeatFlow worstSurface(
      Section section, StillAir air, double boughtM, double mediumC, DoubleUnaryOperator lambda) {
    HeatFlow worst = null;
    for (Body body : Bodies.surfaces(section)) {
      HeatFlow heat = air.insulated(body, boughtM, mediumC, lambda);
      if (worst == null
          || Math.abs(heat.surfaceC() - air.airC()) > Math.abs(worst.surfaceC() - air.airC())) {
        worst = heat;
      }
    }
    if (worst == null) {
      throw new IllegalStateException("a section without surfaces");
    }
    return worst;
  }

  private static double flow(
      StillAir air, Body body, double boughtM, double mediumC, DoubleUnaryOperator lambda) {
    return air.insulated(body, boughtM, mediumC, lambda).flow();
  }
}
