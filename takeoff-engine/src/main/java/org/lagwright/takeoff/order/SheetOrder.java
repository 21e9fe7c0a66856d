package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.Pattern;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.material.Stock;
import org.lagwright.takeoff.order.OrderList.SheetCutting;

/** Sheets and rolls for ducts, large pipes, second layers and covers, each with its plan. */
final class SheetOrder {

  private static final String RULE =
      "panels and rectangles round shaped pieces, planned over all of this thickness";

  private final OrderPack figures;
  private final MaterialPack materials;
  private final Map<SheetKey, Group> groups = new TreeMap<>();
  private final Map<PieceShape, SheetCut> rectangles = new HashMap<>();

  private static final class Group {
    final List<SheetCut> cuts = new ArrayList<>();
    final Set<ElementKey> elements = new LinkedHashSet<>();
    double netM2;
  }

  SheetOrder(OrderPack figures, MaterialPack materials) {
    this.figures = figures;
    this.materials = materials;
  }

  void add(LaggedElement lagged) {
    for (Piece piece : lagged.making().pieces()) {
      if (piece.isSheet()) {
        MaterialFamily material = materials.family(piece.layer().materialId());
        Group group = groups.computeIfAbsent(SheetKey.of(piece, material), k -> new Group());
        SheetCut around = around(piece);
        String purpose = lagged.lineId() + " " + piece.name();
        for (int i = 0; i < piece.count(); i++) {
          group.cuts.add(new SheetCut(purpose, around.widthM(), around.lengthM(), lagged.key()));
        }
        group.elements.add(lagged.key());
        group.netM2 += piece.count() * piece.sheetAreaM2();
      }
    }
  }

  /** The rectangle that a piece is cut from. */
  SheetCut around(Piece piece) {
    return rectangles.computeIfAbsent(piece.shape(), SheetOrder::rectangle);
  }

  /** The smallest upright rectangle round a piece laid flat. */
  private static SheetCut rectangle(PieceShape shape) {
    if (shape instanceof TubePiece tube
        && tube.start().equals(EndCut.SQUARE)
        && tube.end().equals(EndCut.SQUARE)) {
      return new SheetCut("", tube.outer().girthM(), tube.axisM());
    }
    Pattern.Bounds bounds = shape.pattern().bounds();
    return new SheetCut("", bounds.widthM(), bounds.heightM());
  }

  void putOn(ItemBook book, List<SheetCutting> plans, SoldSizes sold) {
    groups.forEach(
        (key, group) -> {
          SheetPlan plan = bestPlan(key, group);
          String itemId = add(book, key, group, plan);
          plans.add(new SheetCutting(itemId, plan));
          sold.sheet(key, plan.size());
        });
  }

  /** Of several sizes sold the one that buys the least area; of equals the larger pieces. */
  private SheetPlan bestPlan(SheetKey key, Group group) {
    SheetPlan best = null;
    for (SheetSize size : sizes(key)) {
      List<SheetCut> cuts =
          group.cuts.stream().flatMap(cut -> SheetPlanner.split(cut, size).stream()).toList();
      SheetPlan plan = SheetPlanner.plan(cuts, size);
      if (best == null || plan.boughtAreaM2() < best.boughtAreaM2() - 1e-9) {
        best = plan;
      }
    }
    if (best == null) {
      throw new IllegalStateException("no size of sheet for " + key);
    }
    return best;
  }

  private List<SheetSize> sizes(SheetKey key) {
    double mm = key.thicknessM() * 1000;
    List<SheetSize> sizes = new ArrayList<>();
    for (Stock.Sold sold : materials.family(key.materialId()).stock().pieces()) {
      boolean fits = sold.thicknessMm() == null || Math.abs(sold.thicknessMm() - mm) < 0.01;
      if (sold.widthM() != null && fits) {
        sizes.add(new SheetSize(sold.form(), sold.widthM(), sold.lengthM()));
      }
    }
    if (sizes.isEmpty()) {
      sizes.add(
          new SheetSize("sheet", figures.number("sheetWidthM"), figures.number("sheetLengthM")));
    }
    sizes.sort((a, b) -> Double.compare(b.areaM2(), a.areaM2()));
    return sizes;
  }

  private String add(ItemBook book, SheetKey key, Group group, SheetPlan plan) {
    double usableM2 = plan.restsFromM2(figures.metres("usableOffcutMm"));
    double allowanceM2 = group.netM2 * figures.share("sheetAllowancePct");
    PackSize pack = new PackSize(plan.size().inWords(), plan.size().areaM2());
    MaterialFamily material = materials.family(key.materialId());
    String description =
        String.format(
            Locale.ROOT,
            "%s, thickness %s mm; %s",
            plan.size().form(),
            ItemBook.plain(key.thicknessM() * 1000),
            material.name());
    return book.add(
        Supply.ofStock(Goods.SHEET, description, "m2", material, 0, key.thicknessM(), pack, RULE),
        group.netM2,
        allowanceM2,
        Planned.of(plan.sheets().size(), pack, group.netM2, usableM2, allowanceM2),
        group.elements);
  }
}
