package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;

/**
 * What an outline sweeps over when it is moved along a vector: the room above a footprint. Works in
 * the oblique coordinates of outline plane and vector, so that neither need be upright.
 */
final class PrismRegion implements Region {

  private final Vec origin;
  private final Vec acrossX;
  private final Vec acrossY;
  private final Vec along;
  private final List<Vec> corners;
  private final Box box;

  /** Rows of the inverse of the matrix with the three edge vectors as columns. */
  private PrismRegion(Frame frame, Vec axis, List<Vec> corners, double determinant) {
    Vec x = Vec.of(frame.ex());
    Vec y = Vec.of(frame.ey());
    this.origin = Vec.of(frame.origin());
    this.acrossX = y.cross(axis).times(1 / determinant);
    this.acrossY = axis.cross(x).times(1 / determinant);
    this.along = x.cross(y).times(1 / determinant);
    this.corners = List.copyOf(corners);
    List<Point> world = new ArrayList<>();
    for (Vec corner : corners) {
      Vec at = frame.point(corner);
      world.add(at.point());
      world.add(at.plus(axis).point());
    }
    this.box = Box.around(world);
  }

  /**
   * @param frame frame of the outline's plane
   * @param axis world vector along which the outline is moved
   * @param corners the outline in its plane, in order; null is returned for fewer than three
   */
  static @Nullable PrismRegion of(Frame frame, Vec axis, List<Vec> corners) {
    double determinant = Vec.of(frame.ex()).dot(Vec.of(frame.ey()).cross(axis));
    boolean flat = !(Math.abs(determinant) > Vec.TINY) || corners.size() < 3;
    return flat ? null : new PrismRegion(frame, axis, corners, determinant);
  }

  @Override
  public Box box() {
    return box;
  }

  @Override
  public boolean holds(Point worldM) {
    Vec from = Vec.of(worldM).minus(origin);
    double height = along.dot(from);
    return height >= 0
        && height <= 1
        && Polygons.holds(corners, acrossX.dot(from), acrossY.dot(from));
  }
}
