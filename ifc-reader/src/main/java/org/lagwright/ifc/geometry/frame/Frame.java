package org.lagwright.ifc.geometry.frame;

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

  /** A frame by its origin in metres and its three unit vectors. */
  public static Frame of(Vec origin, Vec ex, Vec ey, Vec ez) {
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

  /** A point of this frame in the surrounding one, in metres. */
  public Vec point(Vec local) {
    return new Vec(
        origin.x() + x(local.x(), local.y(), local.z()),
        origin.y() + y(local.x(), local.y(), local.z()),
        origin.z() + z(local.x(), local.y(), local.z()));
  }

  /** Points of this frame in the surrounding one, in metres. */
  public List<Vec> points(List<Vec> local) {
    List<Vec> points = new ArrayList<>(local.size());
    for (Vec each : local) {
      points.add(point(each));
    }
    return points;
  }

  /** A vector of this frame in the surrounding one. */
  public Vec vector(Vec local) {
    return new Vec(
        x(local.x(), local.y(), local.z()),
        y(local.x(), local.y(), local.z()),
        z(local.x(), local.y(), local.z()));
  }

  // by their numbers, as every corner of every mesh goes through here

  private double x(double alongX, double alongY, double alongZ) {
    return ex.x() * alongX + ey.x() * alongY + ez.x() * alongZ;
  }

  private double y(double alongX, double alongY, double alongZ) {
    return ex.y() * alongX + ey.y() * alongY + ez.y() * alongZ;
  }

  private double z(double alongX, double alongY, double alongZ) {
    return ex.z() * alongX + ey.z() * alongY + ez.z() * alongZ;
  }

  /** The frame that applies the inner one first. */
  public Frame times(Frame inner) {
    return new Frame(
        point(Vec.of(inner.origin)).point(),
        direction(inner.ex),
        direction(inner.ey),
        direction(inner.ez));
  }

  private Point direction(Point inner) {
    return new Point(
        x(inner.x(), inner.y(), inner.z()),
        y(inner.x(), inner.y(), inner.z()),
        z(inner.x(), inner.y(), inner.z()));
  }
}
