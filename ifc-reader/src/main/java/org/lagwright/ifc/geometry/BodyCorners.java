package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;

/** The corners of a body in the world, item by item; one at least. */
public final class BodyCorners {

  private final List<List<Vec>> items;

  BodyCorners(List<List<Vec>> items) {
    this.items = List.copyOf(items);
  }

  List<Vec> all() {
    List<Vec> all = new ArrayList<>();
    items.forEach(all::addAll);
    return all;
  }

  boolean areFinite() {
    for (Vec corner : all()) {
      if (!corner.isFinite()) {
        return false;
      }
    }
    return true;
  }

  /** The upright box around them. */
  public Box box() {
    List<Point> points = new ArrayList<>();
    for (Vec corner : all()) {
      points.add(corner.point());
    }
    return Box.around(points);
  }

  /**
   * How the body lies beside the axis of a straight pipe or duct, as half shells and boards do;
   * null if it lies otherwise, or its items differ.
   */
  public @Nullable Beside beside(Shape host) {
    CrossSection across = CrossSection.of(host);
    Beside first = null;
    for (List<Vec> item : across == null ? List.<List<Vec>>of() : items) {
      Beside next = across == null ? null : across.beside(item);
      if (next == null || (first != null && !first.isLike(next))) {
        return null;
      }
      first = first == null ? next : first.and(next);
    }
    return first;
  }

  /**
   * Wall in metres of a straight ring that is measured as {@code ring}; 0 if it is full or uneven.
   */
  public double ringWallM(Shape ring) {
    CrossSection across = CrossSection.of(ring);
    return across == null ? 0 : across.ringWallM(all());
  }

  /** True if the body lies wholly or partly outside of a straight pipe or duct. */
  public boolean reachOutOf(Shape host) {
    CrossSection across = CrossSection.of(host);
    if (across != null) {
      for (Vec corner : all()) {
        if (!across.holds(corner)) {
          return true;
        }
      }
    }
    return false;
  }
}
