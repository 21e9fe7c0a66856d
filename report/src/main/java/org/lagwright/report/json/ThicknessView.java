package org.lagwright.report.json;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Layer;

/** Parts of the decision how thick. */
final class ThicknessView {

  private ThicknessView() {}

  /** The thickness is absent where the demand is out of reach. */
  record DemandView(
      String kind,
      @Nullable Double thicknessM,
      String rule,
      String source,
      Map<String, String> figures) {
    static DemandView of(Demand demand) {
      return new DemandView(
          demand.kind().label(),
          demand.isReachable() ? demand.thicknessM() : null,
          demand.rule(),
          demand.source(),
          new TreeMap<>(demand.figures()));
    }
  }

  record LayerView(String material, String form, double thicknessM) {
    static LayerView of(Layer layer) {
      return new LayerView(
          layer.materialId(), layer.form().label(), Finite.number(layer.thicknessM()));
    }
  }
}
