package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;
import static org.lagwright.report.workbook.SheetWriter.column;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.lagwright.ifc.model.Form;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakeoffLine;

/** The sheet {@code Fittings}: counted items by service and size, one column for each form. */
final class FittingsSheet {

  static final String NAME = "Fittings";

  private static final Pattern WILDCARD = Pattern.compile("[*?~]");
  private static final int HEADING_ROW = 2;
  private static final int FIRST_FORM = 3;

  private final Table<TakeoffLine> lines;
  private final List<TakeoffLine> counted;
  private final List<Form> forms;
  private final List<Group> groups;

  /** What shares a row. */
  private record Group(String service, String kind, String size) {
    static Group of(TakeoffLine line) {
      return new Group(line.serviceName(), Words.kind(line.kind()), line.size());
    }
  }

  FittingsSheet(Table<TakeoffLine> lines) {
    this.lines = lines;
    counted = lines.rows().stream().filter(l -> l.unit().equals(LinesSheet.PIECES)).toList();
    forms = List.copyOf(new TreeSet<>(counted.stream().map(TakeoffLine::form).toList()));
    Map<Group, Integer> distinct = new LinkedHashMap<>();
    counted.forEach(line -> distinct.merge(Group.of(line), 1, Integer::sum));
    groups = List.copyOf(distinct.keySet());
  }

  /** Writes the sheet. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Fittings, valves and other counted items (pieces)");
    if (groups.isEmpty()) {
      writer.note("Nothing on the takeoff is counted in pieces.");
      return;
    }
    writer.note("Pieces on the sheet Takeoff, by service and size.");
    headings(sheet, writer);
    groups.forEach(group -> row(writer, group));
    totals(writer);
    sheet.createFreezePane(FIRST_FORM, HEADING_ROW + 1);
    sheet.setRepeatingRows(new CellRangeAddress(HEADING_ROW, HEADING_ROW, -1, -1));
    int last = HEADING_ROW + groups.size();
    sheet.setAutoFilter(new CellRangeAddress(HEADING_ROW, last, 0, totalColumn()));
  }

  private int totalColumn() {
    return FIRST_FORM + forms.size();
  }

  private void headings(Sheet sheet, SheetWriter writer) {
    String[] texts = new String[totalColumn() + 1];
    texts[0] = "Service";
    texts[1] = "Kind";
    texts[2] = "Size";
    for (int i = 0; i < forms.size(); i++) {
      texts[FIRST_FORM + i] = Words.form(forms.get(i));
      sheet.setColumnWidth(FIRST_FORM + i, 12 * 256);
    }
    texts[totalColumn()] = "Total";
    writer.widths(30, 14, 30);
    sheet.setColumnWidth(totalColumn(), 11 * 256);
    writer.headings(FIRST_FORM, totalColumn(), texts);
  }

  private void row(SheetWriter writer, Group group) {
    Entry[] row = new Entry[totalColumn() + 1];
    row[0] = Entry.text(group.service());
    row[1] = Entry.text(group.kind());
    row[2] = Entry.text(group.size());
    for (int i = 0; i < forms.size(); i++) {
      Form form = forms.get(i);
      double pieces = pieces(l -> Group.of(l).equals(group) && l.form() == form);
      row[FIRST_FORM + i] =
          Entry.live(formula(group, writer.next(), i), pieces, Look.WHOLE_OR_DASH);
    }
    String shown = cell(writer.next(), FIRST_FORM) + ":" + cell(writer.next(), totalColumn() - 1);
    double pieces = pieces(l -> Group.of(l).equals(group));
    row[totalColumn()] = Entry.live("SUM(" + shown + ")", pieces, Look.WHOLE);
    writer.row(row);
  }

  private String formula(Group group, int row, int form) {
    return "SUMIFS("
        + lines.range(LinesSheet.QUANTITY)
        + criterion(LinesSheet.UNIT, "\"pcs\"")
        + criterion(LinesSheet.SERVICE, cell(row, 0))
        + criterion(LinesSheet.KIND, cell(row, 1))
        + criterion(LinesSheet.SIZE, exactly(group.size(), cell(row, 2)))
        + criterion(LinesSheet.FORM, cell(HEADING_ROW, FIRST_FORM + form))
        + ")";
  }

  private String criterion(String heading, String criterion) {
    return "," + lines.range(heading) + "," + criterion;
  }

  /** Sizes are text of the model, where criteria would read operators and wildcards. */
  private static String exactly(String size, String cell) {
    String text = cell;
    if (WILDCARD.matcher(size).find()) {
      for (String wildcard : List.of("~", "*", "?")) {
        text = "SUBSTITUTE(" + text + ",\"" + wildcard + "\",\"~" + wildcard + "\")";
      }
    }
    return "\"=\"&" + text;
  }

  private void totals(SheetWriter writer) {
    Entry[] row = new Entry[totalColumn() + 1];
    row[0] = Entry.text("Total", Look.TOTAL_TEXT);
    row[1] = new Entry.Blank(Look.TOTAL_TEXT);
    row[2] = new Entry.Blank(Look.TOTAL_TEXT);
    for (int i = FIRST_FORM; i <= totalColumn(); i++) {
      int at = i - FIRST_FORM;
      double pieces = pieces(l -> at == forms.size() || l.form() == forms.get(at));
      String rows = column(i, HEADING_ROW + 1, HEADING_ROW + groups.size());
      row[i] = Entry.live("SUM(" + rows + ")", pieces, Look.TOTAL_WHOLE);
    }
    writer.row(row);
  }

  private double pieces(Predicate<TakeoffLine> wanted) {
    return counted.stream().filter(wanted).mapToDouble(TakeoffLine::quantity).sum();
  }
}
