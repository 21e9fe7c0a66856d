package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * Names of types that give a size, and stand on pieces drawn in several other sizes: the size of a
 * catalogue entry that all share, and of none of them.
 */
final class TypeSizes {

  /** Pieces may be drawn with their insulation, which comes in one thickness or two. */
  private static final int AT_LEAST = 3;

  /** Pieces of which the name of their type gives another size, by that name. */
  private final Map<String, Others> byName = new LinkedHashMap<>();

  private static final class Others {
    int count;
    final List<Section> sizes = new ArrayList<>(AT_LEAST);

    void add(Section drawn) {
      for (Section each : sizes) {
        if (Tolerances.sameSection(each, drawn)) {
          return;
        }
      }
      if (sizes.size() < AT_LEAST) {
        sizes.add(drawn);
      }
    }
  }

  /** Looks at one more element, as it was read. */
  void look(Draft draft) {
    Measured<Section> drawn = draft.isSegment() ? draft.shape().section() : null;
    if (drawn != null) {
      for (String name : draft.names().ofType()) {
        if (givesOther(name, drawn.value(), draft.isDuct())) {
          Others others = othersOf(name);
          others.count++;
          others.add(drawn.value());
        }
      }
    }
  }

  private Others othersOf(String name) {
    Others others = byName.get(name);
    if (others == null) {
      others = new Others();
      byName.put(name, others);
    }
    return others;
  }

  /** True if a text gives sizes of a pipe or duct, but not the drawn one. */
  private static boolean givesOther(String text, Section drawn, boolean duct) {
    Optional<Section> round = Sizes.diameter(text);
    Optional<Section> sides = duct ? Sizes.sides(text) : Optional.empty();
    int dn = NominalSizes.inText(text);
    Optional<Double> outsideM = duct ? Optional.empty() : Sizes.outsideDiameterAndWall(text);
    boolean given = round.isPresent() || sides.isPresent() || dn > 0 || outsideM.isPresent();
    return given
        && !(round.isPresent() && Tolerances.sameSection(round.get(), drawn))
        && !(sides.isPresent() && Tolerances.sameSection(sides.get(), drawn))
        && !(dn > 0 && PipeSizes.mayBe(dn, drawn))
        && !(outsideM.isPresent()
            && Tolerances.sameSection(new Section.Round(outsideM.get()), drawn));
  }

  /** Adds what was seen on the elements that follow. */
  void addAll(TypeSizes later) {
    for (Map.Entry<String, Others> each : later.byName.entrySet()) {
      Others others = othersOf(each.getKey());
      others.count += each.getValue().count;
      for (Section drawn : each.getValue().sizes) {
        others.add(drawn);
      }
    }
  }

  /**
   * The names that tell no size, each with the number of pieces that show it.
   *
   * @param others what was seen in other files of the same exporter
   */
  Map<String, Integer> without(List<SeenValues> others) {
    TypeSizes all = this;
    if (!others.isEmpty()) {
      all = new TypeSizes();
      all.addAll(this);
      for (SeenValues other : others) {
        all.addAll(other.types);
      }
    }
    Map<String, Integer> names = new LinkedHashMap<>();
    for (String name : byName.keySet()) {
      Others sizes = all.othersOf(name);
      if (sizes.sizes.size() >= AT_LEAST) {
        names.put(name, sizes.count);
      }
    }
    return names;
  }
}
