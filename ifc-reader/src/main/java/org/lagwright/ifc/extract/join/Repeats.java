package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Marks elements that an earlier file holds already: by GlobalId, if they are alike and in the same
 * place or have none, or by body and place under another GlobalId. The same GlobalId elsewhere is
 * another element: storeys are made by copying files. A shift of kilometres between all of them is
 * another origin and no other place. Where only one of two has a body, or of two coverings a host,
 * that one counts, whichever file it is in.
 */
final class Repeats {

  /** Farther than any building; the same element under another origin. */
  static final double OTHER_ORIGIN_M = 1000;

  /** Placements of one element in two exports. */
  static final double SAME_ELEMENT_M = 0.01;

  /** What was found for want of a body, which another file has. */
  private static final Set<ReadFinding> WITHOUT_BODY =
      EnumSet.of(
          ReadFinding.NO_GEOMETRY,
          ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED,
          ReadFinding.ANGLE_UNKNOWN,
          ReadFinding.SIZE_FROM_NOMINAL);

  private record Pair(int first, int repeating) implements Comparable<Pair> {
    @Override
    public int compareTo(Pair other) {
      int byFirst = Integer.compare(first, other.first);
      return byFirst != 0 ? byFirst : Integer.compare(repeating, other.repeating);
    }
  }

  /** What two files share. */
  private static final class Shared {
    int byId;
    int byPlace;
    int elsewhere;
    String example = "";
    String exampleElsewhere = "";
  }

  private final Joining joining;
  private final RepeatedCoverings coverings;
  private final Map<String, List<MepElement>> byId = new HashMap<>();
  private final List<PlaceIndex> byPlace = new ArrayList<>();
  private final Map<Pair, Shared> shared = new TreeMap<>();

  /** What repeats an element, and that element. */
  private final Map<ElementKey, MepElement> firsts = new HashMap<>();

  private final Set<ElementKey> insulated;

  /** True if an element of a later file counts in the place of an earlier one. */
  private boolean isAnyReplaced;

  private Repeats(Joining joining, Set<ElementKey> insulated) {
    this.joining = joining;
    this.coverings = new RepeatedCoverings(joining);
    this.insulated = insulated;
  }

  /**
   * @param joined given the elements that were connected in the place of a repetition
   * @param insulated given the repetitions that show insulation or a lining
   * @return all repetitions, in the order of the files
   */
  static Collection<ElementKey> mark(
      Joining joining, Set<ElementKey> joined, Set<ElementKey> insulated) {
    Repeats repeats = new Repeats(joining, insulated);
    joining.read().forEach(repeats::take);
    if (repeats.isAnyReplaced) {
      repeats.followReplaced();
    }
    if (!repeats.firsts.isEmpty()) {
      RepeatedJoints joints = new RepeatedJoints(joining, repeats.firsts, joined);
      joining.read().forEach(joints::reconnect);
    }
    repeats.shared.forEach(repeats::note);
    return new TreeSet<>(repeats.firsts.keySet());
  }

  private void take(MepModel model) {
    for (MepElement each : model.elements()) {
      MepElement element = joining.now(each);
      MepElement first = sameId(element);
      boolean identified = first != null;
      if (first == null) {
        first = samePlace(element);
      }
      if (first == null) {
        first = sameWithoutBody(element);
        identified = first != null;
      }
      if (first == null) {
        noteElsewhere(element);
      } else if (identified && isToCount(element, first)) {
        replace(first, element);
      } else {
        repeat(first, element, identified);
      }
    }
    index(model);
  }

  /** An earlier element of the same GlobalId, of which this is the body or the other way. */
  private @Nullable MepElement sameWithoutBody(MepElement element) {
    for (MepElement first : byId.getOrDefault(element.globalId(), List.of())) {
      if (Bodies.isOneWithoutBody(first, element) || coverings.areOne(first, element)) {
        return first;
      }
    }
    return null;
  }

  /** True for what only its own file draws, or holds a host of. */
  private boolean isToCount(MepElement element, MepElement first) {
    return Bodies.isOnlyDrawn(element, first) || coverings.isOnlyHosted(element, first);
  }

  /** It counts in the place of what an earlier file holds. */
  private void replace(MepElement earlier, MepElement counting) {
    isAnyReplaced = true;
    byId.getOrDefault(earlier.globalId(), List.of()).remove(earlier);
    repeat(counting, joining.now(earlier), true);
  }

  /** What repeats an element that was replaced later repeats what counts now. */
  private void followReplaced() {
    for (Map.Entry<ElementKey, MepElement> entry : firsts.entrySet()) {
      MepElement first = entry.getValue();
      while (firsts.containsKey(first.key())) {
        first = Objects.requireNonNull(firsts.get(first.key()));
      }
      MepElement element = first == entry.getValue() ? null : joining.find(entry.getKey());
      if (element != null) {
        entry.setValue(first);
        joining.change(element.toBuilder().repeats(first.key()).build());
      }
    }
  }

  private void index(MepModel model) {
    List<MepElement> own = new ArrayList<>();
    for (MepElement each : model.elements()) {
      if (!firsts.containsKey(each.key())) {
        own.add(joining.now(each));
      }
    }
    for (MepElement element : own) {
      if (!element.globalId().isEmpty()) {
        byId.computeIfAbsent(element.globalId(), id -> new ArrayList<>(1)).add(element);
      }
    }
    byPlace.add(new PlaceIndex(own));
  }

