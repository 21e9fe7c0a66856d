package org.lagwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.order.Cut;
import org.lagwright.takeoff.order.CuttingPlan;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.order.PlacedCut;
import org.lagwright.takeoff.order.SheetPlan;
import org.lagwright.takeoff.order.StockPiece;

/**
 * One cut of a cutting plan, for all stock pieces that are cut alike.
 *
 * @param itemId the item of the order they are bought as
 * @param numbers which tubes, sections, sheets or rolls of that item: {@code 1 to 3}
 * @param times how often the cut is made from each of them
 * @param placed the cut; of tubes without a place
 * @param first what holds for the whole stock piece, on its first row; null on all others
 */
public record CutRow(
    String itemId, String numbers, int times, Placed placed, @Nullable Whole first) {

  /**
   * A cut.
   *
   * @param widthM across the sheet, null for tubes
   * @param lengthM along the stock
   * @param acrossM corner across the sheet, null for tubes
   * @param alongM corner along the sheet, null for tubes
   * @param purpose line and piece
   */
  public record Placed(
      @Nullable Double widthM,
      double lengthM,
      @Nullable Double acrossM,
      @Nullable Double alongM,
      String purpose) {}

  /**
   * What holds for the whole stock piece.
   *
   * @param description the item in words
   * @param pack how one is sold
   * @param usedShare part of it that is used, 0 to 1
   * @param restM what is left at its end, metres
   */
  public record Whole(String description, String pack, double usedShare, double restM) {}

  /**
   * Equal cuts for one element.
   *
   * @param itemId the item of the order they are bought as
   * @param number which tube, section, sheet or roll of that item, as the rows count them
   * @param of how many of them there are
   * @param times how many such cuts are made from it for the element
   */
  public record Own(String itemId, int number, int of, int times, Placed placed) {}

  /** One stock piece with its cuts in order, and the element that each is for. */
  private record Stock(
      List<Placed> cuts, List<Optional<ElementKey>> elements, double usedShare, double restM) {}

  /** All rows, in the order of the items. */
  public static List<CutRow> of(OrderList order) {
    Map<String, OrderItem> items = new LinkedHashMap<>();
    order.items().forEach(item -> items.put(item.id(), item));
    List<CutRow> rows = new ArrayList<>();
    plans(order).forEach((itemId, stocks) -> addRows(rows, item(items, itemId), stocks));
    return rows;
  }

  /** The cuts for one element, in the order of the items. */
  public static List<Own> of(OrderList order, ElementKey element) {
    List<Own> cuts = new ArrayList<>();
    plans(order)
        .forEach(
            (itemId, stocks) -> {
              int number = 0;
              for (List<Stock> alike : alike(stocks, Stock::cuts).values()) {
                for (Stock stock : alike) {
                  number++;
                  addOwn(cuts, itemId, number, stocks.size(), stock, element);
                }
              }
            });
    return cuts;
  }

  private static void addOwn(
      List<Own> cuts, String itemId, int number, int of, Stock stock, ElementKey element) {
    Map<Placed, Integer> own = new LinkedHashMap<>();
    for (int i = 0; i < stock.cuts().size(); i++) {
      if (stock.elements().get(i).filter(element::equals).isPresent()) {
        own.merge(stock.cuts().get(i), 1, Integer::sum);
      }
    }
    own.forEach((placed, times) -> cuts.add(new Own(itemId, number, of, times, placed)));
  }

  /** Stock pieces by item, in the order of the items. */
  private static Map<String, List<Stock>> plans(OrderList order) {
    Map<String, List<Stock>> plans = new LinkedHashMap<>();
    order.tubePlans().forEach(plan -> plans.put(plan.itemId(), tubes(plan.plan())));
    order.sheetPlans().forEach(plan -> plans.put(plan.itemId(), sheets(plan.plan())));
    return plans;
  }

  private static OrderItem item(Map<String, OrderItem> items, String id) {
    return Objects.requireNonNull(items.get(id), id);
  }

  private static List<Stock> tubes(CuttingPlan plan) {
    List<Stock> stocks = new ArrayList<>();
    for (StockPiece piece : plan.pieces()) {
      double usedM = piece.cuts().stream().mapToDouble(Cut::lengthM).sum();
      List<Placed> cuts =
          piece.cuts().stream()
              .map(cut -> new Placed(null, cut.lengthM(), null, null, cut.purpose()))
              .toList();
      List<Optional<ElementKey>> elements =
          piece.cuts().stream().map(cut -> Optional.ofNullable(cut.element())).toList();
      stocks.add(new Stock(cuts, elements, usedM / plan.stock().lengthM(), piece.restM()));
    }
    return stocks;
  }

  private static List<Stock> sheets(SheetPlan plan) {
    List<Stock> stocks = new ArrayList<>();
    for (List<PlacedCut> sheet : plan.sheets()) {
      double usedM2 = sheet.stream().mapToDouble(placed -> placed.cut().areaM2()).sum();
      List<Placed> cuts = sheet.stream().map(CutRow::placed).toList();
      List<Optional<ElementKey>> elements =
          sheet.stream().map(placed -> Optional.ofNullable(placed.cut().element())).toList();
      double usedShare = usedM2 / plan.size().areaM2();
      stocks.add(new Stock(cuts, elements, usedShare, plan.restM(sheet)));
    }
    return stocks;
  }

  private static Placed placed(PlacedCut cut) {
    return new Placed(
        cut.widthM(), cut.lengthM(), cut.acrossM(), cut.alongM(), cut.cut().purpose());
  }

  private static void addRows(List<CutRow> rows, OrderItem item, List<Stock> stocks) {
    int number = 1;
    for (Map.Entry<List<Placed>, List<Stock>> alike : alike(stocks, Stock::cuts).entrySet()) {
      int count = alike.getValue().size();
      String numbers = count == 1 ? "" + number : number + " to " + (number + count - 1);
      Stock one = alike.getValue().get(0);
      Whole whole = new Whole(item.description(), item.pack().name(), one.usedShare(), one.restM());
      for (Map.Entry<Placed, List<Placed>> cut : alike(alike.getKey(), c -> c).entrySet()) {
        rows.add(new CutRow(item.id(), numbers, cut.getValue().size(), cut.getKey(), whole));
        whole = null;
      }
      number += count;
    }
  }

  private static <K, T> Map<K, List<T>> alike(List<T> all, Function<T, K> key) {
    Map<K, List<T>> groups = new LinkedHashMap<>();
    all.forEach(one -> groups.computeIfAbsent(key.apply(one), k -> new ArrayList<>()).add(one));
    return groups;
  }
}
