package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Elements of one file that lie in each other: drawn twice, copied, or drawn over. All are counted.
 */
final class SamePlaces {

  /** GlobalIds that a finding names. */
  private static final int NAMED = 3;

  private SamePlaces() {}

  static void note(Joining joining) {
    joining.read().forEach(model -> note(joining, model));
  }

  private static void note(Joining joining, MepModel model) {
    PlaceIndex index = new PlaceIndex(model.elements());
    Set<ElementKey> within = Overlaps.within(index.elements());
    List<MepElement> twins = new ArrayList<>();
    for (MepElement element : index.elements()) {
      Optional<MepElement> first =
          index.near(element).stream()
              .filter(other -> other.key().compareTo(element.key()) < 0)
              .filter(other -> Bodies.areAlike(other, element))
              .findFirst();
      if (first.isPresent() || within.contains(element.key())) {
        twins.add(element);
      }
    }
    if (!twins.isEmpty()) {
      ElementKey example = Objects.requireNonNull(twins.get(0).key());
      joining.note(
          Finding.about(
              example,
              ReadFinding.DRAWN_TWICE,
              Effect.NONE,
              String.valueOf(twins.size()),
              names(twins)));
    }
  }

  private static String names(List<MepElement> twins) {
    List<String> ids = twins.stream().limit(NAMED).map(MepElement::globalId).toList();
    return String.join(", ", ids) + (twins.size() > NAMED ? " ..." : "");
  }
}
