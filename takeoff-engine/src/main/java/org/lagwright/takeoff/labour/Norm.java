package org.lagwright.takeoff.labour;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.measure.Envelope;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One labour norm.
 *
 * @param id names the row: {@code tube-dn50}
 * @param item what it is for: {@code tube}, {@code sheet}, {@code section}, {@code jacket}, the
 *     label of a form, or {@code fitting} for every form that has no row of its own
 * @param on {@code pipe} or {@code duct}; null for both
 * @param material material family; null for all
 * @param upToM sizes up to this, included, metres: diameter of the bare pipe, longest side of a
 *     duct; null without end
 * @param upToThicknessM thickness of the layer up to this, included, metres; null without end
 * @param unit what the value means
 * @param value above 0, in that unit
 * @param withJacket true where the hours hold the jacket over the insulation already
 * @param status how far it was checked
 * @param source where it comes from
 */
public record Norm(
    String id,
    String item,
    @Nullable String on,
    @Nullable String material,
    @Nullable Double upToM,
    @Nullable Double upToThicknessM,
    Unit unit,
    double value,
    boolean withJacket,
    SourceStatus status,
    String source) {

  /** Sizes and thicknesses are compared to a hundredth of a millimetre. */
  private static final double TOLERANCE_M = 1e-5;

  public Norm {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException("a norm must be above 0, was " + value);
    }
  }

  /** What the value of a norm means. */
  public enum Unit {
    /** Hours per metre of run. */
    HOURS_PER_M("h/m"),
    /** Hours per square metre of outer surface of the layer. */
    HOURS_PER_M2("h/m2"),
    /** Hours per cubic metre of insulation. */
    HOURS_PER_M3("h/m3"),
    /** Hours per piece. */
    HOURS_PER_PIECE("h/pc"),
    /** Metres of straight work that one piece costs as much as. */
    METRES_PER_PIECE("m/pc"),
    /** Square metres of straight work that one square metre of the piece costs as much as. */
    AREA_FACTOR("m2/m2");

    private final String label;

    Unit(String label) {
      this.label = label;
    }

    /** The name used in tables: {@code h/m2}. */
    public String label() {
      return label;
    }

    /** True for hours of straight work. */
    public boolean isStraight() {
      return this == HOURS_PER_M || this == HOURS_PER_M2 || this == HOURS_PER_M3;
    }
  }

  /** True where the norm holds for work of this material, size and thickness. */
  boolean fits(boolean duct, String materialId, double sizeM, double thicknessM) {
    return (on == null || on.equals(duct ? "duct" : "pipe"))
        && (material == null || material.equals(materialId))
        && (upToM == null || sizeM <= upToM + TOLERANCE_M)
        && (upToThicknessM == null || thicknessM <= upToThicknessM + TOLERANCE_M);
  }

  /**
   * How much of the unit of a norm for straight work one metre of run is: 1, square metres of outer
   * surface, or cubic metres.
   *
   * @param bare bare section
   * @param belowM thickness of the layers below, metres
   * @param wallM thickness of this layer, metres
   */
  public double perMetre(Section bare, double belowM, double wallM) {
    Envelope outer = Envelope.around(bare, belowM + wallM);
    return switch (unit) {
      case HOURS_PER_M -> 1;
      case HOURS_PER_M2 -> outer.outerPerimeterM();
      case HOURS_PER_M3 -> outer.ringAreaM2() - Envelope.around(bare, belowM).ringAreaM2();
      default -> throw new IllegalStateException(id + " is no norm for straight work");
    };
  }

  /** The norm in words: {@code 0.22 h/m}. */
  public String inWords() {
    String text = String.format(Locale.ROOT, "%.4f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "") + " " + unit.label();
  }
}
