package org.lagwright.takeoff.verify;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;

/**
 * One element that gets insulation, or of which that is not known, and what the model shows on it.
 *
 * @param globalId as written in the model
 * @param name its name, empty if absent
 * @param group what it shares with others
 * @param ofShown status of the part that something is shown on; BARE where nothing is
 * @param share how large that part is, 0 to 1; the rest is bare
 * @param requiredM thickness required, metres; NaN where nothing tells
 * @param boughtM thickness that would be bought, metres; NaN where nothing tells
 * @param shownM thickness shown, metres; null where none is
 * @param wantedMaterial id of the material family of the takeoff; empty where nothing tells
 * @param shownMaterial material as the model names it; null where it does not
 * @param lengthM length that counts, metres; of what was left out that read; 0 for pieces, and
 *     where it is not known
 * @param areaM2 outer surface that counts, square metres; 0 where it is not known
 * @param evidence where the model says so; empty where it shows nothing
 */
public record ElementCoverage(
    ElementKey key,
    String globalId,
    String name,
    CoverageGroup group,
    CoverageStatus ofShown,
    double share,
    double requiredM,
    double boughtM,
    @Nullable Double shownM,
    String wantedMaterial,
    @Nullable String shownMaterial,
    double lengthM,
    double areaM2,
    String evidence) {

  /** Its status as a whole: bare where a part of it is. */
  public CoverageStatus status() {
    return share < 1 && ofShown != CoverageStatus.UNKNOWN ? CoverageStatus.BARE : ofShown;
  }

  /**
   * How much insulation is missing, as outer surface: all of it where bare, in proportion where too
   * thin; square metres. What is unknown counts nothing.
   */
  public double missingM2() {
    double thin = ofShown == CoverageStatus.TOO_THIN && shownM != null ? 1 - shownM / requiredM : 0;
    return ofShown == CoverageStatus.UNKNOWN ? 0 : areaM2 * (1 - share + share * thin);
  }
}
