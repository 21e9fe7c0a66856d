package org.lagwright.ifc.extract.draft;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.MaterialLayers;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.WordedThickness;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.extract.text.YesNo;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Property;

/**
 * Insulation on an element and lining in it as the element itself states them: a thickness among
 * its properties, a layer, profile or constituent of its material, or a text that says what it is
 * insulated with.
 */
public final class StatedInsulation {

  private final MaterialLayers layers;
  private final double lengthUnitM;

  /** Reads a file, whose unit of length is given in metres. */
  public StatedInsulation(MaterialLayers layers, double lengthUnitM) {
    this.layers = layers;
    this.lengthUnitM = lengthUnitM;
  }

  /** True if the element may state something; cheap. */
  public boolean mayBeOf(Draft draft) {
    return draft.statesInsulation()
        || layers.insulationOn(draft.step()).isPresent()
        || layers.liningIn(draft.step()).isPresent();
  }

  /** Insulation on the outside. */
  public Optional<ExistingInsulation> on(Draft draft) {
    List<Property> properties = draft.properties();
    boolean inside = isToldInside(draft);
    Optional<Property> thickness = thickness(properties, Role.INSULATION_THICKNESS);
    if (thickness.isPresent() && !inside) {
      return Optional.of(by(thickness.get(), materialOf(properties)));
    }
    Optional<ExistingInsulation> byLayers = layers.insulationOn(draft.step());
    if (byLayers.isPresent()) {
      return byLayers;
    }
    if (inside) {
      return byName(draft);
    }
    Optional<ExistingInsulation> byTexts = byTexts(properties);
    return byTexts.isPresent() ? byTexts : byName(draft);
  }

  /** Lining on the inside; that of a pipe, of mortar, resin or rubber, does not insulate. */
  public Optional<ExistingInsulation> in(Draft draft) {
    Kind kind = draft.kind();
    if ((kind != null && kind.isOfPipe()) || isLinedHeavily(draft.properties())) {
      return Optional.empty();
    }
    Optional<Property> thickness = thickness(draft.properties(), Role.LINING_THICKNESS);
    if (thickness.isPresent()) {
      return Optional.of(by(thickness.get(), null));
    }
    if (!draft.isDuct()) {
      return Optional.empty();
    }
    if (isToldInside(draft)) {
      return insideByInsulation(draft.properties());
    }
    Optional<ExistingInsulation> byLayers = layers.liningIn(draft.step());
    Property told = byLayers.isPresent() ? null : hasLining(draft.properties());
    return told == null ? byLayers : Optional.of(byLining(told));
  }

  /** True for a duct of which what its properties call insulation is a lining. */
  public static boolean isToldInside(Draft draft) {
    if (!draft.isDuct()) {
      return false;
    }
    String material = materialOf(draft.properties());
    if (material != null) {
      return saysLining(material);
    }
    for (Property p : PropertyNames.listOf(draft.properties(), Role.INSULATION_OR_SHUT_OFF)) {
      if (saysLining(p.text())) {
        return true;
      }
    }
    return false;
  }

  private static boolean saysLining(String text) {
    return Words.isLining(text) && WordedThickness.says(text);
  }

  private Optional<ExistingInsulation> insideByInsulation(List<Property> properties) {
    Optional<Property> thickness = thickness(properties, Role.INSULATION_THICKNESS);
    if (thickness.isPresent()) {
      return Optional.of(by(thickness.get(), materialOf(properties)));
    }
    return byTexts(properties);
  }

  private static Optional<ExistingInsulation> byTexts(List<Property> properties) {
    Optional<ExistingInsulation> byText = byText(properties);
    return byText.isPresent() ? byText : byTextInDoubt(properties);
  }

  /** A figure, or a text with one, tells how thick it is; a yes does not. */
  private ExistingInsulation byLining(Property told) {
    double thicknessM = isYes(told) ? 0 : Thicknesses.metres(told, lengthUnitM);
    boolean named = !isYes(told) && WordedThickness.says(told.text());
    return new ExistingInsulation(
        Thicknesses.isPossible(thicknessM) ? thicknessM : null,
        named ? told.text() : null,
        1,
        told.evidence(),
        List.of());
  }

