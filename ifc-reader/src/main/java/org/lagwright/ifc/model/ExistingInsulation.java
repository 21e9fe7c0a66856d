package org.lagwright.ifc.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Insulation that the model already shows on an element, or a lining inside it.
 *
 * @param thicknessM thickness of all layers in metres, null where only its presence is known
 * @param material material name as written, null if absent
 * @param share part of the element's length that it lies along, 0 to 1; 1 where nothing tells; less
 *     where half shells or boards leave a part of the circumference bare
 * @param evidence where the model says so
 * @param coverings keys of covering elements that represent it
 */
public record ExistingInsulation(
    @Nullable Double thicknessM,
    @Nullable String material,
    double share,
    Evidence evidence,
    List<ElementKey> coverings) {

  public ExistingInsulation {
    coverings = List.copyOf(coverings);
  }
}
