package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.takeoff.compare.Amount;
import org.lagwright.takeoff.compare.Comparison;
import org.lagwright.takeoff.compare.PriceChange;
import org.lagwright.takeoff.price.BuildUp;

/** The sheet {@code Summary} of a comparison: counts, amounts by service, and the price. */
final class DifferenceSheet {

  static final String NAME = "Summary";

  private static final int FIGURES_OF_ONE = 3;
  private static final int PRICE_COLUMNS = 4;

  /** Differences below this are rounding. */
  private static final double CENT = 0.005;

  private final Comparison comparison;
  private final String before;
  private final String now;
  private final ChangesSheet changes;
  private final List<Figure> figures;

  /** A figure of the amounts. */
  private record Figure(String what, ToDoubleFunction<Amount> of, Look look) {}

  DifferenceSheet(Comparison comparison, String before, String now, ChangesSheet changes) {
    this.comparison = comparison;
    this.before = before;
    this.now = now;
    this.changes = changes;
    figures = new ArrayList<>();
    figures.add(new Figure("length m", Amount::lengthM, Look.TWO_DECIMALS));
    figures.add(new Figure("pieces", Amount::pieces, Look.WHOLE_OR_DASH));
    figures.add(new Figure("area m2", Amount::outerAreaM2, Look.TWO_DECIMALS));
    figures.add(new Figure("hours", Amount::hours, Look.TWO_DECIMALS));
    PriceChange price = comparison.price();
    if (price != null) {
      figures.add(new Figure(price.now().terms().currency(), Amount::money, Look.TWO_DECIMALS));
    }
  }

  private int columns() {
    return 1 + FIGURES_OF_ONE * figures.size();
  }

  /** Writes the sheet. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Comparison of two revisions");
    writer.note("From " + before + " to " + now + ", taken off with the same settings.");
    int[] widths = new int[columns()];
    Arrays.fill(widths, 12);
    widths[0] = 46;
    writer.widths(widths);
    counts(writer);
    services(writer);
    PriceChange price = comparison.price();
    if (price == null) {
      writer.section("Price", PRICE_COLUMNS);
      writer.row(
          Entry.text("There is no price: no price list is given under 'price' in the settings."));
    } else {
      price(writer, price);
    }
  }

  /** The amounts by service as a table of its own. */
  Table<Map.Entry<String, Comparison.Amounts>> services() {
    List<Column<Map.Entry<String, Comparison.Amounts>>> columns = new ArrayList<>();
    columns.add(Column.text("Service", 46, Map.Entry::getKey));
    for (Figure figure : figures) {
      ToDoubleFunction<Comparison.Amounts> was = a -> figure.of().applyAsDouble(a.before());
      ToDoubleFunction<Comparison.Amounts> is = a -> figure.of().applyAsDouble(a.now());
      columns.add(amount(figure, " before", was));
      columns.add(amount(figure, " now", is));
      columns.add(amount(figure, " +/-", a -> is.applyAsDouble(a) - was.applyAsDouble(a)));
    }
    return new Table<>("Services", 0, columns, List.copyOf(comparison.byService().entrySet()));
  }

  private static Column<Map.Entry<String, Comparison.Amounts>> amount(
      Figure figure, String which, ToDoubleFunction<Comparison.Amounts> amount) {
    return Column.number(
        figure.what() + which, 12, figure.look(), e -> amount.applyAsDouble(e.getValue()));
  }

  private void counts(SheetWriter writer) {
    writer.section("Elements", 2);
    comparison.counts().forEach((change, count) -> counted(writer, change.label(), count));
    int same = comparison.changes().size() - comparison.changed().size();
    counted(writer, "as they were", same);
    writer.note("One element may have changed in several ways.");
  }

  private static void counted(SheetWriter writer, String label, int count) {
    writer.row(Entry.text(label), Entry.number((double) count, Look.WHOLE));
  }

  private void services(SheetWriter writer) {
    writer.section("Amounts by service", columns());
    List<String> headings = new ArrayList<>(List.of("Service"));
    for (Figure figure : figures) {
      headings.addAll(
          List.of(figure.what() + " before", figure.what() + " now", figure.what() + " +/-"));
    }
    writer.headings(1, columns() - 1, headings.toArray(String[]::new));
    int first = writer.next();
    Map<String, Comparison.Amounts> services = comparison.byService();
    services.forEach((name, amounts) -> writer.row(row(writer.next(), name, amounts)));
    if (!services.isEmpty()) {
      writer.row(total(first, writer.next() - 1, services));
    }
    if (comparison.price() != null) {
      writer.note(
          "Money by service is without tax and without what belongs to no element: waste,"
              + " allowances and rests of packs, below.");
    }
  }

  private Entry[] row(int row, String name, Comparison.Amounts amounts) {
    List<Entry> entries = new ArrayList<>(List.of(Entry.text(name)));
    for (Figure figure : figures) {
      double was = figure.of().applyAsDouble(amounts.before());
      double is = figure.of().applyAsDouble(amounts.now());
      String from = cell(row, entries.size());
      String to = cell(row, entries.size() + 1);
      entries.add(Entry.number(was, figure.look()));
      entries.add(Entry.number(is, figure.look()));
      entries.add(Entry.live(to + "-" + from, is - was, figure.look()));
    }
    return entries.toArray(Entry[]::new);
  }

