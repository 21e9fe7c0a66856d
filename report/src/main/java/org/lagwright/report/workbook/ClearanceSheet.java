package org.lagwright.report.workbook;

import java.util.ArrayList;
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
import org.lagwright.takeoff.clearance.Neighbour;
import org.lagwright.takeoff.clearance.Passage;
import org.lagwright.takeoff.service.Classification;

/**
 * The sheet {@code Clearance}: where insulation does not fit, and where it goes through the
 * building in openings.
 */
final class ClearanceSheet {

  static final String NAME = "Clearance";

  private static final int HEADING_ROW = 8;

  private final Clearance clearance;
  private final Table<Row> table;

  /**
   * One row: a clash, or a passage through an opening.
   *
   * @param gapM of a passage the room round it in the opening
   * @param wantedM null where none is wanted
   * @param bareGapM null where it does not matter
   */
  private record Row(
      String cause,
      double gapM,
      @Nullable Double wantedM,
      @Nullable Double bareGapM,
      TakenElement first,
      Neighbour second,
      String suggestion,
      String note) {

    static Row of(Clash clash) {
      return new Row(
          clash.cause().label(),
          clash.gapM(),
          clash.wantedM(),
          clash.bareGapM(),
          clash.first(),
          clash.second(),
          clash.suggestion(),
          clash.note());
    }

    static Row of(Passage passage) {
      return new Row(
          "through an opening",
          passage.marginM(),
          null,
          null,
          passage.element(),
          new Neighbour.Part(passage.part()),
          "No clash. Close the gap as the fire and sound concept of the building asks.",
          "opening by the box around it");
    }

    @Nullable Double shortfallMm() {
      return wantedM == null ? null : Words.roundedMm(wantedM - gapM);
    }
  }

  ClearanceSheet(Clearance clearance) {
    this.clearance = clearance;
    List<Row> rows = new ArrayList<>();
    clearance.clashes().forEach(clash -> rows.add(Row.of(clash)));
    clearance.passages().forEach(passage -> rows.add(Row.of(passage)));
    table = new Table<>(NAME, HEADING_ROW, columns(), rows);
  }

  private static List<Column<Row>> columns() {
    return List.of(
        Column.text("Cause", 18, Row::cause),
        Column.number("Gap mm", 9, Look.PLAIN, row -> Words.roundedMm(row.gapM())),
        Column.number("Wanted mm", 9, Look.PLAIN, row -> millimetres(row.wantedM())),
        Column.number("Shortfall mm", 10, Look.PLAIN, Row::shortfallMm),
        Column.number("Bare gap mm", 9, Look.PLAIN, row -> millimetres(row.bareGapM())),
        Column.text("Method", 8, row -> row.second().method()),
        Column.text("A: service", 26, row -> service(row.first())),
        Column.text("A: size", 24, row -> Words.size(row.first().element())),
        Column.number("A: insulation mm", 11, Look.PLAIN, row -> bought(row.first())),
        Column.text("B: service or part", 26, row -> what(row.second())),
        Column.text("B: size", 24, row -> size(row.second())),
        Column.number("B: insulation mm", 11, Look.PLAIN, row -> bought(row.second())),
        Column.text("Storey", 18, row -> row.first().element().place().storey()),
        Column.text("A: name", 30, row -> row.first().element().name()),
        Column.text("B: name", 30, row -> row.second().name()),
        Column.wrapped("What to do", 40, Row::suggestion),
        Column.text("A: GlobalId", 26, row -> row.first().element().globalId()),
        Column.text("B: GlobalId", 26, row -> row.second().globalId()),
        Column.wrapped("Simplified", 40, Row::note));
  }

  private static @Nullable Double millimetres(@Nullable Double metres) {
    return metres == null ? null : Words.roundedMm(metres);
  }

  private static String service(TakenElement taken) {
    Classification service = taken.service();
    return service == null || !service.isKnown() ? "not known" : service.name();
  }

  private static String what(Neighbour neighbour) {
    if (neighbour instanceof Neighbour.Piece piece) {
      return service(piece.taken());
    }
    return neighbour instanceof Neighbour.Part part ? Words.building(part.part().ifcClass()) : "";
  }

  private static @Nullable String size(Neighbour neighbour) {
    return neighbour instanceof Neighbour.Piece piece ? Words.size(piece.taken().element()) : null;
  }

  private static @Nullable Double bought(TakenElement taken) {
    return bought(Clearance.thicknessM(taken));
  }

  private static @Nullable Double bought(Neighbour neighbour) {
    return bought(neighbour.thicknessM());
  }

  private static @Nullable Double bought(double thicknessM) {
    return thicknessM == 0 ? null : Words.roundedMm(thicknessM);
  }

  /** The rows, which may be many. */
  Table<?> table() {
    return table;
  }

  /** Writes everything but the rows. */
  void write(Sheet sheet, Styles styles) {
    SheetWriter writer = new SheetWriter(sheet, styles);
    writer.title(
        "Clearance: where insulation meets other insulation, a bare neighbour or the building");
    writer.note(
        "Gap between finished surfaces; below 0 they overlap, by so much. Bare gap: the same"
            + " without insulation. Elements that are joined or of one run do not count.");
    writer.note(
        "Method: body by its own shape; box by the upright box around a wall, slab, beam or column,"
            + " which may be larger than the part.");
    writer.note(
        "What goes through an opening with its insulation is no clash; its gap is the least room in"
            + " the box of the opening.");
    writer.note(
        "Not looked at: apparatus, terminals, trays. Bends are reckoned in pieces of 15 degrees at"
            + " most; other simplifications stand in the last column.");
    writer.note(lookedAt());
    writer.note(
        "Could not be looked at: insulated elements: "
            + reasons(clearance.unplaced())
            + "; bare elements: "
            + reasons(clearance.bareUnplaced())
            + ".");
    table.writeHeadings(sheet, styles);
  }

  private String lookedAt() {
    return "Looked at "
        + clearance.lookedAt()
        + " elements and "
        + clearance.building()
        + " parts of the building; "
        + clearance.withoutBody()
        + " parts have no body that can be read.";
  }

  private static String reasons(List<Clearance.Unplaced> unplaced) {
    Map<String, Long> reasons =
        unplaced.stream()
            .collect(
                Collectors.groupingBy(
                    Clearance.Unplaced::reason, TreeMap::new, Collectors.counting()));
    return reasons.isEmpty()
        ? "none"
        : reasons.entrySet().stream()
            .map(reason -> reason.getValue() + " (" + reason.getKey() + ")")
            .collect(Collectors.joining(", "));
  }
}
