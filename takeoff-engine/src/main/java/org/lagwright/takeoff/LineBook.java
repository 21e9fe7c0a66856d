package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.measure.QuantityMeasurer;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Puts judged elements on lines. Lines and their sums do not depend on the order of elements. */
final class LineBook {

  private final List<TakeoffLine> lines = new ArrayList<>();
  private final Map<ElementKey, String> lineIds = new HashMap<>();

  LineBook(List<Judgement> judgements) {
    Map<LineKey, List<Judgement>> byKey = new TreeMap<>();
    judgements.stream()
        .sorted(Comparator.comparing(j -> j.element().key()))
        .filter(j -> j.lineKey() != null)
        .forEach(
            j ->
                byKey
                    .computeIfAbsent(Objects.requireNonNull(j.lineKey()), k -> new ArrayList<>())
                    .add(j));
    byKey.forEach(
        (key, members) -> {
          TakeoffLine line = line(key, members);
          lines.add(line);
          line.elements().forEach(element -> lineIds.put(element, line.id()));
        });
  }

  List<TakeoffLine> lines() {
    return lines;
  }

  /** The line of an element, null where it is on none. */
  @Nullable String lineId(ElementKey element) {
    return lineIds.get(element);
  }

  private TakeoffLine line(LineKey key, List<Judgement> members) {
    Quantities sum = Quantities.NONE;
    for (Judgement member : members) {
      sum = sum.plus(member.quantities());
    }
    boolean metres = QuantityMeasurer.isMeasuredInMetres(members.get(0).element());
    return new TakeoffLine(
        String.format(Locale.ROOT, "L%03d", lines.size() + 1),
        key.serviceId(),
        key.serviceName(),
        key.kind(),
        key.form(),
        key.size().words(),
        key.location(),
        key.materialId(),
        key.materialName(),
        key.thicknessM(),
        key.layers(),
        metres ? "m" : "pcs",
        metres ? sum.lengthM() : sum.pieces(),
        sum.outerAreaM2(),
        sum.volumeM3(),
        members.stream().map(j -> j.element().key()).toList(),
        rules(members));
  }

  /**
   * The governing rule; several where elements of one line owe their thickness to different ones.
   */
  private static String rules(List<Judgement> members) {
    return members.stream()
        .map(Judgement::thickness)
        .filter(Objects::nonNull)
        .map(ThicknessDecision::governing)
        .filter(Objects::nonNull)
        .map(Demand::rule)
        .distinct()
        .sorted()
        .collect(Collectors.joining(" / "));
  }
}
