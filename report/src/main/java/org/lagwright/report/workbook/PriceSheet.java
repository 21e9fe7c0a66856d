package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;
import static org.lagwright.report.workbook.SheetWriter.column;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.lagwright.report.NotPriced;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.price.BuildUp;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.price.PriceRow;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.price.PriceTerms.Profit;
import org.lagwright.takeoff.price.PricedItem;

/** The sheet {@code Price}: the price from its parts, with the cells that it follows from. */
final class PriceSheet {

  static final String NAME = "Price";

  private static final int WIDE = 11;
  private static final int PERCENT = 1;
  private static final int MONEY = 2;
  private static final int ITEM_COLUMN = 6;
  private static final int NET = 7;
  private static final int BEYOND = 8;
  private static final int AMOUNT = 9;

  private final Takeoff takeoff;
  private final String hoursCell;

  /**
   * @param hoursCell reference of the cell that holds all hours
   */
  PriceSheet(Takeoff takeoff, String hoursCell) {
    this.takeoff = takeoff;
    this.hoursCell = hoursCell;
  }

  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(44, 14, 16, 12, 12, 12, 12, 14, 14, 14, 34);
    writer.title("Price");
    Price price = takeoff.price();
    if (price == null) {
      writer.merged(
          "There is no price: no price list is given, and none is invented. Hours stand on the sheet"
              + " Labour, quantities to buy in the order. Give your own list under 'price' in the"
              + " settings.",
          WIDE);
      return;
    }
    writer.merged(
        "In "
            + price.terms().currency()
            + ". Change a marked cell, here or on the sheet Labour, and the price moves. What is paid"
            + " for is what is bought: whole packs.",
        WIDE);
    new Filled(sheet, writer, price, hoursCell, NotPriced.inWords(takeoff)).write();
  }

  /** One sheet with a price on its way. */
  private static final class Filled {
    private final Sheet sheet;
    private final SheetWriter writer;
    private final Price price;
    private final String hoursCell;
    private final String notPriced;
    private final int firstItem;
    private final int lastItem;

    Filled(Sheet sheet, SheetWriter writer, Price price, String hoursCell, String notPriced) {
      this.hoursCell = hoursCell;
      this.notPriced = notPriced;
      this.sheet = sheet;
      this.writer = writer;
      this.price = price;
      this.firstItem = writer.next() + ROWS_ABOVE_ITEMS;
      this.lastItem = firstItem + Math.max(1, price.items().size()) - 1;
    }

    /** Section, headings, fourteen rows, two notes, and section and headings of the items. */
    private static final int ROWS_ABOVE_ITEMS = 21;

    void write() {
      buildUp();
      missing();
      items();
    }

    private BuildUp up() {
      return price.buildUp();
    }

    private PriceTerms terms() {
      return price.terms();
    }

    private void buildUp() {
      writer.section("Build-up", WIDE);
      writer.headings(PERCENT, MONEY, "", "Input", terms().currency());
      int net = money("Materials on the pipes", sum(NET), up().netMaterials());
      int beyond = money("Waste, allowances and rests of packs", sum(BEYOND), up().beyondNet());
      int hours =
          writer.row(
              Entry.text("Hours, from the sheet Labour"),
              Entry.live(hoursCell, up().hours(), Look.TWO_DECIMALS));
      int rate = input("Rate of one hour", terms().labourRatePerH());
      int labour = money("Labour", at(hours, PERCENT) + "*" + at(rate, PERCENT), up().labour());
      int tools =
          percent(
              "Small tools and consumables, % of labour",
              terms().toolsPct(), at(labour, MONEY), up().tools());
      String prime =
          "("
              + at(net, MONEY)
              + "+"
              + at(beyond, MONEY)
              + "+"
              + at(labour, MONEY)
              + "+"
              + at(tools, MONEY)
              + ")";
      int overhead =
          percent("Overhead, % of the above", terms().overheadPct(), prime, up().overhead());
      String cost = "(" + prime + "+" + at(overhead, MONEY) + ")";
      int costRow = total("Cost", cost, up().cost());
      int profit = profit(at(costRow, MONEY));
      int before =
          total(
              "Price without tax", at(costRow, MONEY) + "+" + at(profit, MONEY), up().beforeTax());
      int tax = percent("Tax, %", terms().taxPct(), at(before, MONEY), up().tax());
      total("Price with tax", at(before, MONEY) + "+" + at(tax, MONEY), up().total());
    }

    private int profit(String cost) {
      String word = terms().profit() == Profit.MARGIN ? "margin" : "markup";
      int kind =
          writer.row(
              Entry.text("Profit as markup on cost or margin in the price"),
              Entry.text(word, Look.INPUT_TEXT));
      choice(kind, List.of("markup", "margin"));
      String share = at(kind + 1, PERCENT) + "/100";
      String formula =
          "IF("
              + at(kind, PERCENT)
              + "=\"margin\","
              + cost
              + "/(1-"
              + share
              + ")-"
              + cost
              + ","
              + cost
              + "*"
              + share
              + ")";
      return writer.row(
          Entry.text("Profit, %"),
          Entry.number(terms().profitPct(), Look.INPUT),
          Entry.live(formula, up().profit(), Look.TWO_DECIMALS));
    }

    private void choice(int row, List<String> words) {
      DataValidationHelper helper = sheet.getDataValidationHelper();
      DataValidation choice =
          helper.createValidation(
              helper.createExplicitListConstraint(words.toArray(String[]::new)),
              new CellRangeAddressList(row, row, PERCENT, PERCENT));
      choice.setShowErrorBox(true);
      sheet.addValidationData(choice);
    }

    private int money(String label, String formula, double computed) {
      return writer.row(
          Entry.text(label),
          new Entry.Blank(Look.TEXT),
          Entry.live(formula, computed, Look.TWO_DECIMALS));
    }

    private int total(String label, String formula, double computed) {
      return writer.row(
          Entry.text(label, Look.TOTAL_TEXT),
          new Entry.Blank(Look.TOTAL_TEXT),
          Entry.live(formula, computed, Look.TOTAL_TWO_DECIMALS));
    }

    private int input(String label, double value) {
      return writer.row(Entry.text(label), Entry.number(value, Look.INPUT));
    }

    private int percent(String label, double percent, String of, double computed) {
      String formula = of + "*" + at(writer.next(), PERCENT) + "/100";
      return writer.row(
          Entry.text(label),
          Entry.number(percent, Look.INPUT),
          Entry.live(formula, computed, Look.TWO_DECIMALS));
    }

    private static String at(int row, int column) {
      return cell(row, column);
    }

    private String sum(int column) {
      return "SUM(" + column(column, firstItem, lastItem) + ")";
    }

    /** Says how much of the order has no price, so that nobody takes the total for all of it. */
    private void missing() {
      int without = price.withoutPrice().size();
      String count = "COUNTIF(" + column(ITEM_COLUMN, firstItem, lastItem) + ",\">=0\")";
      String left = price.items().size() + "-" + count;
      String formula =
          "IF("
              + left
              + "=0,\"complete: every item of the order has a price\",\"INCOMPLETE: \"&("
              + left
              + ")&\" items of the order have no price\")";
      String shown =
          without == 0
              ? "complete: every item of the order has a price"
              : "INCOMPLETE: " + without + " items of the order have no price";
      writer.row(new Entry.LiveText(formula, shown, Look.TOTAL_TEXT));
      writer.row(Entry.text(notPriced, Look.TOTAL_TEXT));
    }

    private void items() {
      writer.section("Items of the order", WIDE);
      writer.headings(
          1,
          AMOUNT,
          "Item",
          "Net",
          "Bought",
          "Unit",
          "Packs",
          "Pack holds",
          "Price per unit",
          "Net",
          "Beyond net",
          "Amount",
          "Row of the price list");
      if (writer.next() != firstItem) {
        throw new IllegalStateException("items begin at " + writer.next() + ", not " + firstItem);
      }
      price.items().forEach(this::item);
    }

    private void item(PricedItem priced) {
      OrderItem item = priced.item();
      int row = writer.next();
      String perUnit = cell(row, ITEM_COLUMN);
      String net = cell(row, 1) + "*" + perUnit;
      // packs that are used up leave a rest of rounding
      String rest = "MAX(0," + cell(row, 2) + "-" + cell(row, 1) + ")";
      String beyond = rest + "*" + perUnit;
      PriceRow list = priced.row();
      Unit unit = Unit.ofWord(item.unit());
      writer.row(
          Entry.text(item.id() + "  " + item.description(), Look.WRAPPED),
          writer.in(unit, Entry.number(item.netQuantity(), Look.TWO_DECIMALS)),
          writer.in(unit, Entry.number(item.boughtQuantity(), Look.TWO_DECIMALS)),
          Entry.text(item.unit()),
          Entry.number((double) item.packs(), Look.WHOLE),
          writer.in(unit, Entry.number(item.pack().contents(), Look.PLAIN)),
          list == null
              ? new Entry.Blank(Look.INPUT_MONEY)
              : writer.in(
                  Unit.perWord(item.unit()), Entry.number(priced.perUnit(), Look.INPUT_MONEY)),
          Entry.live(net, priced.net(), Look.TWO_DECIMALS),
          Entry.live(beyond, priced.beyondNet(), Look.TWO_DECIMALS),
          Entry.live(cell(row, NET) + "+" + cell(row, BEYOND), priced.amount(), Look.TWO_DECIMALS),
          Entry.text(list == null ? "NO PRICE" : list.place()));
    }
  }
}
