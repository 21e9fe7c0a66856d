package org.lagwright.takeoff.order;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;

/**
 * A rectangle to be cut from sheet: a panel, or what a shaped piece needs round it.
 *
 * @param purpose what it is for, in words
 * @param widthM metres, above 0
 * @param lengthM metres, above 0
 * @param element the element it is for, null where it is for none
 */
public record SheetCut(
    String purpose, double widthM, double lengthM, @Nullable ElementKey element) {

  /** A rectangle for no element. */
  public SheetCut(String purpose, double widthM, double lengthM) {
    this(purpose, widthM, lengthM, null);
  }

  public SheetCut {
    if (!(widthM > 0 && lengthM > 0) || Double.isInfinite(widthM) || Double.isInfinite(lengthM)) {
      throw new IllegalArgumentException(purpose + ": no cut of " + widthM + " x " + lengthM);
    }
  }

  /** Area, square metres. */
  public double areaM2() {
    return widthM * lengthM;
  }
}
