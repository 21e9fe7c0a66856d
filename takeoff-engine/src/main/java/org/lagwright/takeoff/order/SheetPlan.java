package org.lagwright.takeoff.order;

import java.util.List;

/**
 * How to cut rectangles from sheets or rolls.
 *
 * @param size what is bought
 * @param sheets the cuts on each sheet
 * @param lowerBound number of sheets that no plan can do with less than
 */
public record SheetPlan(SheetSize size, List<List<PlacedCut>> sheets, int lowerBound) {
  public SheetPlan {
    sheets = sheets.stream().map(List::copyOf).toList();
    if (lowerBound > sheets.size()) {
      throw new IllegalArgumentException(
          "a plan of " + sheets.size() + " sheets beats its lower bound " + lowerBound);
    }
  }

  /** Sheets more than the bound: 0 where the plan is proven to be the best. */
  public int gap() {
    return sheets.size() - lowerBound;
  }

  /** Area bought, square metres. */
  public double boughtAreaM2() {
    return sheets.size() * size.areaM2();
  }

  /** What is left behind the last cut of a sheet, over its whole width, metres. */
  public double restM(List<PlacedCut> sheet) {
    double usedM = sheet.stream().mapToDouble(p -> p.alongM() + p.lengthM()).max().orElse(0);
    return Math.max(0, size.lengthM() - usedM);
  }

  /** Area of these rests where they are at least so long, square metres. */
  public double restsFromM2(double leastM) {
    return sheets.stream()
        .mapToDouble(this::restM)
        .filter(restM -> restM >= leastM)
        .map(restM -> restM * size.widthM())
        .sum();
  }
}
