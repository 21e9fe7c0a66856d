package org.lagwright.takeoff.order;

/**
 * A sheet or roll as it is bought.
 *
 * @param form {@code sheet} or {@code roll}
 * @param widthM metres, 0.001 to 100
 * @param lengthM metres, 0.001 to 100
 */
public record SheetSize(String form, double widthM, double lengthM) {
  public SheetSize {
    if (!(widthM >= 0.001 && widthM <= 100) || !(lengthM >= 0.001 && lengthM <= 100)) {
      throw new IllegalArgumentException(
          "a sheet must be 0.001 to 100 m wide and long, was " + widthM + " x " + lengthM);
    }
  }

  /** Area, square metres. */
  public double areaM2() {
    return widthM * lengthM;
  }

  /** In words: {@code roll of 1 x 8 m}. */
  public String inWords() {
    return form + " of " + ItemBook.plain(widthM) + " x " + ItemBook.plain(lengthM) + " m";
  }
}
