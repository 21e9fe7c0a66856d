package org.lagwright.takeoff.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.order.NetShares;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.price.BuildUp;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.price.PricedItem;

/**
 * The price without tax by element: net materials, labour, tools, and its share of overhead and
 * profit. Waste, allowances and rests of packs belong to no element but to the job as a whole, so
 * that an element that did not change costs what it cost. Tubes, sections and sheets go by the
 * pieces of each element; all other goods by its outer surface, common practice, no source.
 */
public final class ElementMoney {

  private final Map<ElementKey, Double> byElement = new HashMap<>();
  private final Takeoff takeoff;
  private double ofTheJob;

  private ElementMoney(Takeoff takeoff) {
    this.takeoff = takeoff;
  }

  /** Of one takeoff; nothing where it has no price. */
  public static ElementMoney of(Takeoff takeoff) {
    ElementMoney money = new ElementMoney(takeoff);
    Price price = takeoff.price();
    if (price != null && price.buildUp().prime() > 0) {
      money.share(price);
    }
    return money;
  }

  /** Money of one element, without tax. */
  double of(@Nullable TakenElement taken) {
    return taken == null ? 0 : of(taken.element().key());
  }

  /** Money of one element, without tax; 0 where it is on no line. */
  public double of(ElementKey element) {
    return byElement.getOrDefault(element, 0.0);
  }

  /** Money that belongs to no element, without tax. */
  double ofTheJob() {
    return ofTheJob;
  }

  private void share(Price price) {
    BuildUp up = price.buildUp();
    double onTop = up.beforeTax() / up.prime();
    double perHour = up.terms().labourRatePerH() * (1 + up.terms().toolsPct() / 100);
    Map<ElementKey, TakenElement> elements = new HashMap<>();
    for (TakenElement taken : takeoff.elements()) {
      elements.put(taken.element().key(), taken);
      add(taken.element().key(), taken.labourHours() * perHour * onTop);
    }
    price.items().forEach(item -> share(item, elements, onTop));
    double shared = byElement.values().stream().mapToDouble(Double::doubleValue).sum();
    ofTheJob = up.beforeTax() - shared;
  }

  private void share(PricedItem priced, Map<ElementKey, TakenElement> elements, double onTop) {
    List<ElementKey> keys = priced.item().elements();
    double[] weights =
        keys.stream().mapToDouble(key -> weight(priced.item(), elements.get(key))).toArray();
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      double share = sum > 0 ? weights[i] / sum : 1.0 / weights.length;
      add(keys.get(i), priced.net() * share * onTop);
    }
  }

  private double weight(OrderItem item, @Nullable TakenElement taken) {
    Making making = taken == null ? null : taken.making();
    if (taken == null || making == null) {
      return 0;
    }
    return switch (item.goods()) {
      case TUBE, SECTION, SHEET ->
          NetShares.of(item, making, takeoff.settings().packs().materials());
      default -> taken.quantities().outerAreaM2();
    };
  }

  private void add(ElementKey key, double money) {
    if (money != 0) {
      byElement.merge(key, money, Double::sum);
    }
  }
}
