package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays rectangles on as few sheets as it can find: shelves filled first-fit by falling height,
 * several guillotine heuristics (best area fit and best short side fit, rectangles falling by area
 * and by long side, cuts along either axis: Jylänki, A thousand ways to pack the bin, 2010; from
 * memory), and patterns of shelves by a linear programme. The best of them is taken, so a plan is
 * never worse than first-fit decreasing height. Every cut goes from edge to edge of what is left,
 * as a knife does. The same rectangles in the same order give the same plan.
 *
 * <p>Sides are rounded up to whole millimetres, as they are marked on site.
 */
public final class SheetPlanner {

  private static final double MM = 0.001;

  /** Part of a millimetre that is rounding of the arithmetic and not of the length. */
  private static final double ROUNDING_MM = 1e-6;

  /** Above so many rectangles only one guillotine heuristic is tried, for the time it takes. */
  private static final int MANY = 2000;

  private SheetPlanner() {}

  /**
   * Plans the cuts.
   *
   * @throws IllegalArgumentException if a rectangle fits the sheet in no direction; cut large ones
   *     with {@link #split} first
   */
  public static SheetPlan plan(List<SheetCut> cuts, SheetSize size) {
    List<Rectangle> rectangles = new ArrayList<>();
    int widthMm = floorMm(size.widthM());
    int lengthMm = floorMm(size.lengthM());
    for (SheetCut cut : cuts) {
      Rectangle rectangle = Rectangle.of(cut, rectangles.size());
      if (!rectangle.fits(widthMm, lengthMm)) {
        throw new IllegalArgumentException(
            cut.purpose()
                + " of "
                + cut.widthM()
                + " x "
                + cut.lengthM()
                + " does not fit a "
                + size.inWords());
      }
      rectangles.add(rectangle);
    }
    int bound = lowerBound(rectangles, widthMm, lengthMm);
    return new SheetPlan(size, best(rectangles, size, widthMm, lengthMm, bound), bound);
  }

  private static List<List<PlacedCut>> best(
      List<Rectangle> rectangles, SheetSize size, int widthMm, int lengthMm, int bound) {
    List<List<PlacedCut>> best = new ShelfNesting(widthMm, lengthMm).nest(rectangles);
    List<GuillotineNesting> ways = GuillotineNesting.ways(widthMm, lengthMm);
    for (GuillotineNesting way : ways) {
      boolean enough = rectangles.size() > MANY && way.isCostly();
      List<List<PlacedCut>> nested = enough ? best : way.nest(rectangles);
      if (isBetter(size, nested, best)) {
        best = nested;
      }
    }
    if (best.size() > bound) {
      List<List<PlacedCut>> byShelves =
          new ShelfProgramme(rectangles, widthMm, lengthMm).nest(ways.get(0));
      if (!byShelves.isEmpty() && isBetter(size, byShelves, best)) {
        best = byShelves;
      }
    }
    return best;
  }

  /** Fewer sheets, or as many with longer rests. */
  private static boolean isBetter(
      SheetSize size, List<List<PlacedCut>> one, List<List<PlacedCut>> other) {
    if (one.size() != other.size()) {
      return one.size() < other.size();
    }
    return restsM(size, one) > restsM(size, other) + 1e-9;
  }

  private static double restsM(SheetSize size, List<List<PlacedCut>> sheets) {
    SheetPlan plan = new SheetPlan(size, sheets, 0);
    return sheets.stream().mapToDouble(plan::restM).max().orElse(0);
  }

  /**
   * By area; by the rectangles of which no two fit one sheet; and by those wider than half the
   * sheet however they lie, which can only lie behind each other.
   */
  private static int lowerBound(List<Rectangle> rectangles, int widthMm, int lengthMm) {
    long areaMm2 = 0;
    int alone = 0;
    List<Integer> behindEachOther = new ArrayList<>();
    for (Rectangle r : rectangles) {
      areaMm2 += (long) r.widthMm() * r.lengthMm();
      if (r.fillsMoreThanHalf(widthMm, lengthMm)) {
        alone++;
      }
      if (2 * r.shortSideMm() > widthMm) {
        behindEachOther.add(r.longSideMm() <= widthMm ? r.shortSideMm() : r.longSideMm());
      }
    }
    behindEachOther.sort(Comparator.reverseOrder());
    int[] alongMm = behindEachOther.stream().mapToInt(Integer::intValue).toArray();
    int behind = BinPacking.largeItemBound(alongMm, lengthMm);
    long sheetMm2 = (long) widthMm * lengthMm;
    return (int) Math.max(Math.max(alone, behind), (areaMm2 + sheetMm2 - 1) / sheetMm2);
  }

