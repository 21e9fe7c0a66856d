package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * Sizes of the ends of a fitting that properties state: a nominal size for each end, or one
 * property with a list.
 */
final class StatedEnds {

  private final Placeholders placeholders;
  private final double lengthUnitM;

  StatedEnds(Placeholders placeholders, double lengthUnitM) {
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * All that is stated for so many ends.
   *
   * @param ways how many ends the fitting has
   */
  List<Measured<List<Section>>> of(Draft draft, int ways) {
    List<Measured<List<Section>>> stated = new ArrayList<>(1);
    if (draft.isDuct() || ways < 2 || ways > 3) {
      return stated;
    }
    oneByOne(draft, ways, stated);
    for (Property p : asked(draft, PropertyNames.Role.NOMINAL)) {
      list(p, ways, true, stated);
    }
    for (Property p : asked(draft, PropertyNames.Role.OUTSIDE_DIAMETER)) {
      list(p, ways, false, stated);
    }
    return stated;
  }

  private List<Property> asked(Draft draft, PropertyNames.Role role) {
    List<Property> usable = new ArrayList<>(2);
    for (Property p : PropertyNames.listOf(draft.properties(), role)) {
      if (!placeholders.contains(p)) {
        usable.add(p);
      }
    }
    return usable;
  }

  /** Run, run and branch; the second end of the run has the size of the first if none is stated. */
  private void oneByOne(Draft draft, int ways, List<Measured<List<Section>>> stated) {
    Property run = first(draft, PropertyNames.Role.NOMINAL);
    Property second = first(draft, PropertyNames.Role.SECOND_NOMINAL);
    Property branch = first(draft, PropertyNames.Role.BRANCH_NOMINAL);
    Property last = ways == 3 ? branch : second;
    if (run == null || last == null) {
      return;
    }
    List<Section> ends = new ArrayList<>(ways);
    ends.add(NominalSizes.section(run).orElseThrow());
    if (ways == 3) {
      ends.add(NominalSizes.section(second == null ? run : second).orElseThrow());
    }
    ends.add(NominalSizes.section(last).orElseThrow());
    stated.add(Measured.of(List.copyOf(ends), How.PROPERTY, evidence(run, second, branch, ways)));
  }

  private static Evidence evidence(
      Property run, @Nullable Property second, @Nullable Property branch, int ways) {
    StringBuilder names = new StringBuilder(run.name());
    StringBuilder texts = new StringBuilder(run.text());
    for (Property p : new @Nullable Property[] {second, ways == 3 ? branch : null}) {
      if (p != null) {
        names.append(", ").append(p.name());
        texts.append(", ").append(p.text());
      }
    }
    return new Evidence(run.step(), run.set(), names.toString(), texts.toString());
  }

  private @Nullable Property first(Draft draft, PropertyNames.Role role) {
    for (Property p : asked(draft, role)) {
      if (NominalSizes.section(p).isPresent()) {
        return p;
      }
    }
    return null;
  }

  /** A list holds one figure for each end, all in the unit of the first. */
  private void list(Property p, int ways, boolean nominal, List<Measured<List<Section>>> stated) {
    String[] figures = p.text().contains(", ") ? p.text().split(", ", -1) : new String[] {p.text()};
    double first = PropertyNames.leadingNumber(figures[0]);
    double firstM =
        nominal
            ? NominalSizes.figureMm(p).orElse(0.0) / 1000
            : PropertyNames.diameterM(p, lengthUnitM).orElse(0.0);
    if (figures.length != ways || !(first > 0) || !(firstM > 0)) {
      return;
    }
    List<Section> ends = new ArrayList<>(ways);
    for (String figure : figures) {
      double endM = PropertyNames.leadingNumber(figure) / first * firstM;
      Optional<Section> end = nominal ? NominalSizes.section(endM * 1000) : round(endM);
      if (end.isPresent()) {
        ends.add(end.get());
      }
    }
    if (ends.size() == ways) {
      stated.add(Measured.of(List.copyOf(ends), How.PROPERTY, p.evidence()));
    }
  }

  private static Optional<Section> round(double diameterM) {
    return diameterM > 0 ? Optional.of(new Section.Round(diameterM)) : Optional.empty();
  }
}
