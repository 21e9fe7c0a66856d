package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Point;

/**
 * An affine frame: {@code world = origin + x ex + y ey + z ez}. Works in metres; whoever reads
 * coordinates from a file scales them first. Axes are unit vectors at right angles for placements,
 * but may be scaled, mirrored or, with uneven scales, skewed below mapped items.
 */
public record Frame(Point origin, Point ex, Point ey, Point ez) {

  /** World coordinates. */
  public static final Frame WORLD = of(Vec.ZERO, Vec.X, Vec.Y, Vec.Z);

  static Frame of(Vec origin, Vec ex, Vec ey, Vec ez) {
    return new Frame(origin.point(), ex.point(), ey.point(), ez.point());
  }

  /** World position of local coordinates in metres. */
  public Point point(double x, double y, double z) {
    return point(new Vec(x, y, z)).point();
  }

  /** World unit vector of a local direction; zero if the direction is zero. */
  public Point direction(double x, double y, double z) {
    return vector(new Vec(x, y, z)).unit().point();
  }

  /**
   * Local coordinates of a world position, metres; only for frames of placements, whose axes are
   * unit vectors at right angles.
   */
  public Point local(Point world) {
    return localDirection(Vec.of(world).minus(Vec.of(origin)).point());
  }

  /** Local components of a world direction; only for frames of placements. */
  public Point localDirection(Point world) {
    Vec way = Vec.of(world);
    return new Point(way.dot(Vec.of(ex)), way.dot(Vec.of(ey)), way.dot(Vec.of(ez)));
  }

  Vec point(Vec local) {
    return new Vec(
        origin.x() + (ex.x() * local.x() + ey.x() * local.y() + ez.x() * local.z()),
        origin.y() + (ex.y() * local.x() + ey.y() * local.y() + ez.y() * local.z()),
        origin.z() + (ex.z() * local.x() + ey.z() * local.y() + ez.z() * local.z()));
  }

  List<Vec> points(List<Vec> local) {
    List<Vec> points = new ArrayList<>(local.size());
    for (Vec each : local) {
      points.add(point(each));
    }
    return points;
  }

  Vec vector(Vec local) {
    // by its numbers, as every corner of every mesh goes through here
    return new Vec(
        ex.x() * local.x() + ey.x() * local.y() + ez.x() * local.z(),
        ex.y() * local.x() + ey.y() * local.y() + ez.y() * local.z(),
        ex.z() * local.x() + ey.z() * local.y() + ez.z() * local.z());
  }

  /** The frame that applies the inner one first. */
  Frame times(Frame inner) {
    Point at = inner.origin;
    return new Frame(
        new Point(
            origin.x() + (ex.x() * at.x() + ey.x() * at.y() + ez.x() * at.z()),
            origin.y() + (ex.y() * at.x() + ey.y() * at.y() + ez.y() * at.z()),
            origin.z() + (ex.z() * at.x() + ey.z() * at.y() + ez.z() * at.z())),
        axis(inner.ex),
        axis(inner.ey),
        axis(inner.ez));
  }

  private Point axis(Point inner) {
    return new Point(
        ex.x() * inner.x() + ey.x() * inner.y() + ez.x() * inner.z(),
        ex.y() * inner.x() + ey.y() * inner.y() + ez.y() * inner.z(),
        ex.z() * inner.x() + ey.z() * inner.y() + ez.z() * inner.z());
  }
}