  private Entry[] total(int first, int last, Map<String, Comparison.Amounts> services) {
    Comparison.Amounts all =
        services.values().stream()
            .reduce(new Comparison.Amounts(Amount.NONE, Amount.NONE), Comparison.Amounts::plus);
    List<Entry> entries = new ArrayList<>(List.of(Entry.text("all", Look.TOTAL_TEXT)));
    for (Figure figure : figures) {
      boolean whole = figure.look() == Look.WHOLE_OR_DASH;
      Look look = whole ? Look.TOTAL_WHOLE : Look.TOTAL_TWO_DECIMALS;
      double was = figure.of().applyAsDouble(all.before());
      double is = figure.of().applyAsDouble(all.now());
      for (double value : new double[] {was, is, is - was}) {
        String cells = SheetWriter.column(entries.size(), first, last);
        entries.add(Entry.live("SUM(" + cells + ")", value, look));
      }
    }
    return entries.toArray(Entry[]::new);
  }

  private void price(SheetWriter writer, PriceChange price) {
    String currency = price.now().terms().currency();
    writer.section("Price", PRICE_COLUMNS);
    writer.headings(1, 3, "In " + currency, "before", "now", "+/-");
    part(writer, "Materials on the pipes", price, BuildUp::netMaterials);
    part(writer, "Waste, allowances and rests of packs", price, BuildUp::beyondNet);
    part(writer, "Labour", price, BuildUp::labour);
    part(writer, "Small tools and consumables", price, BuildUp::tools);
    part(writer, "Overhead", price, BuildUp::overhead);
    part(writer, "Profit", price, BuildUp::profit);
    int last = writer.next() - 1;
    int without = sum(writer, "Price without tax", last - 5, last, price, BuildUp::beforeTax);
    part(writer, "Tax", price, BuildUp::tax);
    sum(writer, "Price with tax", without, without + 1, price, BuildUp::total);
    where(writer, price, without);
  }

  private static void part(
      SheetWriter writer, String label, PriceChange price, ToDoubleFunction<BuildUp> part) {
    double was = part.applyAsDouble(price.before().buildUp());
    double is = part.applyAsDouble(price.now().buildUp());
    writer.row(
        Entry.text(label),
        Entry.number(was, Look.TWO_DECIMALS),
        Entry.number(is, Look.TWO_DECIMALS),
        Entry.live(
            cell(writer.next(), 2) + "-" + cell(writer.next(), 1), is - was, Look.TWO_DECIMALS));
  }

  private static int sum(
      SheetWriter writer,
      String label,
      int first,
      int last,
      PriceChange price,
      ToDoubleFunction<BuildUp> part) {
    double was = part.applyAsDouble(price.before().buildUp());
    double is = part.applyAsDouble(price.now().buildUp());
    List<Entry> entries = new ArrayList<>(List.of(Entry.text(label, Look.TOTAL_TEXT)));
    for (double value : new double[] {was, is, is - was}) {
      String cells = SheetWriter.column(entries.size(), first, last);
      entries.add(Entry.live("SUM(" + cells + ")", value, Look.TOTAL_TWO_DECIMALS));
    }
    return writer.row(entries.toArray(Entry[]::new));
  }

  /** Where the difference without tax comes from, and the proof that it is all of it. */
  private void where(SheetWriter writer, PriceChange price, int without) {
    writer.section("Where the difference without tax comes from", PRICE_COLUMNS);
    double unchanged = comparison.differenceOfUnchanged().money();
    double listed = comparison.difference().money() - unchanged;
    int first = writer.next();
    from(writer, "Elements that changed", Entry.live(sumOfChanges(), listed, Look.TWO_DECIMALS));
    from(
        writer,
        "Elements as they were: goods shared by surface, rounding",
        Entry.number(unchanged, Look.TWO_DECIMALS));
    from(
        writer,
        "The job: waste, allowances and rests of packs, with overhead and profit",
        Entry.number(price.ofTheJob(), Look.TWO_DECIMALS));
    String all = "SUM(" + SheetWriter.column(3, first, writer.next() - 1) + ")";
    from(writer, "All", Entry.live(all, price.difference(), Look.TOTAL_TWO_DECIMALS));
    String check =
        "IF(ABS("
            + cell(writer.next() - 1, 3)
            + "-"
            + cell(without, 3)
            + ")<"
            + CENT
            + ",\"OK\",\"DOES NOT ADD UP\")";
    from(
        writer,
        "Check: the sum of differences is the difference of sums",
        new Entry.LiveText(check, "OK", Look.TOTAL_RIGHT));
  }

  private String sumOfChanges() {
    return "SUM(" + changes.moneyRange() + ")";
  }

  private static void from(SheetWriter writer, String label, Entry money) {
    writer.row(Entry.text(label), new Entry.Blank(Look.TEXT), new Entry.Blank(Look.TEXT), money);
  }
}
