package org.lagwright.ifc.extract.graph;

import org.lagwright.ifc.model.Point;

/**
 * The axis of a straight piece.
 *
 * @param start world position of one end, metres
 * @param unit direction to the other end
 */
public record Axis(Point start, Point unit, double lengthM) {

  /** Off the grid of the world by less than this, its box is as narrow as the piece itself. */
  private static final double ON_GRID = 0.02;

  /** The straight line between two points that are not the same. */
  public static Axis between(Point a, Point b) {
    double lengthM = a.distanceM(b);
    Point unit =
        new Point((b.x() - a.x()) / lengthM, (b.y() - a.y()) / lengthM, (b.z() - a.z()) / lengthM);
    return new Axis(a, unit, lengthM);
  }

  /** True if it runs along x, y or z of the world. */
  boolean isAlongTheGrid() {
    return Math.abs(unit.x()) < ON_GRID || Math.abs(unit.y()) < ON_GRID;
  }

  /** How far along the foot of a place lies, metres from the start. */
  public double along(Point place) {
    return (place.x() - start.x()) * unit.x()
        + (place.y() - start.y()) * unit.y()
        + (place.z() - start.z()) * unit.z();
  }

  /** The point at a distance from its start, in metres. */
  public Point at(double alongM) {
    return new Point(
        start.x() + alongM * unit.x(),
        start.y() + alongM * unit.y(),
        start.z() + alongM * unit.z());
  }

  /** Cosine of the angle to a direction of length 1. */
  public double cosine(Point direction) {
    return unit.dot(direction);
  }

  /** Shortest distance between this axis and a line that is not parallel to it, metres. */
  public double distanceToLineM(Point place, Point direction) {
    double x = unit.y() * direction.z() - unit.z() * direction.y();
    double y = unit.z() * direction.x() - unit.x() * direction.z();
    double z = unit.x() * direction.y() - unit.y() * direction.x();
    double dot =
        (place.x() - start.x()) * x + (place.y() - start.y()) * y + (place.z() - start.z()) * z;
    return Math.abs(dot) / Math.sqrt(x * x + y * y + z * z);
  }
}
