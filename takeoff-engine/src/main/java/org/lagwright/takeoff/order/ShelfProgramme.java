package org.lagwright.takeoff.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.takeoff.order.GuillotineNesting.Place;
import org.lagwright.takeoff.order.SheetPlanner.Rectangle;

/**
 * Cutting patterns of sheets in two stages: shelves across the sheet, rectangles side by side on
 * each shelf. Whole patterns are cut as often as the linear programme says, rounded down; what
 * remains goes into the free places and on further sheets by guillotine cuts.
 */
final class ShelfProgramme {

  /** More sizes than this are left to shelves and guillotine cuts, for the time it takes. */
  private static final int MOST_SIZES = 200;

  /** So are more sizes times millimetres of the sheet. */
  private static final long MOST_WORK = 1_000_000;

  private final int widthMm;
  private final int lengthMm;
  private final List<List<Rectangle>> bySize;
  private final List<Way> ways = new ArrayList<>();

  /** How rectangles of one size may lie: so far across the sheet, so far along it. */
  private record Way(int size, int acrossMm, int heightMm) {}

  /** Rectangles side by side; as high as the highest. */
  private record Shelf(List<Way> ways) {

    int heightMm() {
      return ways.stream().mapToInt(Way::heightMm).max().orElse(0);
    }
  }

  /** One sheet. */
  private record Layout(List<Integer> counts, List<Shelf> shelves) implements Column {

    @Override
    public int count(int size) {
      return counts.get(size);
    }
  }

  ShelfProgramme(List<Rectangle> rectangles, int widthMm, int lengthMm) {
    this.widthMm = widthMm;
    this.lengthMm = lengthMm;
    this.bySize = bySize(rectangles);
    for (int size = 0; size < bySize.size(); size++) {
      Rectangle one = bySize.get(size).get(0);
      addWay(size, one.longSideMm(), one.shortSideMm());
      if (one.longSideMm() != one.shortSideMm()) {
        addWay(size, one.shortSideMm(), one.longSideMm());
      }
    }
    ways.sort(Comparator.comparingInt(Way::heightMm));
  }

  private static List<List<Rectangle>> bySize(List<Rectangle> rectangles) {
    record Sides(int longMm, int shortMm) {}
    Map<Sides, List<Rectangle>> sizes = new LinkedHashMap<>();
    for (Rectangle r : rectangles) {
      Sides sides = new Sides(r.longSideMm(), r.shortSideMm());
      sizes.computeIfAbsent(sides, k -> new ArrayList<>()).add(r);
    }
    return List.copyOf(sizes.values());
  }

  private void addWay(int size, int acrossMm, int heightMm) {
    if (acrossMm <= widthMm && heightMm <= lengthMm) {
      ways.add(new Way(size, acrossMm, heightMm));
    }
  }

  /**
   * The sheets, empty where there are too many sizes.
   *
   * @param rest how what remains is nested
   */
  List<List<PlacedCut>> nest(GuillotineNesting rest) {
    long work = bySize.size() * (long) (widthMm + lengthMm);
    if (bySize.isEmpty() || bySize.size() > MOST_SIZES || work > MOST_WORK) {
      return List.of();
    }
    int[] demand = bySize.stream().mapToInt(List::size).toArray();
    ColumnGeneration<Layout> columns =
        new ColumnGeneration<>(demand, sizesAlone(), this::worthMost, Integer.MAX_VALUE);
    List<Deque<Rectangle>> left = new ArrayList<>();
    bySize.forEach(alike -> left.add(new ArrayDeque<>(alike)));
    Sheets sheets = new Sheets();
    columns.wholeColumns().forEach(layout -> sheets.cut(layout, left));
    List<Rectangle> remaining = left.stream().flatMap(Deque::stream).toList();
    return rest.nest(remaining, sheets.cuts, sheets.free);
  }

  private List<Layout> sizesAlone() {
    List<Layout> layouts = new ArrayList<>();
    for (int size = 0; size < bySize.size(); size++) {
      double[] prices = new double[bySize.size()];
      prices[size] = 1;
      layouts.add(worthMost(prices));
    }
    return layouts;
  }

  /** The sheet worth most at these prices: shelves as in a knapsack, each filled as one. */
  private Layout worthMost(double[] prices) {
    Knapsack row = new Knapsack(widthMm);
    Knapsack sheet = new Knapsack(lengthMm);
    double worth = 0;
    for (int i = 0; i < ways.size(); i++) {
      Way way = ways.get(i);
      row.add(i, way.acrossMm, prices[way.size]);
      boolean lastOfHeight = i == ways.size() - 1 || ways.get(i + 1).heightMm > way.heightMm;
      if (lastOfHeight && row.worth() > worth) {
        worth = row.worth();
        sheet.add(i, way.heightMm, worth);
      }
    }
    Map<Integer, Shelf> made = new TreeMap<>();
    List<Shelf> shelves = new ArrayList<>();
    sheet.fill(last -> shelves.add(made.computeIfAbsent(last, k -> shelf(k, prices))));
    return layout(shelves);
  }

  /** The shelf worth most of the first ways. */
  private Shelf shelf(int last, double[] prices) {
    Knapsack row = new Knapsack(widthMm);
    for (int i = 0; i <= last; i++) {
      row.add(i, ways.get(i).acrossMm, prices[ways.get(i).size]);
    }
    List<Way> onIt = new ArrayList<>();
    row.fill(way -> onIt.add(ways.get(way)));
    return new Shelf(onIt);
  }

  private Layout layout(List<Shelf> shelves) {
    int[] counts = new int[bySize.size()];
    shelves.forEach(shelf -> shelf.ways().forEach(way -> counts[way.size]++));
    List<Integer> boxed = new ArrayList<>();
    for (int count : counts) {
      boxed.add(count);
    }
    return new Layout(boxed, shelves);
  }

  /** Sheets as they are cut, and the places free on them. */
  private final class Sheets {

    final List<List<PlacedCut>> cuts = new ArrayList<>();
    final List<Place> free = new ArrayList<>();

    void cut(Layout layout, List<Deque<Rectangle>> left) {
      int sheet = cuts.size();
      List<PlacedCut> placed = new ArrayList<>();
      List<Place> rooms = new ArrayList<>();
      int alongMm = 0;
      for (Shelf shelf : layout.shelves()) {
        int heightMm = shelf.heightMm();
        int usedMm = 0;
        for (Way way : shelf.ways()) {
          Rectangle r = left.get(way.size).poll();
          if (r != null) {
            placed.add(r.at(usedMm, alongMm, r.widthMm() != way.acrossMm));
            int overMm = heightMm - way.heightMm;
            rooms.add(new Place(sheet, usedMm, alongMm + way.heightMm, way.acrossMm, overMm));
            usedMm += way.acrossMm;
          }
        }
        rooms.add(new Place(sheet, usedMm, alongMm, widthMm - usedMm, heightMm));
        alongMm += heightMm;
      }
      rooms.add(new Place(sheet, 0, alongMm, widthMm, lengthMm - alongMm));
      if (!placed.isEmpty()) {
        cuts.add(placed);
        rooms.stream().filter(p -> p.widthMm() > 0 && p.lengthMm() > 0).forEach(free::add);
      }
    }
  }
}
