package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * Where an element is.
 *
 * @param storey name of the storey, null where the model does not tell
 * @param storeyElevationM elevation of the storey in metres
 * @param space name (and long name) of the space the element is contained in
 * @param external the space's or element's IsExternal property; null where the model does not tell
 */
public record Place(
    @Nullable String building,
    @Nullable String storey,
    @Nullable Double storeyElevationM,
    @Nullable String space,
    @Nullable Boolean external) {

  /** Nothing known. */
  public static final Place UNKNOWN = new Place(null, null, null, null, null);
}
