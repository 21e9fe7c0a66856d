package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.report.FindingGroup;
import org.lagwright.report.NotPriced;
import org.lagwright.report.ServiceTotal;
import org.lagwright.report.Words;
import org.lagwright.report.app.TakeoffJob.Done;
import org.lagwright.takeoff.Question;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.Totals;
import org.lagwright.takeoff.labour.TradeStep;
import org.lagwright.takeoff.order.Goods;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.price.Price;

/** What the user reads after a takeoff. */
final class SummaryText {

  /** More would push the rest off the screen. */
  private static final int MOST_QUESTIONS = 12;

  private final Takeoff takeoff;
  private final List<String> lines = new ArrayList<>();

  private SummaryText(Takeoff takeoff) {
    this.takeoff = takeoff;
  }

  /** The summary, line by line. */
  static List<String> of(Done done) {
    SummaryText text = new SummaryText(done.takeoff());
    text.head();
    text.account();
    text.services();
    text.order();
    text.estimate();
    text.questions();
    text.findings();
    text.enriched(done.enriched());
    text.files(done.files());
    return text.lines;
  }

  private void head() {
    lines.add(TextTable.shown(takeoff.settings().project()));
    for (ModelFile model : takeoff.models()) {
      lines.add(
          TextTable.shown(
                  "  "
                      + model.name()
                      + ", "
                      + model.schema()
                      + ", SHA-256 "
                      + Words.shortSha(model))
              + " ...");
    }
    lines.add(
        "  energy rule for pipes: "
            + takeoff.settings().energyRule()
            + "; air, media and data packs: sheet Basis");
  }

  private void account() {
    Totals totals = takeoff.totals();
    section("Elements");
    TextTable table = new TextTable("  ", "lr");
    table.row("read", String.valueOf(totals.read()));
    table.row("on takeoff lines", String.valueOf(totals.onLines()));
    table.row("left out, each with a finding", String.valueOf(totals.leftOut()));
    table.row("out of scope, each with a reason", String.valueOf(totals.outOfScope()));
    lines.addAll(table.lines());
  }

  private void services() {
    section("Totals by service");
    List<ServiceTotal> totals = ServiceTotal.of(takeoff.lines());
    TextTable table = new TextTable("  ", "lrrrr");
    table.row("", "length m", "pieces", "outer area m2", "volume m3");
    totals.forEach(total -> service(table, total));
    service(table, ServiceTotal.sum("all", totals));
    lines.addAll(table.lines());
  }

  private static void service(TextTable table, ServiceTotal total) {
    table.row(
        total.service(),
        decimals(2, total.lengthM()),
        decimals(0, total.pieces()),
        decimals(2, total.outerAreaM2()),
        decimals(3, total.volumeM3()));
  }

  private void order() {
    OrderList order = takeoff.order();
    if (order.items().isEmpty()) {
      return;
    }
    section("Order");
    TextTable table = new TextTable("  ", "lrrrrl");
    table.row("", "items", "packs", "net", "waste", "unit");
    Map<Goods, List<OrderItem>> byGoods =
        order.items().stream()
            .collect(Collectors.groupingBy(OrderItem::goods, TreeMap::new, Collectors.toList()));
    byGoods.forEach(
        (goods, items) ->
            table.row(
                goods.words(),
                String.valueOf(items.size()),
                String.valueOf(items.stream().mapToInt(OrderItem::packs).sum()),
                decimals(2, items.stream().mapToDouble(OrderItem::netQuantity).sum()),
                decimals(2, items.stream().mapToDouble(OrderItem::wasteQuantity).sum()),
                items.get(0).unit()));
    lines.addAll(table.lines());
    lines.add(
        "  stock pieces beyond the least possible: "
            + order.gap()
            + "; elements not ordered because they are cut on site: "
            + order.withoutPieces().size());
    lines.add("  each item stands in takeoff.xlsx, sheet Order; how to cut, in Cutting plan");
  }

  private void estimate() {
    section("Labour and price");
    TextTable table = new TextTable("  ", "lr");
    for (TradeStep step : TradeStep.values()) {
      table.row("hours: " + step.words(), decimals(1, takeoff.labour().hours(step)));
    }
    table.row("hours, all", decimals(1, takeoff.labour().hours()));
    Price price = takeoff.price();
    if (price != null) {
      String currency = ", " + TextTable.shown(price.terms().currency());
      table.row("materials" + currency, decimals(2, price.buildUp().materials()));
      table.row("labour" + currency, decimals(2, price.buildUp().labour()));
      table.row("price without tax" + currency, decimals(2, price.buildUp().beforeTax()));
      table.row("price with tax" + currency, decimals(2, price.buildUp().total()));
    }
    lines.addAll(table.lines());
    lines.add(priceInWords(price));
    if (price != null) {
      lines.add("  " + NotPriced.inWords(takeoff));
    }
    lines.add(
        "  norms are unverified where the sheet Labour says so: replace them by your records");
  }

  private static String priceInWords(@Nullable Price price) {
    if (price == null) {
      return "  no price: no price list is given, key 'price' in the settings";
    }
    int without = price.withoutPrice().size();
    return without == 0
        ? "  every item of the order has a price"
        : "  INCOMPLETE: " + without + " items of the order have no price, finding PRICE_MISSING";
  }

  private void questions() {
    if (takeoff.questions().isEmpty()) {
      return;
    }
    section("To decide before pricing");
    TextTable table = new TextTable("  ", "rrll").wrapped();
    table.row("pieces", "length m", "what", "question");
    List<Question> questions = takeoff.questions();
    for (Question q : questions.subList(0, Math.min(MOST_QUESTIONS, questions.size()))) {
      table.row(
          String.valueOf(q.pieces()),
          q.lengthM() > 0 ? decimals(2, q.lengthM()) : "",
          q.what() + ", " + q.size(),
          TextTable.shown(q.inFull()));
    }
    lines.addAll(table.lines());
    if (questions.size() > MOST_QUESTIONS) {
      int more = questions.size() - MOST_QUESTIONS;
      lines.add("  and " + more + " more in takeoff.xlsx, sheet Summary");
    }
  }

  private void findings() {
    if (takeoff.findings().isEmpty()) {
      return;
    }
    section("Findings");
    TextTable table = new TextTable("  ", "lrll");
    table.row("severity", "count", "code", "effect on quantities");
    for (FindingGroup group : FindingGroup.of(takeoff.findings())) {
      table.row(
          Words.severity(group.severity()),
          String.valueOf(group.count()),
          group.code(),
          Words.effect(group.effect()));
    }
    lines.addAll(table.lines());
    lines.add("  each one stands in takeoff.xlsx, sheet Findings");
  }

  private void enriched(List<String> models) {
    if (!models.isEmpty()) {
      section("Enriched models");
      models.forEach(model -> lines.add(TextTable.shown("  " + model)));
    }
  }

  private void files(List<Path> files) {
    section("Written");
    files.forEach(file -> lines.add("  " + file));
    lines.add("");
    lines.add(
        "lagwright explain 'GLOBALID' MODEL, with the same --settings, shows how each number came about.");
  }

  private void section(String title) {
    lines.add("");
    lines.add(title);
  }

  private static String decimals(int digits, double number) {
    return String.format(Locale.ROOT, "%." + digits + "f", number);
  }
}
