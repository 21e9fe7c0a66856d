package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/** A point or direction in world coordinates; metres for points, no unit for directions. */
public record Point(double x, double y, double z) {

  /** Distance to another point in metres. */
  public double distanceM(Point other) {
    return Math.sqrt(
        (x - other.x) * (x - other.x)
            + (y - other.y) * (y - other.y)
            + (z - other.z) * (z - other.z));
  }

  /** Scalar product of two directions: the cosine between them if both are unit vectors. */
  public double dot(Point other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Vector product of two directions: across both. */
  public Point cross(Point other) {
    return new Point(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** How far this direction, a unit vector, leads on the way between two places, in metres. */
  public double alongM(Point fromM, Point toM) {
    return x * (toM.x - fromM.x) + y * (toM.y - fromM.y) + z * (toM.z - fromM.z);
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Point o
        && Double.compare(x, o.x) == 0
        && Double.compare(y, o.y) == 0
        && Double.compare(z, o.z) == 0;
  }

  @Override
  public int hashCode() {
    return (Double.hashCode(x) * 31 + Double.hashCode(y)) * 31 + Double.hashCode(z);
  }
}
