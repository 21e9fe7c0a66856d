package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;

/**
 * The items of a body one by one. One covering may be drawn as several of them, each around a pipe
 * of its own and as wide as that needs.
 */
public final class BodyItems {

  /** Bodies of more items are told as a whole only. */
  private static final int MOST = 1000;

  /** Part of the length that may differ between two readings of one piece. */
  private static final double LONGER = 0.01;

  private final Solids solids;
  private final List<Item> items;
  private final List<Shape> shapes = new ArrayList<>();

  /** Of a single item nothing is to be told apart. */
  BodyItems(Solids solids, List<Item> items) {
    this.solids = solids;
    this.items = items.size() > 1 && items.size() <= MOST ? List.copyOf(items) : List.of();
    for (Item item : this.items) {
      shapes.add(solids.measure(List.of(item), ShapeHints.NONE));
    }
  }

  /**
   * What of the body lies along another one; the whole if that is all of it, if no item does, or if
   * the whole covers more of it.
   */
  public Shape along(Shape host, Shape whole) {
    List<Item> found = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      if (Coaxiality.runsAlong(shapes.get(i), host)) {
        found.add(items.get(i));
      }
    }
    if (found.isEmpty() || found.size() == items.size()) {
      return whole;
    }
    Shape part = solids.measure(found, ShapeHints.NONE);
    double partly = length(Coaxiality.extent(part, host));
    return partly > 0 && partly >= length(Coaxiality.extent(whole, host)) - LONGER ? part : whole;
  }

  private static double length(Coaxiality.@Nullable Extent extent) {
    return extent == null ? 0 : extent.length();
  }
}
