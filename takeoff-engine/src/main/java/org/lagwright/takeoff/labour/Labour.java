package org.lagwright.takeoff.labour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The labour of a takeoff.
 *
 * @param items equal work in one place each
 * @param norms the norms and factors they were reckoned with
 */
public record Labour(List<LabourItem> items, LabourNorms norms) {

  public Labour {
    items = List.copyOf(items);
  }

  /** No work. */
  public static Labour none() {
    return new Labour(List.of(), LabourNorms.bundled());
  }

  /** All hours. */
  public double hours() {
    return items.stream().mapToDouble(LabourItem::hours).sum();
  }

  /** Hours at one step of the trade. */
  public double hours(TradeStep step) {
    return items.stream().mapToDouble(item -> item.hours(step)).sum();
  }

  /** Norms of straight work and of fittings that the items rest on, in the order of the tables. */
  public List<Norm> normsInUse() {
    Set<Norm> used = new HashSet<>();
    for (LabourItem item : items) {
      used.add(item.norm());
      Norm equivalent = item.equivalent();
      if (equivalent != null) {
        used.add(equivalent);
      }
    }
    return norms.norms().stream().filter(used::contains).toList();
  }

  /** Hours by name of the service, in the order of the services. */
  public Map<String, Double> hoursByService() {
    List<LabourItem> sorted = new ArrayList<>(items);
    sorted.sort(Comparator.comparing(LabourItem::lineId));
    return sums(sorted, LabourItem::serviceName, new LinkedHashMap<>());
  }

  /** Hours by storey and space, from below. */
  public Map<WorkArea, Double> hoursByArea() {
    return sums(items, LabourItem::area, new TreeMap<>());
  }

  private static <K> Map<K, Double> sums(
      List<LabourItem> items, Function<LabourItem, K> key, Map<K, Double> into) {
    items.forEach(item -> into.merge(key.apply(item), item.hours(), Double::sum));
    return into;
  }
}