  /**
   * A rectangle larger than the sheet as full strips and the rest, in the direction that takes
   * fewer pieces; any other as it is.
   */
  public static List<SheetCut> split(SheetCut cut, SheetSize size) {
    int upright = parts(cut.widthM(), size.widthM()) * parts(cut.lengthM(), size.lengthM());
    int turned = parts(cut.widthM(), size.lengthM()) * parts(cut.lengthM(), size.widthM());
    boolean turn = turned < upright;
    double mostWideM = turn ? size.lengthM() : size.widthM();
    double mostLongM = turn ? size.widthM() : size.lengthM();
    List<SheetCut> cuts = new ArrayList<>();
    for (double widthM : strips(cut.widthM(), mostWideM)) {
      for (double lengthM : strips(cut.lengthM(), mostLongM)) {
        cuts.add(new SheetCut(cut.purpose(), widthM, lengthM, cut.element()));
      }
    }
    return cuts;
  }

  private static List<Double> strips(double sideM, double mostM) {
    List<Double> strips = new ArrayList<>();
    int parts = parts(sideM, mostM);
    for (int i = 0; i < parts; i++) {
      strips.add(i < parts - 1 ? mostM : sideM - mostM * (parts - 1));
    }
    return strips;
  }

  private static int parts(double sideM, double mostM) {
    return (int) Math.max(1, Math.ceil(sideM / mostM - ROUNDING_MM * MM));
  }

  private static int floorMm(double lengthM) {
    return (int) Math.floor(lengthM / MM + ROUNDING_MM);
  }

  private static int ceilMm(double lengthM) {
    return (int) Math.ceil(lengthM / MM - ROUNDING_MM);
  }

  /** A cut in whole millimetres. */
  record Rectangle(SheetCut cut, int number, int widthMm, int lengthMm) {

    static final Comparator<Rectangle> BY_AREA =
        Comparator.<Rectangle>comparingLong(r -> -(long) r.widthMm * r.lengthMm)
            .thenComparing(r -> -r.longSideMm())
            .thenComparing(Rectangle::number);
    static final Comparator<Rectangle> BY_LONG_SIDE =
        Comparator.<Rectangle>comparingInt(r -> -r.longSideMm())
            .thenComparing(r -> -r.shortSideMm())
            .thenComparing(Rectangle::number);

    static Rectangle of(SheetCut cut, int number) {
      return new Rectangle(cut, number, ceilMm(cut.widthM()), ceilMm(cut.lengthM()));
    }

    int longSideMm() {
      return Math.max(widthMm, lengthMm);
    }

    int shortSideMm() {
      return Math.min(widthMm, lengthMm);
    }

    boolean fits(int sheetWidthMm, int sheetLengthMm) {
      return widthMm <= sheetWidthMm && lengthMm <= sheetLengthMm
          || lengthMm <= sheetWidthMm && widthMm <= sheetLengthMm;
    }

    /** True where it takes more than half of both sides of the sheet, however it lies. */
    boolean fillsMoreThanHalf(int sheetWidthMm, int sheetLengthMm) {
      boolean upright = 2 * widthMm > sheetWidthMm && 2 * lengthMm > sheetLengthMm;
      boolean turned = 2 * lengthMm > sheetWidthMm && 2 * widthMm > sheetLengthMm;
      boolean canStand = widthMm <= sheetWidthMm && lengthMm <= sheetLengthMm;
      boolean canTurn = lengthMm <= sheetWidthMm && widthMm <= sheetLengthMm;
      return (!canStand || upright) && (!canTurn || turned);
    }

    PlacedCut at(int acrossMm, int alongMm, boolean turned) {
      return new PlacedCut(cut, acrossMm * MM, alongMm * MM, turned);
    }
  }
}
