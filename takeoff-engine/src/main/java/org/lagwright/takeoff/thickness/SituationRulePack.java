package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * An energy rule by service, location and size: thicknesses for a rated conductivity, or a limit of
 * the heat flow. The constructor refuses gaps and overlaps of sizes and rows that contradict.
 *
 * @param rows of one service and location the sizes follow each other without gap
 * @param examples both sides of each boundary, run by a test
 */
record SituationRulePack(
    String id,
    String version,
    String source,
    String status,
    List<SituationRow> rows,
    List<Example> examples)
    implements EnergyRule {

  /** Bores belong to the program, not to the rule. */
  static final PipeBores BORES = PipeBores.bundled();

  SituationRulePack {
    rows = List.copyOf(rows);
    examples = List.copyOf(examples);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("rows must not be empty.");
    }
    requireSizesClosed(rows);
  }

  /**
   * A case with the row it belongs to.
   *
   * @param mm diameter the row goes by, millimetres
   * @param row id of the row, {@code none} where the rule says nothing
   */
  record Example(String family, String location, double mm, String row) {}

  static SituationRulePack bundled(String file) {
    return PackReader.readBundled(SituationRulePack.class, file, SituationRulePack.class);
  }

  @Override
  public Optional<Demand> findDemand(Case one) {
    Section section = one.section();
    if (!one.duct() && !(section instanceof Section.Round)) {
      return Optional.empty();
    }
    double outsideM =
        section instanceof Section.Round round
            ? round.outsideDiameterM()
            : section.perimeterM() / Math.PI;
    double boreM = one.duct() ? outsideM : BORES.boreM(outsideM);
    return rows.stream()
        .filter(row -> isOf(row, one.family(), one.location()))
        .filter(row -> row.contains(row.byBore() ? boreM : outsideM))
        .filter(row -> !one.duct() || row.isForDucts())
        .findFirst()
        .map(row -> SituationDemand.of(this, row, one, outsideM, boreM));
  }

  /** True where the row is the one the example says. */
  boolean holds(Example example) {
    String row = findRowId(example.family(), example.location(), example.mm() / 1000);
    return (row == null ? "none" : row).equals(example.row());
  }

  /** Id of the row for a diameter of the kind the rows go by, null where there is none. */
  @Nullable String findRowId(String family, String location, double diameterM) {
    return rows.stream()
        .filter(row -> isOf(row, family, location) && row.contains(diameterM))
        .map(SituationRow::id)
        .findFirst()
        .orElse(null);
  }

  /** Rows that name the location go before those that name none. */
  private boolean isOf(SituationRow row, String family, String location) {
    if (!row.families().contains(family)) {
      return false;
    }
    boolean named =
        rows.stream()
            .anyMatch(r -> r.families().contains(family) && r.locations().contains(location));
    return named ? row.locations().contains(location) : row.locations().isEmpty();
  }

  @Override
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  private static void requireSizesClosed(List<SituationRow> rows) {
    Map<String, List<SituationRow>> groups = new LinkedHashMap<>();
    Set<String> ids = new HashSet<>();
    for (SituationRow row : rows) {
      if (!ids.add(row.id())) {
        throw new IllegalArgumentException("row '" + row.id() + "' is listed twice.");
      }
      for (String situation : row.situations()) {
        groups.computeIfAbsent(situation, k -> new ArrayList<>()).add(row);
      }
    }
    groups.values().forEach(SituationRow::requireClosed);
  }
}
