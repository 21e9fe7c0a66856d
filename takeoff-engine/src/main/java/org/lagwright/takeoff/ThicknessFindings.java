package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.thickness.Conditions;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Proof;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** What is to be said about a thickness that was found. */
final class ThicknessFindings {

  private ThicknessFindings() {}

  static List<Finding> of(
      ElementKey element,
      Conditions conditions,
      ThicknessDecision thickness,
      MaterialFamily material,
      String service) {
    List<Finding> findings = new ArrayList<>();
    if (lacksBore(conditions, thickness, material)) {
      Section.Round pipe = (Section.Round) conditions.section();
      findings.add(
          Finding.about(
              element,
              TakeoffFinding.NO_STOCK_BORE,
              Effect.NONE,
              material.name(),
              Show.millimetres(pipe.outsideDiameterM())));
    }
    boolean keptDry =
        thickness.demands().stream()
            .anyMatch(d -> d.kind() == Demand.Kind.CONDENSATION && d.thicknessM() > 0);
    if (keptDry && !material.vapourBarrierIncluded()) {
      findings.add(
          Finding.about(
              element,
              TakeoffFinding.VAPOUR_BARRIER_NEEDED,
              Effect.NONE,
              material.name(),
              service));
    }
    Proof proof = thickness.proof();
    if (proof != null && proof.raisesHeatFlow()) {
      findings.add(
          Finding.about(
              element,
              TakeoffFinding.BELOW_CRITICAL_RADIUS,
              Effect.NONE,
              Show.millimetres(thickness.totalM())));
    }
    return findings;
  }

  /** True where larger and smaller pipes than this one get tube or section. */
  private static boolean lacksBore(
      Conditions conditions, ThicknessDecision thickness, MaterialFamily material) {
    return !conditions.duct()
        && conditions.section() instanceof Section.Round pipe
        && thickness.layers().get(0).form() == Layer.LayerForm.SHEET
        && material.stock().reaches(pipe.outsideDiameterM() * 1000);
  }
}
