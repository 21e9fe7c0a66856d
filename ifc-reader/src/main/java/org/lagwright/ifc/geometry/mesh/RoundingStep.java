package org.lagwright.ifc.geometry.mesh;

import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * What the coordinates of a mesh were rounded to by who wrote them: to decimals of their unit, to
 * seven digits, or to numbers of 32 bits. The last two are coarser far from the origin, and there
 * all of a mesh is as coarse as its largest coordinate. The corners of a plane face lie off its
 * plane by about as much, which tilts small faces visibly.
 */
public final class RoundingStep {

  /** More decimals are no rounding. */
  private static final int MOST_DECIMALS = 6;

  private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};

  /** Share of a step within which a number is a multiple of it. */
  private static final double MULTIPLE = 1e-3;

  /** Finer steps tilt no face that matters. */
  private static final double LEAST_M = 5e-7;

  /**
   * Coarser steps count as this: bodies of whole centimetres are not rounded to them, and what is
   * rounded to millimetres shows its facets no longer.
   */
  private static final double USUAL_M = 1e-4;

  /** The coarsest step that counts in full: a thousandth of a foot is 0.305 mm. */
  private static final double MOST_M = 4e-4;

  /** Some write no more decimals than nine of a number in full. */
  private static final double NINE_DECIMALS = 0.6e-9;

  /** Digits that a number of 32 bits holds whatever it is. */
  private static final int DIGITS = 7;

  private int decimals;
  private double unitM;
  private double largest;
  private boolean allOfDigits = true;
  private boolean allOf32Bits = true;

  /**
   * Takes in corners as they are written, before anything turns them.
   *
   * @param cornersM in metres
   * @param fileUnitM the unit they are written in
   * @param scale of what they are mapped with
   */
  public void note(List<Vec> cornersM, double fileUnitM, double scale) {
    unitM = Math.max(unitM, fileUnitM * scale);
    for (int i = 0; i < cornersM.size() && mayBeRounded(); i++) {
      Vec corner = cornersM.get(i);
      note(corner.x() / fileUnitM);
      note(corner.y() / fileUnitM);
      note(corner.z() / fileUnitM);
    }
  }

  /** Takes in what was noted of other corners. */
  void note(RoundingStep other) {
    unitM = Math.max(unitM, other.unitM);
    decimals = Math.max(decimals, other.decimals);
    largest = Math.max(largest, other.largest);
    allOfDigits &= other.allOfDigits;
    allOf32Bits &= other.allOf32Bits;
  }

  private boolean mayBeRounded() {
    return decimals <= MOST_DECIMALS || allOfDigits || allOf32Bits;
  }

  private void note(double number) {
    while (decimals <= MOST_DECIMALS && !isMultiple(number * POWERS[decimals])) {
      decimals++;
    }
    double size = Math.abs(number);
    largest = Math.max(largest, size);
    boolean ofDigits = size == 0 || isMultiple(size / lastDigit(size));
    allOfDigits &= ofDigits;
    allOf32Bits &= ofDigits || is32Bits(size);
  }

  private static double lastDigit(double size) {
    return Math.pow(10, Math.floor(Math.log10(size)) - DIGITS + 1);
  }

  /** True for what 32 bits hold, written in full or by the fewest digits that tell which it is. */
  private static boolean is32Bits(double size) {
    float nearest = (float) size;
    double within = Math.max(NINE_DECIMALS, size * 1e-14);
    return Math.abs(size - nearest) < within
        || Math.abs(size - Double.parseDouble(Float.toString(nearest))) < within;
  }

  private static boolean isMultiple(double steps) {
    return Math.abs(steps - Math.rint(steps)) < MULTIPLE;
  }

  /** The step in metres; 0 if the coordinates are not rounded. */
  public double stepM() {
    double stepM = writtenM();
    return stepM < LEAST_M ? 0 : stepM > MOST_M ? USUAL_M : stepM;
  }

  /** What the coordinates are multiples of, metres, however coarse; 0 if of nothing. */
  double writtenM() {
    double byDecimals = decimals > MOST_DECIMALS ? 0 : 1 / POWERS[decimals];
    return unitM * Math.max(byDecimals, byLargest());
  }

  /** True of round bodies that were rounded to more than any of their facets can stand. */
  public boolean isTooCoarse() {
    return writtenM() > MOST_M;
  }

  private double byLargest() {
    if (largest == 0 || !(allOfDigits || allOf32Bits)) {
      return 0;
    }
    return allOfDigits ? lastDigit(largest) : Math.ulp((float) largest);
  }
}
