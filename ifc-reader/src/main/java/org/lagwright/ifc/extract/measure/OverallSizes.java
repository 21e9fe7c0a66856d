package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DuctShapes;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * Sizes over the insulation, as properties state them. They are no size of the pipe or duct, but
 * where nothing else gives the size of a duct, they are that and twice the thickness.
 */
final class OverallSizes {

  static final String OVERALL = "size over the insulation";

  private final double lengthUnitM;
  private final BareSizes bare;

  OverallSizes(double lengthUnitM) {
    this.bare = new BareSizes(lengthUnitM);
    this.lengthUnitM = lengthUnitM;
  }

  /** Adds what they tell behind all other statements; most elements state none. */
  void addTo(Options<Section> options, Draft draft) {
    List<Property> properties = draft.properties();
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.OVERALL_SIZE)) {
      Optional<Section> overall = section(draft, p.text());
      if (overall.isPresent()) {
        if (draft.isSegment() && draft.isDuct() && options.stated().isEmpty()) {
          addBare(options, overall.get(), p, properties);
        }
        options.rule(overall.get(), how(p), p.evidence(), OVERALL);
      }
    }
  }

  private Optional<Section> section(Draft draft, String text) {
    if (!draft.isDuct()) {
      return Sizes.diameter(text);
    }
    Optional<Section> sides = bare.sides(draft, text);
    return sides.isPresent()
        ? Optional.of(DuctShapes.shaped(draft, sides.get()))
        : bare.diameter(draft, text);
  }

  private void addBare(
      Options<Section> options, Section overall, Property p, List<Property> properties) {
    Optional<Property> thickness =
        Thicknesses.firstPossible(
            Thicknesses.stated(properties, PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM),
            lengthUnitM);
    if (thickness.isEmpty()) {
      return;
    }
    Property t = thickness.get();
    double thicknessM = Thicknesses.metres(t, lengthUnitM);
    Section bare = Thicknesses.off(overall, thicknessM);
    if (bare != null) {
      Evidence evidence =
          new Evidence(
              p.step(),
              p.set() + "." + p.name() + " - 2 x " + t.set() + "." + t.name(),
              p.text() + " - 2 x " + InWords.millimetres(thicknessM));
      options.add(bare, how(p), evidence);
    }
  }

  private static How how(Property p) {
    return p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
  }
}
