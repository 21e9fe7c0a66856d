package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.Trace.Assumed;
import org.lagwright.takeoff.Trace.Computed;
import org.lagwright.takeoff.Trace.Decided;
import org.lagwright.takeoff.Trace.Given;
import org.lagwright.takeoff.Trace.Read;
import org.lagwright.takeoff.Trace.Step;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.thickness.Demand;

/**
 * The sheet {@code Trace}: each line followed home, one row for each element on it: what was read
 * from which record of the file, what was decided by which rule of which pack, what was computed.
 */
final class TraceSheet {

  static final String NAME = "Trace";
  static final String UNIT = "Unit";
  static final String QUANTITY = "Quantity";
  static final String AREA = "Outer area m2";
  static final String VOLUME = "Volume m3";
  static final String STOREY = "Storey id";

  private static final int HEADING_ROW = 6;

  /** Longer ones are sentences of the sheet Elements, or lists of figures that explain shows. */
  private static final int LONGEST_VALUE = 24;

  /** An element and the line that counts it. */
  private record Link(TakeoffLine line, TakenElement taken) {
    double quantity() {
      return line.unit().equals(LinesSheet.METRE)
          ? taken.quantities().lengthM()
          : taken.quantities().pieces();
    }
  }

  private final Takeoff takeoff;
  private final Storeys storeys;
  private final Table<TakeoffLine> lines;
  private final Map<String, String> versions = new HashMap<>();
  private final Table<Link> table;

  TraceSheet(Takeoff takeoff, Storeys storeys, Table<TakeoffLine> lines) {
    this.takeoff = takeoff;
    this.storeys = storeys;
    this.lines = lines;
    for (PackInfo pack : takeoff.packs()) {
      versions.put(pack.id(), pack.id() + " " + pack.version());
    }
    Map<String, TakeoffLine> byId = new HashMap<>();
    takeoff.lines().forEach(line -> byId.put(line.id(), line));
    List<Link> links = new ArrayList<>();
    for (TakenElement taken : takeoff.elements()) {
      TakeoffLine line = taken.lineId() == null ? null : byId.get(taken.lineId());
      if (line != null) {
        links.add(new Link(line, taken));
      }
    }
    links.sort(Comparator.comparing(link -> link.line().id()));
    table = new Table<>(NAME, HEADING_ROW, columns(), links);
  }

  private List<Column<Link>> columns() {
    return List.of(
        Column.text("Line", 8, l -> l.line().id()),
        Column.text("GlobalId", 26, l -> l.taken().element().globalId()),
        Column.text(UNIT, 6, l -> l.line().unit()),
        Column.number(QUANTITY, 10, Look.TWO_DECIMALS, Link::quantity)
            .in(l -> Unit.ofWord(l.line().unit())),
        Column.number(AREA, 10, Look.TWO_DECIMALS, l -> l.taken().quantities().outerAreaM2()),
        Column.number(VOLUME, 10, Look.THREE_DECIMALS, l -> l.taken().quantities().volumeM3()),
        Column.number("Hours", 9, Look.TWO_DECIMALS, l -> l.taken().labourHours()),
        Column.wrapped("Read from the model", 54, l -> steps(l, this::read)),
        Column.wrapped("Decided by", 74, l -> steps(l, this::decided)),
        Column.wrapped("Thickness by", 34, TraceSheet::governing),
        Column.wrapped("Assumed or given", 34, l -> steps(l, this::told)),
        Column.wrapped("Computed", 84, l -> steps(l, this::computed)),
        Column.text(STOREY, 9, l -> storeys.id(l.taken())),
        Column.text("Storey", 18, l -> l.taken().element().place().storey()),
        Column.number("Step id", 9, Look.PLAIN, l -> (double) l.taken().element().key().step()),
        Column.text(
            "Model file", 28, l -> takeoff.models().get(l.taken().element().key().model()).name()));
  }

  private static String steps(Link link, Function<Step, @Nullable String> words) {
    return new LinkedHashSet<>(link.taken().trace().steps())
        .stream().map(words).filter(text -> text != null).collect(Collectors.joining("; "));
  }

  private @Nullable String read(Step step) {
    return step instanceof Read read ? of(step) + " (" + read.evidence() + ")" : null;
  }

  private @Nullable String decided(Step step) {
    return step instanceof Decided decided
        ? (step.value().length() > LONGEST_VALUE ? step.what() : of(step))
            + " ("
            + decided.rule()
            + ", "
            + versions.getOrDefault(decided.pack(), decided.pack())
            + ")"
        : null;
  }

  private @Nullable String told(Step step) {
    if (step instanceof Assumed assumed) {
      return of(step) + " (assumed: " + assumed.why() + ")";
    }
    return step instanceof Given given ? of(step) + " (" + given.setting() + ")" : null;
  }

  private @Nullable String computed(Step step) {
    boolean list = step.value().length() > LONGEST_VALUE;
    return step instanceof Computed computed && !list
        ? of(step) + " = " + computed.formula()
        : null;
  }

  private static String of(Step step) {
    return step.what() + " " + step.value();
  }

  private static @Nullable String governing(Link link) {
    if (link.taken().thickness() == null) {
      return null;
    }
    Demand governing = link.taken().thickness().governing();
    return governing == null
        ? null
        : Words.demand(governing) + " " + Words.millimetres(governing.thicknessM()) + " mm";
  }

  /** The rows, which may be many. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Trace: each line followed home");
    writer.note(
        "One row for each element of each line. Read: record of the file, attribute or property, raw"
            + " text. Decided: rule, pack and version; sources stand on Basis. Readings that lost,"
            + " votes and figures of each demand: lagwright explain GLOBALID.");
    writer.headings(3, 5, "Check", "", UNIT, "Traced", "On the lines", "Difference");
    check(writer, LinesSheet.METRE);
    check(writer, LinesSheet.PIECES);
    table.writeHeadings(sheet, styles);
  }

  private void check(SheetWriter writer, String unit) {
    String unitCell = SheetWriter.cell(writer.next(), 2);
    double traced = sum(table.rows(), l -> l.line().unit().equals(unit) ? l.quantity() : 0);
    double onLines = sum(lines.rows(), l -> l.unit().equals(unit) ? l.quantity() : 0);
    String difference =
        "ROUND("
            + SheetWriter.cell(writer.next(), 3)
            + "-"
            + SheetWriter.cell(writer.next(), 4)
            + ",6)";
    Unit of = Unit.ofWord(unit);
    double apart = Math.rint((traced - onLines) * 1e6) / 1e6;
    String all = sumIf(lines, LinesSheet.QUANTITY, LinesSheet.UNIT, unitCell);
    writer.row(
        Entry.text("All", Look.TOTAL_TEXT),
        new Entry.Blank(Look.TOTAL_TEXT),
        Entry.text(unit, Look.TOTAL_TEXT),
        writer.in(
            of,
            Entry.live(sumIf(table, QUANTITY, UNIT, unitCell), traced, Look.TOTAL_TWO_DECIMALS)),
        writer.in(of, Entry.live(all, onLines, Look.TOTAL_TWO_DECIMALS)),
        writer.in(of, Entry.live(difference, apart, Look.TOTAL_TWO_DECIMALS)));
  }

  private static String sumIf(Table<?> of, String values, String criteria, String cell) {
    return "SUMIFS(" + of.range(values) + "," + of.range(criteria) + "," + cell + ")";
  }

  private static <T> double sum(List<T> rows, ToDoubleFunction<T> value) {
    return rows.stream().mapToDouble(value).sum();
  }
}
