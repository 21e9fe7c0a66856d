package org.lagwright.takeoff.clearance;

import java.util.Map;
import java.util.TreeMap;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * Gaps wanted between finished surfaces.
 *
 * @param gaps by pair: {@code pipe-pipe}, {@code duct-pipe}, {@code duct-duct}, {@code
 *     pipe-building}, {@code duct-building}; {@code jacket} between any two of which one has one
 */
public record ClearancePack(
    String id, String version, String source, String status, Map<String, WantedGap> gaps) {

  public ClearancePack {
    gaps = new TreeMap<>(gaps);
  }

  /**
   * A gap that users may change.
   *
   * @param mm millimetres, 0 where touching is allowed
   */
  public record WantedGap(double mm, String source, SourceStatus status) {

    /** More is no clearance but a distance. */
    public static final double MOST_MM = 1000;

    public WantedGap {
      if (!(mm >= 0 && mm <= MOST_MM)) {
        throw new IllegalArgumentException("mm must lie between 0 and " + MOST_MM + ".");
      }
    }
  }

  /** The pack that belongs to the program. */
  public static ClearancePack bundled() {
    return PackReader.readBundled(ClearancePack.class, "clearance.yaml", ClearancePack.class);
  }

  /** The same with gaps of the user by pair, millimetres. */
  public ClearancePack with(Map<String, Double> changedMm) {
    Map<String, WantedGap> all = new TreeMap<>(gaps);
    changedMm.forEach(
        (pair, mm) -> all.put(pair, new WantedGap(mm, "settings", SourceStatus.USER)));
    return new ClearancePack(id, version, source, status, all);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /** The gap between two elements, metres. */
  double betweenM(Placed one, Placed other) {
    String pair =
        one.duct() && other.duct()
            ? "duct-duct"
            : one.duct() || other.duct() ? "duct-pipe" : "pipe-pipe";
    return withJacketM(pair, one.jacketed() || other.jacketed());
  }

  /** The gap between an element and a part of the building, metres. */
  double toBuildingM(boolean duct, boolean jacketed) {
    return withJacketM(duct ? "duct-building" : "pipe-building", jacketed);
  }

  /** Room to put on a jacket counts where it is more. */
  private double withJacketM(String pair, boolean jacketed) {
    double mm = gap(pair).mm();
    return (jacketed ? Math.max(mm, gap("jacket").mm()) : mm) / 1000;
  }

  private WantedGap gap(String pair) {
    WantedGap gap = gaps.get(pair);
    if (gap == null) {
      throw new IllegalStateException("the pack of clearances lacks " + pair);
    }
    return gap;
  }

  /** The largest of them, metres. */
  double largestM() {
    return gaps.values().stream().mapToDouble(WantedGap::mm).max().orElse(0) / 1000;
  }
}
