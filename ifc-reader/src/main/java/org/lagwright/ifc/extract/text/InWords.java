package org.lagwright.ifc.extract.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.lagwright.ifc.model.Section;

/** Sizes, lengths, angles and what a file says, as findings and texts show them. */
public final class InWords {

  /** Letters of a text that are shown. */
  private static final int QUOTED = 80;

  private InWords() {}

  /** A section in words: {@code 60.3 mm}, {@code 300 x 200 mm}. */
  public static String section(Section section) {
    if (section instanceof Section.Round r) {
      return mm(r.outsideDiameterM()) + " mm";
    }
    if (section instanceof Section.Rectangular r) {
      return mm(r.widthM()) + " x " + mm(r.heightM()) + " mm";
    }
    Section.Oval oval = (Section.Oval) section;
    return mm(oval.widthM()) + " x " + mm(oval.heightM()) + " mm oval";
  }

  /** A length in words: {@code 60.3 mm}. */
  public static String millimetres(double lengthM) {
    return mm(lengthM) + " mm";
  }

  /** Several things that are to be said of one, as a sentence without its full stop. */
  public static String sentence(List<String> said) {
    String all = String.join("; ", said);
    return all.isEmpty() ? all : Character.toUpperCase(all.charAt(0)) + all.substring(1);
  }

  /** A text of a file, in one line and not longer than a finding can show. */
  public static String quoted(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return line.length() <= QUOTED ? line : line.substring(0, QUOTED) + " ...";
  }

  private static String mm(double lengthM) {
    return rounded(lengthM * 1000, 1);
  }

  /** An angle in words: {@code 22.5}. */
  public static String degrees(double angleDeg) {
    return rounded(angleDeg, 1);
  }

  /** A length in words: {@code 1.234}. */
  public static String metres(double lengthM) {
    return rounded(lengthM, 3);
  }

  /** What {@code %.3f} gives, without its cost where rounding is beyond doubt. */
  private static String rounded(double value, int decimals) {
    double shifted = value * (decimals == 1 ? 10 : 1000);
    double whole = Math.floor(shifted);
    if (!(shifted >= 0 && shifted < 1e12) || Math.abs(shifted - whole - 0.5) < 1e-3) {
      return Double.isFinite(value)
          ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
          : Double.toString(value);
    }
    String digits = Long.toString((long) (shifted - whole > 0.5 ? whole + 1 : whole));
    String padded =
        digits.length() > decimals ? digits : "0".repeat(decimals + 1 - digits.length()) + digits;
    int point = padded.length() - decimals;
    return padded.substring(0, point) + "." + padded.substring(point);
  }
}
