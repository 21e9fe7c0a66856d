package org.lagwright.ifc.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Insulation that the model already shows on an element.
 *
 * @param thicknessM thickness in metres, null where only its presence is known
 * @param material material name as written, null if absent
 * @param evidence where the model says so
 * @param coverings keys of covering elements that represent it
 */
public record ExistingInsulation(
    @Nullable Double thicknessM,
    @Nullable String material,
    Evidence evidence,
    List<ElementKey> coverings) {

  public ExistingInsulation {
    coverings = List.copyOf(coverings);
  }
}
