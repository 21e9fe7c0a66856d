package org.lagwright.takeoff.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.lagwright.takeoff.economy.DegreeDays;
import org.lagwright.takeoff.economy.EconomicThickness;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.heat.Body.Cylinder;
import org.lagwright.takeoff.heat.Body.Flat;
import org.lagwright.takeoff.heat.LayeredBody;
import org.lagwright.takeoff.heat.LayeredBody.SolidLayer;

/** How the program computes the quantities of the examples about energy and money. */
final class MoneyChecks {

  private static final double W_PER_BTU_PER_H = 0.29307107;
  private static final double KWH_PER_THERM = 29.307107;
  private static final double KWH_PER_MMBTU = 293.07107;
  private static final double HOURS_PER_YEAR = 8760;

  private MoneyChecks() {}

  static Map<String, ToDoubleFunction<Inputs>> computed() {
    Map<String, ToDoubleFunction<Inputs>> by = new HashMap<>();
    by.put(
        "economic-mm",
        i -> economicMm(i, EconomicThickness.annuity(i.get("interest"), i.get("years"))));
    by.put("economic-mm-share", i -> economicMm(i, i.get("share")));
    by.put(
        "least-of-two-curves-mm",
        i ->
            1000
                * EconomicThickness.leastCostM(
                    m -> i.get("a") / (m * 1000) + i.get("b") * m * 1000 + i.get("c"), 0.001, 0.5));
    by.put("oven-bare-therm", i -> therm(i, i.get("h")));
    by.put("oven-insulated-therm", i -> therm(i, ovenWPerM2K(i)));
    by.put(
        "oven-insulated-USD",
        i -> therm(i, ovenWPerM2K(i)) * i.get("usdTherm") + i.get("A") * i.get("usdFt2"));
    by.put("steam-lines-saving-USD", MoneyChecks::steamLinesUsd);
    by.put(
        "season-J",
        i -> i.get("factor") * 3.6e6 * DegreeDays.heatKWh(i.get("W"), i.get("dT"), i.get("Kd")));
    return by;
  }

  /** Least of annual charge on the insulation and price of the heat, per metre of pipe. */
  private static double economicMm(Inputs i, double yearlyShare) {
    double d = i.get("D");
    return 1000
        * EconomicThickness.leastCostM(
            coverM ->
                yearlyShare * i.get("perM3") * Math.PI * coverM * (d + coverM)
                    + flow(i, coverM) * i.get("hours") * i.get("perUnitHeat"),
            0.001,
            0.5);
  }

  private static double flow(Inputs i, double coverM) {
    return new LayeredBody(
            new Cylinder(i.get("D")), List.of(new SolidLayer(coverM, i.get("lambda"))))
        .flow(i.get("t"), i.get("ta"), LayeredBody.NO_FILM, i.get("h"))
        .flow();
  }

  /** Transmittance of an insulated wall in Btu/(h ft2 degF); layers in feet. */
  private static double ovenWPerM2K(Inputs i) {
    return new LayeredBody(new Flat(1), List.of(new SolidLayer(i.get("in") / 12, i.get("k"))))
        .flow(1, 0, LayeredBody.NO_FILM, i.get("h"))
        .flow();
  }

  private static double therm(Inputs i, double btuPerHFt2F) {
    double flowW = btuPerHFt2F * i.get("A") * i.get("dT") * W_PER_BTU_PER_H;
    return new EnergyTariff(i.get("hours"), 0, i.get("eta"), 0).energyKWh(flowW) / KWH_PER_THERM;
  }

  private static double steamLinesUsd(Inputs i) {
    double flowW = i.get("MMBtu") * KWH_PER_MMBTU * 1000 / HOURS_PER_YEAR;
    EnergyTariff gas =
        new EnergyTariff(HOURS_PER_YEAR, i.get("usd") / KWH_PER_MMBTU, i.get("eta"), 0);
    return i.get("share") * gas.costPerYear(flowW);
  }
}
