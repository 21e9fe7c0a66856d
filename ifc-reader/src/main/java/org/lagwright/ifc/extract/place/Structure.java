package org.lagwright.ifc.extract.place;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * What a spatial element and those above it tell; null where there is none.
 *
 * @param external true if the space is outdoors, null if nothing tells
 * @param containedInSpace of elements that the space contains
 */
record Structure(
    @Nullable IfcRecord site,
    @Nullable IfcRecord building,
    @Nullable IfcRecord storey,
    @Nullable IfcRecord space,
    @Nullable Boolean external,
    @Nullable OfStorey ofStorey,
    @Nullable Evidence containedInSpace) {

  static final Structure NOTHING = new Structure(null, null, null, null, null, null, null);

  /** The same storey, in one of several houses that have it. */
  Structure inAnyHouse(boolean atOneHeight) {
    OfStorey own = ofStorey;
    OfStorey any =
        own == null || atOneHeight
            ? own
            : new OfStorey(own.name(), own.elevationM(), null, own.containedIn());
    return new Structure(site, null, storey, space, external, any, containedInSpace);
  }

  /** What a storey gives to all elements on it. */
  record OfStorey(
      @Nullable String name,
      @Nullable Double elevationM,
      @Nullable Double floorM,
      Evidence containedIn) {}
}