  private @Nullable MepElement sameId(MepElement element) {
    for (MepElement first : byId.getOrDefault(element.globalId(), List.of())) {
      double apartM = Bodies.apartM(first, element);
      boolean unknown = Double.isNaN(apartM) || apartM >= OTHER_ORIGIN_M;
      boolean here =
          Bodies.mayBeOne(first, element)
              && (apartM <= SAME_ELEMENT_M || Bodies.haveCommonEnds(first, element));
      if (here || (unknown && Bodies.areAlike(first, element))) {
        return first;
      }
    }
    return null;
  }

  /** The GlobalId of an earlier element that this one is not; proxies count in neither file. */
  private void noteElsewhere(MepElement element) {
    for (MepElement first : byId.getOrDefault(element.globalId(), List.of())) {
      if (first.kind() != Kind.OTHER && element.kind() != Kind.OTHER) {
        Shared pair = pair(first, element);
        pair.elsewhere++;
        pair.exampleElsewhere = element.globalId();
        return;
      }
    }
  }

  private @Nullable MepElement samePlace(MepElement element) {
    if (Bodies.isMeasured(element)) {
      for (int model = 0; model < byPlace.size(); model++) {
        MepElement first = samePlace(element, model);
        if (first != null) {
          return first;
        }
      }
    }
    return null;
  }

  /** Of several that one file draws in each other the one of the same name. */
  private @Nullable MepElement samePlace(MepElement element, int model) {
    MepElement found = null;
    if (joining.haveOneOrigin(model, element.key().model())) {
      for (MepElement first : byPlace.get(model).near(element)) {
        boolean alike = Bodies.areAlike(first, element);
        if (alike && first.name().equals(element.name())) {
          return first;
        }
        found = found == null && alike ? first : found;
      }
    }
    return found;
  }

  private Shared pair(MepElement first, MepElement repeating) {
    Pair files = new Pair(first.key().model(), repeating.key().model());
    return shared.computeIfAbsent(files, p -> new Shared());
  }

  /** What only the later file shows or states belongs to the element all the same. */
  private void repeat(MepElement first, MepElement element, boolean identified) {
    firsts.put(element.key(), first);
    joining.change(element.toBuilder().repeats(first.key()).build());
    if (Bodies.isOnlyDrawn(first, element)) {
      joining.forget(element.key(), WITHOUT_BODY);
    }
    if (element.kind() == Kind.COVERING) {
      // the one that counts tells of it, if there is anything to tell
      joining.hosted(element.key());
    }
    Shared pair = pair(first, element);
    pair.byId += identified ? 1 : 0;
    pair.byPlace += identified ? 0 : 1;
    pair.example = pair.example.isEmpty() ? element.globalId() : pair.example;
    MepElement kept = joining.now(first);
    ExistingInsulation shown = element.existingInsulation();
    ExistingInsulation lined = element.lining();
    if (shown != null || lined != null) {
      insulated.add(element.key());
      kept =
          kept.toBuilder()
              .existingInsulation(
                  kept.existingInsulation() == null ? shown : kept.existingInsulation())
              .lining(kept.lining() == null ? lined : kept.lining())
              .build();
      joining.change(kept);
    }
    if (kept.systems().isEmpty() && !element.systems().isEmpty()) {
      kept = kept.toBuilder().systems(element.systems()).build();
      joining.change(kept);
    }
    if (kept.kind().isLagged() && (kept.section() == null || kept.lengthM() == null)) {
      joining.change(withFigures(kept, element));
    }
  }

  /** Size and length of an element of which only another file knows them. */
  private MepElement withFigures(MepElement kept, MepElement element) {
    String file = joining.file(element.key().model());
    boolean size = kept.section() == null;
    return kept.toBuilder()
        .section(size ? from(file, element.section()) : kept.section())
        .ends(kept.endSections() == null && size ? element.endSections() : kept.endSections())
        .lengthM(kept.lengthM() == null ? from(file, element.lengthM()) : kept.lengthM())
        .build();
  }

  private static <T> @Nullable Measured<T> from(String file, @Nullable Measured<T> measured) {
    if (measured == null || measured.how() == How.NEIGHBOUR) {
      return null;
    }
    Evidence where = measured.evidence();
    return new Measured<>(
        measured.value(),
        measured.how(),
        new Evidence(where.step(), where.path() + " in " + file, where.raw()),
        measured.lost());
  }

  private void note(Pair files, Shared pair) {
    if (pair.byId + pair.byPlace > 0) {
      joining.note(
          Finding.ofFile(
              files.repeating,
              ReadFinding.REPEATED_ELEMENTS,
              Effect.NONE,
              String.valueOf(pair.byId + pair.byPlace),
              joining.file(files.first),
              String.valueOf(pair.byId),
              String.valueOf(pair.byPlace),
              pair.example));
    }
    if (pair.elsewhere > 0) {
      joining.note(
          Finding.ofFile(
              files.repeating,
              ReadFinding.SAME_ID_ELSEWHERE,
              Effect.NONE,
              String.valueOf(pair.elsewhere),
              joining.file(files.first),
              pair.exampleElsewhere));
    }
  }
}
