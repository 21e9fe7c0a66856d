package org.lagwright.takeoff.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * Stock out of a table of the user: one row for each thickness, with the columns {@code material},
 * {@code form} (tube, sheet, section), {@code thicknessMm} and, for tube and section, {@code
 * largestBoreMm}; where they are known, {@code lengthM} of the piece and, for sheet, its {@code
 * widthM}. A material the table names has that stock and no other.
 */
public final class Catalogue {

  private static final String MATERIAL = "material";
  private static final String FORM = "form";
  private static final String THICKNESS = "thicknessmm";
  private static final String BORE = "largestboremm";
  private static final String LENGTH = "lengthm";
  private static final String WIDTH = "widthm";

  private Catalogue() {}

  /**
   * The materials with the stock of the table.
   *
   * @throws org.lagwright.takeoff.pack.PackException naming the cell that is wrong
   */
  public static MaterialPack over(MaterialPack materials, DataTable table) {
    table.requireColumns(Set.of(MATERIAL, FORM, THICKNESS), Set.of(BORE, LENGTH, WIDTH));
    Map<String, Collected> byMaterial = new LinkedHashMap<>();
    for (DataTable.Row row : table.rows()) {
      String id = row.text(MATERIAL);
      if (materials.findFamily(id).isEmpty()) {
        throw row.refusal(MATERIAL, "'" + id + "' is no known material. Correct its id.");
      }
      byMaterial.computeIfAbsent(id, k -> new Collected()).add(row);
    }
    List<MaterialFamily> changed = new ArrayList<>();
    byMaterial.forEach(
        (id, stock) -> changed.add(materials.family(id).withStock(stock.stock(table.name()))));
    return materials.with(changed);
  }

  private static final class Collected {
    private final Map<String, TreeSet<Double>> wallsMm = new LinkedHashMap<>();
    private final Map<String, Double> boreMm = new LinkedHashMap<>();
    private final List<Stock.Sold> sold = new ArrayList<>();

    void add(DataTable.Row row) {
      String form = row.text(FORM);
      if (!Set.of("tube", "sheet", "section").contains(form)) {
        throw row.refusal(FORM, "'" + form + "' is none of tube, sheet, section.");
      }
      double thicknessMm = row.number(THICKNESS);
      if (!(thicknessMm > 0 && thicknessMm <= 1000)) {
        throw row.refusal(THICKNESS, "the thickness must be above 0 and at most 1000 mm.");
      }
      wallsMm.computeIfAbsent(form, k -> new TreeSet<>()).add(thicknessMm);
      if (!form.equals("sheet")) {
        double largestMm = row.number(BORE);
        if (!(largestMm > 0)) {
          throw row.refusal(BORE, "the largest bore must be above 0 mm.");
        }
        boreMm.merge(form, largestMm, Math::max);
      }
      addSold(row, form, thicknessMm);
    }

    private void addSold(DataTable.Row row, String form, double thicknessMm) {
      Double lengthM = row.findNumber(LENGTH);
      Double widthM = row.findNumber(WIDTH);
      if (lengthM == null && widthM == null) {
        return;
      }
      if (lengthM == null) {
        throw row.refusal(LENGTH, "a width without a length. Fill in both.");
      }
      try {
        sold.add(new Stock.Sold(form, thicknessMm, widthM, lengthM));
      } catch (IllegalArgumentException e) {
        throw row.refusal(LENGTH, e.getMessage() + " Correct lengthM and widthM.");
      }
    }

    Stock stock(String source) {
      return new Stock(
          walls("tube"),
          boreMm.getOrDefault("tube", 0.0),
          walls("sheet"),
          walls("section"),
          boreMm.getOrDefault("section", 0.0),
          null,
          sold.isEmpty() ? null : sold,
          SourceStatus.USER,
          source);
    }

    private List<Double> walls(String form) {
      return List.copyOf(wallsMm.getOrDefault(form, new TreeSet<>()));
    }
  }
}
