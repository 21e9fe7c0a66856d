package org.lagwright.takeoff.compare;

import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.TakenElement;

/**
 * What insulation amounts to; a difference may be below 0.
 *
 * @param lengthM metres of straight pieces
 * @param pieces counted items
 * @param outerAreaM2 outer surface, square metres
 * @param volumeM3 insulation, cubic metres
 * @param hours hours of work
 * @param money price without tax, what belongs to the job as a whole left out; 0 without a price
 */
public record Amount(
    double lengthM, int pieces, double outerAreaM2, double volumeM3, double hours, double money) {

  /** Nothing. */
  public static final Amount NONE = new Amount(0, 0, 0, 0, 0, 0);

  static Amount of(TakenElement taken, double money) {
    Quantities q = taken.quantities();
    return new Amount(
        q.lengthM(), q.pieces(), q.outerAreaM2(), q.volumeM3(), taken.labourHours(), money);
  }

  /** Sum of two. */
  public Amount plus(Amount other) {
    return new Amount(
        lengthM + other.lengthM,
        pieces + other.pieces,
        outerAreaM2 + other.outerAreaM2,
        volumeM3 + other.volumeM3,
        hours + other.hours,
        money + other.money);
  }

  /** This without another. */
  public Amount minus(Amount other) {
    return plus(
        new Amount(
            -other.lengthM,
            -other.pieces,
            -other.outerAreaM2,
            -other.volumeM3,
            -other.hours,
            -other.money));
  }
}
