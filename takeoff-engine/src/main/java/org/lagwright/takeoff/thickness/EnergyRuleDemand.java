package org.lagwright.takeoff.thickness;

import org.lagwright.takeoff.material.Conductivity;
import org.lagwright.takeoff.material.MaterialFamily;

/** Thickness a table of pipe insulation asks for. */
final class EnergyRuleDemand {

  private EnergyRuleDemand() {}

  static Demand of(
      PipeRulePack rule,
      NominalPipeSizes sizes,
      double outsideDiameterM,
      double fluidC,
      MaterialFamily material) {
    FluidRange range = rule.range(fluidC);
    NominalPipeSizes.Size size = sizes.nearest(outsideDiameterM);
    double tabulatedM = rule.tabulatedM(range, size.nps());
    Figures figures =
        new Figures()
            .number("fluid temperature degC", fluidC, 1)
            .number("fluid temperature degF", UsUnits.fahrenheit(fluidC), 1)
            .text("fluid range of the rule", range.printed())
            .millimetres("outside diameter", outsideDiameterM)
            .text("nominal size", "NPS " + withoutZeros(size.nps()) + " / DN " + size.dn())
            .text("row status", range.status().label());
    FluidRange.ConductivityRange rated = range.conductivity();
    double thicknessM =
        rated == null ? 0 : adjustedM(rated, outsideDiameterM, tabulatedM, material, figures);
    figures.millimetres("thickness needed", thicknessM);
    return new Demand(
        Demand.Kind.ENERGY_RULE,
        thicknessM,
        rule.id() + "/" + range.id(),
        range.source() + "; " + rule.version(),
        figures.toMap());
  }

  private static double adjustedM(
      FluidRange.ConductivityRange rated,
      double outsideDiameterM,
      double tabulatedM,
      MaterialFamily material,
      Figures figures) {
    Conductivity lambda = material.conductivityAt(rated.ratedAtMeanC());
    figures
        .number("thickness of the table in", tabulatedM / UsUnits.INCH_M, 1)
        .millimetres("thickness of the table", tabulatedM);
    MaterialFigures.add(figures, material, lambda);
    figures
        .number("conductivity range of the rule from W/(m K)", rated.lowWPerMK(), 4)
        .number("conductivity range of the rule to W/(m K)", rated.highWPerMK(), 4);
    if (rated.contains(lambda.wPerMK())) {
      figures.text("adjusted to the conductivity", "no, it lies within the range");
      return tabulatedM;
    }
    figures.text("adjusted to the conductivity", "yes, T = r ((1 + t/r)^(K/k) - 1)");
    return OtherConductivity.powerLaw(
        tabulatedM, outsideDiameterM / 2, lambda.wPerMK(), rated.highWPerMK());
  }

  private static String withoutZeros(double nps) {
    return nps == Math.rint(nps) ? String.valueOf((long) nps) : String.valueOf(nps);
  }
}
