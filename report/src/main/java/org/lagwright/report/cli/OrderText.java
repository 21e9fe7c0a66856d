package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.report.CutRow;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;

/** Which items of the order are for which elements, and what is cut from which piece of stock. */
final class OrderText {

  private OrderText() {}

  /** Items for one element with its cuts; empty where nothing is bought for it. */
  static List<String> of(OrderList order, ElementKey element) {
    List<CutRow.Own> cuts = CutRow.of(order, element);
    List<String> lines = new ArrayList<>();
    for (OrderItem item : order.items()) {
      if (item.elements().contains(element)) {
        lines.addAll(Wrapped.lines("  " + item.id() + "  ", inWords(item)));
        cuts.stream()
            .filter(cut -> cut.itemId().equals(item.id()))
            .forEach(cut -> lines.addAll(Wrapped.lines("        ", inWords(cut))));
      }
    }
    return lines;
  }

  /** Items for any of several elements; empty where nothing is bought for them. */
  static List<String> of(OrderList order, Collection<ElementKey> elements) {
    List<String> lines = new ArrayList<>();
    for (OrderItem item : order.items()) {
      long count = item.elements().stream().filter(elements::contains).count();
      if (count > 0) {
        String text = inWords(item) + "; for " + count + " of these elements";
        lines.addAll(Wrapped.lines("  " + item.id() + "  ", text));
      }
    }
    return lines;
  }

  private static String inWords(OrderItem item) {
    return item.description() + "; " + item.packs() + " x " + item.pack().name() + " in all";
  }

  private static String inWords(CutRow.Own cut) {
    CutRow.Placed placed = cut.placed();
    String width =
        placed.widthM() == null ? "" : String.format(Locale.ROOT, "%.3f x ", placed.widthM());
    return String.format(
        Locale.ROOT,
        "%s%s%.3f m for %s, from no. %d of %d",
        cut.times() == 1 ? "" : cut.times() + " times ",
        width,
        placed.lengthM(),
        placed.purpose(),
        cut.number(),
        cut.of());
  }
}