  /** The property that says that there is a lining, null if none does. */
  public static @Nullable Property hasLining(List<Property> properties) {
    for (int i = 0; i < properties.size(); i++) {
      Property p = properties.get(i);
      if (PropertyNames.answers(p, Role.LINING) && saysLining(p)) {
        return p;
      }
    }
    return null;
  }

  /** True if a lining is of concrete or the like, however thick. */
  private static boolean isLinedHeavily(List<Property> properties) {
    for (Property p : PropertyNames.listOf(properties, Role.LINING)) {
      if (p.number() == null && Words.isHeavy(p.text())) {
        return true;
      }
    }
    return false;
  }

  /** Linings of concrete and the like are none that insulate. */
  private static boolean saysLining(Property p) {
    if (isYesOrNo(p) || isYes(p)) {
      return isYes(p);
    }
    Double lengthM = p.number();
    if (lengthM != null) {
      return PropertyLengths.isTyped(p) && Thicknesses.isPossible(lengthM);
    }
    boolean insulates = Words.isInsulant(p.text()) || Words.isInsulation(p.text());
    return WordedThickness.metres(p.text()).isPresent()
        || (insulates && WordedThickness.says(p.text()));
  }

  private static boolean isYes(Property p) {
    return p.number() == null && Boolean.TRUE.equals(YesNo.of(p));
  }

  private Optional<Property> thickness(List<Property> properties, PropertyNames.Role role) {
    return Thicknesses.firstPossible(
        Thicknesses.stated(properties, role, lengthUnitM), lengthUnitM);
  }

  private ExistingInsulation by(Property thickness, @Nullable String material) {
    return new ExistingInsulation(
        Thicknesses.metres(thickness, lengthUnitM), material, 1, thickness.evidence(), List.of());
  }

  private static @Nullable String materialOf(List<Property> properties) {
    for (Property p : PropertyNames.listOf(properties, Role.INSULATION_MATERIAL)) {
      if (!p.text().isBlank() && p.number() == null && !isYesOrNo(p)) {
        return p.text();
      }
    }
    return null;
  }

  /** What a text names is there; how thick it is only if the text tells. */
  private static Optional<ExistingInsulation> byText(List<Property> properties) {
    for (Property p : PropertyNames.listOf(properties, Role.INSULATION_MATERIAL)) {
      Double thicknessM = WordedThickness.metres(p.text()).orElse(null);
      if (isYesOrNo(p)) {
        if (p.text().equals("T")) {
          return Optional.of(new ExistingInsulation(null, null, 1, p.evidence(), List.of()));
        }
      } else if (thicknessM != null || WordedThickness.says(p.text())) {
        return Optional.of(
            new ExistingInsulation(thicknessM, p.text(), 1, p.evidence(), List.of()));
      }
    }
    return Optional.empty();
  }

  /**
   * A name that is insulation in one language and shutting off in another, as isolation is: it is
   * insulation where its text tells how thick.
   */
  private static Optional<ExistingInsulation> byTextInDoubt(List<Property> properties) {
    for (Property p : PropertyNames.listOf(properties, Role.INSULATION_OR_SHUT_OFF)) {
      Optional<Double> thicknessM = WordedThickness.metres(p.text());
      if (thicknessM.isPresent() && WordedThickness.says(p.text())) {
        return Optional.of(
            new ExistingInsulation(thicknessM.get(), p.text(), 1, p.evidence(), List.of()));
      }
    }
    return Optional.empty();
  }

  /** True for a yes or no that is no. */
  public static boolean isNo(Property p) {
    return isYesOrNo(p) && p.text().equals("F");
  }

  private static boolean isYesOrNo(Property p) {
    return "IFCBOOLEAN".equals(p.measure()) || "IFCLOGICAL".equals(p.measure());
  }

  /** A name such as "flexible duct, insulated 25 mm"; without a figure it may be meant to be. */
  private static Optional<ExistingInsulation> byName(Draft draft) {
    for (String name : draft.names().all()) {
      Optional<Double> thicknessM = WordedThickness.ofInsulated(name);
      if (thicknessM.isPresent()) {
        Evidence evidence = new Evidence(draft.step(), draft.ifcClass(), name);
        return Optional.of(new ExistingInsulation(thicknessM.get(), null, 1, evidence, List.of()));
      }
    }
    return Optional.empty();
  }
}
