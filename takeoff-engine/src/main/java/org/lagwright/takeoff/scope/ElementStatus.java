package org.lagwright.takeoff.scope;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Property;

/**
 * What a model says of whether an element is new, there already, to be demolished or there for a
 * time only.
 *
 * @param text as it stands there
 * @param status by the name that the pack gives it; null where the text is none of its words
 */
public record ElementStatus(String text, @Nullable String status) {

  /**
   * The text of the property Status in a common set of the standard ({@code
   * Pset_PipeSegmentTypeCommon}), else of one that the pack names, if that tells a status; a Status
   * in sets of other names may be that of anything.
   *
   * @return null if nothing tells
   */
  public static @Nullable ElementStatus of(List<Property> properties, ScopePack pack) {
    for (Property property : properties) {
      if (property.name().equalsIgnoreCase("Status")
          && property.set().startsWith("Pset_")
          && property.set().endsWith("Common")
          && !property.text().isBlank()) {
        return of(property, pack);
      }
    }
    return further(properties, pack);
  }

  private static ElementStatus of(Property property, ScopePack pack) {
    return new ElementStatus(property.text().strip(), pack.statusOf(property.text()));
  }

  /** What other properties tell: that it was there, or a phase in which it goes. */
  private static @Nullable ElementStatus further(List<Property> properties, ScopePack pack) {
    ElementStatus found = null;
    Property gone = null;
    for (Property property : properties) {
      String name = property.name().toLowerCase(Locale.ROOT);
      if (found == null && pack.statusProperties().contains(name)) {
        ElementStatus told = of(property, pack);
        found = told.status == null ? null : told;
      } else if (found == null && pack.phaseProperties().contains(name)) {
        ElementStatus told = of(property, pack);
        found = ScopePack.EXISTING.equals(told.status) ? told : null;
      } else if (pack.demolitionPhases().contains(name) && pack.isPhase(property.text())) {
        gone = property;
      }
    }
    return gone == null ? found : gone(gone, found);
  }

  /** What is demolished in a phase was there before, or was built for a time only. */
  private static ElementStatus gone(Property phase, @Nullable ElementStatus found) {
    String text = phase.name() + " " + phase.text().strip();
    return new ElementStatus(text, found == null ? ScopePack.TEMPORARY : ScopePack.DEMOLISHED);
  }
}
