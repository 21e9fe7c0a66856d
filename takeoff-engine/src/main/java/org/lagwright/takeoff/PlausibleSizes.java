package org.lagwright.takeoff;

import java.util.Optional;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/**
 * What sizes are built at all. A file in millimetres that says metres, or the other way round,
 * would otherwise order sheets by the square kilometre.
 */
final class PlausibleSizes {

  /** Steel pipe ends at 2540 mm (EN 10220, from memory). */
  private static final double WIDEST_ROUND_M = 5;

  /** Common practice, no source: plenums and shafts of sheet metal stay below. */
  private static final double LONGEST_SIDE_M = 10;

  /** Common practice, no source: capillaries of refrigeration start at 2 mm. */
  private static final double THINNEST_M = 0.002;

  /** Common practice, no source: one piece of a model, even of a main in the ground. */
  private static final double LONGEST_PIECE_M = 2000;

  private PlausibleSizes() {}

  /**
   * What is beyond the limits.
   *
   * @param measured the size or length, in words
   * @param limit the limit it is beyond, in words
   */
  record Doubt(String measured, String limit) {}

  /** The first doubt about an element with this section; empty if there is none. */
  static Optional<Doubt> doubt(MepElement element, Section section) {
    double sideM = section.largestSideM();
    double widestM = section instanceof Section.Round ? WIDEST_ROUND_M : LONGEST_SIDE_M;
    if (sideM > widestM) {
      return Optional.of(
          new Doubt("A side of " + Show.metres(sideM), "up to " + Show.metres(widestM)));
    }
    if (sideM < THINNEST_M) {
      return Optional.of(
          new Doubt(
              "A side of " + Show.millimetres(sideM), "from " + Show.millimetres(THINNEST_M)));
    }
    Measured<Double> lengthM = element.lengthM();
    if (lengthM != null && lengthM.value() > LONGEST_PIECE_M) {
      return Optional.of(
          new Doubt(
              "A length of " + Show.metres(lengthM.value()),
              "up to " + Show.metres(LONGEST_PIECE_M)));
    }
    return Optional.empty();
  }
}
