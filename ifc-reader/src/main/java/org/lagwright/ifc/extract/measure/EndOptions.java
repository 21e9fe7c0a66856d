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

  @Override
  public boolean agree(List<Section> some, List<Section> others) {
    return same(some, others);
  }

  @Override
  boolean isWrittenOf(List<Section> written, List<Section> chosen) {
    List<Section> left = new ArrayList<>(chosen);
    for (Section section : written) {
      Section match = null;
      for (Section other : left) {
        boolean same =
            Tolerances.sameSection(section, other) || Tolerances.areSidesOf(section, other);
        match = same ? other : match;
      }
      if (match == null || !left.remove(match)) {
        return false;
      }
    }
    return left.isEmpty();
  }

  /** The same sizes, in whatever order. */
  static boolean same(List<Section> some, List<Section> others) {
    return matchEach(some, others, false);
  }

  /**
   * Adds what is stated. Ends of pipes are stated by their nominal sizes, which other pipes than
   * tables say may have.
   */
  void addStated(List<Section> ends, How how, Evidence evidence) {
    List<Section> leading = leading();
    if (leading != null && !same(ends, leading) && matchEach(ends, leading, true)) {
      rule(ends, how, evidence, StatedSections.NOMINAL);
    } else {
      add(ends, how, evidence);
    }
  }

  private static boolean matchEach(List<Section> some, List<Section> others, boolean nominal) {
    List<Section> left = new ArrayList<>(others);
    for (Section section : some) {
      Section match = match(section, left, nominal);
      if (match == null || !left.remove(match)) {
        return false;
      }
    }
    return left.isEmpty();
  }

  private static @Nullable Section match(Section section, List<Section> others, boolean nominal) {
    for (Section other : others) {
      if (nominal
          ? PipeSizes.mayBeOfOneNominal(section, other)
          : Tolerances.sameSection(section, other)) {
        return other;
      }
    }
    return null;
  }
}
