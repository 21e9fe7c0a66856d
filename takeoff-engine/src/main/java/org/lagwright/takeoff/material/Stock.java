package org.lagwright.takeoff.material;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
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
 * @param tubeBoresMm every bore of these tubes, in every wall; null where only the largest is known
 * @param fits walls and bores that are sold together, of the forms they are known for; null where
 *     they are not known
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
    @Nullable List<Fit> fits,
    @Nullable List<Sold> sold,
    SourceStatus status,
    String source) {

  private static final String TUBE = "tube";

  /** Foam of 60 mm bore is pushed over a pipe of 60.3 mm; common practice, no source. */
  private static final double STRETCH_MM = 0.5;

  /** Wider than this a bore leaves too much air round the pipe; common practice, no source. */
  private static final double LOOSEST_MM = 3;

  /** Millimetres that are equal. */
  private static final double SAME_MM = 0.01;

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
    fits = fits == null ? null : List.copyOf(fits);
    sold = sold == null ? null : List.copyOf(sold);
  }

  /** The bores of the tubes as far as they are known. */
  public List<Double> bores() {
    return tubeBoresMm == null ? List.of() : tubeBoresMm;
  }

  /** Walls and bores that are sold together as far as they are known. */
  public List<Fit> sizes() {
    return fits == null ? List.of() : fits;
  }

  /**
   * The bore as sold that goes over a pipe: the smallest that is not tighter than half a millimetre
   * and not looser than three. Where only the largest is known, every bore up to it is taken to be
   * made.
   *
   * @param form tube or section
   * @param wallMm wall of it, millimetres
   * @param outsideMm what it goes over, millimetres
   */
  public OptionalDouble findBoreMm(String form, double wallMm, double outsideMm) {
    boolean tube = form.equals(TUBE);
    List<Fit> ofForm = sizes().stream().filter(fit -> fit.form().equals(form)).toList();
    if (!ofForm.isEmpty()) {
      return fitting(
          ofForm.stream()
              .filter(fit -> Math.abs(fit.wallMm() - wallMm) < SAME_MM)
              .mapToDouble(Fit::boreMm),
          outsideMm);
    } else if (tube && tubeBoresMm != null) {
      return fitting(tubeBoresMm.stream().mapToDouble(bore -> bore), outsideMm);
    }
    return outsideMm <= largestMm(form) ? OptionalDouble.of(outsideMm) : OptionalDouble.empty();
  }

  /** True where tube or section is sold for larger pipes than this, though maybe not for it. */
  public boolean reaches(double outsideMm) {
    return outsideMm <= largestMm(TUBE) || outsideMm <= largestMm("section");
  }

  /** Foam stretches over a pipe a little wider than its largest bore, rigid sections do not. */
  private double largestMm(String form) {
    return form.equals(TUBE)
        ? largestTubeBoreMm == 0 ? 0 : largestTubeBoreMm + STRETCH_MM
        : largestSectionBoreMm;
  }

  private static OptionalDouble fitting(DoubleStream boresMm, double outsideMm) {
    return boresMm
        .filter(bore -> bore >= outsideMm - STRETCH_MM && bore <= outsideMm + LOOSEST_MM)
        .min();
  }

  /** Lengths and sizes it comes in as far as they are known. */
  public List<Sold> pieces() {
    return sold == null ? List.of() : sold;
  }

  /**
   * A wall with a bore it is sold in.
   *
   * @param form tube or section
   */
  public record Fit(String form, double wallMm, double boreMm) {
    public Fit {
      if (!form.equals(TUBE) && !form.equals("section")) {
        throw new IllegalArgumentException(
            "a bore belongs to tube or section, not to " + form + ".");
      }
      if (!(wallMm > 0) || !(boreMm > 0)) {
        throw new IllegalArgumentException("wallMm and boreMm must be above 0.");
      }
    }
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
