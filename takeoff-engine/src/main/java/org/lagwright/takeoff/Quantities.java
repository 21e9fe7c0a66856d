package org.lagwright.takeoff;

/**
 * What one insulated element contributes.
 *
 * @param lengthM length along the centre line in metres; 0 for items counted by piece
 * @param pieces 1 for items counted by piece, else 0
 * @param outerAreaM2 outer surface of the insulation along the centre line, square metres; 0 where
 *     the geometry does not allow it
 * @param volumeM3 volume of insulation, cubic metres; 0 where the geometry does not allow it
 */
public record Quantities(double lengthM, int pieces, double outerAreaM2, double volumeM3) {

  /** Contributes nothing. */
  public static final Quantities NONE = new Quantities(0, 0, 0, 0);

  /** Sum of two. */
  public Quantities plus(Quantities other) {
    return new Quantities(
        lengthM + other.lengthM,
        pieces + other.pieces,
        outerAreaM2 + other.outerAreaM2,
        volumeM3 + other.volumeM3);
  }
}
