package org.lagwright.takeoff.scope;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Property;

/** What a model says of whether an element is new, there already or to be demolished. */
public final class StatusText {

  private StatusText() {}

  /**
   * The text of the property Status in a common set of the standard ({@code
   * Pset_PipeSegmentTypeCommon}), else of one that the pack names, if that tells a status; a Status
   * in sets of other names may be that of anything.
   *
   * @return null if nothing tells
   */
  public static @Nullable String of(List<Property> properties, ScopePack pack) {
    for (Property property : properties) {
      if (property.name().equalsIgnoreCase("Status")
          && property.set().startsWith("Pset_")
          && property.set().endsWith("Common")
          && !property.text().isBlank()) {
        return property.text().strip();
      }
    }
    for (Property property : properties) {
      if (pack.statusProperties().contains(property.name().toLowerCase(Locale.ROOT))
          && pack.statusOf(property.text()) != null) {
        return property.text().strip();
      }
    }
    return null;
  }
}
