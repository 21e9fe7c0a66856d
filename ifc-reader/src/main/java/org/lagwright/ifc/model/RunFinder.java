package org.lagwright.ifc.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Follows joints from piece to piece up to the next branch, apparatus or open end. */
final class RunFinder {

  /** Two joints make a piece of a run; more are a branch. */
  private static final int JOINTS_OF_A_PIECE = 2;

  private final List<MepElement> elements;
  private final Map<ElementKey, MepElement> byKey = new HashMap<>();
  private final Map<ElementKey, Set<ElementKey>> joined = new HashMap<>();
  private final Set<ElementKey> done = new HashSet<>();

  RunFinder(List<MepElement> elements) {
    this.elements = elements;
    for (MepElement element : elements) {
      byKey.put(element.key(), element);
      for (Port port : element.ports()) {
        ElementKey other = port.connectedTo();
        // a branch at the side of a main neither ends its run nor belongs to it
        if (other != null && !port.tap() && !other.equals(element.key())) {
          joined.computeIfAbsent(element.key(), k -> new LinkedHashSet<>()).add(other);
          joined.computeIfAbsent(other, k -> new LinkedHashSet<>()).add(element.key());
        }
      }
    }
  }

  List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (MepElement element : elements) {
      if (isPiece(element) && done.add(element.key())) {
        Deque<ElementKey> pieces = new ArrayDeque<>(List.of(element.key()));
        follow(element.key(), pieces::addFirst);
        follow(element.key(), pieces::addLast);
        runs.add(new Run(List.copyOf(pieces), lengthM(pieces)));
      }
    }
    return runs;
  }

  private Set<ElementKey> joinedTo(ElementKey key) {
    return joined.getOrDefault(key, Set.of());
  }

  private boolean isPiece(@Nullable MepElement element) {
    return element != null
        && element.kind().isLagged()
        && !isBranch(element.form())
        && joinedTo(element.key()).size() <= JOINTS_OF_A_PIECE;
  }

  private static boolean isBranch(Form form) {
    return switch (form) {
      case TEE, LATERAL, CROSS, WYE -> true;
      default -> false;
    };
  }

  private void follow(ElementKey from, Consumer<ElementKey> found) {
    ElementKey next = next(from);
    while (next != null) {
      done.add(next);
      found.accept(next);
      next = next(next);
    }
  }

  private @Nullable ElementKey next(ElementKey at) {
    for (ElementKey other : joinedTo(at)) {
      if (!done.contains(other) && isPiece(byKey.get(other))) {
        return other;
      }
    }
    return null;
  }

  private double lengthM(Iterable<ElementKey> pieces) {
    double sumM = 0;
    for (ElementKey key : pieces) {
      MepElement element = byKey.get(key);
      Measured<Double> lengthM = element == null ? null : element.lengthM();
      sumM += lengthM == null ? 0 : lengthM.value();
    }
    return sumM;
  }
}
