package org.lagwright.takeoff.thickness;

import org.lagwright.takeoff.material.Conductivity;
import org.lagwright.takeoff.material.MaterialFamily;

/** The figures of a material in a proof, with how far they were checked. */
final class MaterialFigures {

  private MaterialFigures() {}

  static void add(Figures figures, MaterialFamily material, Conductivity lambda) {
    figures
        .text("material", material.id())
        .number("mean temperature degC", lambda.meanC(), 2)
        .number("conductivity W/(m K)", lambda.wPerMK(), 4)
        .text(
            "conductivity status",
            material.conductivity().status().label()
                + (lambda.extrapolated()
                    ? "; mean temperature outside the published points, nearest one used"
                    : ""));
  }
}
