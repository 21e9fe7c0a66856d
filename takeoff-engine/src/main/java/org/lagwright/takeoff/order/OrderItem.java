package org.lagwright.takeoff.order;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One thing to buy. Quantities are in {@link #unit}; gross = net + waste + allowance, and bought is
 * gross rounded up to whole packs.
 *
 * @param id stable within one run: {@code O001}
 * @param goods what it is
 * @param materialId material family of insulation, null for what is no insulation
 * @param boreM bore of tube, section or insert, metres; 0 for all others
 * @param thicknessM wall or thickness, metres; 0 where it has none
 * @param description in words, as it is asked for
 * @param unit {@code m}, {@code m2}, {@code l}, {@code pcs}
 * @param netQuantity what ends up on the pipes
 * @param wasteQuantity what is cut off and not usable, computed from the plan; 0 where there is no
 *     plan
 * @param allowanceQuantity what the settings add on top
 * @param pack how it is sold
 * @param packs whole packs to buy
 * @param elements the elements it is for
 * @param rule how the quantity came about, in words
 * @param source where the rule and its figures come from
 * @param status how far that was checked
 */
public record OrderItem(
    String id,
    Goods goods,
    @Nullable String materialId,
    double boreM,
    double thicknessM,
    String description,
    String unit,
    double netQuantity,
    double wasteQuantity,
    double allowanceQuantity,
    PackSize pack,
    int packs,
    List<ElementKey> elements,
    String rule,
    String source,
    SourceStatus status) {

  public OrderItem {
    elements = List.copyOf(elements);
    requireQuantity(netQuantity, id);
    requireQuantity(wasteQuantity, id);
    requireQuantity(allowanceQuantity, id);
    double grossQuantity = netQuantity + wasteQuantity + allowanceQuantity;
    if (packs * pack.contents() < grossQuantity - 1e-6 * Math.max(1, grossQuantity)) {
      throw new IllegalArgumentException(
          id + ": " + packs + " x " + pack + " do not hold " + grossQuantity);
    }
  }

  private static void requireQuantity(double quantity, String id) {
    if (!(quantity >= 0) || Double.isInfinite(quantity)) {
      throw new IllegalArgumentException(id + ": no quantity: " + quantity);
    }
  }

  /** Net, waste and allowance. */
  public double grossQuantity() {
    return netQuantity + wasteQuantity + allowanceQuantity;
  }

  /** Whole packs, in the unit. */
  public double boughtQuantity() {
    return packs * pack.contents();
  }

  /** What is left over and usable: bought less gross, 0 or more. */
  public double spareQuantity() {
    return Math.max(0, boughtQuantity() - grossQuantity());
  }
}
