package org.lagwright.takeoff.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import org.lagwright.takeoff.heat.AirProperties;
import org.lagwright.takeoff.heat.Body.Cylinder;
import org.lagwright.takeoff.heat.Buried;
import org.lagwright.takeoff.heat.ChurchillChu;
import org.lagwright.takeoff.heat.FreeConvection;
import org.lagwright.takeoff.heat.LayeredBody;
import org.lagwright.takeoff.heat.LayeredBody.SolidLayer;
import org.lagwright.takeoff.heat.Radiation;
import org.lagwright.takeoff.heat.TransientHeat;
import org.lagwright.takeoff.moistair.MoistAir;
import org.lagwright.takeoff.moistair.SteamSaturation;

/** How the program computes the quantities of the examples about heat. */
final class HeatChecks {

  private static final double SECONDS_PER_HOUR = 3600;

  private HeatChecks() {}

  static Map<String, ToDoubleFunction<Inputs>> computed() {
    Map<String, ToDoubleFunction<Inputs>> by = new HashMap<>();
    by.put("layer-order-gain-pct", HeatChecks::layerOrderGainPct);
    convection(by);
    soilAndTime(by);
    by.put(
        "dew-point-F", i -> fahrenheit(MoistAir.dewPointC((i.get("tF") - 32) / 1.8, i.get("rh"))));
    by.put("steam-K", i -> SteamSaturation.temperatureC(i.get("MPa") * 1e6) + 273.15);
    by.put("steam-gauge-F", i -> fahrenheit(SteamSaturation.temperatureAtGaugeC(i.get("bar"))));
    return by;
  }

  private static void convection(Map<String, ToDoubleFunction<Inputs>> by) {
    DoubleBinaryOperator level = ChurchillChu::nusseltLevelCylinder;
    DoubleBinaryOperator upright = ChurchillChu::nusseltUprightPlate;
    by.put("bare-cylinder-W-per-m", i -> girth(i) * (h(i, "D", level) + hr(i)) * i.differenceK());
    by.put("pipe-convection-W", i -> i.get("L") * girth(i) * h(i, "D", level) * i.differenceK());
    by.put("pipe-radiation-W", i -> i.get("L") * girth(i) * hr(i) * i.differenceK());
    by.put("duct-side-h", i -> h(i, "H", ChurchillChu::nusseltUprightPlateLaminar));
    by.put("duct-top-h", i -> h(i, i.get("w") / 2, ChurchillChu::nusseltLevelPlateRising));
    by.put("duct-bottom-h", i -> h(i, i.get("w") / 2, ChurchillChu::nusseltLevelPlateTrapped));
    by.put(
        "duct-W-per-m",
        i ->
            i.differenceK()
                * (2 * i.get("H") * by.get("duct-side-h").applyAsDouble(i)
                    + i.get("w") * by.get("duct-top-h").applyAsDouble(i)
                    + i.get("w") * by.get("duct-bottom-h").applyAsDouble(i)));
    by.put("plate-W", i -> i.get("H") * i.get("w") * h(i, "H", upright) * i.differenceK());
    by.put("square-upright-W", i -> square(i) * h(i, "L", upright) * i.differenceK());
    by.put(
        "square-up-laminar-W",
        i ->
            square(i)
                * h(i, i.get("L") / 4, ChurchillChu::nusseltLevelPlateRisingLaminar)
                * i.differenceK());
    by.put(
        "square-down-W",
        i ->
            square(i)
                * h(i, i.get("L") / 4, ChurchillChu::nusseltLevelPlateTrapped)
                * i.differenceK());
    by.put("square-radiation-W", i -> square(i) * hr(i) * i.differenceK());
    by.put(
        "iso-bare-convection-W-per-m",
        i ->
            girth(i)
                * FreeConvection.levelCylinderWPerM2K(i.get("D"), i.differenceK())
                * i.differenceK());
    by.put(
        "laminar-form-W-per-m",
        i ->
            girth(i)
                * FreeConvection.laminarWPerM2K(i.get("factor"), i.get("D"), i.differenceK())
                * i.differenceK());
    by.put("given-convection-W-per-m", i -> girth(i) * (i.get("h") + hr(i)) * i.differenceK());
    by.put(
        "nusselt-level-cylinder",
        i -> ChurchillChu.nusseltLevelCylinder(i.get("Gr") * i.get("Pr"), i.get("Pr")));
    by.put(
        "nusselt-upright-plate",
        i -> ChurchillChu.nusseltUprightPlate(i.get("Gr") * i.get("Pr"), i.get("Pr")));
    by.put("nusselt-cross-flow", i -> ChurchillChu.nusseltCrossFlow(i.get("Re"), i.get("Pr")));
  }

