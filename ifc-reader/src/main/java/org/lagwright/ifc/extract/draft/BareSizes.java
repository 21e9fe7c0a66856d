package org.lagwright.ifc.extract.draft;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.text.InchSizes;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Remembered;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.SizesInText;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * Sizes in texts that need not say their unit, as offices write them that switch its sign off:
 * {@code 24x12} may be millimetres, centimetres or inches. The unit is the one that gives the drawn
 * size; where none does, files in feet or inches mean inches, all others millimetres.
 */
public final class BareSizes {

  /** Units of figures without one, besides millimetres. */
  private enum Unit {
    INCHES("\""),
    CENTIMETRES("cm");

    private final String sign;
    private final Remembered<Optional<Section>> sides = new Remembered<>();
    private final Remembered<Optional<Section>> diameters = new Remembered<>();

    Unit(String sign) {
      this.sign = sign;
    }

    Optional<Section> sides(String text) {
      Optional<Section> known = sides.find(text);
      return known == null ? sides.keep(text, SizesInText.sides(text, sign)) : known;
    }

    Optional<Section> diameter(String text) {
      Optional<Section> known = diameters.find(text);
      return known == null ? diameters.keep(text, SizesInText.diameter(text, sign)) : known;
    }
  }

  /** Ducts in inches are wider: three of them are 76 mm. */
  private static final double NARROWEST_IN_INCHES_M = 0.075;

  /** What would be wider in inches is in millimetres, in a file in feet too. */
  private static final double WIDEST_IN_INCHES_M = 3;

  /** Likewise of the shorter side, as 100 x 100 inches are no duct. */
  private static final double DEEPEST_IN_INCHES_M = 2;

  /** No duct is narrower: the figures are in another unit. */
  public static final double NARROWEST_M = 0.04;

  /** So many millimetres of copper and plastics are as usual as so many inches of steel. */
  private static final double LEAST_DOUBTFUL_M = 0.014;

  private final boolean inches;

  /**
   * @param lengthUnitM metres in one length unit of the file
   */
  public BareSizes(double lengthUnitM) {
    this.inches = InchSizes.isUnit(lengthUnitM);
  }

  /** Two sides of a duct in a text. */
  public Optional<Section> sides(Draft duct, String text) {
    Optional<Section> mm = Sizes.sides(text);
    boolean settled =
        mm.isPresent() ? isSettled(duct, mm.get()) : !(inches && Sizes.multiplies(text));
    return settled ? mm : choose(duct, mm, Unit.INCHES.sides(text), Unit.CENTIMETRES.sides(text));
  }

  /** The diameter of a duct in a text. */
  public Optional<Section> diameter(Draft duct, String text) {
    Optional<Section> mm = Sizes.diameter(text);
    boolean settled =
        mm.isPresent() ? isSettled(duct, mm.get()) : !(inches && Sizes.mayHoldDiameter(text));
    return settled
        ? mm
        : choose(duct, mm, Unit.INCHES.diameter(text), Unit.CENTIMETRES.diameter(text));
  }

  /** The diameter of a duct for a figure without unit, which was read as millimetres. */
  public double diameterM(Draft duct, double inMmM) {
    Section mm = new Section.Round(inMmM);
    Section inch = new Section.Round(inMmM * 1000 * InchSizes.METRES_PER_INCH);
    Section cm = new Section.Round(inMmM * 10);
    return isSettled(duct, mm)
        ? inMmM
        : choose(duct, Optional.of(mm), Optional.of(inch), Optional.of(cm))
            .orElse(mm)
            .largestSideM();
  }

  /** Two sides of a duct in a text, where nothing is known of its body. */
  public static Optional<Section> sides(String text, double lengthUnitM) {
    Optional<Section> inch =
        InchSizes.isUnit(lengthUnitM) && Sizes.multiplies(text)
            ? Unit.INCHES.sides(text)
            : Optional.empty();
    return inch.isPresent() && mayBeInInches(inch.get()) ? inch : Sizes.sides(text);
  }

  /**
   * Sizes of the ends of a duct fitting as a text gives them; empty if it gives fewer than two, or
   * such as no duct has.
   */
  public List<Section> ends(Draft duct, String text) {
    List<Section> mm = Sizes.ductEnds(text);
    boolean drawn = isMeasured(duct);
    if (mm.isEmpty() && !(inches && Sizes.mayHoldEnds(text)) || areDrawn(duct, mm)) {
      return mm;
    }
    if (drawn || inches) {
      List<Section> inch = SizesInText.ends(text, Unit.INCHES.sign);
      List<Section> cm = SizesInText.ends(text, Unit.CENTIMETRES.sign);
      boolean cmDrawn = areDrawn(duct, cm);
      if (areDrawn(duct, inch) || (inches && !cmDrawn && mayBeInInches(inch))) {
        return List.copyOf(inch);
      }
      if (cmDrawn) {
        return List.copyOf(cm);
      }
    }
    return drawn || !areTooNarrow(mm) ? mm : List.of();
  }

