package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.order.SheetPlanner.Rectangle;

/**
 * Shelves across the sheet, filled first-fit: rectangles by falling height, each on the first shelf
 * with room, else on a new shelf of the first sheet with room. Heights are laid along the sheet; a
 * rectangle lies with its long side across wherever it fits so.
 */
final class ShelfNesting {

  private final int widthMm;
  private final int lengthMm;

  ShelfNesting(int widthMm, int lengthMm) {
    this.widthMm = widthMm;
    this.lengthMm = lengthMm;
  }

  private static final class Shelf {
    final int sheet;
    final int alongMm;
    final int heightMm;
    int usedMm;

    Shelf(int sheet, int alongMm, int heightMm) {
      this.sheet = sheet;
      this.alongMm = alongMm;
      this.heightMm = heightMm;
    }
  }

  /** A rectangle as it lies: so much along the sheet, so much across. */
  private record Lying(Rectangle rectangle, boolean turned, int acrossMm, int heightMm) {}

  private Lying lying(Rectangle r) {
    boolean longAcross = r.longSideMm() <= widthMm && r.shortSideMm() <= lengthMm;
    int acrossMm = longAcross ? r.longSideMm() : r.shortSideMm();
    int heightMm = longAcross ? r.shortSideMm() : r.longSideMm();
    return new Lying(r, r.widthMm() != acrossMm, acrossMm, heightMm);
  }

  List<List<PlacedCut>> nest(List<Rectangle> rectangles) {
    List<Lying> falling = new ArrayList<>(rectangles.stream().map(this::lying).toList());
    falling.sort(
        (a, b) ->
            a.heightMm != b.heightMm
                ? b.heightMm - a.heightMm
                : a.acrossMm != b.acrossMm
                    ? b.acrossMm - a.acrossMm
                    : a.rectangle.number() - b.rectangle.number());
    List<List<PlacedCut>> sheets = new ArrayList<>();
    List<Shelf> open = new ArrayList<>();
    List<Integer> usedAlongMm = new ArrayList<>();
    for (Lying lying : falling) {
      Shelf shelf = null;
      for (Shelf candidate : open) {
        if (candidate.usedMm + lying.acrossMm <= widthMm && lying.heightMm <= candidate.heightMm) {
          shelf = candidate;
          break;
        }
      }
      if (shelf == null) {
        shelf = newShelf(lying, sheets, usedAlongMm);
        open.add(shelf);
      }
      sheets.get(shelf.sheet).add(lying.rectangle.at(shelf.usedMm, shelf.alongMm, lying.turned));
      shelf.usedMm += lying.acrossMm;
    }
    return sheets;
  }

  private Shelf newShelf(Lying lying, List<List<PlacedCut>> sheets, List<Integer> usedAlongMm) {
    int sheet = 0;
    while (sheet < sheets.size() && usedAlongMm.get(sheet) + lying.heightMm > lengthMm) {
      sheet++;
    }
    if (sheet == sheets.size()) {
      sheets.add(new ArrayList<>());
      usedAlongMm.add(0);
    }
    Shelf shelf = new Shelf(sheet, usedAlongMm.get(sheet), lying.heightMm);
    usedAlongMm.set(sheet, shelf.alongMm + lying.heightMm);
    return shelf;
  }
}
