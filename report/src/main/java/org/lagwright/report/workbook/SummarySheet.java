package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;
import static org.lagwright.report.workbook.SheetWriter.column;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.report.Account;
import org.lagwright.report.FindingGroup;
import org.lagwright.report.ServiceTotal;
import org.lagwright.report.Words;
import org.lagwright.report.workbook.Storeys.Storey;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.Question;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.Totals;

/** The sheet {@code Summary}: the account, totals by service, what is open. Formulas throughout. */
final class SummarySheet {

  static final String NAME = "Summary";

  private static final int WIDE = 7;

  /** Sizes and effects take two columns: they may be longer than figures. */
  private static final int WORDS_FROM = 3;

  private static final int WORDS_TO = 4;

  /** Ids of storeys stand left of the charts, in the same wide column. */
  private static final int ID_COLUMN = 5;

  private static final int CHART_COLUMN = 5;
  private static final int LEAST_CHART_ROWS = 13;
  private static final int CHART_PARTS = 12;

  private final Takeoff takeoff;
  private final Table<TakeoffLine> lines;
  private final Table<TakenElement> elements;
  private final Table<Finding> findings;
  private final Storeys storeys;
  private final Table<?> trace;
  private final Map<String, String> names = new LinkedHashMap<>();

  SummarySheet(
      Takeoff takeoff,
      Table<TakeoffLine> lines,
      Table<TakenElement> elements,
      Table<Finding> findings,
      Storeys storeys,
      Table<?> trace) {
    this.takeoff = takeoff;
    this.storeys = storeys;
    this.trace = trace;
    this.lines = lines;
    this.elements = elements;
    this.findings = findings;
  }

