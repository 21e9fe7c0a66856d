package org.lagwright.ifc.model;

/**
 * The spaces and storeys of a file, for elements of other files that stand in them: architects and
 * designers of services draw one building in files of their own. Bodies are read when first asked.
 */
public interface Premises {

  /** Those of a file without spaces and storeys. */
  Premises NONE =
      new Premises() {
        @Override
        public boolean haveSpaces() {
          return false;
        }

        @Override
        public boolean haveStoreys() {
          return false;
        }

        @Override
        public Place around(Point worldM) {
          return Place.UNKNOWN;
        }

        @Override
        public Place onFloorBelow(Point worldM) {
          return Place.UNKNOWN;
        }
      };

  /** True if there is any space to be asked for. */
  boolean haveSpaces();

  /** True if there is any storey to be asked for. */
  boolean haveStoreys();

  /**
   * The place of a point.
   *
   * @param worldM in the coordinates of the file, metres
   * @return with the smallest space whose body holds the point, its storey and building, and what
   *     tells so; {@link Place#UNKNOWN} if no space does
   */
  Place around(Point worldM);

  /**
   * The place of a point, as far as the storeys tell by their height.
   *
   * @param worldM in the coordinates of the file, metres
   * @return with the storey whose floor lies next below the point and its building, and what tells
   *     so; {@link Place#UNKNOWN} if none does, or several of different names
   */
  Place onFloorBelow(Point worldM);
}
