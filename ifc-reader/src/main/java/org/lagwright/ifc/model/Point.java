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
