package org.lagwright.takeoff;

import java.util.List;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.order.LaggedElement;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.order.OrderMaker;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.settings.OrderSettings;

/**
 * What a part of a takeoff needs, reckoned as if it were bought and cut by itself. Parts together
 * need a little more than the order of the whole, which shares stock pieces and packs.
 */
public final class PartOrder {

  private final OrderMaker orders;
  private final LaggedElements lagged = new LaggedElements(ServicePack.bundled());
  private final List<MepElement> all;
  private final Set<ElementKey> underBoxes;

  /** Prepares for parts of one takeoff. */
  public PartOrder(Takeoff takeoff) {
    OrderSettings order = takeoff.settings().order();
    this.orders =
        new OrderMaker(
            order.changedFigures(),
            order.jacketRules(),
            order.hangerTable(),
            takeoff.settings().packs().materials());
    this.all = takeoff.elements().stream().map(TakenElement::element).toList();
    this.underBoxes = SharedBoxes.under(takeoff.elements());
  }

  /** What these elements need; those that are on no line need nothing. */
  public OrderList of(List<TakenElement> part) {
    List<LaggedElement> elements =
        part.stream().flatMap(taken -> lagged.find(taken).stream()).toList();
    return orders.make(elements, all, underBoxes);
  }
}
