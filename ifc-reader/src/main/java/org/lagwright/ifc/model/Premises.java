package org.lagwright.ifc.model;

/**
 * The spaces of a file, for elements of other files that stand in them: architects and designers of
 * services draw one building in files of their own. Bodies are read when first asked.
 */
public interface Premises {

  /** Those of a file without spaces. */
  Premises NONE =
      new Premises() {
        @Override
        public boolean haveSpaces() {
          return false;
        }

        @Override
        public Place around(Point worldM) {
          return Place.UNKNOWN;
        }
      };

  /** True if there is anything to be asked for. */
  boolean haveSpaces();

  /**
   * The place of a point.
   *
   * @param worldM in the coordinates of the file, metres
   * @return with the smallest space whose body holds the point, its storey and building, and what
   *     tells so; {@link Place#UNKNOWN} if no space does
   */
  Place around(Point worldM);
}
