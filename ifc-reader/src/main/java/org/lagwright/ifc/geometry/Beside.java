package org.lagwright.ifc.geometry;

/**
 * A piece that lies beside the axis of a pipe or duct and follows its surface: a half shell on a
 * pipe, a board on a duct.
 *
 * @param round true on a round one, whose axis it then shares
 * @param gapM how far it keeps off the surface
 * @param wallM its thickness
 * @param around share of the circumference that it lies on, above 0, up to 1
 * @param overM how far it reaches beyond the edges of the face that it lies on; 0 of a shell
 * @param extent part of the pipe or duct that it lies along
 */
public record Beside(
    boolean round,
    double gapM,
    double wallM,
    double around,
    double overM,
    Coaxiality.Extent extent) {

  /** Pieces around one pipe or duct, rounded as exporters do. */
  private static final double SAME_M = 0.001;

  /** Boards reach over the edges of their neighbours, which may be as thick again. */
  private static final double OVER_WALLS = 2;

  /** True if it touches the surface, and what it reaches over is that of boards around a duct. */
  public boolean liesOn(double toleranceM) {
    return gapM < toleranceM && overM < OVER_WALLS * wallM + toleranceM;
  }

  /** True if both are of one layer. */
  boolean isLike(Beside other) {
    return Math.abs(gapM - other.gapM) < SAME_M && Math.abs(wallM - other.wallM) < SAME_M;
  }

  /** This and another one of the same layer. */
  Beside and(Beside other) {
    double from = Math.min(extent.from(), other.extent.from());
    double to = Math.max(extent.to(), other.extent.to());
    double both = (around * extent.length() + other.around * other.extent.length()) / (to - from);
    return new Beside(
        round,
        gapM,
        wallM,
        Math.min(1, both),
        Math.max(overM, other.overM),
        new Coaxiality.Extent(from, to));
  }
}
