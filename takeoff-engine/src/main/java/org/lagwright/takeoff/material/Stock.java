package org.lagwright.takeoff.material;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * What is sold of a family. Lists rise and may be empty; lengths in millimetres as in the trade.
 *
 * @param tubeWallsMm walls of flexible tubes
 * @param largestTubeBoreMm largest bore of these tubes, 0 where there are none
 * @param sheetsMm thicknesses of sheets, mats and boards
 * @param sectionWallsMm walls of rigid pipe sections
 * @param largestSectionBoreMm largest bore of these sections, 0 where there are none
 * @param tubeBoresMm every bore of these tubes, null where only the largest is known
 * @param sold lengths and sizes it comes in, null where they are not known
 * @param status how far this was checked
 * @param source where it comes from
 */
public record Stock(
    List<Double> tubeWallsMm,
    double largestTubeBoreMm,
    List<Double> sheetsMm,
    List<Double> sectionWallsMm,
    double largestSectionBoreMm,
    @Nullable List<Double> tubeBoresMm,
    @Nullable List<Sold> sold,
    SourceStatus status,
    String source) {

  public Stock {
    tubeWallsMm = rising(tubeWallsMm, "tubeWallsMm");
    sheetsMm = rising(sheetsMm, "sheetsMm");
    sectionWallsMm = rising(sectionWallsMm, "sectionWallsMm");
    requireBore(tubeWallsMm, largestTubeBoreMm, "largestTubeBoreMm");
    requireBore(sectionWallsMm, largestSectionBoreMm, "largestSectionBoreMm");
    if (tubeBoresMm != null) {
      tubeBoresMm = rising(tubeBoresMm, "tubeBoresMm");
      if (tubeBoresMm.isEmpty() || tubeBoresMm.get(tubeBoresMm.size() - 1) != largestTubeBoreMm) {
        throw new IllegalArgumentException("tubeBoresMm must end at largestTubeBoreMm.");
      }
    }
    sold = sold == null ? null : List.copyOf(sold);
  }

  /** The bores of the tubes as far as they are known. */
  public List<Double> bores() {
    return tubeBoresMm == null ? List.of() : tubeBoresMm;
  }

  /** Lengths and sizes it comes in as far as they are known. */
  public List<Sold> pieces() {
    return sold == null ? List.of() : sold;
  }

  /**
   * One size a form is sold in.
   *
   * @param form tube, section, sheet or roll
   * @param thicknessMm the thickness it holds for, null for all
   * @param widthM width of sheet and roll, metres; null for tube and section
   * @param lengthM metres
   */
  public record Sold(
      String form, @Nullable Double thicknessMm, @Nullable Double widthM, double lengthM) {

    private static final Set<String> PIPE_FORMS = Set.of("tube", "section");
    private static final Set<String> FLAT_FORMS = Set.of("sheet", "roll");

    public Sold {
      if (!PIPE_FORMS.contains(form) && !FLAT_FORMS.contains(form)) {
        throw new IllegalArgumentException("form must be tube, section, sheet or roll.");
      }
      if ((widthM != null) != FLAT_FORMS.contains(form)) {
        throw new IllegalArgumentException("widthM belongs to sheet and roll, and only to these.");
      }
      boolean thin = thicknessMm != null && !(thicknessMm > 0);
      if (thin || !(lengthM > 0) || widthM != null && !(widthM > 0)) {
        throw new IllegalArgumentException("thicknessMm, widthM and lengthM must be above 0.");
      }
    }
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
