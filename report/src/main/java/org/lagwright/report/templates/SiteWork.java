package org.lagwright.report.templates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.WorkArea;

/**
 * The work on one service on one storey.
 *
 * @param storey in words
 * @param service in words
 * @param elements on lines, in the order of the takeoff
 * @param hours of labour
 */
record SiteWork(String storey, String service, List<TakenElement> elements, double hours) {

  SiteWork {
    elements = List.copyOf(elements);
  }

  /** All work by storey from below, then by service in the order of the takeoff. */
  static List<SiteWork> of(Takeoff takeoff) {
    Map<String, TakeoffLine> lines = new HashMap<>();
    takeoff.lines().forEach(line -> lines.put(line.id(), line));
    Map<Group, List<TakenElement>> groups = new TreeMap<>(Group.ORDER);
    takeoff.elements().stream()
        .filter(taken -> taken.lineId() != null)
        .sorted(
            Comparator.comparing((TakenElement t) -> Objects.requireNonNull(t.lineId()))
                .thenComparing(t -> t.element().key()))
        .forEach(
            taken ->
                groups.computeIfAbsent(group(taken, lines), k -> new ArrayList<>()).add(taken));
    Map<String, Double> hours = hours(takeoff);
    return groups.entrySet().stream()
        .map(
            e -> {
              String storey = e.getKey().storey().storeyInWords();
              String service = e.getKey().service();
              double ofThis = hours.getOrDefault(key(storey, service), 0.0);
              return new SiteWork(storey, service, e.getValue(), ofThis);
            })
        .toList();
  }

  private record Group(WorkArea storey, String firstLine, String service) {
    static final Comparator<Group> ORDER =
        Comparator.comparing(Group::storey).thenComparing(Group::firstLine);
  }

  private static Group group(TakenElement taken, Map<String, TakeoffLine> lines) {
    TakeoffLine line = Objects.requireNonNull(lines.get(taken.lineId()));
    WorkArea area = WorkArea.of(taken.element().place());
    String first =
        lines.values().stream()
            .filter(l -> l.serviceName().equals(line.serviceName()))
            .map(TakeoffLine::id)
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return new Group(new WorkArea(area.elevationM(), area.storey(), ""), first, line.serviceName());
  }

  private static Map<String, Double> hours(Takeoff takeoff) {
    return takeoff.labour().items().stream()
        .collect(
            Collectors.toMap(
                item -> key(item.area().storeyInWords(), item.serviceName()),
                LabourItem::hours,
                Double::sum,
                LinkedHashMap::new));
  }

  private static String key(String storey, String service) {
    return storey + " / " + service;
  }

  /** The keys of its elements. */
  Set<ElementKey> keys() {
    return elements.stream().map(t -> t.element().key()).collect(Collectors.toSet());
  }

  /** True where something gets two layers or more. */
  boolean isLayered() {
    return elements.stream()
        .anyMatch(
            t -> t.making() != null && Objects.requireNonNull(t.making()).layers().size() > 1);
  }

  /** True where adhesive goes somewhere. */
  boolean isGlued() {
    return elements.stream()
        .anyMatch(t -> t.making() != null && Objects.requireNonNull(t.making()).isGlued());
  }
}