  /** True if a size that a text gives cannot be in its unit, and no body tells the right one. */
  public static boolean isTooNarrow(Draft duct, Section section) {
    return duct.isDuct() && section.largestSideM() < NARROWEST_M && !isMeasured(duct);
  }

  private static boolean areTooNarrow(List<Section> sections) {
    for (Section section : sections) {
      if (section.largestSideM() >= NARROWEST_M) {
        return false;
      }
    }
    return true;
  }

  /**
   * The nominal size of a pipe in a text that must be in inches; 0 if there is none. An outside
   * diameter that is called so is none.
   */
  public int nominal(Draft pipe, String text) {
    boolean asked =
        (inches || isMeasured(pipe)) && Sizes.mayHoldDiameter(text) && !text.contains("OD");
    Optional<Section> inch = asked ? Unit.INCHES.diameter(text) : Optional.empty();
    int dn = inch.isEmpty() ? 0 : InchSizes.dn(inch.get().largestSideM() * 1000);
    Measured<Section> drawn = pipe.shape().section();
    if (dn == 0 || drawn == null) {
      return dn;
    }
    Optional<Section> mm = Sizes.diameter(text);
    boolean inMm = mm.isPresent() && Tolerances.sameSection(mm.get(), drawn.value());
    return !inMm && PipeSizes.mayBe(dn, drawn.value()) ? dn : 0;
  }

  /**
   * True if a pipe that is not drawn may be a wide one in inches as well as a thin one in
   * millimetres, as of 22; below 14 inches the former are common and the latter rare.
   */
  public static boolean mayBeInMm(Draft pipe, String text) {
    Optional<Section> mm = isMeasured(pipe) ? Optional.empty() : Sizes.diameter(text);
    double diameterM = mm.isEmpty() ? 0 : mm.get().largestSideM();
    return diameterM >= LEAST_DOUBTFUL_M && PipeSizes.isOutsideDiameter(diameterM);
  }

  /** True if nothing tells that a size in millimetres may be in another unit. */
  private boolean isSettled(Draft duct, Section mm) {
    return isDrawn(duct, mm) || !(inches || isMeasured(duct));
  }

  private Optional<Section> choose(
      Draft duct, Optional<Section> mm, Optional<Section> inch, Optional<Section> cm) {
    if (isDrawn(duct, inch)) {
      return inch;
    }
    if (isDrawn(duct, cm)) {
      return cm;
    }
    return inches && inch.isPresent() && mayBeInInches(inch.get()) ? inch : mm;
  }

  private static boolean mayBeInInches(List<Section> sections) {
    for (Section section : sections) {
      if (!mayBeInInches(section)) {
        return false;
      }
    }
    return sections.size() > 1;
  }

  private static boolean mayBeInInches(Section section) {
    double widestM = section.largestSideM();
    double deepestM =
        section instanceof Section.Rectangular r ? Math.min(r.widthM(), r.heightM()) : widestM;
    return widestM > NARROWEST_IN_INCHES_M
        && widestM < WIDEST_IN_INCHES_M
        && deepestM < DEEPEST_IN_INCHES_M;
  }

  private static boolean isMeasured(Draft draft) {
    return draft.shape().section() != null;
  }

  private static boolean areDrawn(Draft duct, List<Section> sections) {
    for (Section section : sections) {
      if (!isDrawn(duct, section)) {
        return false;
      }
    }
    return sections.size() > 1;
  }

  private static boolean isDrawn(Draft duct, Optional<Section> section) {
    return section.isPresent() && isDrawn(duct, section.get());
  }

  /** True if the body or one of its ends has this size; sides are those of a flat oval too. */
  private static boolean isDrawn(Draft duct, Section section) {
    Measured<Section> drawn = duct.shape().section();
    if (drawn != null && isSame(drawn.value(), section)) {
      return true;
    }
    for (ShapeEnd end : duct.shape().ends()) {
      if (isSame(end.section(), section)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(Section drawn, Section written) {
    return Tolerances.sameSection(drawn, written)
        || (drawn instanceof Section.Oval o
            && Tolerances.sameSection(new Section.Rectangular(o.widthM(), o.heightM()), written));
  }
}
