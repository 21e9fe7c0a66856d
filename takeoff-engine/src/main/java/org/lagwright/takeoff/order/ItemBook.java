package org.lagwright.takeoff.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;

/** Numbers the items of an order in the order in which they come. */
final class ItemBook {

  private final List<OrderItem> items = new ArrayList<>();

  /** Adds what is needed of something without a cutting plan; nothing where nothing is needed. */
  void add(Supply supply, Tally tally) {
    if (tally.net() > 0) {
      int packs = supply.pack().countFor(tally.net() + tally.allowance());
      add(supply, tally.net(), tally.allowance(), new Planned(0, packs), tally.elements());
    }
  }

  /** Adds what a plan buys of something, and gives the id of the item. */
  String add(
      Supply supply, double net, double allowance, Planned planned, Set<ElementKey> elements) {
    String id = String.format(Locale.ROOT, "O%03d", items.size() + 1);
    items.add(
        new OrderItem(
            id,
            supply.goods(),
            supply.materialId(),
            supply.boreM(),
            supply.thicknessM(),
            supply.description(),
            supply.unit(),
            net,
            planned.wasteQuantity(),
            allowance,
            supply.pack(),
            planned.packs(),
            List.copyOf(elements),
            supply.rule(),
            supply.source(),
            supply.status()));
    return id;
  }

  List<OrderItem> items() {
    return items;
  }

  /** A figure with no more decimals than it needs, at most two. */
  static String plain(double figure) {
    return BigDecimal.valueOf(figure)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
