package org.lagwright.report;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.fitting.Axes;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.labour.StepShares;
import org.lagwright.takeoff.labour.WorkArea;
import org.lagwright.takeoff.measure.GeometricTruth;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.measure.MeasurementPack;
import org.lagwright.takeoff.order.Cut;
import org.lagwright.takeoff.order.CuttingPlan;
import org.lagwright.takeoff.order.CuttingPlanner;
import org.lagwright.takeoff.order.Goods;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.order.PackSize;
import org.lagwright.takeoff.order.StockLength;
import org.lagwright.takeoff.pack.SourceStatus;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.price.PriceList;
import org.lagwright.takeoff.price.PriceRow;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** What {@link SampleTakeoff} is measured by, orders, costs in hours and in money. */
final class SampleEstimate {

  static final List<MeasurementMethod> METHODS =
      MeasurementPack.bundled().methods().stream()
          .filter(method -> List.of("net", "over-measured").contains(method.id()))
          .toList();

  private SampleEstimate() {}

  /** Measured by two methods, as if the bend had no pieces of its own. */
  static List<Measurement> measurements() {
    List<GeometricTruth> truths =
        List.of(
            truth(101, "L001", Form.STRAIGHT, new Quantities(1.75, 0, 0.75, 0.0125), 1.75),
            truth(102, "L001", Form.STRAIGHT, new Quantities(2.5, 0, 1, 0.0225), 2.5),
            truth(103, "L002", Form.BEND, new Quantities(0, 1, 0.5, 0.01), 0.125));
    return METHODS.stream().map(method -> Measurement.of(method, truths)).toList();
  }

  private static GeometricTruth truth(
      long step, String line, Form form, Quantities net, double throughM) {
    return new GeometricTruth(
        new ElementKey(0, step),
        line,
        form,
        form == Form.STRAIGHT,
        false,
        false,
        new Section.Round(0.0603),
        List.of(),
        0.025,
        form == Form.BEND ? Math.PI / 2 : 0,
        net,
        new Axes(throughM, throughM, List.of()));
  }

  static OrderList order() {
    StockLength stock = new StockLength(2, 0);
    CuttingPlan plan =
        CuttingPlanner.plan(
            List.of(
                new Cut("L001 straight piece", 1.75, new ElementKey(0, 101)),
                new Cut("L001 straight piece", 2, new ElementKey(0, 101)),
                new Cut("L001 straight piece", 0.5, new ElementKey(0, 101)),
                new Cut("L002 3 pieces in one length", 0.125, new ElementKey(0, 103))),
            stock);
    OrderItem tube =
        new OrderItem(
            "O001",
            Goods.TUBE,
            "flexible-foam",
            0.06,
            0.025,
            "tube, bore 60 mm, wall 25 mm; flexible foam",
            "m",
            4.375,
            0.25,
            0.125,
            new PackSize("tube of 2 m", 2),
            3,
            List.of(new ElementKey(0, 101), new ElementKey(0, 102), new ElementKey(0, 103)),
            "cut lengths of straights and fitting pieces, planned over all of this size",
            "stock: sizes commonly sold",
            SourceStatus.MEMORY);
    return new OrderList(
        List.of(tube),
        List.of(new OrderList.TubePlan("O001", plan)),
        List.of(),
        List.of(new ElementKey(0, 104)),
        Map.of());
  }

  /** Straights and a valve of chilled water in the plant room, a duct out of doors. */
  static Labour labour() {
    LabourNorms norms = LabourNorms.bundled();
    WorkArea plant = new WorkArea(0.0, "Level 0", "Plant room");
    WorkArea roof = new WorkArea(8.0, "<Roof*", "");
    StepShares fitting = norms.pack().shares().get(3);
    return new Labour(
        List.of(
            work(plant, "L001", "Chilled water flow", Form.STRAIGHT, 4.25, "m")
                .of(norms, "tube-dn50", null, norms.pack().shares().get(0), "cold", "project"),
            work(plant, "L003", "Chilled water flow", Form.VALVE_BODY, 1, "pcs")
                .of(norms, "tube-dn50", "valve-screwed", fitting, "crowded", "cold", "project"),
            work(roof, "L004", "Supply air", Form.STRAIGHT, 2, "m")
                .of(norms, "sheet-duct", null, norms.pack().shares().get(1), "outdoor")),
        norms);
  }

  private static Work work(
      WorkArea area, String line, String service, Form form, double quantity, String unit) {
    return new Work(area, line, service, form, quantity, unit);
  }

  private record Work(
      WorkArea area, String line, String service, Form form, double quantity, String unit) {

    LabourItem of(
        LabourNorms norms,
        String norm,
        @Nullable String equivalent,
        StepShares shares,
        String... factors) {
      Set<String> wanted = Set.of(factors);
      return new LabourItem(
          area,
          line,
          "x",
          service,
          Kind.PIPE_SEGMENT,
          form,
          "DN50 / 60.3 mm",
          1,
          new Layer("fef_nbr", LayerForm.TUBE, 0.025),
          quantity,
          unit,
          norm(norms, norm),
          norm.startsWith("sheet") ? 2.25 : 1,
          equivalent == null ? null : norm(norms, equivalent),
          norms.pack().factors().stream().filter(f -> wanted.contains(f.id())).toList(),
          shares);
    }

    private static Norm norm(LabourNorms norms, String id) {
      return norms.norms().stream().filter(n -> n.id().equals(id)).findFirst().orElseThrow();
    }
  }

  /** A list that knows nothing of what is ordered. */
  static Price price() {
    PriceRow row = new PriceRow(Goods.FIXING, null, null, null, "pack", 15, "prices.csv, row 2");
    PriceList list = new PriceList("prices.csv", List.of(row));
    PriceTerms terms = new PriceTerms("EUR", 40, 5, 10, 8, PriceTerms.Profit.MARKUP, 19, list);
    return Price.of(order().items(), labour().hours(), terms);
  }
}
