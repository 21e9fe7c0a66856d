package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.order.OrderList.SheetCutting;
import org.lagwright.takeoff.order.OrderList.TubePlan;

/** Makes the order of a takeoff. Equal takeoffs give equal orders, however they are sorted. */
public final class OrderMaker {

  private final OrderPack figures;
  private final MaterialPack materials;

  /**
   * An order with these figures.
   *
   * @param figures of the pack, where given changed by the user
   * @param materials with the stock that is sold
   */
  public OrderMaker(OrderPack figures, MaterialPack materials) {
    this.figures = figures;
    this.materials = materials;
  }

  /** What to buy for elements on lines. */
  public OrderList make(List<LaggedElement> elements) {
    List<LaggedElement> sorted = new ArrayList<>(elements);
    sorted.sort(Comparator.comparing(LaggedElement::key));
    TubeOrder tubes = new TubeOrder(figures, materials);
    SheetOrder sheets = new SheetOrder(figures, materials);
    List<ElementKey> withoutPieces = new ArrayList<>();
    for (LaggedElement lagged : sorted) {
      if (!lagged.making().isMeasured()) {
        withoutPieces.add(lagged.key());
      }
      tubes.add(lagged);
      sheets.add(lagged);
    }
    ItemBook book = new ItemBook();
    List<TubePlan> tubePlans = new ArrayList<>();
    List<SheetCutting> sheetPlans = new ArrayList<>();
    tubes.putOn(book, tubePlans);
    sheets.putOn(book, sheetPlans);
    return new OrderList(book.items(), tubePlans, sheetPlans, withoutPieces);
  }
}
