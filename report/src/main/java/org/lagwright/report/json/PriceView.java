package org.lagwright.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.price.BuildUp;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.price.PriceRow;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.price.PricedItem;

/** The price from its parts. */
record PriceView(
    String currency,
    String list,
    double labourRatePerH,
    double toolsPct,
    double overheadPct,
    double profitPct,
    String profitOn,
    double taxPct,
    double netMaterials,
    double beyondNet,
    double hours,
    double labour,
    double tools,
    double overhead,
    double cost,
    double profit,
    double priceWithoutTax,
    double tax,
    double priceWithTax,
    List<String> itemsWithoutPrice,
    List<ItemView> items) {

  record ItemView(
      String orderItem,
      @Nullable Double pricePerUnit,
      @Nullable Double amount,
      @Nullable String row) {

    static ItemView of(PricedItem priced) {
      PriceRow row = priced.row();
      return row == null
          ? new ItemView(priced.item().id(), null, null, null)
          : new ItemView(
              priced.item().id(),
              Finite.number(priced.perUnit()),
              Finite.number(priced.amount()),
              row.place());
    }
  }

  /** The view, null where there is no price. */
  static @Nullable PriceView of(@Nullable Price price) {
    if (price == null) {
      return null;
    }
    PriceTerms terms = price.terms();
    BuildUp up = price.buildUp();
    return new PriceView(
        terms.currency(),
        terms.list().name(),
        terms.labourRatePerH(),
        terms.toolsPct(),
        terms.overheadPct(),
        terms.profitPct(),
        terms.profit() == PriceTerms.Profit.MARGIN ? "price" : "cost",
        terms.taxPct(),
        Finite.number(up.netMaterials()),
        Finite.number(up.beyondNet()),
        Finite.number(up.hours()),
        Finite.number(up.labour()),
        Finite.number(up.tools()),
        Finite.number(up.overhead()),
        Finite.number(up.cost()),
        Finite.number(up.profit()),
        Finite.number(up.beforeTax()),
        Finite.number(up.tax()),
        Finite.number(up.total()),
        price.withoutPrice().stream().map(OrderItem::id).toList(),
        price.items().stream().map(ItemView::of).toList());
  }
}
