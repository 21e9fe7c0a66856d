package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.order.Goods;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;

/**
 * The sheet {@code Order}: one row an item. Gross, packs, bought and left over are formulas, so
 * that a changed waste, allowance or pack moves them.
 */
final class OrderSheet {

  static final String NAME = "Order";
  static final String ITEM = "Item";
  static final String GOODS = "Goods";
  static final String UNIT = "Unit";
  static final String NET = "Net";
  static final String WASTE = "Waste";
  static final String ALLOWANCE = "Allowance";
  static final String GROSS = "Gross";
  static final String CONTENTS = "Contents";
  static final String PLANNED = "By cutting plan";
  static final String BOUND = "At least";
  static final String PACKS = "Packs";
  static final String BOUGHT = "Bought";
  static final String SPARE = "Left over";

  private final Takeoff takeoff;
  private final Table<OrderItem> table;
  private final Map<String, Integer> rowOf = new HashMap<>();
  private final Map<String, Integer> planned = new HashMap<>();
  private final Map<String, Integer> bound = new HashMap<>();
  private final Map<ElementKey, Integer> lineOf = new HashMap<>();
  private final List<Goods> summed;

  OrderSheet(Takeoff takeoff) {
    this.takeoff = takeoff;
    OrderList order = takeoff.order();
    for (int i = 0; i < takeoff.lines().size(); i++) {
      int position = i;
      takeoff.lines().get(i).elements().forEach(element -> lineOf.put(element, position));
    }
    order
        .tubePlans()
        .forEach(plan -> put(plan.itemId(), plan.plan().pieces().size(), plan.plan().lowerBound()));
    order
        .sheetPlans()
        .forEach(plan -> put(plan.itemId(), plan.plan().sheets().size(), plan.plan().lowerBound()));
    summed =
        List.copyOf(
            order.items().stream()
                .map(OrderItem::goods)
                .filter(goods -> goods.compareTo(Goods.SHEET) <= 0)
                .collect(Collectors.toCollection(TreeSet::new)));
    int headingRow = summed.size() + 4;
    for (int i = 0; i < order.items().size(); i++) {
      rowOf.put(order.items().get(i).id(), headingRow + 1 + i);
    }
    table = new Table<>(NAME, headingRow, columns(), order.items());
  }

  private void put(String itemId, int pieces, int lowerBound) {
    planned.put(itemId, pieces);
    bound.put(itemId, lowerBound);
  }

  /** The rows, for formulas on other sheets. */
  Table<OrderItem> table() {
    return table;
  }

  private List<Column<OrderItem>> columns() {
    return List.of(
        Column.text(ITEM, 8, OrderItem::id),
        Column.text(GOODS, 20, item -> item.goods().words()),
        Column.wrapped("Description", 30, OrderItem::description),
        Column.numbers(PACKS, 7, this::packs),
        Column.text("Sold as", 18, item -> item.pack().name()),
        Column.text(UNIT, 6, OrderItem::unit),
        Column.number(NET, 9, Look.TWO_DECIMALS, OrderItem::netQuantity).in(OrderSheet::unit),
        Column.number(WASTE, 9, Look.TWO_DECIMALS, OrderItem::wasteQuantity).in(OrderSheet::unit),
        Column.number(ALLOWANCE, 10, Look.TWO_DECIMALS, OrderItem::allowanceQuantity)
            .in(OrderSheet::unit),
        Column.numbers(GROSS, 9, this::gross).in(OrderSheet::unit),
        Column.number(CONTENTS, 10, Look.PLAIN, (OrderItem item) -> item.pack().contents())
            .in(OrderSheet::unit),
        Column.numbers(BOUGHT, 9, this::bought).in(OrderSheet::unit),
        Column.numbers(SPARE, 9, this::spare).in(OrderSheet::unit),
        Column.number(PLANNED, 11, Look.WHOLE_OR_DASH, item -> count(planned, item)),
        Column.number(BOUND, 8, Look.WHOLE_OR_DASH, item -> count(bound, item)),
        Column.numbers("Gap", 6, this::gap),
        Column.wrapped("For lines", 22, this::lines),
        Column.wrapped("Rule", 38, OrderItem::rule),
        Column.wrapped("Source", 30, OrderItem::source),
        Column.wrapped("Status", 24, item -> item.status().shown()));
  }

  private static Unit unit(OrderItem item) {
    return Unit.ofWord(item.unit());
  }

  private static double count(Map<String, Integer> counts, OrderItem item) {
    return counts.getOrDefault(item.id(), 0);
  }

  private String at(OrderItem item, String heading) {
    Integer row = rowOf.get(item.id());
    if (row == null) {
      throw new IllegalArgumentException("no row of " + item.id());
    }
    return cell(row, table.position(heading));
  }

