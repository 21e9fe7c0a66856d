package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * Where on earth the world coordinates of a file lie. It is kept beside the coordinates and never
 * applied to them.
 *
 * @param siteName name of the site, null where there is none
 * @param siteM world position of the site's placement in metres, null where it has none
 * @param conversion from world coordinates to a map, null where the file has none
 */
public record Georeference(
    @Nullable String siteName, @Nullable Point siteM, @Nullable MapConversion conversion) {

  /** Nothing known. */
  public static final Georeference NONE = new Georeference(null, null, null);

  /**
   * The figures of an IfcMapConversion, as written.
   *
   * @param crs name of the map's coordinate system, null where unnamed
   * @param eastings of the origin of the world coordinates, in the unit of the map
   * @param northings likewise
   * @param orthogonalHeight likewise
   * @param rotationDeg from the x axis of the map to that of the world, counter-clockwise, degrees
   * @param scale from the units of the file to those of the map
   */
  public record MapConversion(
      @Nullable String crs,
      double eastings,
      double northings,
      double orthogonalHeight,
      double rotationDeg,
      double scale) {

    /** True if both put a point on the map at the same place within a thousandth of a unit. */
    public boolean agreesWith(MapConversion other) {
      return Math.abs(eastings - other.eastings) < 1e-3
          && Math.abs(northings - other.northings) < 1e-3
          && Math.abs(orthogonalHeight - other.orthogonalHeight) < 1e-3
          && Math.abs(rotationDeg - other.rotationDeg) < 1e-4;
    }
  }
}
