package org.lagwright.takeoff.order;

import java.util.List;

/**
 * One stock piece and the cuts made from it, longest first.
 *
 * @param cuts at least one
 * @param restM what is left over, metres, 0 or more
 */
public record StockPiece(List<Cut> cuts, double restM) {
  public StockPiece {
    cuts = List.copyOf(cuts);
  }
}
