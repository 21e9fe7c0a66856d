package org.lagwright.takeoff.price;

import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.order.Goods;
import org.lagwright.takeoff.order.OrderItem;

/**
 * One row of a price list.
 *
 * @param goods what it is
 * @param materialId material family; null for what is no insulation, or for all
 * @param boreM bore of tube, section or insert, metres; null for all
 * @param thicknessM wall or thickness, metres; null for all
 * @param unit {@code m}, {@code m2}, {@code l}, {@code pcs}, or {@code pack} for one whole pack
 * @param price for one of that unit, in the currency of the settings, 0 or more
 * @param place where it stands: {@code prices.csv, row 12}
 */
public record PriceRow(
    Goods goods,
    @Nullable String materialId,
    @Nullable Double boreM,
    @Nullable Double thicknessM,
    String unit,
    double price,
    String place) {

  /** Unit of prices of whole packs. */
  public static final String PACK = "pack";

  /** Bores of lists are nominal: 60 for a pipe of 60.3 mm. */
  private static final double BORE_TOLERANCE_M = 0.00101;

  private static final double THICKNESS_TOLERANCE_M = 0.00051;

  public PriceRow {
    if (!(price >= 0 && Double.isFinite(price))) {
      throw new IllegalArgumentException("a price must be 0 or more, was " + price);
    }
  }

  /** True where the row is a price of this item. */
  boolean fits(OrderItem item) {
    return goods == item.goods()
        && (materialId == null || materialId.equals(item.materialId()))
        && (boreM == null || boreGapM(item) <= BORE_TOLERANCE_M)
        && (thicknessM == null || Math.abs(thicknessM - item.thicknessM()) <= THICKNESS_TOLERANCE_M)
        && (unit.equals(PACK) || unit.equals(item.unit()));
  }

  /** How far the bore lies from that of an item, metres; 0 for rows that hold for all bores. */
  double boreGapM(OrderItem item) {
    return boreM == null ? 0 : Math.abs(boreM - item.boreM());
  }

  /** How many of material, bore and thickness the row tells: the more, the better it fits. */
  int detail() {
    return (materialId == null ? 0 : 1) + (boreM == null ? 0 : 1) + (thicknessM == null ? 0 : 1);
  }

  /** The price of one unit of an item, which may be less than a pack. */
  double perUnit(OrderItem item) {
    return unit.equals(PACK) ? price / item.pack().contents() : price;
  }
}
