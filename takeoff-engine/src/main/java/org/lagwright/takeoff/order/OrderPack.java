package org.lagwright.takeoff.order;

import java.util.Map;
import java.util.TreeMap;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * Figures of buying: cuts, allowances, consumption, packs.
 *
 * @param figures by name, which ends in the unit
 */
public record OrderPack(
    String id, String version, String source, String status, Map<String, Figure> figures) {

  public OrderPack {
    figures = Map.copyOf(figures);
  }

  /**
   * A default that users may change.
   *
   * @param what it means, in words
   */
  public record Figure(double value, String what, String source, SourceStatus status) {
    public Figure {
      if (!(value >= 0 && Double.isFinite(value))) {
        throw new IllegalArgumentException("a figure must be 0 or more, was " + value + ".");
      }
    }
  }

  /** The pack that belongs to the program. */
  public static OrderPack bundled() {
    return PackReader.readBundled(OrderPack.class, "order.yaml", OrderPack.class);
  }

  /** The same with values of the user. */
  public OrderPack with(Map<String, Double> changed) {
    Map<String, Figure> all = new TreeMap<>(figures);
    changed.forEach(
        (name, value) ->
            all.put(name, new Figure(value, figure(name).what(), "settings", SourceStatus.USER)));
    return new OrderPack(id, version, source, status, all);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  Figure figure(String name) {
    Figure figure = figures.get(name);
    if (figure == null) {
      throw new IllegalArgumentException("figure " + name + " is missing from the pack of orders");
    }
    return figure;
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
