package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Elements that lie in each other: drawn twice, copied, or drawn over in one file or in another.
 * All are counted. What repeats an element of another file is not.
 */
final class SamePlaces {

  /** GlobalIds that a finding names. */
  private static final int NAMED = 3;

  private static final List<MepElement> NONE = List.of();

  /** What counts in one file, and that of it which is measured, by its place. */
  private record Counted(List<MepElement> elements, PlaceIndex measured) {}

  private final Joining joining;

  /** What lies in another one, and that one. */
  private final Map<ElementKey, ElementKey> within;

  private SamePlaces(Joining joining, List<Counted> files) {
    this.joining = joining;
    List<MepElement> measured = new ArrayList<>();
    List<MepElement> all = new ArrayList<>();
    for (Counted file : files) {
      measured.addAll(file.measured.elements());
      all.addAll(file.elements);
    }
    this.within = Overlaps.within(measured, joining);
    within.putAll(OverlaidFittings.within(all, joining));
  }

  /** To be called when repetitions are marked. */
  static void note(Joining joining) {
    List<Counted> files = joining.read().stream().map(model -> counted(joining, model)).toList();
    SamePlaces places = new SamePlaces(joining, files);
    files.forEach(places::note);
  }

  private static Counted counted(Joining joining, MepModel model) {
    List<MepElement> counted = new ArrayList<>();
    for (MepElement each : model.elements()) {
      MepElement element = joining.now(each);
      if (element.repeats() == null) {
        counted.add(element);
      }
    }
    return new Counted(counted, new PlaceIndex(counted));
  }

  private void note(Counted file) {
    Map<Integer, List<MepElement>> byFile = new TreeMap<>();
    for (MepElement element : file.elements) {
      ElementKey other = twin(file.measured, element);
      if (other != null) {
        byFile.computeIfAbsent(other.model(), model -> new ArrayList<>()).add(element);
      }
    }
    byFile.forEach(this::note);
  }

  private @Nullable ElementKey twin(PlaceIndex index, MepElement element) {
    for (MepElement other : Bodies.isMeasured(element) ? index.near(element) : NONE) {
      if (other.key().compareTo(element.key()) < 0 && Bodies.areAlike(other, element)) {
        return other.key();
      }
    }
    return within.get(element.key());
  }

  private void note(int file, List<MepElement> twins) {
    ElementKey example = Objects.requireNonNull(twins.get(0).key());
    joining.note(
        Finding.about(
            example,
            ReadFinding.DRAWN_TWICE,
            Effect.NONE,
            String.valueOf(twins.size()),
            names(twins),
            file == example.model() ? "this file" : joining.file(file)));
  }

  private static String names(List<MepElement> twins) {
    List<String> ids = twins.stream().limit(NAMED).map(MepElement::globalId).toList();
    return String.join(", ", ids) + (twins.size() > NAMED ? " ..." : "");
  }
}
