package org.lagwright.takeoff.labour;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.labour.Norm.Unit;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * Norms out of a table with the columns {@code item}, {@code unit} and {@code value} and, where
 * they are wanted, {@code id}, {@code on}, {@code material}, {@code upToMm}, {@code
 * upToThicknessMm}, {@code withJacket} (yes or no), {@code status} and {@code source}.
 */
final class NormTable {

  private static final String ID = "id";
  private static final String ITEM = "item";
  private static final String ON = "on";
  private static final String MATERIAL = "material";
  private static final String UP_TO = "uptomm";
  private static final String UP_TO_THICKNESS = "uptothicknessmm";
  private static final String UNIT = "unit";
  private static final String VALUE = "value";
  private static final String WITH_JACKET = "withjacket";
  private static final String STATUS = "status";
  private static final String SOURCE = "source";

  /** Kinds of straight work, and what every fitting without a row of its own is. */
  static final Set<String> STRAIGHT = Set.of("tube", "sheet", "section", "jacket");

  static final String JACKET = "jacket";
  static final String FITTING = "fitting";
  static final String HANGER = "hanger";
  static final String JACKET_FITTING = "jacket-fitting";
  static final String JACKET_BOX = "jacket-box";

  private NormTable() {}

  /**
   * The norms of a table, in its order.
   *
   * @param materials ids of the known materials
   * @throws org.lagwright.takeoff.pack.PackException naming the cell that is wrong
   */
  static List<Norm> norms(DataTable table, Set<String> materials) {
    table.requireColumns(
        Set.of(ITEM, UNIT, VALUE),
        Set.of(ID, ON, MATERIAL, UP_TO, UP_TO_THICKNESS, WITH_JACKET, STATUS, SOURCE));
    Set<String> ids = new HashSet<>();
    return table.rows().stream().map(row -> norm(row, materials, ids)).toList();
  }

  private static Norm norm(DataTable.Row row, Set<String> materials, Set<String> ids) {
    String item = row.oneOf(ITEM, items());
    Unit unit = unit(row, item);
    String id = row.findText(ID);
    String name = id == null ? item + "-row-" + row.number() : id;
    if (!ids.add(name)) {
      throw row.refusal(ID, "the id '" + name + "' stands twice. Give each row its own.");
    }
    String source = row.findText(SOURCE);
    return new Norm(
        name,
        item,
        row.findOneOf(ON, Set.of("pipe", "duct")),
        row.findOneOf(MATERIAL, materials),
        metres(row, UP_TO),
        metres(row, UP_TO_THICKNESS),
        unit,
        above0(row, VALUE, row.number(VALUE)),
        "yes".equals(row.findOneOf(WITH_JACKET, Set.of("yes", "no"))),
        status(row),
        source == null ? row.inWords() : source);
  }

  private static Set<String> items() {
    Set<String> items = new TreeSet<>(STRAIGHT);
    items.addAll(Set.of(FITTING, HANGER, JACKET_FITTING, JACKET_BOX));
    Stream.of(Form.values())
        .filter(form -> form != Form.STRAIGHT && form != Form.FLEXIBLE && form != Form.UNKNOWN)
        .forEach(form -> items.add(form.label()));
    return items;
  }

  private static Unit unit(DataTable.Row row, String item) {
    String label = row.text(UNIT);
    List<Unit> allowed = units(item);
    return allowed.stream()
        .filter(unit -> unit.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                row.refusal(
                    UNIT,
                    "'"
                        + label
                        + "' is no unit for "
                        + item
                        + ". Known: "
                        + allowed.stream().map(Unit::label).collect(Collectors.joining(", "))
                        + "."));
  }

  private static List<Unit> units(String item) {
    return switch (item) {
      case HANGER -> List.of(Unit.HOURS_PER_PIECE, Unit.METRES_PER_PIECE);
      case JACKET_FITTING, JACKET_BOX -> List.of(Unit.AREA_FACTOR);
      default -> {
        boolean straight = STRAIGHT.contains(item);
        yield Arrays.stream(Unit.values()).filter(u -> u.isStraight() == straight).toList();
      }
    };
  }

  private static SourceStatus status(DataTable.Row row) {
    String label = row.findText(STATUS);
    if (label == null) {
      return SourceStatus.USER;
    }
    return Arrays.stream(SourceStatus.values())
        .filter(status -> status.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                row.refusal(
                    STATUS,
                    "'"
                        + label
                        + "' is no status. Known: "
                        + Arrays.stream(SourceStatus.values())
                            .map(SourceStatus::label)
                            .collect(Collectors.joining("; "))
                        + "."));
  }

  private static @Nullable Double metres(DataTable.Row row, String column) {
    Double mm = row.findNumber(column);
    return mm == null ? null : above0(row, column, mm) / 1000;
  }

  private static double above0(DataTable.Row row, String column, double value) {
    if (!(value > 0)) {
      throw row.refusal(column, "it must be above 0. Correct the value.");
    }
    return value;
  }
}
