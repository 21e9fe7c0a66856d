package org.lagwright.takeoff.thickness;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One row of a table of pipe insulation: a range of fluid temperatures. Figures as printed, US
 * units.
 *
 * @param id stable id within the pack
 * @param printed the range as the source prints it
 * @param table {@code heating}, {@code cooling} or {@code exception}
 * @param from lower end, null where it is open
 * @param to upper end, null where it is open
 * @param conductivity range the thickness holds for; null exactly where nothing is required
 * @param thicknessIn thickness by band of nominal size, inches; empty where nothing is required
 * @param status how far this row was checked
 * @param source where it comes from
 * @param note disagreement between sources, null where none
 */
record FluidRange(
    String id,
    String printed,
    String table,
    @Nullable Bound from,
    @Nullable Bound to,
    @Nullable ConductivityRange conductivity,
    List<Double> thicknessIn,
    SourceStatus status,
    String source,
    @Nullable String note) {

  FluidRange {
    thicknessIn = List.copyOf(thicknessIn);
    if ((conductivity == null) != thicknessIn.isEmpty()) {
      throw new IllegalArgumentException(
          "'" + id + "' needs a conductivity range exactly where it lists thicknesses.");
    }
    if (from != null && to != null && !(from.degF() < to.degF())) {
      throw new IllegalArgumentException("'" + id + "' must end above where it begins.");
    }
  }

  /** One end of a range. */
  record Bound(double degF, boolean included) {

    double celsius() {
      return UsUnits.celsius(degF);
    }
  }

  /**
   * Conductivity the tabulated thickness holds for, Btu in/(h ft2 degF).
   *
   * @param ratedAtMeanF mean temperature of the rating, degF
   */
  record ConductivityRange(double lowBtuInPerHFt2F, double highBtuInPerHFt2F, double ratedAtMeanF) {

    ConductivityRange {
      if (!(lowBtuInPerHFt2F > 0 && lowBtuInPerHFt2F <= highBtuInPerHFt2F)) {
        throw new IllegalArgumentException("the conductivity range must rise from above 0.");
      }
    }

    double lowWPerMK() {
      return lowBtuInPerHFt2F * UsUnits.BTU_IN_PER_H_FT2_F;
    }

    double highWPerMK() {
      return highBtuInPerHFt2F * UsUnits.BTU_IN_PER_H_FT2_F;
    }

    double ratedAtMeanC() {
      return UsUnits.celsius(ratedAtMeanF);
    }

    boolean contains(double wPerMK) {
      return wPerMK >= lowWPerMK() && wPerMK <= highWPerMK();
    }
  }

  /** True where the range contains this fluid temperature, degC. */
  boolean contains(double fluidC) {
    return (from == null
            || fluidC > from.celsius()
            || (from.included() && fluidC == from.celsius()))
        && (to == null || fluidC < to.celsius() || (to.included() && fluidC == to.celsius()));
  }

  /**
   * Refuses a gap or an overlap between this range and the next.
   *
   * @throws IllegalArgumentException naming both
   */
  void requireNext(FluidRange next) {
    boolean meets =
        to != null
            && next.from != null
            && to.degF() == next.from.degF()
            && to.included() != next.from.included();
    if (!meets) {
      throw new IllegalArgumentException(
          "'"
              + next.id
              + "' must begin where '"
              + id
              + "' ends, and exactly one of them includes that temperature.");
    }
  }
}
