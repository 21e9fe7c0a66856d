package org.lagwright.takeoff.thickness;

import java.util.Objects;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.Body.Cylinder;
import org.lagwright.takeoff.heat.Body.Flat;
import org.lagwright.takeoff.material.Conductivity;
import org.lagwright.takeoff.material.MaterialFamily;

/** Thickness a rule by service, location and size asks for. */
final class SituationDemand {

  /** Pipes above this diameter, and ducts that are not round, are flat surfaces in EN 12828, m. */
  private static final double FLAT_ABOVE_M = 0.4;

  /** Mean temperature where a limit of the heat flow names none: warm pipe in a building, degC. */
  private static final double MEAN_OF_LIMIT_C = 40;

  private SituationDemand() {}

  static Demand of(
      SituationRulePack rule,
      SituationRow row,
      EnergyRule.Case one,
      double outsideM,
      double boreM) {
    Figures figures =
        new Figures()
            .text("row of the rule", row.printed())
            .text("service family", one.family())
            .text("location", one.location())
            .millimetres("outside diameter", outsideM)
            .millimetres("inside diameter", boreM)
            .text("row status", row.status().label());
    TransmittanceLimit limit = row.transmittance();
    double thicknessM =
        limit == null
            ? converted(row, one.material(), outsideM, boreM, figures)
            : limited(row, limit, one, outsideM, figures);
    figures.millimetres("thickness needed", thicknessM);
    return new Demand(
        Demand.Kind.ENERGY_RULE,
        thicknessM,
        rule.id() + "/" + row.id(),
        row.source() + "; " + rule.version(),
        figures.toMap());
  }

  private static double converted(
      SituationRow row, MaterialFamily material, double outsideM, double boreM, Figures figures) {
    SituationRow.Rated rated = Objects.requireNonNull(row.rated());
    Double thicknessMm = row.thicknessMm();
    double tabulatedM =
        thicknessMm == null ? Objects.requireNonNull(row.timesBore()) * boreM : thicknessMm / 1000;
    Conductivity lambda = material.conductivityAt(rated.meanC());
    figures.millimetres("thickness of the table", tabulatedM);
    MaterialFigures.add(figures, material, lambda);
    figures
        .number("conductivity of the rule W/(m K)", rated.wPerMK(), 4)
        .number("surface coefficient W/(m2 K)", row.coefficientWPerM2K(), 2)
        .text("adjusted to the conductivity", "to the heat flow of the table, film included");
    return OtherConductivity.equalHeatFlowM(
        tabulatedM, outsideM, lambda.wPerMK(), rated.wPerMK(), row.coefficientWPerM2K());
  }

  private static double limited(
      SituationRow row,
      TransmittanceLimit limit,
      EnergyRule.Case one,
      double outsideM,
      Figures figures) {
    Conductivity lambda = one.material().conductivityAt(MEAN_OF_LIMIT_C);
    Double flat = row.flatWPerM2K();
    MaterialFigures.add(figures, one.material(), lambda);
    figures.number("surface coefficient W/(m2 K)", row.coefficientWPerM2K(), 2);
    boolean round = one.section() instanceof Section.Round;
    boolean isFlat = flat != null && (!round || outsideM > FLAT_ABOVE_M);
    double most = isFlat ? Objects.requireNonNull(flat) : limit.ofPipeWPerMK(outsideM);
    figures.number("largest transmittance " + (isFlat ? "W/(m2 K)" : "W/(m K)"), most, 3);
    Body body = isFlat ? new Flat(1) : new Cylinder(outsideM);
    return OtherConductivity.thicknessForResistanceM(
        body, 1 / most, lambda.wPerMK(), row.coefficientWPerM2K());
  }
}
