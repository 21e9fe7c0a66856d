package org.lagwright.takeoff.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.takeoff.pack.DataTable;

/**
 * Stock and conductivity out of a table of the user. One row for each size, with the columns {@code
 * material}, {@code form} (tube, sheet, section), {@code thicknessMm} and, for tube and section,
 * either {@code boreMm} of this size or {@code largestBoreMm} of all; where they are known, {@code
 * lengthM} of the piece and, for sheet, its {@code widthM}. A material the table names with sizes
 * has that stock and no other. Rows with {@code conductivityWPerMK} and {@code meanC} replace the
 * conductivity of their material; such a row may leave form and thickness empty.
 */
public final class Catalogue {

  private static final String MATERIAL = "material";

  private Catalogue() {}

  /**
   * The materials with the stock and the conductivity of the table.
   *
   * @throws org.lagwright.takeoff.pack.PackException naming the cell that is wrong
   */
  public static MaterialPack over(MaterialPack materials, DataTable table) {
    table.requireColumns(Set.of(MATERIAL), CatalogueEntry.COLUMNS);
    Map<String, CatalogueEntry> byMaterial = new LinkedHashMap<>();
    for (DataTable.Row row : table.rows()) {
      String id = row.text(MATERIAL);
      if (materials.findFamily(id).isEmpty()) {
        throw row.refusal(MATERIAL, "'" + id + "' is no known material. Correct its id.");
      }
      byMaterial.computeIfAbsent(id, k -> new CatalogueEntry()).add(row);
    }
    List<MaterialFamily> changed = new ArrayList<>();
    byMaterial.forEach(
        (id, entry) ->
            changed.add(
                materials
                    .family(id)
                    .with(entry.findStock(table.name()), entry.findPoints(table.name()))));
    return materials.with(changed);
  }
}
