package org.lagwright.takeoff.price;

import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.order.OrderItem;

/**
 * One item of the order with its price. What is paid for is what is bought: whole packs.
 *
 * @param row the row of the price list; null where none fits, and then there is no amount
 */
public record PricedItem(OrderItem item, @Nullable PriceRow row) {

  /** True where the list has a price. */
  public boolean isPriced() {
    return row != null;
  }

  /** Price of one unit; 0 where there is none. */
  public double perUnit() {
    return row == null ? 0 : row.perUnit(item);
  }

  /** What ends up on the pipes. */
  public double net() {
    return item.netQuantity() * perUnit();
  }

  /** What is bought beyond that: waste, allowance and the rest of the last pack; never below 0. */
  public double beyondNet() {
    // packs that are used up leave a rest of rounding
    return Math.max(0, item.boughtQuantity() - item.netQuantity()) * perUnit();
  }

  /** What is paid. */
  public double amount() {
    return item.boughtQuantity() * perUnit();
  }
}
