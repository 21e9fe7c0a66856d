package org.lagwright.report.workbook;

import static org.lagwright.report.workbook.SheetWriter.cell;
import static org.lagwright.report.workbook.SheetWriter.column;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.report.Words;
import org.lagwright.report.workbook.HoursSheet.Share;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.labour.LabourFactor;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.labour.StepShares;
import org.lagwright.takeoff.labour.TradeStep;
import org.lagwright.takeoff.labour.WorkArea;

/**
 * The sheet {@code Labour}: hours by step, service and place, and the input cells they follow from.
 */
final class LabourSheet {

  static final String NAME = "Labour";

  /** Name of the cell that holds all hours. */
  private static final String TOTAL = "Labour_hours";

  private static final int WIDE = 5;
  private static final List<TradeStep> SHARED =
      List.of(TradeStep.MEASURE_AND_CUT, TradeStep.FIT, TradeStep.GLUE_AND_SEAL);

  private final Labour labour;
  private final HoursSheet hours;
  private final Map<Object, String> cells = new HashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  LabourSheet(Labour labour) {
    this.labour = labour;
    this.hours = new HoursSheet(labour, this::cellOf);
  }

  private String cellOf(Object input) {
    String reference = cells.get(input);
    if (reference == null) {
      throw new IllegalStateException("no input cell for " + input);
    }
    return reference;
  }

  /** The rows of the sheet Hours, to be written after this one. */
  Table<?> hours() {
    return hours.table();
  }

  /** Reference of the cell that holds all hours, once the sheet is written. */
  String totalCell() {
    return Objects.requireNonNull(names.get(TOTAL), TOTAL);
  }

  /** Names for key cells with their references. */
  Map<String, String> names() {
    return names;
  }

  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.widths(62, 15, 15, 40, 70);
    writer.title("Labour");
    writer.merged(
        "Hours follow from the marked cells below: change a norm, a factor or a share, and hours and"
            + " price move. Each row of work stands on the sheet Hours. What is called unverified is"
            + " a starting value of the trade that nobody checked: replace it by your own records.",
        WIDE);
    steps(writer);
    services(writer);
    areas(writer);
    norms(writer);
    factors(writer);
    shares(writer);
  }

  private void steps(SheetWriter writer) {
    writer.section("Hours by step of the trade", WIDE);
    int first = writer.next();
    for (TradeStep step : TradeStep.values()) {
      String formula = "SUM(" + hours.table().range(HoursSheet.heading(step)) + ")";
      writer.row(
          Entry.text(step.words()), Entry.live(formula, labour.hours(step), Look.TWO_DECIMALS));
    }
    total(writer, first);
    names.put(TOTAL, NAME + "!" + cell(writer.next() - 1, 1));
  }

  private void total(SheetWriter writer, int first) {
    String formula = "SUM(" + column(1, first, Math.max(first, writer.next() - 1)) + ")";
    writer.row(
        Entry.text("Total, hours", Look.TOTAL_TEXT),
        Entry.live(formula, labour.hours(), Look.TOTAL_TWO_DECIMALS));
  }

  private void services(SheetWriter writer) {
    writer.section("Hours by service", WIDE);
    int first = writer.next();
    labour
        .hoursByService()
        .forEach(
            (service, sum) ->
                writer.row(Entry.text(service), sumIf(HoursSheet.SERVICE, writer.next(), 0, sum)));
    if (writer.next() == first) {
      writer.row(Entry.text("No work."));
    }
    total(writer, first);
  }

  private void areas(SheetWriter writer) {
    writer.section("Hours by storey and space", WIDE);
    int first = writer.next();
    for (Map.Entry<WorkArea, Double> area : labour.hoursByArea().entrySet()) {
      writer.row(
          Entry.text(area.getKey().inWords()),
          sumIf(HoursSheet.AREA, writer.next(), 2, area.getValue()),
          Entry.text(hours.areas().get(area.getKey())));
    }
    if (writer.next() == first) {
      writer.row(Entry.text("No work."));
    }
    total(writer, first);
  }

  private Entry sumIf(String heading, int row, int column, double computed) {
    String formula =
        "SUMIFS("
            + hours.table().range(HoursSheet.HOURS)
            + ","
            + hours.table().range(heading)
            + ","
            + cell(row, column)
            + ")";
    return Entry.live(formula, computed, Look.TWO_DECIMALS);
  }

  private void norms(SheetWriter writer) {
    writer.section("Norms in use", WIDE);
    writer.headings(1, 1, "Work", "Norm", "Unit", "Status", "Source");
    for (Norm norm : labour.normsInUse()) {
      put(norm, writer, 1);
      writer.row(
          Entry.text(Words.norm(norm) + " (" + norm.id() + ")"),
          writer.in(Unit.ofWord(norm.unit().label()), Entry.number(norm.value(), Look.INPUT)),
          Entry.text(norm.unit().label()),
          Entry.text(norm.status().shown()),
          Entry.text(norm.source(), Look.WRAPPED));
    }
    writer.merged(
        "Hours (h) per length: of the run; per area: of outer surface; per volume: of insulation;"
            + " per piece (pc): for one. Length per piece: one costs as much as so much straight work"
            + " of its size; area per area: as so much of straight work.",
        WIDE);
  }

  private void factors(SheetWriter writer) {
    writer.section("Factors on the hours; all that hold are multiplied", WIDE);
    writer.headings(1, 1, "When", "Factor", "Name", "Status", "");
    for (LabourFactor factor : labour.norms().pack().factors()) {
      put(factor, writer, 1);
      writer.row(
          Entry.text(factor.what()),
          Entry.number(factor.value(), Look.INPUT),
          Entry.text(factor.id()),
          Entry.text(factor.status().shown()));
    }
    writer.merged(
        "Height is that of the middle of the element above its floor, where the insulator works."
            + " Neighbours are other runs of pipe and duct that come within "
            + Words.millimetres(labour.norms().pack().reachM())
            + " mm of the bare surface; those that meet its own run do not count.",
        WIDE);
  }

  private void shares(SheetWriter writer) {
    writer.section("Share of each step; each row adds up to 1, jackets are apart", WIDE);
    writer.headings(1, 3, "Work", "Measure and cut", "Fit", "Glue and seal", "Status");
    for (StepShares shares : labour.norms().pack().shares()) {
      for (int i = 0; i < SHARED.size(); i++) {
        put(new Share(shares.work(), SHARED.get(i)), writer, i + 1);
      }
      writer.row(
          Entry.text(shares.work()),
          Entry.number(shares.measureAndCut(), Look.INPUT),
          Entry.number(shares.fit(), Look.INPUT),
          Entry.number(shares.glueAndSeal(), Look.INPUT),
          Entry.text(shares.status().shown()));
    }
  }

  /** The cell of the row that is written next. */
  private void put(Object input, SheetWriter writer, int column) {
    cells.put(input, NAME + "!" + cell(writer.next(), column));
  }
}
