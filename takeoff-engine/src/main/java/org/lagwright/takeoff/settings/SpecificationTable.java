package org.lagwright.takeoff.settings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.settings.DemandSettings.SpecificationRow;

/**
 * The engineer's own table of thicknesses as a file, with the columns {@code service}, {@code
 * location}, {@code aboveMm}, {@code upToMm}, {@code thicknessMm} and {@code source}; only the
 * thickness must be filled in.
 */
final class SpecificationTable {

  private static final String SERVICE = "service";
  private static final String LOCATION = "location";
  private static final String ABOVE = "abovemm";
  private static final String UP_TO = "uptomm";
  private static final String THICKNESS = "thicknessmm";
  private static final String SOURCE = "source";

  private SpecificationTable() {}

  /**
   * The rows of the table.
   *
   * @throws org.lagwright.takeoff.pack.PackException naming the cell that is wrong
   */
  static List<SpecificationRow> rows(
      DataTable table, Collection<String> services, Collection<String> locations) {
    table.requireColumns(Set.of(THICKNESS), Set.of(SERVICE, LOCATION, ABOVE, UP_TO, SOURCE));
    List<SpecificationRow> rows = new ArrayList<>();
    for (DataTable.Row row : table.rows()) {
      rows.add(row(row, services, locations));
    }
    return rows;
  }

  private static SpecificationRow row(
      DataTable.Row row, Collection<String> services, Collection<String> locations) {
    double thicknessMm = row.number(THICKNESS);
    if (!(thicknessMm > 0 && thicknessMm <= 1000)) {
      throw row.refusal(THICKNESS, "the thickness must be above 0 and at most 1000 mm.");
    }
    Double aboveMm = row.findNumber(ABOVE);
    Double upToMm = row.findNumber(UP_TO);
    if (aboveMm != null && upToMm != null && !(aboveMm < upToMm)) {
      throw row.refusal(ABOVE, "aboveMm must be below upToMm.");
    }
    String source = row.findText(SOURCE);
    return new SpecificationRow(
        row.findOneOf(SERVICE, services),
        row.findOneOf(LOCATION, locations),
        aboveMm,
        upToMm,
        thicknessMm,
        source == null ? row.inWords() : row.inWords() + ": " + source);
  }
}
