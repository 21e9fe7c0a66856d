package org.lagwright.report.json;

import java.util.Map;
import java.util.TreeMap;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Layer;

/** Parts of the decision how thick. */
final class ThicknessView {

  private ThicknessView() {}

  record DemandView(
      String kind, double thicknessM, String rule, String source, Map<String, String> figures) {
    static DemandView of(Demand demand) {
      return new DemandView(
          demand.kind().label(),
          Finite.number(demand.thicknessM()),
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
