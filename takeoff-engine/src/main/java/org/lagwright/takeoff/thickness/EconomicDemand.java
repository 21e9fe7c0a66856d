package org.lagwright.takeoff.thickness;

import java.util.Optional;
import org.lagwright.takeoff.economy.EconomicThickness;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.thickness.Demand.Kind;

/** Thickness at which insulation and heat together cost least per year. */
final class EconomicDemand {

  private static final String SOURCE =
      "prices of the project (demands: tariffs, insulation); least of annuity of the insulation and price of the"
          + " heat, the approach of VDI 2055 and ISO 12241 (from memory, verify)";

  private static final double THINNEST_M = 0.001;
  private static final double THICKEST_M = 0.5;

  private EconomicDemand() {}

  static Optional<Demand> find(Surround surround) {
    Conditions conditions = surround.conditions();
    EnergyTariff tariff = conditions.asked().tariff();
    Asked.InsulationPrice price = conditions.asked().insulation();
    Double mediumC = conditions.energyC();
    if (tariff == null
        || price == null
        || mediumC == null
        || mediumC == conditions.exposure().meanC()) {
      return Optional.empty();
    }
    double annuity = EconomicThickness.annuity(price.interest(), price.years());
    double bareCost = tariff.costPerYear(surround.flowWPerM(0, mediumC));
    double bestM =
        EconomicThickness.leastCostM(
            d -> costPerYear(surround, tariff, price, annuity, mediumC, d), THINNEST_M, THICKEST_M);
    double bestCost = costPerYear(surround, tariff, price, annuity, mediumC, bestM);
    double thicknessM = bestCost < bareCost ? bestM : 0;
    Figures figures =
        surround
            .meanFigures(mediumC)
            .number("hours per year h", tariff.hoursPerYear(), 0)
            .number("annuity", annuity, 4)
            .number("cost bare per metre and year", bareCost, 2)
            .number("least cost per metre and year", bestCost, 2)
            .millimetres("thickness needed", thicknessM);
    return Optional.of(
        new Demand(Kind.ECONOMIC, thicknessM, "least-cost", SOURCE, figures.toMap()));
  }

  private static double costPerYear(
      Surround surround,
      EnergyTariff tariff,
      Asked.InsulationPrice price,
      double annuity,
      double mediumC,
      double thicknessM) {
    Body body = surround.whole();
    double outerM2 = body.surfaceM2(thicknessM);
    double volumeM3 = thicknessM * (body.surfaceM2(0) + outerM2) / 2;
    return annuity * (price.perM3() * volumeM3 + price.perM2() * outerM2)
        + tariff.costPerYear(surround.flowWPerM(thicknessM, mediumC));
  }
}
