package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Polygons;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
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
  private final List<List<Vec>> holes;
  private final Box box;

  /** Rows of the inverse of the matrix with the three edge vectors as columns. */
  private PrismRegion(
      Frame frame, Vec axis, List<Vec> corners, List<List<Vec>> holes, double determinant) {
    Vec x = Vec.of(frame.ex());
    Vec y = Vec.of(frame.ey());
    this.origin = Vec.of(frame.origin());
    this.acrossX = y.cross(axis).times(1 / determinant);
    this.acrossY = axis.cross(x).times(1 / determinant);
    this.along = x.cross(y).times(1 / determinant);
    this.corners = List.copyOf(corners);
    this.holes = List.copyOf(holes);
    List<Point> world = new ArrayList<>();
    for (Vec corner : corners) {
      Vec at = frame.point(corner);
      world.add(at.point());
      world.add(at.plus(axis).point());
    }
    this.box = Box.around(world);
  }

  /** One without holes. */
  static @Nullable PrismRegion of(Frame frame, Vec axis, List<Vec> corners) {
    return of(frame, axis, corners, List.of());
  }

  /**
   * @param frame frame of the outline's plane
   * @param axis world vector along which the outline is moved
   * @param corners the outline in its plane, in order; null is returned for fewer than three
   * @param holes in the outline, likewise; an empty one is none
   */
  static @Nullable PrismRegion of(Frame frame, Vec axis, List<Vec> corners, List<List<Vec>> holes) {
    double determinant = Vec.of(frame.ex()).dot(Vec.of(frame.ey()).cross(axis));
    boolean flat = !(Math.abs(determinant) > Vec.TINY) || corners.size() < 3;
    return flat ? null : new PrismRegion(frame, axis, corners, holes, determinant);
  }

  @Override
  public Box box() {
    return box;
  }

  @Override
  public boolean holds(Point worldM) {
    double height = along.dot(Vec.of(worldM).minus(origin));
    return height >= 0 && height <= 1 && holdsInPlan(worldM);
  }

  /** True if the outline, moved as far as it takes, holds the world position. */
  boolean holdsInPlan(Point worldM) {
    Vec from = Vec.of(worldM).minus(origin);
    double x = acrossX.dot(from);
    double y = acrossY.dot(from);
    boolean inside = Polygons.holds(corners, x, y);
    for (List<Vec> hole : holes) {
      inside &= hole.isEmpty() || !Polygons.holds(hole, x, y);
    }
    return inside;
  }
}
