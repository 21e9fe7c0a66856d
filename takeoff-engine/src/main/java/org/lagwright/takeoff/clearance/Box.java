package org.lagwright.takeoff.clearance;

import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** A box along the axes of the world, metres. */
record Box(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {

  /** The box round several bodies, at least one. */
  static Box around(List<Solid> solids) {
    return solids.stream().map(Solid::box).reduce(Box::plus).orElseThrow();
  }

  private Box plus(Box o) {
    return new Box(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.min(minZ, o.minZ),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY),
        Math.max(maxZ, o.maxZ));
  }

  /** True where another box is nearer than a distance along each axis. */
  boolean isNear(Box o, double distanceM) {
    return minX - distanceM <= o.maxX
        && o.minX - distanceM <= maxX
        && minY - distanceM <= o.maxY
        && o.minY - distanceM <= maxY
        && minZ - distanceM <= o.maxZ
        && o.minZ - distanceM <= maxZ;
  }

  /** Its plan, for the spatial index. */
  Envelope plan() {
    return new Envelope(minX, maxX, minY, maxY);
  }
}
