package org.lagwright.ifc.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A solid part of the building: wall, slab, beam, column, stair. Only where it is, not what it is
 * made of.
 *
 * @param ifcClass class in the standard's spelling
 * @param name Name, empty if absent
 * @param storey name of the storey it is contained in, null where the model does not tell
 * @param box around its body, null where it has no body or place that can be read
 * @param openings boxes of the openings that are cut out of it
 */
public record BuildingPart(
    ElementKey key,
    String globalId,
    String ifcClass,
    String name,
    @Nullable String storey,
    @Nullable UprightBox box,
    List<UprightBox> openings) {

  public BuildingPart {
    openings = List.copyOf(openings);
  }
}
