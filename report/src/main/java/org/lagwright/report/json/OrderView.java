package org.lagwright.report.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.order.Cut;
import org.lagwright.takeoff.order.CuttingPlan;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.order.PlacedCut;
import org.lagwright.takeoff.order.SheetPlan;

/** One item of the order, with its cutting plan. */
record OrderView(
    String id,
    String goods,
    @Nullable String material,
    @Nullable Double boreM,
    @Nullable Double thicknessM,
    String description,
    String unit,
    double net,
    double waste,
    double allowance,
    double gross,
    String pack,
    double packContents,
    int packs,
    double bought,
    double spare,
    List<String> elements,
    String rule,
    String source,
    String status,
    @Nullable CuttingView cutting) {

  /**
   * How it is cut.
   *
   * @param pieces one entry for each tube, section, sheet or roll
   */
  record CuttingView(
      double lengthM,
      @Nullable Double widthM,
      @Nullable Double kerfM,
      int bought,
      int lowerBound,
      int gap,
      List<PieceView> pieces) {}

  /** One tube, section, sheet or roll with its cuts. */
  record PieceView(double restM, List<CutView> cuts) {}

  /** One cut; of sheets with its width and the corner where it lies. */
  record CutView(
      @Nullable Double widthM,
      double lengthM,
      @Nullable Double acrossM,
      @Nullable Double alongM,
      String purpose) {}

  /** The views of all items. */
  static List<OrderView> of(OrderList order, Function<List<ElementKey>, List<String>> ids) {
    Map<String, CuttingView> plans = new HashMap<>();
    order.tubePlans().forEach(plan -> plans.put(plan.itemId(), tubes(plan.plan())));
    order.sheetPlans().forEach(plan -> plans.put(plan.itemId(), sheets(plan.plan())));
    return order.items().stream()
        .map(item -> of(item, ids.apply(item.elements()), plans.get(item.id())))
        .toList();
  }

  private static OrderView of(
      OrderItem item, List<String> elements, @Nullable CuttingView cutting) {
    return new OrderView(
        item.id(),
        item.goods().label(),
        item.materialId(),
        aboveZero(item.boreM()),
        aboveZero(item.thicknessM()),
        item.description(),
        item.unit(),
        Finite.number(item.netQuantity()),
        Finite.number(item.wasteQuantity()),
        Finite.number(item.allowanceQuantity()),
        Finite.number(item.grossQuantity()),
        item.pack().name(),
        item.pack().contents(),
        item.packs(),
        item.boughtQuantity(),
        item.spareQuantity(),
        elements,
        item.rule(),
        item.source(),
        item.status().shown(),
        cutting);
  }

  private static @Nullable Double aboveZero(double lengthM) {
    return lengthM > 0 ? lengthM : null;
  }

  private static CuttingView tubes(CuttingPlan plan) {
    return new CuttingView(
        plan.stock().lengthM(),
        null,
        plan.stock().kerfM(),
        plan.pieces().size(),
        plan.lowerBound(),
        plan.gap(),
        plan.pieces().stream()
            .map(
                piece ->
                    new PieceView(
                        piece.restM(), piece.cuts().stream().map(OrderView::cut).toList()))
            .toList());
  }

  private static CutView cut(Cut cut) {
    return new CutView(null, cut.lengthM(), null, null, cut.purpose());
  }

  private static CuttingView sheets(SheetPlan plan) {
    return new CuttingView(
        plan.size().lengthM(),
        plan.size().widthM(),
        null,
        plan.sheets().size(),
        plan.lowerBound(),
        plan.gap(),
        plan.sheets().stream()
            .map(
                sheet ->
                    new PieceView(plan.restM(sheet), sheet.stream().map(OrderView::cut).toList()))
            .toList());
  }

  private static CutView cut(PlacedCut placed) {
    return new CutView(
        placed.widthM(),
        placed.lengthM(),
        placed.acrossM(),
        placed.alongM(),
        placed.cut().purpose());
  }
}
