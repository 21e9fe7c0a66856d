package org.lagwright.takeoff.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.measure.Size;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Which element of one revision is which of the other: by GlobalId; then, as some exporters issue
 * new ones each time, by kind, form, type and size at the same place, or of the same name where an
 * element has no place.
 */
final class Matching {

  /** Places of one piece in two exports; common practice, no source. */
  private static final double SAME_PLACE_M = 0.01;

  /**
   * A pair.
   *
   * @param sameId false if the GlobalId differs
   */
  record Pair(TakenElement before, TakenElement now, boolean sameId) {}

  private final List<Pair> pairs = new ArrayList<>();
  private final Set<ElementKey> pairedBefore = new HashSet<>();
  private final Set<ElementKey> pairedNow = new HashSet<>();
  private final List<TakenElement> before;
  private final List<TakenElement> now;

  Matching(List<TakenElement> before, List<TakenElement> now) {
    this.before = before;
    this.now = now;
    byGlobalId();
    byPlace();
    byName();
  }

  List<Pair> pairs() {
    return pairs;
  }

  /** Those of the first revision that the second does not have. */
  List<TakenElement> removed() {
    return before.stream().filter(taken -> !pairedBefore.contains(key(taken))).toList();
  }

  /** Those of the second revision that the first does not have. */
  List<TakenElement> added() {
    return now.stream().filter(taken -> !pairedNow.contains(key(taken))).toList();
  }

  private static ElementKey key(TakenElement taken) {
    return taken.element().key();
  }

  private void pair(TakenElement old, TakenElement young, boolean sameId) {
    pairs.add(new Pair(old, young, sameId));
    pairedBefore.add(key(old));
    pairedNow.add(key(young));
  }

  /** Only where a revision has the id once; what is copied with its id is told by its place. */
  private void byGlobalId() {
    Map<String, List<TakenElement>> oldById = byId(before);
    Map<String, List<TakenElement>> youngById = byId(now);
    for (TakenElement old : before) {
      String id = old.element().globalId();
      List<TakenElement> young = youngById.getOrDefault(id, List.of());
      if (young.size() == 1 && oldById.getOrDefault(id, List.of()).size() == 1) {
        pair(old, young.get(0), true);
      }
    }
  }

  private static Map<String, List<TakenElement>> byId(List<TakenElement> elements) {
    return elements.stream()
        .filter(taken -> !taken.element().globalId().isEmpty())
        .collect(Collectors.groupingBy(taken -> taken.element().globalId()));
  }

  /** What must be equal for two elements to be the same piece. */
  private record Sort(Kind kind, Form form, String type, String size) {
    static Sort of(MepElement element) {
      String type = Objects.requireNonNullElse(element.typeName(), "");
      String size = Size.find(element).map(Size::words).orElse("");
      return new Sort(element.kind(), element.form(), type, size);
    }
  }

  private void byPlace() {
    STRtree places = new STRtree();
    for (TakenElement young : added()) {
      Point at = young.element().place().positionM();
      if (at != null) {
        places.insert(new Envelope(at.x(), at.x(), at.y(), at.y()), young);
      }
    }
    for (TakenElement old : removed()) {
      TakenElement young = nearest(old, places);
      if (young != null) {
        pair(old, young, old.element().globalId().equals(young.element().globalId()));
      }
    }
  }

  private @Nullable TakenElement nearest(TakenElement old, STRtree places) {
    Point at = old.element().place().positionM();
    if (at == null) {
      return null;
    }
    Envelope around = new Envelope(at.x(), at.x(), at.y(), at.y());
    around.expandBy(SAME_PLACE_M);
    Sort sort = Sort.of(old.element());
    List<TakenElement> candidates = new ArrayList<>();
    places.query(around, found -> candidates.add((TakenElement) found));
    return candidates.stream()
        .filter(young -> !pairedNow.contains(key(young)))
        .filter(young -> distanceM(young, at) <= SAME_PLACE_M)
        .filter(young -> Sort.of(young.element()).equals(sort))
        .min(
            Comparator.comparingDouble((TakenElement young) -> distanceM(young, at))
                .thenComparing(Matching::key))
        .orElse(null);
  }

  /** Elements without a place, where either revision has one such of that name. */
  private void byName() {
    Map<Named, List<TakenElement>> oldByName = placeless(removed());
    Map<Named, List<TakenElement>> youngByName = placeless(added());
    oldByName.forEach(
        (named, old) -> {
          List<TakenElement> young = youngByName.getOrDefault(named, List.of());
          if (old.size() == 1 && young.size() == 1) {
            pair(old.get(0), young.get(0), false);
          }
        });
  }

  private record Named(Sort sort, String name) {}

  private static Map<Named, List<TakenElement>> placeless(List<TakenElement> elements) {
    return elements.stream()
        .filter(taken -> taken.element().place().positionM() == null)
        .filter(taken -> !taken.element().name().isBlank())
        .collect(
            Collectors.groupingBy(
                taken -> new Named(Sort.of(taken.element()), taken.element().name()),
                LinkedHashMap::new,
                Collectors.toList()));
  }

  private static double distanceM(TakenElement taken, Point from) {
    Point at = Objects.requireNonNull(taken.element().place().positionM());
    return at.distanceM(from);
  }
}
