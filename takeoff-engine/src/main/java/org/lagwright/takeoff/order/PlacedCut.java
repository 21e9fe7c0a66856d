package org.lagwright.takeoff.order;

/**
 * A rectangle where it lies on its sheet.
 *
 * @param cut what is cut
 * @param acrossM distance of its corner from the long edge of the sheet, metres
 * @param alongM distance of its corner from the end of the sheet, metres
 * @param turned true where its length lies across the sheet
 */
public record PlacedCut(SheetCut cut, double acrossM, double alongM, boolean turned) {

  /** How far it reaches across the sheet, metres. */
  public double widthM() {
    return turned ? cut.lengthM() : cut.widthM();
  }

  /** How far it reaches along the sheet, metres. */
  public double lengthM() {
    return turned ? cut.widthM() : cut.lengthM();
  }
}
