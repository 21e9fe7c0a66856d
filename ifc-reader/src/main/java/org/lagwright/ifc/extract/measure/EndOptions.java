package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Section;

/** What is found for the sections of all ends together, in whatever order. */
final class EndOptions extends Options<List<Section>> {

  /** What makes two sizes that of one end. */
  private enum Likeness {
    SIZE,
    NOMINAL,

    /** The same, or the sides of an oval. */
    SIDES;

    boolean holds(Section section, Section other) {
      return switch (this) {
        case SIZE -> Tolerances.sameSection(section, other);
        case NOMINAL -> PipeSizes.mayBeOfOneNominal(section, other);
        case SIDES ->
            Tolerances.sameSection(section, other) || Tolerances.areSidesOf(section, other);
      };
    }
  }

  @Override
  public boolean agree(List<Section> some, List<Section> others) {
    return same(some, others);
  }

  @Override
  boolean isWrittenOf(List<Section> written, List<Section> chosen) {
    return matchEach(written, chosen, Likeness.SIDES);
  }

  /** The same sizes, in whatever order. */
  static boolean same(List<Section> some, List<Section> others) {
    return matchEach(some, others, Likeness.SIZE);
  }

  /**
   * Adds what is stated. Ends of pipes are stated by their nominal sizes, which other pipes than
   * tables say may have.
   */
  void addStated(List<Section> ends, How how, Evidence evidence) {
    List<Section> leading = leading();
    if (leading != null && !same(ends, leading) && matchEach(ends, leading, Likeness.NOMINAL)) {
      rule(ends, how, evidence, StatedSections.NOMINAL);
    } else {
      add(ends, how, evidence);
    }
  }

  private static boolean matchEach(List<Section> some, List<Section> others, Likeness likeness) {
    List<Section> left = new ArrayList<>(others);
    for (Section section : some) {
      Section match = match(section, left, likeness);
      if (match == null || !left.remove(match)) {
        return false;
      }
    }
    return left.isEmpty();
  }

  private static @Nullable Section match(Section section, List<Section> others, Likeness likeness) {
    for (Section other : others) {
      if (likeness.holds(section, other)) {
        return other;
      }
    }
    return null;
  }
}
