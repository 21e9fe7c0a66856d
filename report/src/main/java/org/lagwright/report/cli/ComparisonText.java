package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.takeoff.compare.Amount;
import org.lagwright.takeoff.compare.Comparison;
import org.lagwright.takeoff.compare.PriceChange;

/** What the user reads after {@code compare}. */
final class ComparisonText {

  private static final String NO_PRICE =
      "No difference in money: no price list is given, key 'price' in the settings.";

  private ComparisonText() {}

  static List<String> of(Comparison comparison, List<Path> files) {
    List<String> lines = new ArrayList<>();
    lines.add("Elements");
    TextTable counts = new TextTable("  ", "lr");
    comparison
        .counts()
        .forEach((change, count) -> counts.row(change.label(), String.valueOf(count)));
    int same = comparison.changes().size() - comparison.changed().size();
    counts.row("as they were", String.valueOf(same));
    lines.addAll(counts.lines());
    lines.add("");
    lines.add("Difference by service");
    PriceChange price = comparison.price();
    String currency = price == null ? "" : price.now().terms().currency();
    TextTable services = new TextTable("  ", "lrrrrrr");
    services.row("", "length m", "pieces", "outer area m2", "volume m3", "hours", currency);
    comparison
        .byService()
        .forEach((name, a) -> row(services, name, a.now().minus(a.before()), price != null));
    row(services, "all", comparison.difference(), price != null);
    lines.addAll(services.lines());
    lines.add("");
    lines.addAll(price == null ? List.of(NO_PRICE) : price(price, comparison.difference().money()));
    lines.add("");
    files.forEach(file -> lines.add("written: " + file));
    return lines;
  }

  private static List<String> price(PriceChange price, double ofElements) {
    TextTable table = new TextTable("  ", "lr");
    table.row("by elements", signed(2, ofElements));
    table.row("waste, allowances and rests of packs of the job", signed(2, price.ofTheJob()));
    table.row("price without tax", signed(2, price.difference()));
    table.row(
        "price with tax",
        signed(2, price.now().buildUp().total() - price.before().buildUp().total()));
    List<String> lines = new ArrayList<>();
    lines.add("Difference of the price, " + price.now().terms().currency());
    lines.addAll(table.lines());
    return lines;
  }

  private static void row(TextTable table, String name, Amount difference, boolean priced) {
    table.row(
        name,
        signed(2, difference.lengthM()),
        signed(0, difference.pieces()),
        signed(2, difference.outerAreaM2()),
        signed(3, difference.volumeM3()),
        signed(2, difference.hours()),
        priced ? signed(2, difference.money()) : "");
  }

  /** With its sign; what rounds to nothing has none. */
  private static String signed(int digits, double number) {
    String text = String.format(Locale.ROOT, "%+." + digits + "f", number);
    return text.chars().anyMatch(c -> c >= '1' && c <= '9') ? text : text.substring(1);
  }
}
