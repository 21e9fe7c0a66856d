package org.lagwright.takeoff.thickness;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * An energy rule for pipes: thickness by fluid temperature and nominal size, adjusted to the
 * conductivity of the material. The constructor refuses gaps, overlaps and incomplete rows.
 *
 * @param bandsFromNps where each band of nominal sizes begins, inches, rising from 0
 * @param adjustment how the thickness follows the conductivity of the material
 * @param ranges every fluid temperature lies in exactly one of them; coldest first
 * @param examples both sides of each boundary, run by a test
 */
record PipeRulePack(
    String id,
    String version,
    String source,
    String status,
    List<Double> bandsFromNps,
    Adjustment adjustment,
    List<FluidRange> ranges,
    List<Example> examples)
    implements EnergyRule {

  PipeRulePack {
    bandsFromNps = List.copyOf(bandsFromNps);
    ranges = List.copyOf(ranges);
    examples = List.copyOf(examples);
    requireBands(bandsFromNps, ranges);
    requireClosed(ranges);
  }

  /**
   * How the thickness follows the conductivity of the material, outside the range of the row.
   *
   * @param method {@code power-law} or {@code proportional}
   * @param ratedEnd {@code upper}, {@code lower} or {@code nearer} end of the range of the row
   */
  record Adjustment(String method, String ratedEnd, SourceStatus status, String source) {
    Adjustment {
      requireOneOf("method", method, List.of("power-law", "proportional"));
      requireOneOf("ratedEnd", ratedEnd, List.of("upper", "lower", "nearer"));
    }

    private static void requireOneOf(String key, String value, List<String> allowed) {
      if (!allowed.contains(value)) {
        throw new IllegalArgumentException(key + " '" + value + "' is none of " + allowed + ".");
      }
    }

    /** The end of the range that the formula takes, W/(m K). */
    double ratedWPerMK(FluidRange.ConductivityRangeSi range, double wPerMK) {
      return switch (ratedEnd) {
        case "upper" -> range.highWPerMK();
        case "lower" -> range.lowWPerMK();
        default -> wPerMK > range.highWPerMK() ? range.highWPerMK() : range.lowWPerMK();
      };
    }

    double adjustedM(double tabulatedM, double radiusM, double wPerMK, double ratedWPerMK) {
      return method.equals("power-law")
          ? OtherConductivity.powerLaw(tabulatedM, radiusM, wPerMK, ratedWPerMK)
          : tabulatedM * wPerMK / ratedWPerMK;
    }

    String formula() {
      return method.equals("power-law") ? "T = r ((1 + t/r)^(K/k) - 1)" : "T = t K/k";
    }
  }

  /**
   * A fluid temperature and nominal size with the thickness the table gives, as printed; one of the
   * two units each.
   */
  record Example(
      @Nullable Double fluidF,
      @Nullable Double fluidC,
      double nps,
      @Nullable Double thicknessIn,
      @Nullable Double thicknessMm) {

    Example {
      if ((fluidF == null) == (fluidC == null) || (thicknessIn == null) == (thicknessMm == null)) {
        throw new IllegalArgumentException("an example needs one fluid and one thickness.");
      }
    }

    double celsius() {
      return fluidC == null ? UsUnits.celsius(Objects.requireNonNull(fluidF)) : fluidC;
    }

    double thicknessM() {
      return thicknessMm == null
          ? Objects.requireNonNull(thicknessIn) * UsUnits.INCH_M
          : thicknessMm / 1000;
    }
  }

  @Override
  public Optional<Demand> findDemand(Case one) {
    Double fluidC = one.fluidC();
    if (fluidC == null || one.duct() || !(one.section() instanceof Section.Round round)) {
      return Optional.empty();
    }
    FluidRange range = range(fluidC);
    return range.table().equals("silent")
        ? Optional.empty()
        : Optional.of(
            EnergyRuleDemand.of(this, range, round.outsideDiameterM(), fluidC, one.material()));
  }

  static PipeRulePack bundled(String file) {
    return PackReader.readBundled(PipeRulePack.class, file, PipeRulePack.class);
  }

  /** True where the table gives what the example says. */
  boolean holds(Example example) {
    double tabulatedM = tabulatedM(range(example.celsius()), example.nps());
    return Math.abs(tabulatedM - example.thicknessM()) < 1e-9;
  }

  /** The one range that contains this fluid temperature, degC. */
  FluidRange range(double fluidC) {
    return ranges.stream().filter(r -> r.contains(fluidC)).findFirst().orElseThrow();
  }

  /** Thickness of the table, metres; 0 where nothing is required. */
  double tabulatedM(FluidRange range, double nps) {
    return range.thicknessesM().isEmpty() ? 0 : range.thicknessesM().get(band(nps));
  }

  private int band(double nps) {
    int band = 0;
    while (band + 1 < bandsFromNps.size() && nps >= bandsFromNps.get(band + 1)) {
      band++;
    }
    return band;
  }

  @Override
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  private static void requireBands(List<Double> fromNps, List<FluidRange> ranges) {
    if (fromNps.isEmpty() || fromNps.get(0) != 0) {
      throw new IllegalArgumentException("bandsFromNps must begin with 0.");
    }
    for (int i = 1; i < fromNps.size(); i++) {
      if (!(fromNps.get(i) > fromNps.get(i - 1))) {
        throw new IllegalArgumentException("bandsFromNps must rise, not " + fromNps + ".");
      }
    }
    for (FluidRange range : ranges) {
      if (!range.thicknessesM().isEmpty() && range.thicknessesM().size() != fromNps.size()) {
        throw new IllegalArgumentException(
            "'" + range.id() + "' needs one thickness for each of " + fromNps.size() + " bands.");
      }
    }
  }

  private static void requireClosed(List<FluidRange> ranges) {
    if (ranges.isEmpty()) {
      throw new IllegalArgumentException("ranges must not be empty.");
    }
    for (int i = 1; i < ranges.size(); i++) {
      ranges.get(i - 1).requireNext(ranges.get(i));
    }
    if (ranges.get(0).from() != null || ranges.get(ranges.size() - 1).to() != null) {
      throw new IllegalArgumentException("the first range must be open below, the last above.");
    }
  }
}
