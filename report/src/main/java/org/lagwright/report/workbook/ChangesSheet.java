package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.compare.Amount;
import org.lagwright.takeoff.compare.Change;
import org.lagwright.takeoff.compare.Comparison;
import org.lagwright.takeoff.compare.ElementChange;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * The sheet {@code Changes}: one row for each element that is not as it was, with quantities of
 * both revisions, rate, and what the difference costs. The rows above add up to the difference of
 * both takeoffs.
 */
final class ChangesSheet {

  static final String NAME = "Changes";

  private static final int HEADING_ROW = 7;
  private static final String UNIT = "Unit";
  private static final String BEFORE = "Quantity before";
  private static final String NOW = "Quantity now";
  private static final String LENGTH = "Length m +/-";
  private static final String PIECES = "Pieces +/-";
  private static final String AREA = "Area m2 +/-";
  private static final String HOURS = "Hours +/-";

  private final Comparison comparison;
  private final String before;
  private final String now;
  private final Table<Row> table;

  /** A change at its place, from 0. */
  private record Row(int position, ElementChange change) {

    /** In metres where the element, as it is or was, is measured so; else counted. */
    boolean inMetres() {
      return change.any().element().kind().isSegment();
    }

    Unit unit() {
      return inMetres() ? Unit.METRE : Unit.NONE;
    }

    double quantity(Amount amount) {
      return inMetres() ? amount.lengthM() : amount.pieces();
    }

    /** Price of one unit as it is, else as it was; null where there is neither. */
    @Nullable Double rate() {
      Amount amount = quantity(change.amountNow()) > 0 ? change.amountNow() : change.amountBefore();
      double quantity = quantity(amount);
      return quantity > 0 && amount.money() != 0 ? amount.money() / quantity : null;
    }
  }

  ChangesSheet(Comparison comparison, String before, String now) {
    this.comparison = comparison;
    this.before = before;
    this.now = now;
    List<Row> rows = new ArrayList<>();
    comparison.changed().forEach(c -> rows.add(new Row(HEADING_ROW + 1 + rows.size(), c)));
    table = new Table<>(NAME, HEADING_ROW, columns(), rows);
  }

  private List<Column<Row>> columns() {
    List<Column<Row>> columns = new ArrayList<>();
    columns.add(Column.text("Change", 30, r -> inWords(r.change())));
    columns.add(Column.text("Service before", 26, r -> service(r.change().before())));
    columns.add(Column.text("Service now", 26, r -> service(r.change().now())));
    columns.add(Column.text("Size before", 24, r -> size(r.change().before())));
    columns.add(Column.text("Size now", 24, r -> size(r.change().now())));
    columns.add(Column.number("mm before", 9, Look.PLAIN, r -> thicknessMm(r.change().before())));
    columns.add(Column.number("mm now", 9, Look.PLAIN, r -> thicknessMm(r.change().now())));
    columns.add(Column.text(UNIT, 6, r -> r.inMetres() ? "m" : "pcs"));
    columns.add(quantity(BEFORE, ElementChange::amountBefore));
    columns.add(quantity(NOW, ElementChange::amountNow));
    columns.add(Column.<Row>numbers("Quantity +/-", 11, this::difference).in(Row::unit));
    columns.add(difference(LENGTH, Look.TWO_DECIMALS, Amount::lengthM));
    columns.add(difference(PIECES, Look.WHOLE_OR_DASH, Amount::pieces));
    columns.add(difference(AREA, Look.TWO_DECIMALS, Amount::outerAreaM2));
    columns.add(difference(HOURS, Look.TWO_DECIMALS, Amount::hours));
    if (comparison.price() != null) {
      columns.add(
          Column.number("Rate per unit", 11, Look.TWO_DECIMALS, Row::rate)
              .in(r -> r.inMetres() ? Unit.PER_METRE : Unit.NONE));
      columns.add(difference(money(), Look.TWO_DECIMALS, Amount::money));
    }
    columns.add(Column.text("Kind", 14, r -> Words.kind(r.change().any().element().kind())));
    columns.add(Column.text("Form", 14, r -> Words.form(r.change().any().element().form())));
    columns.add(Column.text("Storey", 20, r -> r.change().any().element().place().storey()));
    columns.add(Column.text("Name", 30, r -> r.change().any().element().name()));
    columns.add(Column.text("GlobalId before", 26, r -> globalId(r.change().before())));
    columns.add(Column.text("GlobalId now", 26, r -> globalId(r.change().now())));
    return columns;
  }

