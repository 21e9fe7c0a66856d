package org.lagwright.takeoff.order;

/**
 * What is sold as one piece.
 *
 * @param name in words: {@code tube of 2 m}, {@code tin of 2.5 l}
 * @param contents what it holds, in the unit of the item, above 0
 */
public record PackSize(String name, double contents) {
  public PackSize {
    if (!(contents > 0) || Double.isInfinite(contents)) {
      throw new IllegalArgumentException(name + " must hold more than nothing, was " + contents);
    }
  }

  /** How many it takes for a quantity, rounded up; rounding of the arithmetic does not count. */
  int countFor(double quantity) {
    return (int) Math.ceil(quantity / contents - 1e-9);
  }
}
