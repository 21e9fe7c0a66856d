package org.lagwright.takeoff.compare;

import org.lagwright.takeoff.price.Price;

/**
 * The prices of both revisions, reckoned with the same price list and terms.
 *
 * @param ofTheJobBefore money without tax that belongs to no element: waste, allowances, rests of
 *     packs
 * @param ofTheJobNow the same of the later revision
 */
public record PriceChange(Price before, Price now, double ofTheJobBefore, double ofTheJobNow) {

  /** By how much the price without tax rises. */
  public double difference() {
    return now.buildUp().beforeTax() - before.buildUp().beforeTax();
  }

  /** How much of that belongs to no element. */
  public double ofTheJob() {
    return ofTheJobNow - ofTheJobBefore;
  }
}
