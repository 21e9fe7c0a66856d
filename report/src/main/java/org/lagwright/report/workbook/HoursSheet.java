package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.apache.poi.ss.util.CellReference;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.labour.LabourFactor;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.labour.StepShares;
import org.lagwright.takeoff.labour.TradeStep;
import org.lagwright.takeoff.labour.WorkArea;

/**
 * The sheet {@code Hours}: equal work in one place a row. Norms, factors and shares are references
 * to the input cells of the sheet Labour; hours are formulas.
 */
final class HoursSheet {

  static final String NAME = "Hours";
  static final String AREA = "Area";
  static final String SERVICE = "Service";
  static final String HOURS = "Hours";

  private static final String QUANTITY = "Quantity";
  private static final String LAST_FACTOR = "For the job";

  /** Kinds of factors in the order of their columns. */
  private static final Map<String, String> FACTORS = new LinkedHashMap<>();

  static {
    FACTORS.put("height", "Height");
    FACTORS.put("neighbours", "Neigh- bours");
    FACTORS.put("location", "Place");
    FACTORS.put("cold", "Cold");
    FACTORS.put("layer", "Further layer");
    FACTORS.put("always", LAST_FACTOR);
  }

  /** An item and the row it stands in, from 1. */
  private record Row(int number, LabourItem item) {}

  private final Map<WorkArea, String> areas = new LinkedHashMap<>();
  private final Function<Object, String> cells;
  private final Table<Row> table;

  /**
   * @param cells reference of the input cell of a norm, a factor, or a share
   */
  HoursSheet(Labour labour, Function<Object, String> cells) {
    this.cells = cells;
    for (WorkArea area : labour.hoursByArea().keySet()) {
      areas.put(area, String.format(Locale.ROOT, "A%02d", areas.size() + 1));
    }
    List<Row> rows = new ArrayList<>();
    for (LabourItem item : labour.items()) {
      rows.add(new Row(rows.size() + 2, item));
    }
    table = new Table<>(NAME, 0, columns(), rows);
  }

  /** Names of the areas, in their order. */
  Map<WorkArea, String> areas() {
    return areas;
  }

  Table<?> table() {
    return table;
  }

  /** The column of a step of the trade. */
  static String heading(TradeStep step) {
    return "Hours: " + step.words();
  }

  private List<Column<Row>> columns() {
    List<Column<Row>> columns = new ArrayList<>();
    columns.add(Column.text(AREA, 7, r -> areas.get(r.item().area())));
    columns.add(Column.text("Storey", 24, r -> r.item().area().storeyInWords()));
    columns.add(Column.text("Space", 28, r -> r.item().area().space()));
    columns.add(Column.text(SERVICE, 34, r -> r.item().serviceName()));
    columns.add(Column.text("Line", 8, r -> r.item().lineId()));
    columns.add(Column.text("Work", 14, r -> Words.work(r.item())));
    columns.add(Column.text("Form", 14, r -> Words.form(r.item().form())));
    columns.add(Column.text("Size", 26, r -> r.item().size()));
    columns.add(Column.text("Layer", 16, r -> layer(r.item())));
    columns.add(Column.text("Unit", 7, r -> r.item().unit()));
    columns.add(
        Column.number(QUANTITY, 11, Look.TWO_DECIMALS, (Row r) -> r.item().quantity())
            .in(r -> Unit.ofWord(r.item().unit())));
    columns.add(
        Column.numbers("Each counts as", 10, (Row r) -> equivalent(r.item()))
            .in(r -> unit(r.item().equivalent())));
    columns.add(
        Column.number("Per metre", 10, Look.THREE_DECIMALS, (Row r) -> r.item().perMetre())
            .in(r -> perMetre(r.item())));
    columns.add(
        Column.numbers("Norm", 9, (Row r) -> reference(r.item().norm(), r.item().norm().value()))
            .in(r -> unit(r.item().norm())));
    columns.add(Column.text("Unit of norm", 10, r -> r.item().norm().unit().label()));
    FACTORS.forEach(
        (kind, heading) -> columns.add(Column.numbers(heading, 10, r -> factor(r.item(), kind))));
    columns.add(Column.numbers(HOURS, 10, this::hours));
    for (TradeStep step : TradeStep.values()) {
      columns.add(Column.numbers(heading(step), 12, r -> hours(r, step)));
    }
    columns.add(Column.text("Status of the norm", 44, r -> r.item().norm().status().shown()));
    return columns;
  }

  private static Unit unit(@Nullable Norm norm) {
    return norm == null ? Unit.NONE : Unit.ofWord(norm.unit().label());
  }

  /** How much of the unit of the norm one metre is; a quantity in that unit already is not. */
  private static Unit perMetre(LabourItem item) {
    if (item.unit().equals("m2")) {
      return Unit.NONE;
    }
    return switch (item.norm().unit()) {
      case HOURS_PER_M2 -> Unit.SQUARE_METRE_PER_METRE;
      case HOURS_PER_M3 -> Unit.CUBIC_METRE_PER_METRE;
      default -> Unit.NONE;
    };
  }

  private static String layer(LabourItem item) {
    return item.layerNumber()
        + ": "
        + Words.millimetres(item.layer().thicknessM())
        + " mm "
        + item.layer().form().label();
  }

  private Entry equivalent(LabourItem item) {
    return item.equivalent() == null
        ? Entry.number(1.0, Look.PLAIN)
        : reference(item.equivalent(), item.equivalent().value());
  }

  private Entry factor(LabourItem item, String kind) {
    @Nullable LabourFactor factor =
        item.factors().stream().filter(f -> f.kind().equals(kind)).findFirst().orElse(null);
    return factor == null ? Entry.number(1.0, Look.PLAIN) : reference(factor, factor.value());
  }

  private Entry reference(Object input, double value) {
    return Entry.live(cells.apply(input), value, Look.PLAIN);
  }

  /** All numbers of the row up to the last factor; words among them do not count. */
  private Entry hours(Row row) {
    String formula = "PRODUCT(" + cell(row, QUANTITY) + ":" + cell(row, LAST_FACTOR) + ")";
    return Entry.live(formula, row.item().hours(), Look.TWO_DECIMALS);
  }

  private Entry hours(Row row, TradeStep step) {
    StepShares shares = row.item().shares();
    if (shares == null) {
      return step == TradeStep.JACKET
          ? Entry.live(cell(row, HOURS), row.item().hours(), Look.TWO_DECIMALS)
          : Entry.number(0.0, Look.TWO_DECIMALS);
    }
    if (step == TradeStep.JACKET) {
      return Entry.number(0.0, Look.TWO_DECIMALS);
    }
    String share = Objects.requireNonNull(cells.apply(new Share(shares.work(), step)));
    return Entry.live(cell(row, HOURS) + "*" + share, row.item().hours(step), Look.TWO_DECIMALS);
  }

  private String cell(Row row, String heading) {
    return CellReference.convertNumToColString(table.position(heading)) + row.number();
  }

  /** The share of a step in one kind of work. */
  record Share(String work, TradeStep step) {}
}
