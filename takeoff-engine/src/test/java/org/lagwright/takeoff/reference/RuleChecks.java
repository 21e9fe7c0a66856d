package org.lagwright.takeoff.reference;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.lagwright.takeoff.heat.Body.RectangularDuct;
import org.lagwright.takeoff.heat.LayeredBody;
import org.lagwright.takeoff.heat.LayeredBody.SolidLayer;
import org.lagwright.takeoff.thickness.OtherConductivity;
import org.lagwright.takeoff.thickness.TransmittanceLimit;

/** How the program computes the quantities of the checks on rules. */
final class RuleChecks {

  private RuleChecks() {}

  static Map<String, ToDoubleFunction<Inputs>> computed() {
    return Map.of(
        "rectangular-duct-W-per-m",
        i ->
            new LayeredBody(
                    new RectangularDuct(i.get("P"), 0.2),
                    List.of(new SolidLayer(i.get("cover"), i.get("lambda"))))
                .flow(i.get("t"), i.get("ta"), i.get("hi"), i.get("he"))
                .flow(),
        "equal-heat-flow-mm",
        i ->
            1000
                * OtherConductivity.equalHeatFlowM(
                    i.get("t"), i.get("od"), i.get("lambda"), i.get("rated"), i.get("h")),
        "transmittance-W-per-mK",
        i -> new TransmittanceLimit(i.get("perMetre"), i.get("base")).ofPipeWPerMK(i.get("d")),
        "power-law-in",
        i -> OtherConductivity.powerLaw(i.get("t"), i.get("r"), i.get("K"), i.get("k")));
  }
}
