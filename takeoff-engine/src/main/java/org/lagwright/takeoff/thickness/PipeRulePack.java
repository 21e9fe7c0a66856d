package org.lagwright.takeoff.thickness;

import java.util.List;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * An energy rule for pipes: thickness by fluid temperature and nominal size, adjusted to the
 * conductivity of the material. The constructor refuses gaps, overlaps and incomplete rows.
 *
 * @param bandsFromNps where each band of nominal sizes begins, inches, rising from 0
 * @param adjustment where the adjustment to other conductivities comes from
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
    List<Example> examples) {

  PipeRulePack {
    bandsFromNps = List.copyOf(bandsFromNps);
    ranges = List.copyOf(ranges);
    examples = List.copyOf(examples);
    requireBands(bandsFromNps, ranges);
    requireClosed(ranges);
  }

  /** Source of the adjustment formula. */
  record Adjustment(SourceStatus status, String source) {}

  /** A fluid temperature and nominal size with the thickness the table gives, as printed. */
  record Example(double fluidF, double nps, double thicknessIn) {}

  static PipeRulePack bundled(String file) {
    return PackReader.readBundled(PipeRulePack.class, file, PipeRulePack.class);
  }

  /** The one range that contains this fluid temperature, degC. */
  FluidRange range(double fluidC) {
    return ranges.stream().filter(r -> r.contains(fluidC)).findFirst().orElseThrow();
  }

  /** Thickness of the table, metres; 0 where nothing is required. */
  double tabulatedM(FluidRange range, double nps) {
    return range.thicknessIn().isEmpty() ? 0 : range.thicknessIn().get(band(nps)) * UsUnits.INCH_M;
  }

  private int band(double nps) {
    int band = 0;
    while (band + 1 < bandsFromNps.size() && nps >= bandsFromNps.get(band + 1)) {
      band++;
    }
    return band;
  }

  PackInfo info() {
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
      if (!range.thicknessIn().isEmpty() && range.thicknessIn().size() != fromNps.size()) {
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
