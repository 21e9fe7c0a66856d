package org.lagwright.takeoff.clearance;

import org.lagwright.takeoff.TakenElement;

/**
 * Two elements with less room between them than wanted; at least one of them is insulated.
 *
 * @param first the one that was read first
 * @param second the other one
 * @param gapM between the finished surfaces, metres; below zero where they overlap, by how much
 * @param bareGapM between the surfaces without insulation, like the gap
 * @param wantedM the gap wanted, metres
 * @param note how bodies are simpler than the elements, empty where they are not
 */
public record Clash(
    TakenElement first,
    TakenElement second,
    double gapM,
    double bareGapM,
    double wantedM,
    Cause cause,
    String note) {

  /** How much is missing, metres. */
  public double shortfallM() {
    return wantedM - gapM;
  }
}
