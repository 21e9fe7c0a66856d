package org.lagwright.report.json;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Proof;

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

  /** What the thickness bought does; saving a metre and year where the project has a tariff. */
  record ProofView(
      double mediumTemperatureC,
      double airTemperatureC,
      @Nullable Double relativeHumidityPct,
      @Nullable Double dewPointC,
      double surfaceTemperatureC,
      double heatMediumTemperatureC,
      double meanTemperatureC,
      double windMPerS,
      double heatFlowBareWPerM,
      double heatFlowInsulatedWPerM,
      @Nullable SavingView saving) {
    static @Nullable ProofView of(@Nullable Proof proof) {
      return proof == null
          ? null
          : new ProofView(
              Finite.number(proof.mediumC()),
              Finite.number(proof.airC()),
              proof.relativeHumidityPct(),
              proof.dewPointC(),
              Finite.number(proof.surfaceC()),
              Finite.number(proof.heatMediumC()),
              Finite.number(proof.conditions().exposure().meanC()),
              Finite.number(proof.conditions().exposure().windMPerS()),
              Finite.number(proof.bareWPerM()),
              Finite.number(proof.insulatedWPerM()),
              SavingView.of(proof.saving()));
    }
  }

  record SavingView(double heatKWhPerM, double energyKWhPerM, double costPerM, double co2KgPerM) {
    static @Nullable SavingView of(Proof.@Nullable Saving saving) {
      return saving == null
          ? null
          : new SavingView(
              Finite.number(saving.heatKWh()),
              Finite.number(saving.energyKWh()),
              Finite.number(saving.cost()),
              Finite.number(saving.co2Kg()));
    }
  }
}
