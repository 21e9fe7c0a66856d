package org.lagwright.takeoff.price;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.order.Goods;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.pack.DataTable;

/**
 * The user's price list: a table with the columns {@code goods}, {@code unit} and {@code price}
 * and, where they matter, {@code material}, {@code boreMm}, {@code thicknessMm} and {@code
 * description}, which is not looked at.
 *
 * @param name file as shown
 * @param rows in the order of the table
 */
public record PriceList(String name, List<PriceRow> rows) {

  private static final String GOODS = "goods";
  private static final String MATERIAL = "material";
  private static final String BORE = "boremm";
  private static final String THICKNESS = "thicknessmm";
  private static final String UNIT = "unit";
  private static final String PRICE = "price";
  private static final String DESCRIPTION = "description";

  private static final Set<String> UNITS = Set.of("m", "m2", "l", "pcs", PriceRow.PACK);

  public PriceList {
    rows = List.copyOf(rows);
  }

  /**
   * The list of a table.
   *
   * @param materials ids of the known materials
   * @throws org.lagwright.takeoff.pack.PackException naming the cell that is wrong
   */
  public static PriceList of(DataTable table, Set<String> materials) {
    table.requireColumns(
        Set.of(GOODS, UNIT, PRICE), Set.of(MATERIAL, BORE, THICKNESS, DESCRIPTION));
    List<PriceRow> rows = new ArrayList<>();
    for (DataTable.Row row : table.rows()) {
      PriceRow price = row(row, materials);
      rows.stream()
          .filter(other -> isSame(other, price))
          .findFirst()
          .ifPresent(
              other -> {
                throw row.refusal(
                    PRICE, "the same goods have a price in " + other.place() + ". Keep one.");
              });
      rows.add(price);
    }
    return new PriceList(table.fileName(), rows);
  }

  private static boolean isSame(PriceRow one, PriceRow other) {
    return one.goods() == other.goods()
        && one.unit().equals(other.unit())
        && Objects.equals(one.materialId(), other.materialId())
        && Objects.equals(one.boreM(), other.boreM())
        && Objects.equals(one.thicknessM(), other.thicknessM());
  }

  private static PriceRow row(DataTable.Row row, Set<String> materials) {
    String material = row.findOneOf(MATERIAL, materials);
    String unit = row.oneOf(UNIT, UNITS);
    double price = row.number(PRICE);
    if (price < 0) {
      throw row.refusal(PRICE, "a price must not be below 0. Correct the value.");
    }
    return new PriceRow(
        goods(row),
        material,
        metres(row, BORE),
        metres(row, THICKNESS),
        unit,
        price,
        row.inWords());
  }

  private static Goods goods(DataTable.Row row) {
    String label =
        row.oneOf(
            GOODS, Arrays.stream(Goods.values()).map(Goods::label).collect(Collectors.toSet()));
    return Arrays.stream(Goods.values())
        .filter(goods -> goods.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static @Nullable Double metres(DataTable.Row row, String column) {
    Double mm = row.findNumber(column);
    if (mm != null && !(mm > 0)) {
      throw row.refusal(column, "it must be above 0 mm. Correct the value.");
    }
    return mm == null ? null : mm / 1000;
  }

  /** The row that tells most about an item, of these the one with the nearest bore. */
  public Optional<PriceRow> find(OrderItem item) {
    return rows.stream()
        .filter(row -> row.fits(item))
        .min(
            Comparator.comparing(PriceRow::detail, Comparator.reverseOrder())
                .thenComparingDouble(row -> row.boreGapM(item)));
  }
}
