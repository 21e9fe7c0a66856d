package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.order.SheetPlanner.Rectangle;

/** One heuristic with cuts from edge to edge: each rectangle into the free place it fits best. */
final class GuillotineNesting {

  private final int widthMm;
  private final int lengthMm;
  private final Comparator<Rectangle> order;
  private final boolean byArea;
  private final boolean cutAlong;

  private GuillotineNesting(
      int widthMm, int lengthMm, Comparator<Rectangle> order, boolean byArea, boolean cutAlong) {
    this.widthMm = widthMm;
    this.lengthMm = lengthMm;
    this.order = order;
    this.byArea = byArea;
    this.cutAlong = cutAlong;
  }

  /** All heuristics, the one that is good as a rule first. */
  static List<GuillotineNesting> ways(int widthMm, int lengthMm) {
    List<GuillotineNesting> ways = new ArrayList<>();
    for (Comparator<Rectangle> order : List.of(Rectangle.BY_LONG_SIDE, Rectangle.BY_AREA)) {
      for (boolean byArea : new boolean[] {false, true}) {
        for (boolean cutAlong : new boolean[] {false, true}) {
          ways.add(new GuillotineNesting(widthMm, lengthMm, order, byArea, cutAlong));
        }
      }
    }
    return ways;
  }

  /** True for all but the first. */
  boolean isCostly() {
    return order != Rectangle.BY_LONG_SIDE || byArea || cutAlong;
  }

  /** A free place on a sheet. */
  record Place(int sheet, int acrossMm, int alongMm, int widthMm, int lengthMm) {}

  private record Choice(int place, boolean turned, long score) {}

  List<List<PlacedCut>> nest(List<Rectangle> rectangles) {
    return nest(rectangles, List.of(), List.of());
  }

  /**
   * Nests beside what lies on some sheets already.
   *
   * @param begun sheets with cuts
   * @param places where there is room on them
   */
  List<List<PlacedCut>> nest(
      List<Rectangle> rectangles, List<List<PlacedCut>> begun, List<Place> places) {
    List<Rectangle> sorted = new ArrayList<>(rectangles);
    sorted.sort(order);
    int leastMm = rectangles.stream().mapToInt(Rectangle::shortSideMm).min().orElse(1);
    List<List<PlacedCut>> sheets = new ArrayList<>();
    begun.forEach(sheet -> sheets.add(new ArrayList<>(sheet)));
    List<Place> free = new ArrayList<>(places);
    for (Rectangle rectangle : sorted) {
      Choice choice = best(rectangle, free);
      if (choice == null) {
        free.add(new Place(sheets.size(), 0, 0, widthMm, lengthMm));
        sheets.add(new ArrayList<>());
        choice = best(rectangle, free.subList(free.size() - 1, free.size()));
        if (choice == null) {
          throw new IllegalStateException(rectangle + " does not fit an empty sheet");
        }
        choice = new Choice(free.size() - 1, choice.turned, choice.score);
      }
      Place place = free.get(choice.place);
      free.set(choice.place, free.get(free.size() - 1));
      free.remove(free.size() - 1);
      sheets.get(place.sheet).add(rectangle.at(place.acrossMm, place.alongMm, choice.turned));
      cut(place, rectangle, choice.turned, leastMm, free);
    }
    return sheets;
  }

  private @Nullable Choice best(Rectangle r, List<Place> free) {
    Choice best = null;
    for (int i = 0; i < free.size(); i++) {
      Place place = free.get(i);
      for (int turn = 0; turn < 2; turn++) {
        int w = turn == 0 ? r.widthMm() : r.lengthMm();
        int l = turn == 0 ? r.lengthMm() : r.widthMm();
        if (w <= place.widthMm && l <= place.lengthMm) {
          long score = score(place, w, l);
          if (best == null || score < best.score) {
            best = new Choice(i, turn == 1, score);
          }
        }
      }
    }
    return best;
  }

  private long score(Place place, int w, int l) {
    long shortRest = Math.min(place.widthMm - w, place.lengthMm - l);
    long areaRest = (long) place.widthMm * place.lengthMm - (long) w * l;
    return byArea ? areaRest : shortRest * 1_000_000 + place.alongMm / 10;
  }

  /** What is left of a place beside and behind a rectangle, cut once across or once along. */
  private void cut(Place place, Rectangle r, boolean turned, int leastMm, List<Place> free) {
    int w = turned ? r.lengthMm() : r.widthMm();
    int l = turned ? r.widthMm() : r.lengthMm();
    int besideMm = place.widthMm - w;
    int behindMm = place.lengthMm - l;
    boolean along = cutAlong ? besideMm > behindMm : besideMm > 0 && behindMm == 0;
    int besideLengthMm = along ? place.lengthMm : l;
    int behindWidthMm = along ? w : place.widthMm;
    if (besideMm >= leastMm && besideLengthMm >= leastMm) {
      free.add(new Place(place.sheet, place.acrossMm + w, place.alongMm, besideMm, besideLengthMm));
    }
    if (behindMm >= leastMm && behindWidthMm >= leastMm) {
      free.add(new Place(place.sheet, place.acrossMm, place.alongMm + l, behindWidthMm, behindMm));
    }
  }
}
