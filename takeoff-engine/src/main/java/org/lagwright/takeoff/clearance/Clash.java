package org.lagwright.takeoff.clearance;

import org.lagwright.takeoff.TakenElement;

/**
 * An element and a neighbour with less room between them than wanted; at least one of them is
 * insulated.
 *
 * @param first of two elements the one that was read first; the insulated one beside the building
 * @param second the other one
 * @param gapM between the finished surfaces, metres; below zero where they overlap, by how much
 * @param bareGapM between the surfaces without insulation, like the gap
 * @param wantedM the gap wanted, metres
 * @param note how bodies are simpler than the elements, empty where they are not
 */
public record Clash(
    TakenElement first,
    Neighbour second,
    double gapM,
    double bareGapM,
    double wantedM,
    Cause cause,
    String note) {

  /** Notes of both sides as one, without the empty ones. */
  static String note(String first, String second) {
    return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
  }

  /** What to do, one sentence. */
  public String suggestion() {
    return second instanceof Neighbour.Part && gapM < 0
        ? "Ask for an opening that holds the insulation, or move the element."
        : cause.suggestion();
  }

  /** How much is missing, metres. */
  public double shortfallM() {
    return wantedM - gapM;
  }
}
