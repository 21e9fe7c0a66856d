package org.lagwright.takeoff.order;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.order.HangerPack.SpacingTable;
import org.lagwright.takeoff.order.Hangers.Size;

/** Load-bearing inserts for cold pipes: one at each hanger. */
final class InsertOrder {

  private final OrderPack figures;
  private final HangerPack pack;
  private final String tableId;
  private final Hangers hangers;

  /**
   * @param hangers of all pipes
   */
  InsertOrder(OrderPack figures, HangerPack pack, String tableId, Hangers hangers) {
    this.figures = figures;
    this.pack = pack;
    this.tableId = tableId;
    this.hangers = hangers;
  }

  void putOn(ItemBook book, List<LaggedElement> lagged) {
    Map<Size, Count> counts = new TreeMap<>();
    for (LaggedElement element : lagged) {
      if (element.cold() && element.element().kind() == Kind.PIPE_SEGMENT) {
        Count count = counts.computeIfAbsent(Size.of(element), k -> new Count());
        Hangers.Count own = hangers.of(element.key());
        count.shown += own.shown() ? own.number() : 0;
        count.bySpacing += own.shown() ? 0 : own.number();
        count.all.add(own.number(), allowance(), element.key());
      }
    }
    counts.forEach((size, count) -> book.add(supply(size, count), count.all));
  }

  private static final class Count {
    final Tally all = new Tally();
    double shown;
    double bySpacing;
  }

  private double allowance() {
    return figures.share("insertAllowancePct");
  }

  private Supply supply(Size size, Count count) {
    double lengthM =
        pack.shields().lengthM(size.boreM()) + 2 * figures.metres("insertBesideShieldMm");
    Supply supply =
        new Supply(
                Goods.INSERT,
                "load-bearing insert, bore "
                    + mm(size.boreM())
                    + " mm, wall "
                    + mm(size.thicknessM())
                    + " mm, at least "
                    + mm(lengthM)
                    + " mm long",
                "pcs")
            .sized(size.boreM(), size.thicknessM())
            .from(pack.shields().source(), pack.shields().status());
    if (count.bySpacing == 0) {
      return supply.by(ItemBook.plain(count.shown) + " hangers that the model shows");
    }
    SpacingTable table = pack.findTable(tableId).orElseThrow();
    String bySpacing =
        ItemBook.plain(count.bySpacing)
            + " by the length of each run over "
            + ItemBook.plain(table.spanM(size.boreM()))
            + " m, rounded up, and {hangersPerRunExtra} more: "
            + table.name();
    String shown =
        count.shown == 0 ? "" : ItemBook.plain(count.shown) + " hangers that the model shows; ";
    return supply
        .by(shown + bySpacing)
        .from(table.source(), table.status())
        .figures(figures, "hangersPerRunExtra");
  }

  private static String mm(double lengthM) {
    return ItemBook.plain(lengthM * 1000);
  }
}