  private static void soilAndTime(Map<String, ToDoubleFunction<Inputs>> by) {
    by.put("buried-W", i -> i.get("L") * (i.get("t") - i.get("ground")) / soil(i));
    by.put("buried-shape-m", i -> i.get("L") / (i.get("soil") * soil(i)));
    by.put("two-pipes-W", i -> i.get("L") * (i.get("t") - i.get("ground")) / between(i));
    by.put("two-pipes-shape-m", i -> i.get("L") / (i.get("soil") * between(i)));
    by.put(
        "end-of-run-C",
        i ->
            TransientHeat.endOfRunC(
                i.get("t"), i.get("ta"), i.get("U"), i.get("L"), i.get("m"), i.get("cp")));
    by.put(
        "cooling-h",
        i ->
            TransientHeat.timeToReachS(
                    i.get("t"), i.get("tEnd"), i.get("ta"), i.get("UA"), i.get("C"))
                / SECONDS_PER_HOUR);
    by.put("freezing-h", HeatChecks::freezingH);
  }

  private static double freezingH(Inputs i) {
    LayeredBody pipe =
        new LayeredBody(
            new Cylinder(i.get("od")), List.of(new SolidLayer(i.get("cover"), i.get("lambda"))));
    double flow = pipe.flow(0, i.get("ta"), LayeredBody.NO_FILM, i.get("h")).flow();
    return TransientHeat.freezingTimeS(i.get("share"), i.get("bore"), flow) / SECONDS_PER_HOUR;
  }

  /** What is gained with the better of two materials inside, of the loss with it outside. */
  private static double layerOrderGainPct(Inputs i) {
    double betterInside = twoLayers(i, 1, i.get("ratio"));
    double betterOutside = twoLayers(i, i.get("ratio"), 1);
    return 100 * (1 - betterOutside / betterInside);
  }

  private static double twoLayers(Inputs i, double inner, double outer) {
    return new LayeredBody(
            new Cylinder(2 * i.get("r1")),
            List.of(
                new SolidLayer(i.get("r2") - i.get("r1"), inner),
                new SolidLayer(i.get("r3") - i.get("r2"), outer)))
        .resistance(2);
  }

  private static double h(Inputs i, String length, DoubleBinaryOperator nusselt) {
    AirProperties air = i.air();
    double rayleigh = air.rayleigh(i.get(length), i.differenceK());
    return air.coefficientWPerM2K(nusselt.applyAsDouble(rayleigh, air.prandtl()), i.get(length));
  }

  private static double h(Inputs i, double lengthM, ToDoubleFunction<Double> nusselt) {
    AirProperties air = i.air();
    return air.coefficientWPerM2K(
        nusselt.applyAsDouble(air.rayleigh(lengthM, i.differenceK())), lengthM);
  }

  private static double hr(Inputs i) {
    return Radiation.coefficientWPerM2K(i.get("eps"), i.get("ts"), i.get("ta"));
  }

  private static double girth(Inputs i) {
    return Math.PI * i.get("D");
  }

  private static double square(Inputs i) {
    return i.get("L") * i.get("L");
  }

  private static double soil(Inputs i) {
    return Buried.soilResistanceMKPerW(i.get("z"), i.get("D"), i.get("soil"));
  }

  private static double between(Inputs i) {
    return Buried.betweenPipesMKPerW(i.get("z"), i.get("D"), i.get("D"), i.get("soil"));
  }

  private static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }
}
