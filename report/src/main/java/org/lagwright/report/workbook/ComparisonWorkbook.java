package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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

/** Writes {@code comparison.xlsx}: what changed from one revision to the next. */
public final class ComparisonWorkbook {

  private static final String CHANGES = "Changes";
  private static final String SUMMARY = "Summary";
  private static final int HEADING_ROW = 3;
  private static final int COLUMNS = 13;

  private final Comparison comparison;
  private final String project;
  private final String before;
  private final String now;
  private final String version;
  private final Table<ElementChange> table;

  /**
   * Prepares the workbook.
   *
   * @param before name of the first revision
   * @param now name of the second
   * @param version version of this program
   */
  public ComparisonWorkbook(
      Comparison comparison, String project, String before, String now, String version) {
    this.comparison = comparison;
    this.project = project;
    this.before = before;
    this.now = now;
    this.version = version;
    table = new Table<>(CHANGES, HEADING_ROW, columns(), comparison.changed());
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public void write(OutputStream out) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book);
      BookFrame.describe(book, "Comparison of two revisions", version);
      summary(BookFrame.sheet(book, project, SUMMARY, 1), styles);
      changes(BookFrame.sheet(book, project, CHANGES, 2), styles);
      book.write(out);
    }
  }

  private void changes(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("What changed, element by element");
    writer.note("From " + before + " to " + now + ". What is as it was is not listed.");
    table.writeHeadings(sheet, styles);
    table.writeRows(sheet, styles);
  }

  private static List<Column<ElementChange>> columns() {
    List<Column<ElementChange>> columns = new ArrayList<>();
    columns.add(Column.text("Change", 34, ComparisonWorkbook::inWords));
    columns.add(Column.text("Kind", 14, c -> Words.kind(c.any().element().kind())));
    columns.add(Column.text("Form", 14, c -> Words.form(c.any().element().form())));
    columns.add(Column.text("Service before", 30, c -> service(c.before())));
    columns.add(Column.text("Service now", 30, c -> service(c.now())));
    columns.add(Column.text("Size before", 26, c -> size(c.before())));
    columns.add(Column.text("Size now", 26, c -> size(c.now())));
    columns.add(Column.number("mm before", 9, Look.PLAIN, c -> thicknessMm(c.before())));
    columns.add(Column.number("mm now", 9, Look.PLAIN, c -> thicknessMm(c.now())));
    columns.add(number("Length m +/-", Look.TWO_DECIMALS, Amount::lengthM));
    columns.add(number("Pieces +/-", Look.WHOLE_OR_DASH, Amount::pieces));
    columns.add(number("Area m2 +/-", Look.TWO_DECIMALS, Amount::outerAreaM2));
    columns.add(number("Hours +/-", Look.TWO_DECIMALS, Amount::hours));
    columns.add(Column.text("Storey", 20, c -> c.any().element().place().storey()));
    columns.add(Column.text("Name", 30, c -> c.any().element().name()));
    columns.add(Column.text("GlobalId before", 26, c -> globalId(c.before())));
    columns.add(Column.text("GlobalId now", 26, c -> globalId(c.now())));
    return columns;
  }

  private static Column<ElementChange> number(
      String heading, Look look, ToDoubleFunction<Amount> figure) {
    return Column.number(heading, 11, look, c -> figure.applyAsDouble(c.difference()));
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

  private void summary(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Comparison of two revisions");
    writer.note("From " + before + " to " + now + ", taken off with the same settings.");
    writer.widths(32, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11);
    counts(writer);
    services(writer);
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
    writer.section("Amounts by service", COLUMNS);
    List<String> headings = new ArrayList<>(List.of("Service"));
    for (String what : List.of("length m", "pieces", "area m2", "hours")) {
      headings.addAll(List.of(what + " before", what + " now", what + " +/-"));
    }
    writer.headings(1, COLUMNS - 1, headings.toArray(String[]::new));
    int first = writer.next();
    Map<String, Comparison.Amounts> services = comparison.byService();
    services.forEach((name, amounts) -> writer.row(row(writer.next(), name, amounts)));
    if (!services.isEmpty()) {
      writer.row(total(first, writer.next() - 1, services));
    }
  }

  private static Entry[] row(int row, String name, Comparison.Amounts amounts) {
    List<Entry> entries = new ArrayList<>(List.of(Entry.text(name)));
    triple(row, entries, amounts, Amount::lengthM, Look.TWO_DECIMALS);
    triple(row, entries, amounts, Amount::pieces, Look.WHOLE_OR_DASH);
    triple(row, entries, amounts, Amount::outerAreaM2, Look.TWO_DECIMALS);
    triple(row, entries, amounts, Amount::hours, Look.TWO_DECIMALS);
    return entries.toArray(Entry[]::new);
  }

  private static void triple(
      int row,
      List<Entry> entries,
      Comparison.Amounts amounts,
      ToDoubleFunction<Amount> figure,
      Look look) {
    double was = figure.applyAsDouble(amounts.before());
    double is = figure.applyAsDouble(amounts.now());
    String from = SheetWriter.cell(row, entries.size());
    String to = SheetWriter.cell(row, entries.size() + 1);
    entries.add(Entry.number(was, look));
    entries.add(Entry.number(is, look));
    entries.add(Entry.live(to + "-" + from, is - was, look));
  }

  private static Entry[] total(int first, int last, Map<String, Comparison.Amounts> services) {
    Comparison.Amounts all =
        services.values().stream()
            .reduce(new Comparison.Amounts(Amount.NONE, Amount.NONE), Comparison.Amounts::plus);
    List<Entry> entries = new ArrayList<>(List.of(Entry.text("all", Look.TOTAL_TEXT)));
    for (ToDoubleFunction<Amount> figure :
        List.<ToDoubleFunction<Amount>>of(
            Amount::lengthM, Amount::pieces, Amount::outerAreaM2, Amount::hours)) {
      double was = figure.applyAsDouble(all.before());
      double is = figure.applyAsDouble(all.now());
      for (double value : new double[] {was, is, is - was}) {
        String cells = SheetWriter.column(entries.size(), first, last);
        entries.add(Entry.live("SUM(" + cells + ")", value, Look.TOTAL_TWO_DECIMALS));
      }
    }
    return entries.toArray(Entry[]::new);
  }
}
