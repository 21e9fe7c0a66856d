package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.report.bcf.Request;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.compare.ElementMoney;
import org.lagwright.takeoff.price.Price;

/**
 * The sheet {@code RFI}: what is to be asked of the designers, one row for each cause, with cells
 * to fill in for who, when and the answer. The same requests go out as topics of {@code
 * issues.bcf}.
 */
final class RfiSheet {

  static final String NAME = "RFI";

  private static final int HEADING_ROW = 4;
  private static final String STATUS = "Status";

  /** Columns behind the figures. */
  private static final int NOT_FIGURES = 6;

  /** More would fill the sheet; all of them stand on the sheets Scope and Findings. */
  private static final int MOST_IDS = 30;

  private record Row(int number, Request request) {

    double lengthM() {
      return request.topic().elements().stream()
          .filter(element -> element.kind().isSegment())
          .mapToDouble(Row::lengthM)
          .sum();
    }

    private static double lengthM(MepElement element) {
      Measured<Double> lengthM = element.lengthM();
      return lengthM == null ? 0 : lengthM.value();
    }

    double money(ElementMoney money) {
      return request.topic().elements().stream().mapToDouble(e -> money.of(e.key())).sum();
    }

    String globalIds() {
      List<MepElement> elements = request.topic().elements();
      String first =
          elements.stream()
              .limit(MOST_IDS)
              .map(MepElement::globalId)
              .collect(Collectors.joining(" "));
      int more = elements.size() - MOST_IDS;
      return more > 0 ? first + " and " + more + " more" : first;
    }
  }

  private final Table<Row> table;

  RfiSheet(Takeoff takeoff) {
    List<Row> rows = new ArrayList<>();
    for (Request request : Request.of(takeoff)) {
      rows.add(new Row(rows.size() + 1, request));
    }
    List<Column<Row>> columns = new ArrayList<>(columns());
    Price price = takeoff.price();
    if (price != null) {
      ElementMoney money = ElementMoney.of(takeoff);
      String heading = price.terms().currency() + " without tax affected";
      columns.add(
          columns.size() - NOT_FIGURES,
          Column.number(heading, 12, Look.TWO_DECIMALS, row -> row.money(money)));
    }
    table = new Table<>(NAME, HEADING_ROW, columns, rows);
  }

  private static List<Column<Row>> columns() {
    return List.of(
        Column.text("No", 9, r -> String.format(Locale.ROOT, "RFI-%03d", r.number())),
        Column.text("Priority", 9, r -> r.request().topic().priority()),
        Column.wrapped("Subject", 34, r -> r.request().topic().title()),
        Column.wrapped("Question", 64, r -> r.request().topic().description()),
        Column.wrapped("Reason", 22, r -> r.request().reason()),
        Column.wrapped("Assumed until answered", 34, r -> r.request().untilAnswered()),
        Column.number(
            "Elements", 10, Look.WHOLE, r -> (double) r.request().topic().elements().size()),
        Column.number("Length m", 10, Look.TWO_DECIMALS, Row::lengthM),
        Column.numbers("Put to", 18, r -> new Entry.Blank(Look.INPUT_TEXT)),
        Column.numbers("Due", 12, r -> new Entry.Blank(Look.INPUT_TEXT)),
        Column.numbers(STATUS, 11, r -> Entry.text("open", Look.INPUT_TEXT)),
        Column.numbers("Answer", 36, r -> new Entry.Blank(Look.INPUT_TEXT)),
        Column.wrapped("GlobalIds", 52, Row::globalIds),
        Column.text("BCF topic", 38, r -> r.request().topic().guid()));
  }

  /** The rows. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("RFI: questions to the designers");
    writer.note(
        "One row for each cause; the command bcf writes the same as topics with pictures. What is"
            + " left out until answered is in no quantity, order, hours or price.");
    writer.note(
        "Marked cells are yours to fill in; keep this file under a name of your own, as the next run"
            + " writes it anew. Every element stands on Scope or Findings. Money is that of the"
            + " elements that are priced meanwhile.");
    open(writer);
    table.writeHeadings(sheet, styles);
    int status = table.position(STATUS);
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidation choice =
        helper.createValidation(
            helper.createExplicitListConstraint(
                new String[] {"open", "asked", "answered", "closed"}),
            new CellRangeAddressList(
                HEADING_ROW + 1, HEADING_ROW + Math.max(1, table.rows().size()), status, status));
    choice.setShowErrorBox(true);
    sheet.addValidationData(choice);
  }

  private void open(SheetWriter writer) {
    int count = table.rows().size();
    String formula = "COUNTIF(" + table.range(STATUS) + ",\"open\")";
    writer.row(Entry.text("Open", Look.TOTAL_TEXT), Entry.live(formula, count, Look.TOTAL_WHOLE));
  }
}
