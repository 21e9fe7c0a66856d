package org.lagwright.takeoff.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Numbers the items of an order in the order in which they come. */
final class ItemBook {

  private final List<OrderItem> items = new ArrayList<>();

  String nextId() {
    return String.format(Locale.ROOT, "O%03d", items.size() + 1);
  }

  /** Adds an item and gives its id. */
  String add(OrderItem item) {
    items.add(item);
    return item.id();
  }

  /** Adds what is needed of something without a cutting plan; nothing where nothing is needed. */
  void add(Supply supply, Tally tally) {
    if (!(tally.net() > 0)) {
      return;
    }
    items.add(
        new OrderItem(
            nextId(),
            supply.goods(),
            supply.materialId(),
            supply.boreM(),
            supply.thicknessM(),
            supply.description(),
            supply.unit(),
            tally.net(),
            0,
            tally.allowance(),
            supply.pack(),
            supply.pack().countFor(tally.net() + tally.allowance()),
            List.copyOf(tally.elements()),
            supply.rule(),
            supply.source(),
            supply.status()));
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