  private Entry gross(OrderItem item) {
    String formula = at(item, NET) + "+" + at(item, WASTE) + "+" + at(item, ALLOWANCE);
    return Entry.live(formula, item.grossQuantity(), Look.TWO_DECIMALS);
  }

  private Entry gap(OrderItem item) {
    double gap = count(planned, item) - count(bound, item);
    return Entry.live(at(item, PLANNED) + "-" + at(item, BOUND), gap, Look.WHOLE_OR_DASH);
  }

  private Entry packs(OrderItem item) {
    String filled = "ROUNDUP(ROUND(" + at(item, GROSS) + "/" + at(item, CONTENTS) + ",9),0)";
    String formula = "MAX(" + at(item, PLANNED) + "," + filled + ")";
    return Entry.live(formula, item.packs(), Look.WHOLE);
  }

  private Entry bought(OrderItem item) {
    String formula = at(item, PACKS) + "*" + at(item, CONTENTS);
    return Entry.live(formula, item.boughtQuantity(), Look.TWO_DECIMALS);
  }

  private Entry spare(OrderItem item) {
    String formula = "MAX(0," + at(item, BOUGHT) + "-" + at(item, GROSS) + ")";
    return Entry.live(formula, item.spareQuantity(), Look.TWO_DECIMALS);
  }

  /** Lines one after the other as a range: {@code L001-L004 L009}. */
  private String lines(OrderItem item) {
    TreeSet<Integer> positions = new TreeSet<>();
    for (ElementKey element : item.elements()) {
      Integer position = lineOf.get(element);
      if (position != null) {
        positions.add(position);
      }
    }
    List<String> ranges = new ArrayList<>();
    for (int position : positions) {
      if (!positions.contains(position - 1)) {
        int last = position;
        while (positions.contains(last + 1)) {
          last++;
        }
        String first = takeoff.lines().get(position).id();
        ranges.add(last == position ? first : first + "-" + takeoff.lines().get(last).id());
      }
    }
    return String.join(" ", ranges);
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Order");
    writer.note(
        "Gross = net + waste of the cutting plan + allowance of the settings. Left over is usable."
            + " 'At least' is what no plan can do with less than; a gap of 0 is proven best.");
    writer.note(withoutPieces());
    if (table.rows().isEmpty()) {
      writer.note("There is nothing to buy.");
      return;
    }
    writer.above(table);
    summed.forEach(goods -> total(writer, goods));
    table.writeHeadings(sheet, styles);
  }

  private String withoutPieces() {
    int count = takeoff.order().withoutPieces().size();
    return count == 0
        ? "The insulation of every element on a line is in this order."
        : count
            + (count == 1 ? " element on a line is" : " elements on lines are")
            + " not in this order: the model does not give the dimensions; cut on site."
            + " They stand in takeoff.json, orderWithoutPieces.";
  }

  private void total(SheetWriter writer, Goods goods) {
    Entry[] row = new Entry[table.position(SPARE) + 1];
    for (int i = 0; i < row.length; i++) {
      row[i] = new Entry.Blank(Look.TOTAL_TEXT);
    }
    row[0] = Entry.text("All", Look.TOTAL_TEXT);
    row[table.position(GOODS)] = Entry.text(goods.words(), Look.TOTAL_TEXT);
    row[table.position(UNIT)] = Entry.text(goods == Goods.SHEET ? "m2" : "m", Look.TOTAL_TEXT);
    String goodsCell = cell(writer.next(), table.position(GOODS));
    row[table.position(NET)] = sum(writer, goods, goodsCell, NET, OrderItem::netQuantity);
    row[table.position(WASTE)] = sum(writer, goods, goodsCell, WASTE, OrderItem::wasteQuantity);
    row[table.position(ALLOWANCE)] =
        sum(writer, goods, goodsCell, ALLOWANCE, OrderItem::allowanceQuantity);
    row[table.position(GROSS)] = sum(writer, goods, goodsCell, GROSS, OrderItem::grossQuantity);
    row[table.position(BOUGHT)] = sum(writer, goods, goodsCell, BOUGHT, OrderItem::boughtQuantity);
    row[table.position(SPARE)] = sum(writer, goods, goodsCell, SPARE, OrderItem::spareQuantity);
    writer.row(row);
  }

  private Entry sum(
      SheetWriter writer,
      Goods goods,
      String goodsCell,
      String heading,
      ToDoubleFunction<OrderItem> value) {
    double sum =
        table.rows().stream().filter(item -> item.goods() == goods).mapToDouble(value).sum();
    String formula =
        "SUMIFS(" + table.range(heading) + "," + table.range(GOODS) + "," + goodsCell + ")";
    Unit unit = goods == Goods.SHEET ? Unit.SQUARE_METRE : Unit.METRE;
    return writer.in(unit, Entry.live(formula, sum, Look.TOTAL_TWO_DECIMALS));
  }
}
