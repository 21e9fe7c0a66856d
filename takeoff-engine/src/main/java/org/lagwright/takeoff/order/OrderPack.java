package org.lagwright.takeoff.order;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * Figures of buying: cuts, allowances, consumption, packs.
 *
 * @param figures by name, which ends in the unit
 * @param jackets kinds of jacket
 */
public record OrderPack(
    String id,
    String version,
    String source,
    String status,
    Map<String, Figure> figures,
    List<Jacket> jackets) {

  public OrderPack {
    figures = Map.copyOf(figures);
    jackets = List.copyOf(jackets);
  }

  /**
   * A default that users may change.
   *
   * @param least smallest value it may take; null where it must be above 0
   * @param what it means, in words
   */
  public record Figure(
      double value, @Nullable Double least, String what, String source, SourceStatus status) {

    private static final double LEAST = 0.01;

    public Figure {
      if (!(value >= (least == null ? LEAST : least) && Double.isFinite(value))) {
        throw new IllegalArgumentException("a figure is impossible: " + value + ".");
      }
    }

    /** The smallest value it may take. */
    public double leastValue() {
      return least == null ? LEAST : least;
    }

    Figure changed(double other) {
      return new Figure(other, least, what, "settings", SourceStatus.USER);
    }
  }

  /**
   * A kind of jacket.
   *
   * @param lapMm lap of seam and girth joints
   * @param courseM length of one sheet along the pipe
   * @param bandSpacingMm distance of bands, null where there are none
   * @param fixingSpacingMm distance of screws or rivets, null where there are none
   * @param fixingFromMm outside diameter from which there are any
   */
  public record Jacket(
      String id,
      String name,
      double lapMm,
      double courseM,
      @Nullable Double bandSpacingMm,
      @Nullable Double fixingSpacingMm,
      @Nullable Double fixingFromMm,
      double soldWidthM,
      double soldLengthM,
      String source,
      SourceStatus status) {
    public Jacket {
      if (!(lapMm >= 0) || !(courseM > lapMm / 1000)) {
        throw new IllegalArgumentException("courseM must be longer than the lap.");
      }
    }
  }

  /** In the settings: no jacket here. */
  public static final String NO_JACKET = "none";

  /** The pack that belongs to the program. */
  public static OrderPack bundled() {
    return PackReader.readBundled(OrderPack.class, "order.yaml", OrderPack.class);
  }

  /** The same with values of the user. */
  public OrderPack with(Map<String, Double> changed) {
    Map<String, Figure> all = new TreeMap<>(figures);
    changed.forEach((name, value) -> all.put(name, figure(name).changed(value)));
    return new OrderPack(id, version, source, status, all, jackets);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /**
   * A figure.
   *
   * @throws IllegalArgumentException if there is none of this name
   */
  public Figure figure(String name) {
    Figure figure = figures.get(name);
    if (figure == null) {
      throw new IllegalArgumentException("figure " + name + " is missing from the pack of orders");
    }
    return figure;
  }

  Jacket jacket(String jacketId) {
    return jackets.stream()
        .filter(jacket -> jacket.id().equals(jacketId))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no jacket " + jacketId));
  }

  double number(String name) {
    return figure(name).value();
  }

  /** A figure written in millimetres, in metres. */
  double metres(String name) {
    return number(name) / 1000;
  }

  /** A figure written in percent, as a share. */
  double share(String name) {
    return number(name) / 100;
  }
}
