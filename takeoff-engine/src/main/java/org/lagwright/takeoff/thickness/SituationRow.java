package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One row of a rule by service, location and size.
 *
 * @param id stable id within the pack
 * @param printed the row as the source words it, shortened
 * @param families families of services it holds for
 * @param locations location classes it holds for; empty for all that no other row names
 * @param sizeBy {@code bore} or {@code outside}: which diameter it goes by
 * @param aboveMm sizes above this, millimetres; null from 0
 * @param upToMm sizes up to this, included, millimetres; null without end
 * @param thicknessMm thickness; of this and the next two exactly one
 * @param timesBore thickness as a multiple of the inside diameter
 * @param transmittance limit of the heat flow
 * @param flatWPerM2K limit for pipes thicker than 0.4 m; only beside {@code transmittance}
 * @param rated conductivity the thickness holds for; null for a limit of the heat flow
 * @param coefficientWPerM2K at the outer surface, for the conversion and for the limit
 * @param status how far this row was checked
 * @param source where it comes from
 * @param note what the user should know, null where nothing
 */
record SituationRow(
    String id,
    String printed,
    List<String> families,
    List<String> locations,
    String sizeBy,
    @Nullable Double aboveMm,
    @Nullable Double upToMm,
    @Nullable Double thicknessMm,
    @Nullable Double timesBore,
    @Nullable TransmittanceLimit transmittance,
    @Nullable Double flatWPerM2K,
    @Nullable Rated rated,
    double coefficientWPerM2K,
    SourceStatus status,
    String source,
    @Nullable String note) {

  SituationRow {
    families = List.copyOf(families);
    locations = List.copyOf(locations);
    if (!sizeBy.equals("bore") && !sizeBy.equals("outside")) {
      throw new IllegalArgumentException("'" + id + "': sizeBy must be bore or outside.");
    }
    int asked =
        (thicknessMm == null ? 0 : 1)
            + (timesBore == null ? 0 : 1)
            + (transmittance == null ? 0 : 1);
    if (asked != 1) {
      throw new IllegalArgumentException(
          "'" + id + "' needs exactly one of thicknessMm, timesBore, transmittance.");
    }
    if ((rated == null) != (transmittance != null)) {
      throw new IllegalArgumentException(
          "'" + id + "' needs a rated conductivity exactly where it asks for a thickness.");
    }
    if (!(coefficientWPerM2K > 0)) {
      throw new IllegalArgumentException("'" + id + "': coefficientWPerM2K must be above 0.");
    }
  }

  /**
   * Conductivity a thickness holds for.
   *
   * @param meanC mean temperature of the rating, degC
   */
  record Rated(double wPerMK, double meanC) {
    Rated {
      if (!(wPerMK > 0 && wPerMK < 1)) {
        throw new IllegalArgumentException("wPerMK must lie between 0 and 1.");
      }
    }
  }

  /** True for limits of the heat flow that also tell that of flat surfaces. */
  boolean isForDucts() {
    return flatWPerM2K != null;
  }

  boolean byBore() {
    return sizeBy.equals("bore");
  }

  /** True where it holds for this diameter, metres. */
  boolean contains(double diameterM) {
    double mm = diameterM * 1000;
    return (aboveMm == null || mm > aboveMm) && (upToMm == null || mm <= upToMm);
  }

  /** Each family with each location, in words. */
  List<String> situations() {
    List<String> situations = new ArrayList<>();
    for (String family : families) {
      if (locations.isEmpty()) {
        situations.add(family + ", everywhere else");
      }
      locations.forEach(location -> situations.add(family + ", " + location));
    }
    return situations;
  }

  /**
   * Refuses gaps and overlaps between the sizes of rows for one situation.
   *
   * @throws IllegalArgumentException naming the row
   */
  static void requireClosed(List<SituationRow> rows) {
    Double endMm = null;
    for (int i = 0; i < rows.size(); i++) {
      SituationRow row = rows.get(i);
      boolean follows = i == 0 ? row.aboveMm == null : endMm != null && endMm.equals(row.aboveMm);
      if (!follows) {
        throw new IllegalArgumentException(
            "'"
                + row.id
                + "' must begin "
                + (i == 0 ? "at 0" : "where '" + rows.get(i - 1).id + "' ends")
                + ", without gap or overlap.");
      }
      endMm = row.upToMm;
    }
    if (endMm != null) {
      throw new IllegalArgumentException(
          "'"
              + rows.get(rows.size() - 1).id
              + "' is the last of its sizes and must be open above.");
    }
  }
}
