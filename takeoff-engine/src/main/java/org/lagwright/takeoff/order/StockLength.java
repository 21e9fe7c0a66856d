package org.lagwright.takeoff.order;

/**
 * Stock as it is bought and cut.
 *
 * @param lengthM length of one stock piece, metres, 0.001 to 100
 * @param kerfM width lost to each cut, metres, 0 to 0.05; a knife loses nothing, a saw 1 to 3 mm
 */
public record StockLength(double lengthM, double kerfM) {
  public StockLength {
    if (!(lengthM >= 0.001 && lengthM <= 100)) {
      throw new IllegalArgumentException("stock must be 0.001 to 100 m long, was " + lengthM);
    }
    if (!(kerfM >= 0 && kerfM <= 0.05)) {
      throw new IllegalArgumentException("a cut must take 0 to 0.05 m, was " + kerfM);
    }
  }
}
