package org.lagwright.takeoff.price;

import java.util.List;
import org.lagwright.takeoff.order.OrderItem;

/**
 * The price of a takeoff.
 *
 * @param items the whole order, what has no price included
 * @param buildUp the price from its parts; what has no price is not in it
 */
public record Price(List<PricedItem> items, BuildUp buildUp) {

  public Price {
    items = List.copyOf(items);
  }

  /**
   * Prices an order and hours.
   *
   * @param hours of labour
   */
  public static Price of(List<OrderItem> order, double hours, PriceTerms terms) {
    List<PricedItem> items =
        order.stream()
            .map(item -> new PricedItem(item, terms.list().find(item).orElse(null)))
            .toList();
    double net = items.stream().mapToDouble(PricedItem::net).sum();
    double beyondNet = items.stream().mapToDouble(PricedItem::beyondNet).sum();
    return new Price(items, new BuildUp(net, beyondNet, hours, terms));
  }

  /** Rates and percentages. */
  public PriceTerms terms() {
    return buildUp.terms();
  }

  /** Items that the list has no price for: the price is that much too low. */
  public List<OrderItem> withoutPrice() {
    return items.stream().filter(item -> !item.isPriced()).map(PricedItem::item).toList();
  }
}
