package org.lagwright.ifc.model;

/** A point or direction in world coordinates; metres for points, no unit for directions. */
public record Point(double x, double y, double z) {

  /** Distance to another point in metres. */
  public double distanceM(Point other) {
    return Math.sqrt(
        (x - other.x) * (x - other.x)
            + (y - other.y) * (y - other.y)
            + (z - other.z) * (z - other.z));
  }
}
