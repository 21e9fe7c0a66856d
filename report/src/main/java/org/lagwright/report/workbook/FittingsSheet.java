package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.ifc.model.Form;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakeoffLine;

/** The sheet {@code Fittings}: counted items by service and size, one column for each form. */
final class FittingsSheet {

  static final String NAME = "Fittings";

  private static final Pattern WILDCARD = Pattern.compile("[*?~]");
  private static final int HEADING_ROW = 3;
  private static final String SERVICE = "Service";
  private static final String KIND = "Kind";
  private static final String SIZE = "Size";
  private static final String TOTAL = "Total";
  private static final int FIRST_FORM = 3;

  private final Table<TakeoffLine> lines;
  private final List<TakeoffLine> counted;
  private final List<Form> forms;
  private final Table<Row> table;

  /** What shares a row. */
  private record Group(String service, String kind, String size) {
    static Group of(TakeoffLine line) {
      return new Group(line.serviceName(), Words.kind(line.kind()), line.size());
    }
  }

  /** A group at its place, from 0. */
  private record Row(int position, Group group) {}

  FittingsSheet(Table<TakeoffLine> lines) {
    this.lines = lines;
    counted = lines.rows().stream().filter(l -> l.unit().equals(LinesSheet.PIECES)).toList();
    forms = List.copyOf(new TreeSet<>(counted.stream().map(TakeoffLine::form).toList()));
    Set<Group> groups = new LinkedHashSet<>();
    counted.forEach(line -> groups.add(Group.of(line)));
    List<Row> rows = new ArrayList<>();
    groups.forEach(group -> rows.add(new Row(HEADING_ROW + 1 + rows.size(), group)));
    table = new Table<>(NAME, HEADING_ROW, columns(), rows);
  }

  private List<Column<Row>> columns() {
    List<Column<Row>> columns = new ArrayList<>();
    columns.add(Column.text(SERVICE, 30, row -> row.group().service()));
    columns.add(Column.text(KIND, 14, row -> row.group().kind()));
    columns.add(Column.text(SIZE, 30, row -> row.group().size()));
    for (Form form : forms) {
      columns.add(Column.numbers(Words.form(form), 12, row -> pieces(row, form)));
    }
    columns.add(Column.numbers(TOTAL, 11, this::total));
    return columns;
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Fittings, valves and other counted items (pieces)");
    if (table.rows().isEmpty()) {
      writer.note("Nothing on the takeoff is counted in pieces.");
      return;
    }
    writer.note("Pieces on the sheet Takeoff, by service and size.");
    totals(writer);
    table.writeHeadings(sheet, styles);
    sheet.createFreezePane(FIRST_FORM, HEADING_ROW + 1);
  }

  private Entry pieces(Row row, Form form) {
    double pieces = pieces(l -> Group.of(l).equals(row.group()) && l.form() == form);
    return Entry.live(formula(row, form), pieces, Look.WHOLE_OR_DASH);
  }

  private Entry total(Row row) {
    int last = table.position(TOTAL) - 1;
    String shown = cell(row.position(), FIRST_FORM) + ":" + cell(row.position(), last);
    double pieces = pieces(l -> Group.of(l).equals(row.group()));
    return Entry.live("SUM(" + shown + ")", pieces, Look.WHOLE);
  }

  private String formula(Row row, Form form) {
    return "SUMIFS("
        + lines.range(LinesSheet.QUANTITY)
        + criterion(LinesSheet.UNIT, "\"pcs\"")
        + criterion(LinesSheet.SERVICE, cell(row.position(), table.position(SERVICE)))
        + criterion(LinesSheet.KIND, cell(row.position(), table.position(KIND)))
        + criterion(LinesSheet.SIZE, exactly(row))
        + criterion(LinesSheet.FORM, cell(HEADING_ROW, FIRST_FORM + forms.indexOf(form)))
        + ")";
  }

  private String criterion(String heading, String criterion) {
    return "," + lines.range(heading) + "," + criterion;
  }

  /** Sizes are text of the model, where criteria would read operators and wildcards. */
  private String exactly(Row row) {
    String text = cell(row.position(), table.position(SIZE));
    if (WILDCARD.matcher(row.group().size()).find()) {
      for (String wildcard : List.of("~", "*", "?")) {
        text = "SUBSTITUTE(" + text + ",\"" + wildcard + "\",\"~" + wildcard + "\")";
      }
    }
    return "\"=\"&" + text;
  }

  private void totals(SheetWriter writer) {
    Entry[] row = new Entry[table.position(TOTAL) + 1];
    row[0] = Entry.text("All", Look.TOTAL_TEXT);
    row[1] = new Entry.Blank(Look.TOTAL_TEXT);
    row[2] = new Entry.Blank(Look.TOTAL_TEXT);
    for (int i = FIRST_FORM; i < row.length; i++) {
      int at = i - FIRST_FORM;
      double pieces = pieces(l -> at == forms.size() || l.form() == forms.get(at));
      String rows = table.range(table.columns().get(i).heading());
      row[i] = Entry.live("SUM(" + rows + ")", pieces, Look.TOTAL_WHOLE);
    }
    writer.row(row);
  }

  private double pieces(Predicate<TakeoffLine> wanted) {
    return counted.stream().filter(wanted).mapToDouble(TakeoffLine::quantity).sum();
  }
}
