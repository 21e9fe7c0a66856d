package org.lagwright.report.json;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.labour.LabourFactor;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.labour.TradeStep;

/** Hours with everything they follow from. */
record LabourView(
    double hours,
    List<StepView> byStep,
    List<ServiceHoursView> byService,
    List<AreaView> byArea,
    List<ItemView> items,
    List<NormView> norms,
    List<FactorView> factors) {

  record StepView(String step, double hours) {}

  record ServiceHoursView(String service, double hours) {}

  record AreaView(String storey, String space, double hours) {}

  record ItemView(
      String storey,
      String space,
      String line,
      String service,
      String form,
      String size,
      int layer,
      double thicknessM,
      double quantity,
      String unit,
      String norm,
      double perMetre,
      @Nullable String equivalent,
      List<String> factors,
      double hours) {

    static ItemView of(LabourItem item) {
      Norm equivalent = item.equivalent();
      return new ItemView(
          item.area().storey(),
          item.area().space(),
          item.lineId(),
          item.serviceId(),
          item.form().label(),
          item.size(),
          item.layerNumber(),
          Finite.number(item.layer().thicknessM()),
          Finite.number(item.quantity()),
          item.unit(),
          item.norm().id(),
          Finite.number(item.perMetre()),
          equivalent == null ? null : equivalent.id(),
          item.factors().stream().map(LabourFactor::id).toList(),
          Finite.number(item.hours()));
    }
  }

  record NormView(String id, String item, double value, String unit, String status, String source) {

    static NormView of(Norm norm) {
      return new NormView(
          norm.id(),
          norm.item(),
          norm.value(),
          norm.unit().label(),
          norm.status().shown(),
          norm.source());
    }
  }

  record FactorView(String id, double value, String what, String status) {

    static FactorView of(LabourFactor factor) {
      return new FactorView(factor.id(), factor.value(), factor.what(), factor.status().shown());
    }
  }

  static LabourView of(Labour labour) {
    return new LabourView(
        Finite.number(labour.hours()),
        Arrays.stream(TradeStep.values())
            .map(step -> new StepView(label(step), labour.hours(step)))
            .toList(),
        labour.hoursByService().entrySet().stream()
            .map(e -> new ServiceHoursView(e.getKey(), e.getValue()))
            .toList(),
        labour.hoursByArea().entrySet().stream()
            .map(e -> new AreaView(e.getKey().storey(), e.getKey().space(), e.getValue()))
            .toList(),
        labour.items().stream().map(ItemView::of).toList(),
        labour.normsInUse().stream().map(NormView::of).toList(),
        labour.norms().pack().factors().stream().map(FactorView::of).toList());
  }

  private static String label(TradeStep step) {
    return step.words().replace(' ', '-');
  }
}
