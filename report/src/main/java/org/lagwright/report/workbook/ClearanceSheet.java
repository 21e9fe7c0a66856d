package org.lagwright.report.workbook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.clearance.Clash;
import org.lagwright.takeoff.clearance.Clearance;
import org.lagwright.takeoff.service.Classification;

/** The sheet {@code Clearance}: pairs of elements between which insulation does not fit. */
final class ClearanceSheet {

  static final String NAME = "Clearance";

  private static final int HEADING_ROW = 5;

  private final Clearance clearance;
  private final Table<Clash> table;

  ClearanceSheet(Clearance clearance) {
    this.clearance = clearance;
    table = new Table<>(NAME, HEADING_ROW, columns(), clearance.clashes());
  }

  private static List<Column<Clash>> columns() {
    return List.of(
        Column.text("Cause", 16, clash -> clash.cause().label()),
        Column.number("Gap mm", 9, Look.PLAIN, clash -> Words.roundedMm(clash.gapM())),
        Column.number("Wanted mm", 9, Look.PLAIN, clash -> Words.roundedMm(clash.wantedM())),
        Column.number("Shortfall mm", 10, Look.PLAIN, c -> Words.roundedMm(c.shortfallM())),
        Column.number("Bare gap mm", 9, Look.PLAIN, c -> Words.roundedMm(c.bareGapM())),
        Column.text("A: service", 26, clash -> service(clash.first())),
        Column.text("A: size", 24, clash -> Words.size(clash.first().element())),
        Column.number("A: insulation mm", 11, Look.PLAIN, clash -> boughtMm(clash.first())),
        Column.text("B: service", 26, clash -> service(clash.second())),
        Column.text("B: size", 24, clash -> Words.size(clash.second().element())),
        Column.number("B: insulation mm", 11, Look.PLAIN, clash -> boughtMm(clash.second())),
        Column.text("Storey", 18, clash -> clash.first().element().place().storey()),
        Column.text("A: name", 30, clash -> clash.first().element().name()),
        Column.text("B: name", 30, clash -> clash.second().element().name()),
        Column.wrapped("What to do", 40, clash -> clash.cause().suggestion()),
        Column.text("A: GlobalId", 26, clash -> clash.first().element().globalId()),
        Column.text("B: GlobalId", 26, clash -> clash.second().element().globalId()),
        Column.wrapped("Simplified", 40, Clash::note));
  }

  private static String service(TakenElement taken) {
    Classification service = taken.service();
    return service == null || !service.isKnown() ? "not known" : service.name();
  }

  private static @Nullable Double boughtMm(TakenElement taken) {
    double thicknessM = Clearance.thicknessM(taken);
    return thicknessM == 0 ? null : Words.roundedMm(thicknessM);
  }

  /** The rows, which may be many. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title("Clearance: where insulated surfaces meet each other or a bare neighbour");
    writer.note(
        "Gap between finished surfaces; below 0 they overlap, by so much. Bare gap: the same"
            + " without insulation. Elements that are joined or of one run do not count.");
    writer.note(
        "Not looked at: walls, slabs and beams, apparatus, terminals, trays. Bends are reckoned in"
            + " pieces of 15 degrees at most; other simplifications stand in the last column.");
    writer.note(lookedAt());
    table.writeHeadings(sheet, styles);
  }

  private String lookedAt() {
    Map<String, Long> reasons =
        clearance.unplaced().stream()
            .collect(
                Collectors.groupingBy(
                    Clearance.Unplaced::reason, TreeMap::new, Collectors.counting()));
    String missing =
        reasons.entrySet().stream()
            .map(reason -> reason.getValue() + " (" + reason.getKey() + ")")
            .collect(Collectors.joining(", "));
    return "Looked at "
        + clearance.lookedAt()
        + " elements. Insulated elements that could not be looked at: "
        + (missing.isEmpty() ? "none." : missing + ".");
  }
}
