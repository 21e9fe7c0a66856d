package org.lagwright.takeoff.thickness;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.heat.AmbientAir;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.Cover;
import org.lagwright.takeoff.heat.HeatFlow;
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
    AmbientAir air = new AmbientAir(conditions.airC(), conditions.emissivity());
    Cover cover = Cover.of(boughtM, (a, b) -> material.conductivityBetween(a, b).wPerMK());
    Section section = conditions.section();
    HeatFlow surface = worstSurface(section, air, cover, mediumC);
    Body whole = Bodies.whole(section);
    return new Figures()
        .millimetres("thickness bought", boughtM)
        .number("surface temperature as bought degC", surface.surfaceC(), 2)
        .number("surface coefficient as bought W/(m2 K)", surface.coefficientWPerM2K(), 2)
        .number("heat flow bare W/m", air.bare(whole, mediumC).flow(), 1)
        .number("heat flow insulated W/m", air.insulated(whole, cover, mediumC).flow(), 1)
        .toMap();
  }

  /** The surface farthest from the temperature of the air. */
  private static HeatFlow worstSurface(
      Section section, AmbientAir air, Cover cover, double mediumC) {
    HeatFlow worst = null;
    for (Body body : Bodies.surfaces(section)) {
      HeatFlow heat = air.insulated(body, cover, mediumC);
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
}
