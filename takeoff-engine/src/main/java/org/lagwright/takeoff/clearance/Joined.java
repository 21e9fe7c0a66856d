package org.lagwright.takeoff.clearance;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;

/** Which elements touch by design: of one run, or joined by short pieces. */
final class Joined {

  /** Shorter straights leave no room between what they join; common practice, no source. */
  private static final double SHORT_M = 0.3;

  /** Such as a tee and a reducer; common practice, no source. */
  private static final int MOST_BETWEEN = 2;

  private final Map<ElementKey, Set<ElementKey>> next = new HashMap<>();
  private final Map<ElementKey, Integer> runs = new HashMap<>();
  private final Set<ElementKey> longPieces = new HashSet<>();

  Joined(List<MepElement> elements) {
    for (MepElement element : elements) {
      for (Port port : element.ports()) {
        if (port.connectedTo() != null) {
          next.computeIfAbsent(element.key(), k -> new HashSet<>()).add(port.connectedTo());
          next.computeIfAbsent(port.connectedTo(), k -> new HashSet<>()).add(element.key());
        }
      }
      if (element.kind().isSegment()
          && element.lengthM() != null
          && element.lengthM().value() > SHORT_M) {
        longPieces.add(element.key());
      }
    }
    List<Run> all = Run.of(elements);
    for (int i = 0; i < all.size(); i++) {
      for (ElementKey piece : all.get(i).pieces()) {
        runs.put(piece, i);
      }
    }
  }

  /** True where two elements are of one run, or joined with few short pieces between them. */
  boolean areJoined(ElementKey one, ElementKey other) {
    Integer run = runs.get(one);
    return run != null && Objects.equals(run, runs.get(other)) || leadTo(one, other, MOST_BETWEEN);
  }

  private boolean leadTo(ElementKey from, ElementKey to, int between) {
    Set<ElementKey> neighbours = next.getOrDefault(from, Set.of());
    return neighbours.contains(to)
        || between > 0
            && neighbours.stream()
                .anyMatch(piece -> !longPieces.contains(piece) && leadTo(piece, to, between - 1));
  }
}
