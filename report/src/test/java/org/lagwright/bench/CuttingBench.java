package org.lagwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.lagwright.takeoff.order.Cut;
import org.lagwright.takeoff.order.CuttingPlan;
import org.lagwright.takeoff.order.CuttingPlanner;
import org.lagwright.takeoff.order.PlacedCut;
import org.lagwright.takeoff.order.SheetCut;
import org.lagwright.takeoff.order.SheetPlan;
import org.lagwright.takeoff.order.SheetPlanner;
import org.lagwright.takeoff.order.SheetSize;
import org.lagwright.takeoff.order.StockLength;
import org.lagwright.takeoff.order.StockPiece;

/**
 * Plans the cuts of many pieces, proves each plan right, and prints the time it took: every piece
 * once, no tube over its length, no piece of sheet over its edges or another, no more stock than
 * first-fit decreasing takes.
 */
public final class CuttingBench {

  private static final int PIECES = 10_000;
  private static final double LIMIT_S = 10;
  private static final double MM = 0.001;
  private static final long SEED = 1;

  private CuttingBench() {}

  /**
   * Runs it; ends with exit code 1 where a plan is wrong or slow.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    boolean met = true;
    System.out.printf(Locale.ROOT, "Cutting plans of %d pieces, seed %d%n", PIECES, SEED);
    for (int lengths : new int[] {40, 140, 390, PIECES}) {
      met &= tubes(lengths + (lengths == PIECES ? " random lengths" : " lengths"), cuts(lengths));
    }
    met &= tubes("threes that fill a tube", threesThatFillATube());
    for (int sizes : new int[] {40, 190, PIECES}) {
      met &= sheets(sizes, new SheetSize("sheet", 1, 2));
    }
    for (int sizes : new int[] {40, 110, PIECES}) {
      met &= sheets(sizes, new SheetSize("roll", 1, 8));
    }
    System.exit(met ? 0 : 1);
  }

  private static List<Cut> cuts(int lengths) {
    Random random = new Random(SEED);
    List<Double> choices = new ArrayList<>();
    for (int i = 0; i < lengths; i++) {
      choices.add((20 + random.nextInt(1980)) * MM);
    }
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < PIECES; i++) {
      cuts.add(new Cut("c" + i, choices.get(random.nextInt(lengths))));
    }
    return cuts;
  }

  /**
   * Where first fit is far from the best: 150 sets of three lengths that fill a tube with its cuts.
   */
  private static List<Cut> threesThatFillATube() {
    Random random = new Random(SEED);
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; cuts.size() < PIECES; i++) {
      Random set = new Random(random.nextInt(150));
      int first = 600 + set.nextInt(250);
      int second = 500 + set.nextInt(250);
      cuts.add(new Cut("a" + i, first * MM));
      cuts.add(new Cut("b" + i, second * MM));
      cuts.add(new Cut("c" + i, (1994 - first - second) * MM));
    }
    return cuts;
  }

  private static boolean tubes(String what, List<Cut> cuts) {
    StockLength stock = new StockLength(2, 0.003);
    long start = System.nanoTime();
    CuttingPlan plan = CuttingPlanner.plan(cuts, stock);
    double seconds = (System.nanoTime() - start) / 1e9;
    proveTubes(cuts, plan);
    int firstFit = firstFit(cuts, stock);
    if (plan.pieces().size() > firstFit) {
      throw new IllegalStateException(plan.pieces().size() + " tubes, first fit " + firstFit);
    }
    return print(
        "tubes, " + what,
        plan.pieces().size(),
        plan.lowerBound(),
        "first fit " + firstFit,
        seconds);
  }

  private static boolean print(
      String what, int bought, int bound, String otherwise, double seconds) {
    boolean met = seconds <= LIMIT_S;
    System.out.printf(
        Locale.ROOT,
        "  %-28s %6d bought, bound %6d, gap %4d, %s, %7.2f s, limit %.0f s %s%n",
        what,
        bought,
        bound,
        bought - bound,
        otherwise,
        seconds,
        LIMIT_S,
        met ? "met" : "NOT MET");
    return met;
  }

  private static void proveTubes(List<Cut> cuts, CuttingPlan plan) {
    Map<String, Integer> seen = new HashMap<>();
    for (StockPiece piece : plan.pieces()) {
      double usedM = piece.cuts().stream().mapToDouble(Cut::lengthM).sum();
      double lostM = (piece.cuts().size() - 1) * plan.stock().kerfM();
      if (usedM + lostM > plan.stock().lengthM() + 1e-9) {
        throw new IllegalStateException("over its length: " + piece);
      }
      piece.cuts().forEach(cut -> seen.merge(cut.purpose(), 1, Integer::sum));
    }
    proveOnce(cuts.stream().map(Cut::purpose).toList(), seen);
  }

  private static void proveOnce(List<String> wanted, Map<String, Integer> seen) {
    if (seen.size() != wanted.size()
        || !wanted.stream().allMatch(p -> seen.getOrDefault(p, 0) == 1)) {
      throw new IllegalStateException("a piece is missing or cut twice");
    }
  }

  /** First-fit decreasing, written once more and plainly: the count no plan may exceed. */
  private static int firstFit(List<Cut> cuts, StockLength stock) {
    List<Cut> falling = new ArrayList<>(cuts);
    falling.sort(Comparator.comparingDouble(Cut::lengthM).reversed());
    double[] rooms = new double[falling.size()];
    Arrays.fill(rooms, stock.lengthM() + stock.kerfM());
    int used = 0;
    for (Cut cut : falling) {
      double needed = cut.lengthM() + stock.kerfM();
      int bin = 0;
      while (rooms[bin] < needed - 1e-9) {
        bin++;
      }
      rooms[bin] -= needed;
      used = Math.max(used, bin + 1);
    }
    return used;
  }

  private static boolean sheets(int sizes, SheetSize size) {
    Random random = new Random(SEED);
    List<SheetCut> choices = new ArrayList<>();
    for (int i = 0; i < sizes; i++) {
      choices.add(
          new SheetCut("", (30 + random.nextInt(900)) * MM, (30 + random.nextInt(1900)) * MM));
    }
    List<SheetCut> cuts = new ArrayList<>();
    for (int i = 0; i < PIECES; i++) {
      SheetCut choice = choices.get(sizes == PIECES ? i : random.nextInt(sizes));
      cuts.add(new SheetCut("s" + i, choice.widthM(), choice.lengthM()));
    }
    long start = System.nanoTime();
    SheetPlan plan = SheetPlanner.plan(cuts, size);
    double seconds = (System.nanoTime() - start) / 1e9;
    Map<String, Integer> seen = new HashMap<>();
    for (List<PlacedCut> sheet : plan.sheets()) {
      proveSheet(sheet, size);
      sheet.forEach(placed -> seen.merge(placed.cut().purpose(), 1, Integer::sum));
    }
    proveOnce(cuts.stream().map(SheetCut::purpose).toList(), seen);
    int firstFit = firstFitHeight(cuts, size);
    if (plan.sheets().size() > firstFit) {
      throw new IllegalStateException(plan.sheets().size() + " sheets, first fit " + firstFit);
    }
    String what = size.form() + "s, " + (sizes == PIECES ? "random sides" : sizes + " sizes");
    return print(what, plan.sheets().size(), plan.lowerBound(), "first fit " + firstFit, seconds);
  }

  /** First-fit decreasing height, written once more and plainly: the count no plan may exceed. */
  private static int firstFitHeight(List<SheetCut> cuts, SheetSize size) {
    List<double[]> lying = new ArrayList<>();
    for (SheetCut cut : cuts) {
      double longM = Math.max(cut.widthM(), cut.lengthM());
      double shortM = Math.min(cut.widthM(), cut.lengthM());
      lying.add(
          longM <= size.widthM() ? new double[] {longM, shortM} : new double[] {shortM, longM});
    }
    lying.sort(Comparator.<double[]>comparingDouble(r -> -r[1]).thenComparingDouble(r -> -r[0]));
    List<double[]> shelves = new ArrayList<>();
    List<Double> alongM = new ArrayList<>();
    for (double[] r : lying) {
      double[] shelf = null;
      for (int i = 0; i < shelves.size() && shelf == null; i++) {
        shelf = shelves.get(i)[0] >= r[0] - 1e-9 ? shelves.get(i) : null;
      }
      if (shelf == null) {
        int sheet = 0;
        while (sheet < alongM.size() && alongM.get(sheet) + r[1] > size.lengthM() + 1e-9) {
          sheet++;
        }
        if (sheet == alongM.size()) {
          alongM.add(0.0);
        }
        alongM.set(sheet, alongM.get(sheet) + r[1]);
        shelf = new double[] {size.widthM()};
        shelves.add(shelf);
      }
      shelf[0] -= r[0];
    }
    return alongM.size();
  }

  private static void proveSheet(List<PlacedCut> sheet, SheetSize size) {
    for (PlacedCut one : sheet) {
      boolean inside =
          one.acrossM() + one.widthM() <= size.widthM() + 1e-9
              && one.alongM() + one.lengthM() <= size.lengthM() + 1e-9;
      boolean apart = sheet.stream().allMatch(other -> one == other || areApart(one, other));
      if (!inside || !apart) {
        throw new IllegalStateException("lies wrong: " + one);
      }
    }
  }

  private static boolean areApart(PlacedCut a, PlacedCut b) {
    return a.acrossM() + a.widthM() <= b.acrossM() + 1e-9
        || b.acrossM() + b.widthM() <= a.acrossM() + 1e-9
        || a.alongM() + a.lengthM() <= b.alongM() + 1e-9
        || b.alongM() + b.lengthM() <= a.alongM() + 1e-9;
  }
}