  /** The heading of the money, with its currency; only where there is a price. */
  private String money() {
    return comparison.price() == null
        ? ""
        : comparison.price().now().terms().currency() + " without tax +/-";
  }

  private static Column<Row> quantity(String heading, Function<ElementChange, Amount> amount) {
    return Column.number(
            heading, 10, Look.TWO_DECIMALS, (Row r) -> r.quantity(amount.apply(r.change())))
        .in(Row::unit);
  }

  private Entry difference(Row row) {
    String formula =
        cell(row.position(), table.position(NOW))
            + "-"
            + cell(row.position(), table.position(BEFORE));
    return Entry.live(
        formula,
        row.quantity(row.change().amountNow()) - row.quantity(row.change().amountBefore()),
        Look.TWO_DECIMALS);
  }

  private static Column<Row> difference(
      String heading, Look look, ToDoubleFunction<Amount> figure) {
    return Column.number(heading, 11, look, r -> figure.applyAsDouble(r.change().difference()));
  }

  private static String inWords(ElementChange change) {
    return change.changes().stream().map(Change::label).collect(Collectors.joining(", "));
  }

  private static @Nullable String service(@Nullable TakenElement taken) {
    Classification service = taken == null ? null : taken.service();
    return service == null ? null : service.name();
  }

  private static @Nullable String size(@Nullable TakenElement taken) {
    return taken == null ? null : Size.find(taken.element()).map(Size::words).orElse(null);
  }

  private static @Nullable Double thicknessMm(@Nullable TakenElement taken) {
    ThicknessDecision thickness =
        taken == null || taken.lineId() == null ? null : taken.thickness();
    return thickness == null ? null : Words.roundedMm(thickness.totalM());
  }

  private static @Nullable String globalId(@Nullable TakenElement taken) {
    return taken == null ? null : taken.element().globalId();
  }

  /** The rows, which may be many. */
  Table<?> table() {
    return table;
  }

  /** Cells of the money of all changes listed; only where there is a price. */
  String moneyRange() {
    return table.range(money());
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    table.setWidths(sheet);
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("What changed, element by element");
    writer.note("From " + before + " to " + now + ". What is as it was is not listed.");
    writer.above(table);
    int listed = writer.next() + 1;
    writer.skip();
    totals(writer, "Listed", this::listed);
    Amount unchanged = comparison.differenceOfUnchanged();
    totals(
        writer,
        "As they were: goods shared by surface, rounding",
        (heading, figure) ->
            Entry.number(figure.applyAsDouble(unchanged), Look.TOTAL_TWO_DECIMALS));
    totals(
        writer,
        "All elements",
        (heading, figure) -> {
          int column = table.position(heading);
          String formula = cell(listed, column) + "+" + cell(listed + 1, column);
          double all = figure.applyAsDouble(comparison.difference());
          return Entry.live(formula, all, Look.TOTAL_TWO_DECIMALS);
        });
    table.writeHeadings(sheet, styles);
  }

  /** The total under one heading. */
  private interface Total {
    Entry of(String heading, ToDoubleFunction<Amount> figure);
  }

  private Entry listed(String heading, ToDoubleFunction<Amount> figure) {
    double sum =
        table.rows().stream()
            .mapToDouble(row -> figure.applyAsDouble(row.change().difference()))
            .sum();
    return Entry.live("SUM(" + table.range(heading) + ")", sum, Look.TOTAL_TWO_DECIMALS);
  }

  private void totals(SheetWriter writer, String label, Total total) {
    boolean priced = comparison.price() != null;
    Entry[] row = new Entry[table.position(priced ? money() : HOURS) + 1];
    row[0] = Entry.text(label, Look.TOTAL_TEXT);
    for (int i = 1; i < row.length; i++) {
      row[i] = new Entry.Blank(Look.TOTAL_TEXT);
    }
    row[table.position(LENGTH)] = total.of(LENGTH, Amount::lengthM);
    row[table.position(PIECES)] = total.of(PIECES, Amount::pieces);
    row[table.position(AREA)] = total.of(AREA, Amount::outerAreaM2);
    row[table.position(HOURS)] = total.of(HOURS, Amount::hours);
    if (priced) {
      row[table.position(money())] = total.of(money(), Amount::money);
    }
    writer.row(row);
  }
}
