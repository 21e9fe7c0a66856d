package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts pieces from stock with as few stock pieces as it can find. The better of first-fit and
 * best-fit decreasing and of a linear programme over cutting patterns is taken, so a plan is never
 * worse than first-fit decreasing. The same cuts in the same order give the same plan.
 *
 * <p>Lengths are rounded up to whole millimetres, as they are marked on site.
 */
public final class CuttingPlanner {

  private static final double MM = 0.001;

  /** Part of a millimetre that is rounding of the arithmetic and not of the length. */
  private static final double ROUNDING_MM = 1e-6;

  private CuttingPlanner() {}

  /**
   * Plans the cuts.
   *
   * @throws IllegalArgumentException if a cut is longer than the stock; cut long runs with {@link
   *     #split} first
   */
  public static CuttingPlan plan(List<Cut> cuts, StockLength stock) {
    int kerfMm = ceilMm(stock.kerfM());
    int capacityMm = (int) Math.floor(stock.lengthM() / MM + ROUNDING_MM) + kerfMm;
    List<Cut> sorted = new ArrayList<>(cuts);
    sorted.sort(Comparator.comparingDouble(Cut::lengthM).reversed());
    int[] sizes = new int[sorted.size()];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = ceilMm(sorted.get(i).lengthM()) + kerfMm;
      if (sizes[i] > capacityMm) {
        throw new IllegalArgumentException(
            "a cut of " + sorted.get(i).lengthM() + " m does not fit stock of " + stock.lengthM());
      }
    }
    BinPacking packing = BinPacking.best(sizes, capacityMm);
    return new CuttingPlan(
        stock,
        packing.bins().stream().map(bin -> piece(bin, sorted, stock)).toList(),
        packing.lowerBound());
  }

  /** A run longer than the stock as full stock lengths and the rest. */
  public static List<Cut> split(Cut run, StockLength stock) {
    List<Cut> cuts = new ArrayList<>();
    double leftM = run.lengthM();
    while (leftM > stock.lengthM() + ROUNDING_MM * MM) {
      cuts.add(new Cut(run.purpose(), stock.lengthM(), run.element()));
      leftM -= stock.lengthM();
    }
    cuts.add(new Cut(run.purpose(), leftM, run.element()));
    return cuts;
  }

  private static StockPiece piece(List<Integer> bin, List<Cut> sorted, StockLength stock) {
    List<Cut> cuts = bin.stream().map(sorted::get).toList();
    double usedM = cuts.stream().mapToDouble(Cut::lengthM).sum();
    double lostM = (cuts.size() - 1) * stock.kerfM();
    double restM = stock.lengthM() - usedM - lostM;
    return new StockPiece(cuts, restM <= stock.kerfM() ? 0 : restM - stock.kerfM());
  }

  private static int ceilMm(double lengthM) {
    return (int) Math.ceil(lengthM / MM - ROUNDING_MM);
  }
}
