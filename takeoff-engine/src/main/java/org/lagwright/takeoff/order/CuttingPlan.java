package org.lagwright.takeoff.order;

import java.util.List;

/**
 * How to cut pieces from stock.
 *
 * @param stock the stock
 * @param pieces the stock pieces used, with their cuts
 * @param lowerBound number of stock pieces that no plan can do with less than
 */
public record CuttingPlan(StockLength stock, List<StockPiece> pieces, int lowerBound) {
  public CuttingPlan {
    pieces = List.copyOf(pieces);
    if (lowerBound > pieces.size()) {
      throw new IllegalArgumentException(
          "a plan of " + pieces.size() + " pieces beats its lower bound " + lowerBound);
    }
  }

  /** Stock pieces more than the bound: 0 where the plan is proven to be the best. */
  public int gap() {
    return pieces.size() - lowerBound;
  }

  /** Length of all cuts, metres. */
  public double cutLengthM() {
    return pieces.stream().flatMap(piece -> piece.cuts().stream()).mapToDouble(Cut::lengthM).sum();
  }

  /** Length bought, metres. */
  public double boughtLengthM() {
    return pieces.size() * stock.lengthM();
  }

  /** Length of all rests that are at least so long, metres: offcuts that can be used again. */
  public double restsFromM(double leastM) {
    return pieces.stream().mapToDouble(StockPiece::restM).filter(rest -> rest >= leastM).sum();
  }

  /** Part of the bought length that is not used, 0 to 1; 0 where nothing is bought. */
  public double wasteShare() {
    return pieces.isEmpty() ? 0 : 1 - cutLengthM() / boughtLengthM();
  }
}
