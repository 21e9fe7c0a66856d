package org.lagwright.ifc.extract.text;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** How close two measures must be to count as one, and which of their digits count. */
public final class Tolerances {

  /** Two readings of one length: within a millimetre, or a thousandth of it. */
  private static final double LENGTH_TOLERANCE_M = 0.001;

  private static final double LENGTH_TOLERANCE = 0.001;

  /** Two readings of one cross-section: within a millimetre, or a fiftieth of it. */
  private static final double SECTION_TOLERANCE_M = 0.001;

  private static final double SECTION_TOLERANCE = 0.02;

  private static final double ANGLE_TOLERANCE_DEG = 0.5;

  private Tolerances() {}

  /** True if two lengths in metres are one within what is tolerated. */
  public static boolean sameLength(double aM, double bM) {
    return Math.abs(aM - bM) <= Math.max(LENGTH_TOLERANCE_M, LENGTH_TOLERANCE * Math.max(aM, bM));
  }

  /** True if two angles in degrees are one within what is tolerated. */
  public static boolean sameAngle(double aDeg, double bDeg) {
    return Math.abs(aDeg - bDeg) <= ANGLE_TOLERANCE_DEG;
  }

  /** Same shape and about the same sides; width and height may be swapped. */
  public static boolean sameSection(Section a, Section b) {
    if (a instanceof Section.Round r && b instanceof Section.Round s) {
      return sameSide(r.outsideDiameterM(), s.outsideDiameterM());
    }
    if (a instanceof Section.Rectangular r && b instanceof Section.Rectangular s) {
      return samePair(r.widthM(), r.heightM(), s.widthM(), s.heightM());
    }
    if (a instanceof Section.Oval r && b instanceof Section.Oval s) {
      return samePair(r.widthM(), r.heightM(), s.widthM(), s.heightM());
    }
    return false;
  }

  /**
   * True of width and height, or a size such as 500x200, of a flat oval: both are written alike.
   */
  public static boolean areSidesOf(Section written, Section oval) {
    return written instanceof Section.Rectangular r
        && oval instanceof Section.Oval s
        && samePair(r.widthM(), r.heightM(), s.widthM(), s.heightM());
  }

  private static boolean samePair(double a, double b, double c, double d) {
    return (sameSide(a, c) && sameSide(b, d)) || (sameSide(a, d) && sameSide(b, c));
  }

  private static boolean sameSide(double aM, double bM) {
    return Math.abs(aM - bM) <= Math.max(SECTION_TOLERANCE_M, SECTION_TOLERANCE * Math.max(aM, bM));
  }

  /**
   * The section to a tenth of a micrometre. Coordinates carry noise in the last digits, and equal
   * pipes must come out equal.
   */
  public static Section withoutNoise(Section section) {
    if (section instanceof Section.Round r) {
      return new Section.Round(withoutNoise(r.outsideDiameterM()));
    }
    if (section instanceof Section.Rectangular r) {
      return new Section.Rectangular(withoutNoise(r.widthM()), withoutNoise(r.heightM()));
    }
    Section.Oval oval = (Section.Oval) section;
    return new Section.Oval(withoutNoise(oval.widthM()), withoutNoise(oval.heightM()));
  }

  /** As {@link #withoutNoise(Section)}, with its source and losers. */
  public static @Nullable Measured<Section> withoutNoise(@Nullable Measured<Section> measured) {
    return measured == null
        ? null
        : new Measured<>(
            withoutNoise(measured.value()), measured.how(), measured.evidence(), measured.lost());
  }

  private static double withoutNoise(double lengthM) {
    // what is smaller than the noise itself stays as it is
    double rounded = Math.round(lengthM * 1e7) / 1e7;
    return rounded > 0 ? rounded : lengthM;
  }
}
