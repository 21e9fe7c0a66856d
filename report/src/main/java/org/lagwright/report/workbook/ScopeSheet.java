package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.report.Account;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.service.Classification;

/**
 * The sheet {@code Scope}: every element that is on no line, and why, grouped by cause. Together
 * with the lines these are all elements read.
 */
final class ScopeSheet {

  static final String NAME = "Scope";

  private static final String GROUP = "Group";
  private static final String ELEMENTS = "Elements";
  private static final String LENGTH = "Length m";
  private static final int ROWS_AROUND_GROUPS = 7;

  /** What shares a cause. Reasons of single elements may differ, such as what each repeats. */
  private record Cause(Account account, String scope, String code, String rule, String service)
      implements Comparable<Cause> {

    private static final Comparator<Cause> ORDER =
        Comparator.comparing(Cause::account)
            .thenComparing(Cause::scope)
            .thenComparing(Cause::code)
            .thenComparing(Cause::rule)
            .thenComparing(Cause::service);

    static Cause of(TakenElement taken) {
      String code = taken.leftOutWith();
      Classification service = taken.service();
      return new Cause(
          Account.of(taken),
          taken.scope().scope().label(),
          code == null ? "" : code,
          taken.scope().rule(),
          service == null ? "" : service.name());
    }

    @Override
    public int compareTo(Cause other) {
      return ORDER.compare(this, other);
    }
  }

  /** An element with the group it is in. */
  private record Row(String group, Cause cause, TakenElement taken) {

    /** 0 where it has none. */
    double lengthM() {
      Measured<Double> lengthM = taken.element().lengthM();
      return lengthM == null ? 0 : lengthM.value();
    }
  }

  private final Takeoff takeoff;
  private final Map<Cause, List<Row>> groups = new TreeMap<>();
  private final Table<Row> table;

  ScopeSheet(Takeoff takeoff) {
    this.takeoff = takeoff;
    takeoff.elements().stream()
        .filter(taken -> taken.lineId() == null)
        .forEach(t -> groups.computeIfAbsent(Cause.of(t), c -> new ArrayList<>()));
    Map<Cause, String> ids = new TreeMap<>();
    groups.keySet().forEach(c -> ids.put(c, String.format(Locale.ROOT, "X%02d", ids.size() + 1)));
    for (TakenElement taken : takeoff.elements()) {
      List<Row> rows = taken.lineId() == null ? groups.get(Cause.of(taken)) : null;
      if (rows != null) {
        Cause cause = Cause.of(taken);
        rows.add(new Row(ids.getOrDefault(cause, ""), cause, taken));
      }
    }
    List<Row> all = groups.values().stream().flatMap(List::stream).toList();
    table = new Table<>(NAME, ROWS_AROUND_GROUPS + Math.max(1, groups.size()), columns(), all);
  }

  private List<Column<Row>> columns() {
    return List.of(
        Column.text(GROUP, 8, Row::group),
        Column.text("Account", 14, r -> r.cause().account().label()),
        Column.text("Scope", 7, r -> r.cause().scope()),
        Column.text("Service", 34, r -> r.cause().service()),
        Column.number(ELEMENTS, 10, Look.WHOLE, r -> 1.0),
        Column.number(LENGTH, 10, Look.TWO_DECIMALS, Row::lengthM),
        Column.wrapped("Reason", 64, r -> r.taken().scope().reason()),
        Column.text("Left out with", 26, r -> r.cause().code()),
        Column.text("Scope rule", 24, r -> r.cause().rule()),
        Column.text("Kind", 14, r -> Words.kind(r.taken().element().kind())),
        Column.text("Form", 14, r -> Words.form(r.taken().element().form())),
        Column.text("Size", 28, r -> Words.size(r.taken().element())),
        Column.text("Storey", 20, r -> r.taken().element().place().storey()),
        Column.text("Name", 36, r -> r.taken().element().name()),
        Column.text("GlobalId", 26, r -> r.taken().element().globalId()),
        Column.number("Step id", 9, Look.PLAIN, r -> (double) r.taken().element().key().step()),
        Column.text("Model file", 30, this::model));
  }

  private @Nullable String model(Row row) {
    return takeoff.models().get(row.taken().element().key().model()).name();
  }

  /** The rows, which may be many. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    table.setWidths(sheet);
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Scope: what is on no line, and why");
    writer.note(
        "Out of scope: nothing is insulated there. Left out: something is missing or to be decided,"
            + " sheet RFI; until then it is in no quantity, order, hours or price.");
    writer.note("Elements on lines and those here are all elements read, sheet Summary.");
    writer.skip();
    writer.headings(
        4,
        5,
        GROUP,
        "Account",
        "Scope",
        "Service",
        ELEMENTS,
        LENGTH,
        "Reason of the first one",
        "Left out with",
        "Scope rule");
    int first = writer.next();
    groups.forEach((cause, rows) -> group(writer, cause, rows));
    if (groups.isEmpty()) {
      writer.row(Entry.text("Every element is on a line."));
    }
    total(writer, first, Math.max(first, writer.next() - 1));
    table.writeHeadings(sheet, styles);
  }

  private void group(SheetWriter writer, Cause cause, List<Row> rows) {
    String id = SheetWriter.cell(writer.next(), 0);
    writer.row(
        Entry.text(rows.get(0).group()),
        Entry.text(cause.account().label()),
        Entry.text(cause.scope()),
        Entry.text(cause.service()),
        sumIf(ELEMENTS, id, rows.size(), Look.WHOLE),
        sumIf(LENGTH, id, sum(rows, Row::lengthM), Look.TWO_DECIMALS),
        Entry.text(rows.get(0).taken().scope().reason(), Look.WRAPPED),
        Entry.text(cause.code()),
        Entry.text(cause.rule()));
  }

  private Entry sumIf(String heading, String id, double computed, Look look) {
    String formula = "SUMIFS(" + table.range(heading) + "," + table.range(GROUP) + "," + id + ")";
    return Entry.live(formula, computed, look);
  }

  private void total(SheetWriter writer, int first, int last) {
    Entry blank = new Entry.Blank(Look.TOTAL_TEXT);
    writer.row(
        Entry.text("All", Look.TOTAL_TEXT),
        blank,
        blank,
        blank,
        total(4, first, last, table.rows().size(), Look.TOTAL_WHOLE),
        total(5, first, last, sum(table.rows(), Row::lengthM), Look.TOTAL_TWO_DECIMALS));
  }

  private static Entry total(int column, int first, int last, double computed, Look look) {
    return Entry.live("SUM(" + SheetWriter.column(column, first, last) + ")", computed, look);
  }

  private static double sum(List<Row> rows, Function<Row, Double> value) {
    return rows.stream().mapToDouble(value::apply).sum();
  }
}
