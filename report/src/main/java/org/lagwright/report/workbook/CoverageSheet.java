package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.verify.Coverage;
import org.lagwright.takeoff.verify.CoverageStatus;
import org.lagwright.takeoff.verify.CoverageSum;
import org.lagwright.takeoff.verify.ElementCoverage;

/**
 * The sheet {@code Coverage}: what the models show as insulated against what is required. One row
 * for each element that something is shown on, is missing on, or of which it is not known; an
 * element insulated in part has two.
 */
final class CoverageSheet {

  static final String NAME = "Coverage";

  private static final String STATUS = "Status";
  private static final int STATUS_WIDTH = 16;
  private static final String ELEMENTS = "Elements";
  private static final String LENGTH = "Length m";
  private static final String AREA = "Outer area m2";
  private static final int HEADING_ROW = 13;

  /**
   * A row: an element, or the part of it that has one status.
   *
   * @param counted true in the one row that counts the element
   */
  private record Part(
      ElementCoverage element, CoverageStatus status, double share, boolean counted) {

    double missingM2() {
      return status == CoverageStatus.BARE
          ? share * element.areaM2()
          : status == CoverageStatus.TOO_THIN ? element.missingM2() : 0;
    }
  }

  private final Coverage coverage;
  private final Table<Part> table;

  CoverageSheet(Coverage coverage) {
    this.coverage = coverage;
    table = new Table<>(NAME, HEADING_ROW, columns(), parts(coverage));
  }

  /** The worst first; elements of one status as the takeoff has them. */
  private static List<Part> parts(Coverage coverage) {
    List<Part> parts = new ArrayList<>();
    for (ElementCoverage element : coverage.elements()) {
      boolean inPart = element.share() > 0 && element.share() < 1;
      boolean whole = !inPart || element.ofShown() == CoverageStatus.UNKNOWN;
      if (whole) {
        parts.add(new Part(element, element.status(), 1, true));
      } else {
        parts.add(new Part(element, CoverageStatus.BARE, 1 - element.share(), true));
        parts.add(new Part(element, element.ofShown(), element.share(), false));
      }
    }
    parts.sort(Comparator.comparingDouble(Part::missingM2).reversed());
    return parts;
  }

  private static List<Column<Part>> columns() {
    return List.of(
        Column.text(STATUS, STATUS_WIDTH, p -> p.status().label()),
        Column.number(ELEMENTS, 10, Look.WHOLE_OR_DASH, p -> p.counted() ? 1.0 : 0.0),
        Column.number(LENGTH, 10, Look.TWO_DECIMALS, p -> p.share() * p.element().lengthM()),
        Column.number(AREA, 11, Look.TWO_DECIMALS, CoverageSheet::areaM2),
        Column.number("Required mm", 11, Look.PLAIN, p -> mm(p.element().requiredM())),
        Column.number("Bought mm", 11, Look.PLAIN, p -> mm(p.element().boughtM())),
        Column.number("Shown mm", 11, Look.PLAIN, CoverageSheet::shownMm),
        Column.text("Service", 36, p -> p.element().group().service()),
        Column.text("Size", 30, p -> p.element().group().size()),
        Column.text("Location", 14, p -> p.element().group().location()),
        Column.text("Storey", 22, p -> p.element().group().storey()),
        Column.text("Shown material", 34, CoverageSheet::shownMaterial),
        Column.text("GlobalId", 26, p -> p.element().globalId()),
        Column.text("Name", 36, p -> p.element().name()),
        Column.text("Shown by", 60, p -> p.element().evidence()));
  }

  /** An outer area that is not known is blank and not 0. */
  private static @Nullable Double areaM2(Part part) {
    double areaM2 = part.element().areaM2();
    return areaM2 > 0 ? part.share() * areaM2 : null;
  }

  private static @Nullable Double mm(double metres) {
    return Double.isFinite(metres) ? Words.roundedMm(metres) : null;
  }

  private static @Nullable Double shownMm(Part part) {
    Double shownM = part.element().shownM();
    return shownM == null || isBare(part) ? null : mm(shownM);
  }

  private static @Nullable String shownMaterial(Part part) {
    return isBare(part) ? null : part.element().shownMaterial();
  }

  private static boolean isBare(Part part) {
    return part.status() == CoverageStatus.BARE;
  }

  /** The rows, which may be many. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Coverage: insulation shown in the models against what is required");
    writer.note(
        "Too thin: more than 1 mm under the thickness required. Too thick: more than 5 mm over what"
            + " is bought. Unknown: no thickness shown, or none could be decided.");
    writer.note(
        ("What is shown along a part of an element leaves the rest bare. The worst stand first. "
                + Words.withoutArea(coverage))
            .strip());
    writer.skip();
    writer.headings(
        1, 6, "By status", ELEMENTS, LENGTH, AREA, "% of elements", "% of length", "% of area");
    Map<CoverageStatus, CoverageSum> sums = coverage.byStatus();
    CoverageSum all = Coverage.sum(coverage.elements());
    int first = writer.next();
    int total = first + sums.size();
    sums.forEach((status, sum) -> writer.row(statusRow(writer.next(), total, status, sum, all)));
    writer.row(totalRow(first, all));
    table.writeHeadings(sheet, styles);
    sheet.setColumnWidth(0, STATUS_WIDTH * 256);
  }

  private Entry[] statusRow(
      int row, int total, CoverageStatus status, CoverageSum sum, CoverageSum all) {
    String label = SheetWriter.cell(row, 0);
    return new Entry[] {
      Entry.text(status.label()),
      ofStatus(ELEMENTS, label, sum.elements(), Look.WHOLE_OR_DASH),
      ofStatus(LENGTH, label, sum.lengthM(), Look.TWO_DECIMALS),
      ofStatus(AREA, label, sum.areaM2(), Look.TWO_DECIMALS),
      percent(row, total, 1, sum.elements(), all.elements()),
      percent(row, total, 2, sum.lengthM(), all.lengthM()),
      percent(row, total, 3, sum.areaM2(), all.areaM2())
    };
  }

  private Entry ofStatus(String heading, String label, double computed, Look look) {
    String formula =
        "SUMIFS(" + table.range(heading) + "," + table.range(STATUS) + "," + label + ")";
    return Entry.live(formula, computed, look);
  }

  private static Entry percent(int row, int total, int column, double part, double whole) {
    String all = SheetWriter.cell(total, column);
    String formula = "IF(" + all + "=0,0,100*" + SheetWriter.cell(row, column) + "/" + all + ")";
    return Entry.live(formula, whole == 0 ? 0 : 100 * part / whole, Look.ONE_DECIMAL);
  }

  private static Entry[] totalRow(int first, CoverageSum all) {
    int last = first + CoverageStatus.values().length - 1;
    Entry blank = new Entry.Blank(Look.TOTAL_TEXT);
    return new Entry[] {
      Entry.text("all", Look.TOTAL_TEXT),
      sum(1, first, last, all.elements(), Look.TOTAL_WHOLE),
      sum(2, first, last, all.lengthM(), Look.TOTAL_TWO_DECIMALS),
      sum(3, first, last, all.areaM2(), Look.TOTAL_TWO_DECIMALS),
      blank,
      blank,
      blank
    };
  }

  private static Entry sum(int column, int first, int last, double computed, Look look) {
    return Entry.live("SUM(" + SheetWriter.column(column, first, last) + ")", computed, look);
  }
}
