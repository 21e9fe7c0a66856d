package org.lagwright.takeoff.order;

import java.util.List;
import java.util.Map;
import org.lagwright.ifc.model.ElementKey;

/**
 * What to buy for a takeoff, and how to cut it.
 *
 * @param items in the order of {@link Goods}, then material, bore and thickness
 * @param tubePlans how the tubes and sections are cut, one for each such item
 * @param sheetPlans how the sheets are cut, one for each such item
 * @param withoutPieces elements on lines whose dimensions the model does not give: their insulation
 *     is not in the order
 * @param hangers how many hangers pipes have, by pipe; a fraction where they are spread over a run
 */
public record OrderList(
    List<OrderItem> items,
    List<TubePlan> tubePlans,
    List<SheetCutting> sheetPlans,
    List<ElementKey> withoutPieces,
    Map<ElementKey, Double> hangers) {

  /** Nothing to buy. */
  public static final OrderList EMPTY =
      new OrderList(List.of(), List.of(), List.of(), List.of(), Map.of());

  public OrderList {
    items = List.copyOf(items);
    tubePlans = List.copyOf(tubePlans);
    sheetPlans = List.copyOf(sheetPlans);
    withoutPieces = List.copyOf(withoutPieces);
    hangers = Map.copyOf(hangers);
  }

  /** Stock pieces more than the lower bounds of all plans together. */
  public int gap() {
    return tubePlans.stream().mapToInt(p -> p.plan().gap()).sum()
        + sheetPlans.stream().mapToInt(p -> p.plan().gap()).sum();
  }

  /**
   * The cutting plan of one item.
   *
   * @param itemId id of the item
   */
  public record TubePlan(String itemId, CuttingPlan plan) {}

  /**
   * The cutting plan of one item of sheet.
   *
   * @param itemId id of the item
   */
  public record SheetCutting(String itemId, SheetPlan plan) {}
}
