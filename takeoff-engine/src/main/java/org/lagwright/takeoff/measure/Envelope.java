package org.lagwright.takeoff.measure;

import org.lagwright.ifc.model.Section;

/**
 * The outline of insulation of one thickness round a section. Exact for insulation that follows the
 * outer surface: round corners round pipes and flat-oval ducts, square corners round rectangular
 * ducts (sheets butted at the edges).
 *
 * <p>Symbols: P girth of the bare section, t thickness. Smooth outlines: outer girth P + 2 pi t,
 * ring P t + pi t^2. Rectangles: outer girth P + 8 t, ring P t + 4 t^2. Elementary geometry.
 *
 * @param outerPerimeterM outer girth of the insulation, metres
 * @param ringAreaM2 cross-section of the insulation, square metres
 */
public record Envelope(double outerPerimeterM, double ringAreaM2) {

  private static final int CORNERS = 4;

  /**
   * The envelope of a section.
   *
   * @param thicknessM total thickness in metres, 0 or more
   */
  public static Envelope around(Section section, double thicknessM) {
    if (!(thicknessM >= 0)) {
      throw new IllegalArgumentException("thickness must not be below zero, was " + thicknessM);
    }
    double girthM = section.perimeterM();
    double cornerFactor = section instanceof Section.Rectangular ? CORNERS : Math.PI;
    return new Envelope(
        girthM + 2 * cornerFactor * thicknessM,
        girthM * thicknessM + cornerFactor * thicknessM * thicknessM);
  }

  /** The mean of two, for pieces that lead from one section to another. */
  public Envelope meanWith(Envelope other) {
    return new Envelope(
        (outerPerimeterM + other.outerPerimeterM) / 2, (ringAreaM2 + other.ringAreaM2) / 2);
  }
}
