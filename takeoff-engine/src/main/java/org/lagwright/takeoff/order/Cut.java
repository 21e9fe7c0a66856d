package org.lagwright.takeoff.order;

/**
 * A piece to be cut from stock.
 *
 * @param purpose what it is for, in words or as a template number
 * @param lengthM length along the tube, metres, above 0
 */
public record Cut(String purpose, double lengthM) {
  public Cut {
    if (!(lengthM > 0) || Double.isInfinite(lengthM)) {
      throw new IllegalArgumentException("a cut must be longer than 0 m, was " + lengthM);
    }
  }
}
