package org.lagwright.takeoff.material;

import java.util.List;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * What is sold of a family. Lists rise and may be empty; lengths in millimetres as in the trade.
 *
 * @param tubeWallsMm walls of flexible tubes
 * @param largestTubeBoreMm largest bore of these tubes, 0 where there are none
 * @param sheetsMm thicknesses of sheets, mats and boards
 * @param sectionWallsMm walls of rigid pipe sections
 * @param largestSectionBoreMm largest bore of these sections, 0 where there are none
 * @param status how far this was checked
 * @param source where it comes from
 */
public record Stock(
    List<Double> tubeWallsMm,
    double largestTubeBoreMm,
    List<Double> sheetsMm,
    List<Double> sectionWallsMm,
    double largestSectionBoreMm,
    SourceStatus status,
    String source) {

  public Stock {
    tubeWallsMm = rising(tubeWallsMm, "tubeWallsMm");
    sheetsMm = rising(sheetsMm, "sheetsMm");
    sectionWallsMm = rising(sectionWallsMm, "sectionWallsMm");
    requireBore(tubeWallsMm, largestTubeBoreMm, "largestTubeBoreMm");
    requireBore(sectionWallsMm, largestSectionBoreMm, "largestSectionBoreMm");
  }

  private static List<Double> rising(List<Double> wallsMm, String key) {
    double last = 0;
    for (double wallMm : wallsMm) {
      if (!(wallMm > last)) {
        throw new IllegalArgumentException(key + " must rise from above 0, not " + wallsMm + ".");
      }
      last = wallMm;
    }
    return List.copyOf(wallsMm);
  }

  private static void requireBore(List<Double> wallsMm, double boreMm, String key) {
    if (wallsMm.isEmpty() != (boreMm == 0)) {
      throw new IllegalArgumentException(key + " must be above 0 exactly where walls are listed.");
    }
  }
}
