package org.lagwright.ifc.extract;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** Sizes as people write them, and how close two sizes must be to count as one. */
final class Sizes {

  /** Two readings of one length: within a millimetre, or a thousandth of it. */
  private static final double LENGTH_TOLERANCE_M = 0.001;

  private static final double LENGTH_TOLERANCE = 0.001;

  /** Two readings of one cross-section: within a millimetre, or a fiftieth of it. */
  private static final double SECTION_TOLERANCE_M = 0.001;

  private static final double SECTION_TOLERANCE = 0.02;

  private static final double ANGLE_TOLERANCE_DEG = 0.5;

  private static final Pattern DN = Pattern.compile("\\bDN\\s?(\\d{1,4})\\b");
  private static final Pattern SIDES =
      Pattern.compile("(?<![\\d.,])(\\d{2,4})\\s?(?:mm)?\\s?[xX\u00D7]\\s?(\\d{2,4})(?![\\d.,])");
  private static final Pattern DIAMETER =
      Pattern.compile("(?:\\bd\\s?=\\s?|[\u00D8\u00F8\u2300]\\s?)(\\d{2,4}(?:[.,]\\d+)?)");
  private static final Pattern ANGLE =
      Pattern.compile("(?<![\\d.,])(\\d{1,3}(?:[.,]\\d+)?)\\s?(?:\u00B0|deg|grad)");

  private Sizes() {}

  static boolean sameLength(double aM, double bM) {
    return Math.abs(aM - bM) <= Math.max(LENGTH_TOLERANCE_M, LENGTH_TOLERANCE * Math.max(aM, bM));
  }

  static boolean sameAngle(double aDeg, double bDeg) {
    return Math.abs(aDeg - bDeg) <= ANGLE_TOLERANCE_DEG;
  }

  /** Same shape and about the same sides; width and height may be swapped. */
  static boolean sameSection(Section a, Section b) {
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

  private static boolean samePair(double a, double b, double c, double d) {
    return (sameSide(a, c) && sameSide(b, d)) || (sameSide(a, d) && sameSide(b, c));
  }

  private static boolean sameSide(double aM, double bM) {
    return Math.abs(aM - bM) <= Math.max(SECTION_TOLERANCE_M, SECTION_TOLERANCE * Math.max(aM, bM));
  }

  /** The first nominal diameter in a text, such as 80 in {@code DN80/50}. */
  static Optional<Integer> dn(String text) {
    Matcher m = DN.matcher(text);
    return m.find() ? Optional.of(Integer.parseInt(m.group(1))) : Optional.empty();
  }

  /** Two sides in millimetres as in {@code 400x1000}. */
  static Optional<Section> sides(String text) {
    Matcher m = SIDES.matcher(text);
    return m.find()
        ? Optional.of(
            new Section.Rectangular(
                Double.parseDouble(m.group(1)) / 1000, Double.parseDouble(m.group(2)) / 1000))
        : Optional.empty();
  }

  /** A diameter in millimetres as in {@code d=300 mm}. */
  static Optional<Section> diameter(String text) {
    Matcher m = DIAMETER.matcher(text);
    return m.find()
        ? Optional.of(new Section.Round(Double.parseDouble(m.group(1).replace(',', '.')) / 1000))
        : Optional.empty();
  }

  /** An angle in degrees as in {@code Bend 45°}; only what a bend can have. */
  static Optional<Double> angleDeg(String text) {
    Matcher m = ANGLE.matcher(text);
    while (m.find()) {
      double angle = Double.parseDouble(m.group(1).replace(',', '.'));
      if (angle > 0 && angle <= 180) {
        return Optional.of(angle);
      }
    }
    return Optional.empty();
  }

  /**
   * The section to a tenth of a micrometre. Coordinates carry noise in the last digits, and equal
   * pipes must come out equal.
   */
  static Section withoutNoise(Section section) {
    if (section instanceof Section.Round r) {
      return new Section.Round(withoutNoise(r.outsideDiameterM()));
    }
    if (section instanceof Section.Rectangular r) {
      return new Section.Rectangular(withoutNoise(r.widthM()), withoutNoise(r.heightM()));
    }
    Section.Oval oval = (Section.Oval) section;
    return new Section.Oval(withoutNoise(oval.widthM()), withoutNoise(oval.heightM()));
  }

  static @Nullable Measured<Section> withoutNoise(@Nullable Measured<Section> measured) {
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

  /** A section in words: {@code 60.3 mm}, {@code 300 x 200 mm}. */
  static String inWords(Section section) {
    if (section instanceof Section.Round r) {
      return mm(r.outsideDiameterM()) + " mm";
    }
    if (section instanceof Section.Rectangular r) {
      return mm(r.widthM()) + " x " + mm(r.heightM()) + " mm";
    }
    Section.Oval oval = (Section.Oval) section;
    return mm(oval.widthM()) + " x " + mm(oval.heightM()) + " mm oval";
  }

  private static String mm(double lengthM) {
    return String.format(Locale.ROOT, "%.1f", lengthM * 1000);
  }

  /** A length in words: {@code 1.234}. */
  static String metres(double lengthM) {
    return String.format(Locale.ROOT, "%.3f", lengthM);
  }
}
