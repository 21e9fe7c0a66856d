package org.lagwright.takeoff.body;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * How a section lies across its axis.
 *
 * @param axis unit vector along the axis
 * @param u unit vector along the width, level where the axis is not upright
 * @param v unit vector along the height
 */
public record Frame(Point axis, Point u, Point v) {

  private static final Point UP = new Point(0, 0, 1);
  private static final Point EAST = new Point(1, 0, 0);

  /** Steeper than this, nothing tells which way the width of a section points. */
  private static final double UPRIGHT = 0.99;

  /** A width this near to the axis tells nothing. */
  private static final double ALONG = 0.7;

  /** The frame across an axis of any length. */
  public static Frame across(Point way) {
    Point axis = Direction.unit(way);
    Point u = Direction.unit(Direction.cross(isUpright(axis) ? EAST : UP, axis));
    return new Frame(axis, u, Direction.cross(axis, u));
  }

  /**
   * The frame across an axis of any length, u along the width.
   *
   * @param width world direction of the width as drawn; where it is null or runs along the axis,
   *     the width lies level
   */
  public static Frame across(Point way, @Nullable Point width) {
    Point axis = Direction.unit(way);
    if (width == null || Math.abs(Direction.dot(width, axis)) > ALONG) {
      return across(way);
    }
    Point u = Direction.unit(Direction.plus(width, axis, -Direction.dot(width, axis)));
    return new Frame(axis, u, Direction.cross(axis, u));
  }

  /** True where the frame is a guess for all but round sections. */
  public static boolean isUpright(Point unit) {
    return Math.abs(unit.z()) > UPRIGHT;
  }

  /**
   * The frame after a bend from here to another direction, turned in one plane.
   *
   * @param normal unit vector square to that plane
   * @param to unit vector along the axis there
   */
  public Frame turned(Point normal, Point to) {
    Point outward = Direction.cross(normal, axis);
    double along = Direction.dot(u, normal);
    double across = Direction.dot(u, outward);
    Point origin = new Point(0, 0, 0);
    Point turned =
        Direction.plus(Direction.plus(origin, normal, along), Direction.cross(normal, to), across);
    Point unit = Direction.unit(turned);
    return new Frame(to, unit, Direction.cross(to, unit));
  }
}
