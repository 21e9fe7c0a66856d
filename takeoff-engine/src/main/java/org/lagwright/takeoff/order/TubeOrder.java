package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.material.Stock;
import org.lagwright.takeoff.order.OrderList.TubePlan;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** Tubes and sections in stock lengths, each size with its cutting plan. */
final class TubeOrder {

  private static final String RULE =
      "cut lengths of straights and fitting pieces, planned over all of this size";

  private final OrderPack figures;
  private final MaterialPack materials;
  private final Map<TubeKey, Group> groups = new TreeMap<>();

  private static final class Group {
    final List<List<Piece>> byElement = new ArrayList<>();
    final List<String> lineIds = new ArrayList<>();
    final List<ElementKey> elements = new ArrayList<>();
  }

  TubeOrder(OrderPack figures, MaterialPack materials) {
    this.figures = figures;
    this.materials = materials;
  }

  void add(LaggedElement lagged) {
    Map<TubeKey, List<Piece>> bySize = new TreeMap<>();
    for (Piece piece : lagged.making().pieces()) {
      if (!piece.isSheet()) {
        MaterialFamily material = materials.family(piece.layer().materialId());
        bySize.computeIfAbsent(TubeKey.of(piece, material), k -> new ArrayList<>()).add(piece);
      }
    }
    bySize.forEach(
        (size, pieces) -> {
          Group group = groups.computeIfAbsent(size, k -> new Group());
          group.byElement.add(pieces);
          group.lineIds.add(lagged.lineId());
          group.elements.add(lagged.key());
        });
  }

  void putOn(ItemBook book, List<TubePlan> plans, SoldSizes sold) {
    List<Map.Entry<TubeKey, Group>> sizes = List.copyOf(groups.entrySet());
    // no size depends on another one, and plans of many cuts are long arithmetic
    List<CuttingPlan> best =
        sizes.parallelStream().map(each -> bestPlan(each.getKey(), each.getValue())).toList();
    for (int i = 0; i < sizes.size(); i++) {
      TubeKey size = sizes.get(i).getKey();
      CuttingPlan plan = best.get(i);
      String itemId = add(book, size, sizes.get(i).getValue(), plan);
      plans.add(new TubePlan(itemId, plan));
      sold.tube(size, plan.stock().lengthM());
    }
  }

  /** Of several lengths sold the one that buys least; of equals the longest. */
  private CuttingPlan bestPlan(TubeKey size, Group group) {
    CuttingPlan best = null;
    for (StockLength stock : stocks(size)) {
      CuttingPlan plan = plan(group, stock);
      if (best == null || plan.boughtLengthM() < best.boughtLengthM() - 1e-9) {
        best = plan;
      }
    }
    if (best == null) {
      throw new IllegalStateException("no stock length for " + size);
    }
    return best;
  }

  private List<StockLength> stocks(TubeKey size) {
    double kerfM = figures.metres(isTube(size) ? "tubeKerfMm" : "sectionKerfMm");
    double wallMm = size.wallM() * 1000;
    List<Double> lengthsM =
        materials.family(size.materialId()).stock().pieces().stream()
            .filter(sold -> sold.form().equals(size.form().label()))
            .filter(s -> s.thicknessMm() == null || Math.abs(s.thicknessMm() - wallMm) < 0.01)
            .map(Stock.Sold::lengthM)
            .sorted((a, b) -> Double.compare(b, a))
            .toList();
    if (lengthsM.isEmpty()) {
      lengthsM = List.of(figures.number(isTube(size) ? "tubeLengthM" : "sectionLengthM"));
    }
    return lengthsM.stream().map(lengthM -> new StockLength(lengthM, kerfM)).toList();
  }

  private static CuttingPlan plan(Group group, StockLength stock) {
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < group.byElement.size(); i++) {
      cuts.addAll(
          TubeCuts.of(group.lineIds.get(i), group.elements.get(i), group.byElement.get(i), stock));
    }
    return CuttingPlanner.plan(cuts, stock);
  }

  private String add(ItemBook book, TubeKey size, Group group, CuttingPlan plan) {
    double netM =
        group.byElement.stream()
            .flatMap(List::stream)
            .mapToDouble(piece -> piece.count() * piece.tubeLengthM())
            .sum();
    double usableM = plan.restsFromM(figures.metres("usableOffcutMm"));
    double allowanceM =
        netM * figures.share(isTube(size) ? "tubeAllowancePct" : "sectionAllowancePct");
    double lengthM = plan.stock().lengthM();
    PackSize pack = new PackSize(size.form().label() + " of " + plain(lengthM) + " m", lengthM);
    MaterialFamily material = materials.family(size.materialId());
    return book.add(
        Supply.ofStock(
            isTube(size) ? Goods.TUBE : Goods.SECTION,
            description(size, material),
            "m",
            material,
            size.boreM(),
            size.wallM(),
            pack,
            RULE),
        netM,
        allowanceM,
        Planned.of(plan.pieces().size(), pack, netM, usableM, allowanceM),
        new LinkedHashSet<>(group.elements));
  }

  private static String description(TubeKey size, MaterialFamily material) {
    Goods goods = isTube(size) ? Goods.TUBE : Goods.SECTION;
    return String.format(
        Locale.ROOT,
        "%s, bore %s mm, wall %s mm; %s",
        goods.words(),
        plain(size.boreM() * 1000),
        plain(size.wallM() * 1000),
        material.name());
  }

  private static boolean isTube(TubeKey size) {
    return size.form() == LayerForm.TUBE;
  }

  private static String plain(double figure) {
    return ItemBook.plain(figure);
  }
}
