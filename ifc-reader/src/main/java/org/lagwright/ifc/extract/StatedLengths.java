package org.lagwright.ifc.extract;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Lengths that properties and quantities state, as candidates beside what is drawn. */
final class StatedLengths {

  private final Placeholders placeholders;
  private final double lengthUnitM;

  StatedLengths(Placeholders placeholders, double lengthUnitM) {
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  void addTo(Options<Double> options, Draft draft) {
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.LENGTH)) {
      Optional<Double> lengthM = PropertyNames.lengthM(p, lengthUnitM);
      if (lengthM.isPresent()) {
        add(options, p, lengthM.get(), draft);
      }
    }
  }

  private void add(Options<Double> options, Property p, double lengthM, Draft draft) {
    How how = p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
    if (placeholders.contains(p)) {
      options.rule(lengthM, how, p.evidence(), "placeholder");
    } else if (isSideOfSection(draft, lengthM)) {
      options.rule(lengthM, how, p.evidence(), "equals a side of the section");
    } else {
      options.add(lengthM, how, p.evidence());
    }
  }

  /** The two offsets of a transition across its axis, taken together. */
  void addEccentricity(Options<Double> options, Draft draft) {
    List<Property> offsets =
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.ECCENTRICITY);
    double squaresM2 = 0;
    StringBuilder names = new StringBuilder();
    StringBuilder texts = new StringBuilder();
    for (Property p : offsets) {
      double offsetM = PropertyNames.offsetM(p, lengthUnitM);
      squaresM2 += offsetM * offsetM;
      names.append(names.isEmpty() ? "" : ", ").append(p.name());
      texts.append(texts.isEmpty() ? "" : ", ").append(p.text());
    }
    if (!offsets.isEmpty() && Double.isFinite(squaresM2)) {
      Property first = offsets.get(0);
      options.add(
          Math.sqrt(squaresM2),
          How.PROPERTY,
          new Evidence(first.step(), first.set(), names.toString(), texts.toString()));
    }
  }

  /** Some exporters write a side of a duct as its length; only a drawn length can tell. */
  private static boolean isSideOfSection(Draft draft, double lengthM) {
    Measured<Double> drawn = draft.shape().lengthM();
    Measured<Section> section = draft.section();
    if (drawn == null || section == null || Sizes.sameLength(drawn.value(), lengthM)) {
      return false;
    }
    return section.value() instanceof Section.Rectangular r
        ? Sizes.sameLength(r.widthM(), lengthM) || Sizes.sameLength(r.heightM(), lengthM)
        : Sizes.sameLength(section.value().largestSideM(), lengthM);
  }
}
