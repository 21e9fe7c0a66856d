package org.lagwright.ifc.geometry.curve;

import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;

/** Questions about closed polygons in the x-y plane; z of their corners is not used. */
public final class Polygons {

  private Polygons() {}

  /** True if the point lies inside: a ray from it crosses the boundary an odd number of times. */
  public static boolean holds(List<Vec> corners, double x, double y) {
    boolean inside = false;
    Vec before = corners.get(corners.size() - 1);
    for (Vec corner : corners) {
      boolean crosses = corner.y() > y != before.y() > y;
      if (crosses) {
        double at =
            corner.x() + (y - corner.y()) * (before.x() - corner.x()) / (before.y() - corner.y());
        inside ^= x < at;
      }
      before = corner;
    }
    return inside;
  }
}
