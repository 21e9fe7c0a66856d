package org.lagwright.takeoff.scope;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Property;

/** What a model says of whether an element is new, there already or to be demolished. */
public final class StatusText {

  private StatusText() {}

  /**
   * The text of the property Status in a common set of the standard ({@code
   * Pset_PipeSegmentTypeCommon}); in sets of other names it may be the status of anything.
   *
   * @return null if no such set tells
   */
  public static @Nullable String of(List<Property> properties) {
    for (Property property : properties) {
      if (property.name().equalsIgnoreCase("Status")
          && property.set().startsWith("Pset_")
          && property.set().endsWith("Common")
          && !property.text().isBlank()) {
        return property.text().strip();
      }
    }
    return null;
  }
}
