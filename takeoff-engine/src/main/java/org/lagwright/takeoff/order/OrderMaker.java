package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.order.OrderList.SheetCutting;
import org.lagwright.takeoff.order.OrderList.TubePlan;
import org.lagwright.takeoff.pack.PackInfo;

/** Makes the order of a takeoff. Equal takeoffs give equal orders, however they are sorted. */
public final class OrderMaker {

  private final OrderPack figures;
  private final HangerPack hangers = HangerPack.bundled();
  private final MaterialPack materials;
  private final List<JacketRule> jackets;
  private final String hangerTable;

  /**
   * An order with these choices.
   *
   * @param changed figures of the pack that the user changed, by name
   * @param jackets where a jacket is asked for
   * @param hangerTable id of the table of hanger spacing
   * @param materials with the stock that is sold
   */
  public OrderMaker(
      Map<String, Double> changed,
      List<JacketRule> jackets,
      String hangerTable,
      MaterialPack materials) {
    this.figures = OrderPack.bundled().with(changed);
    this.jackets = List.copyOf(jackets);
    this.hangerTable = hangerTable;
    this.materials = materials;
  }

  /** True where the settings ask for a jacket. */
  public boolean wantsJacket(LaggedElement element) {
    return JacketOrder.find(element, jackets).isPresent();
  }

  /** The packs used. */
  public List<PackInfo> packs() {
    return List.of(figures.info(), hangers.info());
  }

  /**
   * What to buy for elements on lines.
   *
   * @param all every element read, for hangers and for what runs on into what
   * @param underBoxes elements that lie under the box of another one
   */
  public OrderList make(
      List<LaggedElement> elements, List<MepElement> all, Set<ElementKey> underBoxes) {
    List<LaggedElement> sorted = new ArrayList<>(elements);
    sorted.sort(Comparator.comparing(LaggedElement::key));
    TubeOrder tubes = new TubeOrder(figures, materials);
    SheetOrder sheets = new SheetOrder(figures, materials);
    sorted.forEach(tubes::add);
    sorted.forEach(sheets::add);
    ItemBook book = new ItemBook();
    SoldSizes sold = new SoldSizes(materials);
    List<TubePlan> tubePlans = new ArrayList<>();
    List<SheetCutting> sheetPlans = new ArrayList<>();
    tubes.putOn(book, tubePlans, sold);
    sheets.putOn(book, sheetPlans, sold);
    Hangers counted = new Hangers(figures, hangers, hangerTable, sorted, all);
    new InsertOrder(figures, hangers, hangerTable, counted).putOn(book, sorted);
    Set<ElementKey> insulated = new HashSet<>(underBoxes);
    sorted.forEach(element -> insulated.add(element.key()));
    putSupplies(book, sorted, new Supplies(figures, materials, sold, sheets, insulated));
    putJackets(book, sorted);
    return new OrderList(
        book.items(), tubePlans, sheetPlans, withoutPieces(sorted), counted.numbers());
  }

  private static void putSupplies(ItemBook book, List<LaggedElement> sorted, Supplies supplies) {
    sorted.forEach(supplies::add);
    supplies.putOn(book);
  }

  private void putJackets(ItemBook book, List<LaggedElement> sorted) {
    JacketOrder jacketOrder = new JacketOrder(figures, jackets);
    sorted.forEach(jacketOrder::add);
    jacketOrder.putOn(book);
  }

  private static List<ElementKey> withoutPieces(List<LaggedElement> sorted) {
    return sorted.stream()
        .filter(element -> !element.making().isMeasured())
        .map(LaggedElement::key)
        .toList();
  }
}
