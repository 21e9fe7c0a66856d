package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * Where on earth the world coordinates of a file lie. It is kept beside the coordinates and never
 * applied to them.
 *
 * @param siteName name of the site, null where there is none
 * @param siteM world position of the site's placement in metres, null where it has none
 * @param world the coordinate system that placements count from
 * @param conversion from world coordinates to a map, null where the file has none
 */
public record Georeference(
    @Nullable String siteName,
    @Nullable Point siteM,
    WorldSystem world,
    @Nullable MapConversion conversion) {

  /** Nothing known. */
  public static final Georeference NONE = new Georeference(null, null, WorldSystem.ZERO, null);

  /**
   * The WorldCoordinateSystem of the context in which bodies are drawn.
   *
   * @param originM its origin in metres
   * @param rotationDeg of its x axis in plan, counter-clockwise, degrees
   */
  public record WorldSystem(Point originM, double rotationDeg) {

    /** That of nearly all files. */
    public static final WorldSystem ZERO = new WorldSystem(new Point(0, 0, 0), 0);

    /** True if they differ by less than a millimetre and what is rounded of an angle. */
    public boolean agreesWith(WorldSystem other) {
      return originM.distanceM(other.originM) < SAME_M
          && Math.abs(rotationDeg - other.rotationDeg) < SAME_DEG;
    }
  }

  /** Two files that put their origin at the same place differ by less. */
  private static final double SAME_M = 1e-3;

  private static final double SAME_DEG = 1e-4;

  /**
   * The figures of an IfcMapConversion, as written.
   *
   * @param crs name of the map's coordinate system, null where unnamed
   * @param eastings of the origin of the world coordinates, in the unit of the map
   * @param northings likewise
   * @param orthogonalHeight likewise
   * @param rotationDeg from the x axis of the map to that of the world, counter-clockwise, degrees
   * @param scale from the units of the file to those of the map
   * @param unitM metres in one unit of the map; where the file does not tell it, metres in one unit
   *     of its lengths
   * @param unitTold false where the file does not tell the unit of the map
   */
  public record MapConversion(
      @Nullable String crs,
      double eastings,
      double northings,
      double orthogonalHeight,
      double rotationDeg,
      double scale,
      double unitM,
      boolean unitTold) {

    /**
     * True if both put a point on the map at the same place within a millimetre. Where the unit of
     * a map is not told, the standard takes that of the file, but many files in millimetres write
     * metres; so figures that agree in either way do.
     */
    public boolean agreesWith(MapConversion other) {
      if (Math.abs(rotationDeg - other.rotationDeg) >= SAME_DEG) {
        return false;
      }
      if (unitTold || other.unitTold) {
        return isAt(unitM, other, other.unitM)
            || (!unitTold && isAt(1, other, other.unitM))
            || (!other.unitTold && isAt(unitM, other, 1));
      }
      return isAt(1, other, 1) || (unitM != other.unitM && isAt(unitM, other, other.unitM));
    }

    private boolean isAt(double inM, MapConversion other, double otherInM) {
      return Math.abs(eastings * inM - other.eastings * otherInM) < SAME_M
          && Math.abs(northings * inM - other.northings * otherInM) < SAME_M
          && Math.abs(orthogonalHeight * inM - other.orthogonalHeight * otherInM) < SAME_M;
    }
  }
}
