package org.lagwright.takeoff.thickness;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One row of a table of pipe insulation: a range of fluid temperatures. Figures as printed, in US
 * units or in SI.
 *
 * @param id stable id within the pack
 * @param printed the range as the source prints it
 * @param table {@code heating}, {@code cooling}, {@code exception} where nothing is required, or
 *     {@code silent} where the table has ended
 * @param from lower end, null where it is open
 * @param to upper end, null where it is open
 * @param conductivity range the thickness holds for, US units
 * @param conductivitySi the same in SI; one of both exactly where a thickness is required
 * @param thicknessIn thickness by band of nominal size, inches; null or empty where nothing is
 *     required
 * @param thicknessMm the same in millimetres
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
    @Nullable ConductivityRangeSi conductivitySi,
    @Nullable List<Double> thicknessIn,
    @Nullable List<Double> thicknessMm,
    SourceStatus status,
    String source,
    @Nullable String note) {

  FluidRange {
    thicknessIn = thicknessIn == null ? List.of() : List.copyOf(thicknessIn);
    thicknessMm = thicknessMm == null ? List.of() : List.copyOf(thicknessMm);
    if ((conductivity == null && conductivitySi == null)
        != (thicknessIn.isEmpty() && thicknessMm.isEmpty())) {
      throw new IllegalArgumentException(
          "'" + id + "' needs a conductivity range exactly where it lists thicknesses.");
    }
    if (!List.of("heating", "cooling", "exception", "silent").contains(table)) {
      throw new IllegalArgumentException(
          "'" + id + "': table must be heating, cooling, exception or silent.");
    }
    if (from != null && to != null && !(from.celsius() < to.celsius())) {
      throw new IllegalArgumentException("'" + id + "' must end above where it begins.");
    }
  }

  /** One end of a range. */
  record Bound(@Nullable Double degF, @Nullable Double degC, boolean included) {

    Bound {
      if ((degF == null) == (degC == null)) {
        throw new IllegalArgumentException("an end needs either degF or degC.");
      }
    }

    double celsius() {
      return degC == null ? UsUnits.celsius(Objects.requireNonNull(degF)) : degC;
    }
  }

  /** Conductivity the tabulated thickness holds for, W/(m K), at a mean temperature in degC. */
  record ConductivityRangeSi(double lowWPerMK, double highWPerMK, double ratedAtMeanC) {

    ConductivityRangeSi {
      if (!(lowWPerMK > 0 && lowWPerMK <= highWPerMK)) {
        throw new IllegalArgumentException("the conductivity range must rise from above 0.");
      }
    }

    boolean contains(double wPerMK) {
      return wPerMK >= lowWPerMK && wPerMK <= highWPerMK;
    }
  }

  /** The conductivity range in SI; null where nothing is required. */
  @Nullable ConductivityRangeSi rated() {
    return conductivity == null ? conductivitySi : conductivity.si();
  }

  /** Thicknesses by band of nominal size, metres; empty where nothing is required. */
  List<Double> thicknessesM() {
    return Objects.requireNonNull(thicknessIn).isEmpty()
        ? Objects.requireNonNull(thicknessMm).stream().map(mm -> mm / 1000).toList()
        : thicknessIn.stream().map(in -> in * UsUnits.INCH_M).toList();
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

    ConductivityRangeSi si() {
      return new ConductivityRangeSi(
          lowBtuInPerHFt2F * UsUnits.BTU_IN_PER_H_FT2_F,
          highBtuInPerHFt2F * UsUnits.BTU_IN_PER_H_FT2_F,
          UsUnits.celsius(ratedAtMeanF));
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
            && Math.abs(to.celsius() - next.from.celsius()) < 1e-9
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
