package org.lagwright.takeoff.thickness;

import org.lagwright.takeoff.material.Conductivity;
import org.lagwright.takeoff.material.MaterialFamily;

/** Thickness a table of pipe insulation asks for. */
final class EnergyRuleDemand {

  private EnergyRuleDemand() {}

  static Demand of(
      PipeRulePack rule,
      FluidRange range,
      double outsideDiameterM,
      double fluidC,
      MaterialFamily material) {
    NominalPipeSizes.Size size = Sizes.ALL.nearest(outsideDiameterM);
    double tabulatedM = rule.tabulatedM(range, size.nps());
    Figures figures =
        new Figures()
            .number("fluid temperature degC", fluidC, 1)
            .number("fluid temperature degF", UsUnits.fahrenheit(fluidC), 1)
            .text("fluid range of the rule", range.printed())
            .millimetres("outside diameter", outsideDiameterM)
            .text("nominal size", "NPS " + withoutZeros(size.nps()) + " / DN " + size.dn())
            .text("row status", range.status().label());
    FluidRange.ConductivityRangeSi rated = range.rated();
    double thicknessM =
        rated == null ? 0 : adjustedM(rule, rated, outsideDiameterM, tabulatedM, material, figures);
    figures.millimetres("thickness needed", thicknessM);
    return new Demand(
        Demand.Kind.ENERGY_RULE,
        thicknessM,
        rule.id() + "/" + range.id(),
        range.source() + "; " + rule.version(),
        figures.toMap());
  }

  private static double adjustedM(
      PipeRulePack rule,
      FluidRange.ConductivityRangeSi rated,
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
    PipeRulePack.Adjustment adjustment = rule.adjustment();
    double end = adjustment.ratedWPerMK(rated, lambda.wPerMK());
    figures.text("adjusted to the conductivity", "yes, " + adjustment.formula());
    return adjustment.adjustedM(tabulatedM, outsideDiameterM / 2, lambda.wPerMK(), end);
  }

  private static String withoutZeros(double nps) {
    return nps == Math.rint(nps) ? String.valueOf((long) nps) : String.valueOf(nps);
  }

  /** Read once; nominal sizes belong to the program, not to the rule. */
  private static final class Sizes {
    private static final NominalPipeSizes ALL = NominalPipeSizes.bundled();

    private Sizes() {}
  }
}