  /** Writes the sheet; returns names for its key cells with their references. */
  Map<String, String> write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(44, 12, 13, 14, 13, 70, 28);
    writer.title("Insulation takeoff");
    head(writer);
    account(writer);
    services(writer, (XSSFSheet) sheet, styles.units());
    storeys(writer, (XSSFSheet) sheet, styles.units());
    questions(writer);
    findingGroups(writer);
    models(writer);
    return names;
  }

  private void head(SheetWriter writer) {
    writer.row(Entry.text("Project"), Entry.text(takeoff.settings().project()));
    for (ModelFile model : takeoff.models()) {
      String file =
          model.name() + ", " + model.schema() + ", SHA-256 " + Words.shortSha(model) + " ...";
      writer.row(Entry.text("Model"), Entry.text(file));
    }
  }

  private void account(SheetWriter writer) {
    writer.section("Account of the elements", WIDE);
    Totals totals = takeoff.totals();
    String all = "COUNT(" + elements.range(ElementsSheet.STEP) + ")";
    int read = writer.row(Entry.text("Elements read"), Entry.live(all, totals.read(), Look.WHOLE));
    count(writer, "On takeoff lines", Account.ON_LINE, totals.onLines());
    count(writer, "Left out, each with a finding", Account.LEFT_OUT, totals.leftOut());
    int out =
        count(
            writer, "Out of scope, each with a reason", Account.OUT_OF_SCOPE, totals.outOfScope());
    String check =
        "IF(AND("
            + cell(read, 1)
            + "=SUM("
            + column(1, read + 1, out)
            + "),"
            + cell(read, 1)
            + "="
            + totals.read()
            + "),\"OK\",\"DOES NOT ADD UP\")";
    int checked =
        writer.row(
            Entry.text("Check: read = on lines + left out + out of scope"),
            new Entry.LiveText(check, "OK", Look.TOTAL_RIGHT));
    name("Elements_read", read, 1);
    name("Elements_on_lines", read + 1, 1);
    name("Elements_left_out", read + 2, 1);
    name("Elements_out_of_scope", out, 1);
    name("Account_check", checked, 1);
  }

  private int count(SheetWriter writer, String label, Account place, int computed) {
    String formula =
        "COUNTIF(" + elements.range(ElementsSheet.ACCOUNT) + ",\"" + place.label() + "\")";
    return writer.row(Entry.text(label), Entry.live(formula, computed, Look.WHOLE));
  }

  private void services(SheetWriter writer, XSSFSheet sheet, ShownUnits units) {
    int above = writer.next() + 1;
    writer.section("Totals by service", WIDE);
    writer.headings(1, 4, "Service", "Length m", "Pieces", "Outer area m2", "Volume m3");
    List<ServiceTotal> totals = ServiceTotal.of(takeoff.lines());
    int first = writer.next();
    totals.forEach(total -> service(writer, total));
    int last = Math.max(first, writer.next() - 1);
    if (totals.isEmpty()) {
      writer.row(Entry.text("No element is on a takeoff line."));
    }
    ServiceTotal sum = ServiceTotal.sum("Total", totals);
    int row =
        writer.row(
            Entry.text(sum.service(), Look.TOTAL_TEXT),
            sum(1, first, last, sum.lengthM(), Look.TOTAL_TWO_DECIMALS),
            sum(2, first, last, sum.pieces(), Look.TOTAL_WHOLE),
            sum(3, first, last, sum.outerAreaM2(), Look.TOTAL_TWO_DECIMALS),
            sum(4, first, last, sum.volumeM3(), Look.TOTAL_THREE_DECIMALS));
    name("Insulated_length_m", row, 1);
    name("Insulated_pieces", row, 2);
    name("Insulation_outer_area_m2", row, 3);
    name("Insulation_volume_m3", row, 4);
    charts(
        sheet,
        units,
        "by service",
        above,
        first,
        totals.stream().map(ServiceTotal::service).toList(),
        totals.stream().map(ServiceTotal::lengthM).toList(),
        totals.stream().map(ServiceTotal::outerAreaM2).toList());
    writer.skipTo(above + LEAST_CHART_ROWS);
  }

  private void storeys(SheetWriter writer, XSSFSheet sheet, ShownUnits units) {
    int above = writer.next() + 1;
    writer.section("Totals by storey", WIDE);
    writer.headings(1, 4, "Storey", "Length m", "Pieces", "Outer area m2", "Volume m3", "Id");
    int first = writer.next();
    storeys.list().forEach(storey -> storey(writer, storey));
    int last = Math.max(first, writer.next() - 1);
    if (storeys.list().isEmpty()) {
      writer.row(Entry.text("No element is on a takeoff line."));
    }
    Quantities all =
        storeys.list().stream().map(Storey::quantities).reduce(Quantities.NONE, Quantities::plus);
    writer.row(
        Entry.text("Total", Look.TOTAL_TEXT),
        sum(1, first, last, all.lengthM(), Look.TOTAL_TWO_DECIMALS),
        sum(2, first, last, all.pieces(), Look.TOTAL_WHOLE),
        sum(3, first, last, all.outerAreaM2(), Look.TOTAL_TWO_DECIMALS),
        sum(4, first, last, all.volumeM3(), Look.TOTAL_THREE_DECIMALS));
    charts(
        sheet,
        units,
        "by storey",
        above,
        first,
        storeys.list().stream().map(Storey::name).toList(),
        storeys.list().stream().map(storey -> storey.quantities().lengthM()).toList(),
        storeys.list().stream().map(storey -> storey.quantities().outerAreaM2()).toList());
    writer.skipTo(above + LEAST_CHART_ROWS);
  }

  private void storey(SheetWriter writer, Storey storey) {
    Quantities q = storey.quantities();
    String id = "," + trace.range(TraceSheet.STOREY) + "," + cell(writer.next(), ID_COLUMN);
    String unit = id + "," + trace.range(TraceSheet.UNIT) + ",";
    writer.row(
        Entry.text(storey.name()),
        traced(TraceSheet.QUANTITY, unit + "\"m\"", q.lengthM(), Look.TWO_DECIMALS),
        traced(TraceSheet.QUANTITY, unit + "\"pcs\"", q.pieces(), Look.WHOLE),
        traced(TraceSheet.AREA, id, q.outerAreaM2(), Look.TWO_DECIMALS),
        traced(TraceSheet.VOLUME, id, q.volumeM3(), Look.THREE_DECIMALS),
        Entry.text(storey.id()));
  }

  private Entry traced(String heading, String criteria, double computed, Look look) {
    return Entry.live("SUMIFS(" + trace.range(heading) + criteria + ")", computed, look);
  }

  /** Lengths and areas side by side, right of their table. */
  private static void charts(
      XSSFSheet sheet,
      ShownUnits units,
      String by,
      int above,
      int first,
      List<String> names,
      List<Double> lengths,
      List<Double> areas) {
    if (names.isEmpty()) {
      return;
    }
    int below = Math.max(above + LEAST_CHART_ROWS - 1, first + names.size() + 1);
    int top = above + 1;
    chart("Length " + by + ", m", names, lengths, units)
        .draw(sheet, anchor(sheet, top, below, 0), first, 0, 1);
    chart("Outer area " + by + ", m2", names, areas, units)
        .draw(sheet, anchor(sheet, top, below, 1), first, 0, 3);
  }

  private static BarChart chart(
      String title, List<String> names, List<Double> values, ShownUnits units) {
    Unit unit = Unit.ofHeading(title);
    return new BarChart(
        units.heading(title),
        names.stream().map(CellText::of).toArray(String[]::new),
        values.stream().map(value -> units.number(value, unit)).toArray(Double[]::new));
  }

  /** The first chart takes the middle of the wide column, the second the rest and the last one. */
  private static XSSFClientAnchor anchor(XSSFSheet sheet, int above, int below, int place) {
    int wide = Units.EMU_PER_PIXEL * Math.round(sheet.getColumnWidthInPixels(CHART_COLUMN));
    int last = Units.EMU_PER_PIXEL * Math.round(sheet.getColumnWidthInPixels(CHART_COLUMN + 1));
    int from = wide / CHART_PARTS;
    int middle = wide * 9 / CHART_PARTS;
    return place == 0
        ? new XSSFClientAnchor(from, 0, middle, 0, CHART_COLUMN, above, CHART_COLUMN, below)
        : new XSSFClientAnchor(middle, 0, last, 0, CHART_COLUMN, above, CHART_COLUMN + 1, below);
  }

  private void service(SheetWriter writer, ServiceTotal total) {
    String service = "," + lines.range(LinesSheet.SERVICE) + "," + cell(writer.next(), 0);
    String unit = service + "," + lines.range(LinesSheet.UNIT) + ",";
    writer.row(
        Entry.text(total.service()),
        sumIfs(LinesSheet.QUANTITY, unit + "\"m\"", total.lengthM(), Look.TWO_DECIMALS),
        sumIfs(LinesSheet.QUANTITY, unit + "\"pcs\"", total.pieces(), Look.WHOLE),
        sumIfs(LinesSheet.AREA, service, total.outerAreaM2(), Look.TWO_DECIMALS),
        sumIfs(LinesSheet.VOLUME, service, total.volumeM3(), Look.THREE_DECIMALS));
  }

  private Entry sumIfs(String heading, String criteria, double computed, Look look) {
    return Entry.live("SUMIFS(" + lines.range(heading) + criteria + ")", computed, look);
  }

  private static Entry sum(int column, int first, int last, double computed, Look look) {
    return Entry.live("SUM(" + column(column, first, last) + ")", computed, look);
  }

  private void questions(SheetWriter writer) {
    writer.section("Questions to decide before pricing", WIDE);
    List<Question> questions = takeoff.questions();
    if (questions.isEmpty()) {
      writer.row(Entry.text("None."));
      return;
    }
    writer.headings(1, 2, "What", "Elements", "Length m", "Size", "", "Question", "Finding code");
    int first = writer.next();
    questions.forEach(question -> question(writer, question));
    int last = writer.next() - 1;
    writer.row(
        Entry.text("Total", Look.TOTAL_TEXT),
        sum(1, first, last, total(questions, Question::pieces), Look.TOTAL_WHOLE),
        sum(2, first, last, total(questions, Question::lengthM), Look.TOTAL_TWO_DECIMALS));
  }

  private static void question(SheetWriter writer, Question question) {
    writer.row(
        Entry.text(question.what()),
        Entry.number((double) question.pieces(), Look.WHOLE),
        Entry.number(question.lengthM() > 0 ? question.lengthM() : null, Look.TWO_DECIMALS),
        Entry.text(question.size()),
        new Entry.Blank(Look.TEXT),
        Entry.text(question.inFull(), Look.WRAPPED),
        Entry.text(question.code()));
    writer.join(WORDS_FROM, WORDS_TO);
  }

  private static double total(List<Question> questions, ToDoubleFunction<Question> value) {
    return questions.stream().mapToDouble(value).sum();
  }

  private void findingGroups(SheetWriter writer) {
    writer.section("Findings by code", WIDE);
    List<FindingGroup> groups = FindingGroup.of(takeoff.findings());
    if (groups.isEmpty()) {
      writer.row(Entry.text("None."));
      return;
    }
    writer.headings(1, 1, "Code", "Findings", "Severity", "Effect", "", "For example", "");
    groups.forEach(group -> findingGroup(writer, group));
  }

  private void findingGroup(SheetWriter writer, FindingGroup group) {
    String formula =
        "COUNTIFS("
            + findings.range(FindingsSheet.CODE)
            + ","
            + cell(writer.next(), 0)
            + ","
            + findings.range(FindingsSheet.EFFECT)
            + ","
            + cell(writer.next(), WORDS_FROM)
            + ")";
    writer.row(
        Entry.text(group.code()),
        Entry.live(formula, group.count(), Look.WHOLE),
        Entry.text(Words.severity(group.severity())),
        Entry.text(Words.effect(group.effect())),
        new Entry.Blank(Look.TEXT),
        Entry.text(group.example(), Look.WRAPPED));
  }

  private void models(SheetWriter writer) {
    writer.section("Models read", WIDE);
    writer.headings(WIDE, WIDE, "File", "Schema", "SHA-256", "", "", "", "");
    for (ModelFile model : takeoff.models()) {
      writer.row(Entry.text(model.name()), Entry.text(model.schema()), Entry.text(model.sha256()));
    }
  }

  private void name(String name, int row, int column) {
    names.put(name, NAME + "!" + cell(row, column));
  }
}
