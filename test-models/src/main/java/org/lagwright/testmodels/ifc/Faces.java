package org.lagwright.testmodels.ifc;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Closed bodies of flat faces. */
public final class Faces {

  /** Corners we give a circle; they lie on it. */
  public static final int SIDES = 24;

  private Faces() {}

  /** Two rings with the same number of corners, joined by flat four-sided faces. */
  public static Body.Faceted frustum(Profile from, Profile to, double depth) {
    List<Vec> bottom = ring(from);
    List<Vec> top = raised(ring(to), depth);
    int count = bottom.size();
    List<List<Vec>> faces = caps(bottom, top);
    for (int i = 0; i < count; i++) {
      int j = (i + 1) % count;
      faces.add(List.of(bottom.get(i), bottom.get(j), top.get(j), top.get(i)));
    }
    return new Body.Faceted(faces);
  }

  /**
   * A rectangle below, a circle above: each corner fans out to a quarter of the circle, a triangle
   * stands on each side.
   */
  public static Body.Faceted rectangleToRound(double x, double y, double diameter, double depth) {
    List<Vec> corners = Profile.rectanglePoints(x, y);
    List<Vec> circle = raised(Profile.circlePoints(diameter, SIDES), depth);
    List<List<Vec>> faces = caps(corners, circle);
    int quarter = SIDES / 4;
    for (int k = 0; k < 4; k++) {
      for (int i = k * quarter; i < (k + 1) * quarter; i++) {
        faces.add(List.of(corners.get(k), circle.get((i + 1) % SIDES), circle.get(i)));
      }
      Vec next = corners.get((k + 1) % 4);
      faces.add(List.of(corners.get(k), next, circle.get((k + 1) * quarter % SIDES)));
    }
    return new Body.Faceted(faces);
  }

  private static List<List<Vec>> caps(List<Vec> bottom, List<Vec> top) {
    List<Vec> below = new ArrayList<>(bottom);
    Collections.reverse(below);
    return new ArrayList<>(List.of(List.copyOf(below), top));
  }

  private static List<Vec> raised(List<Vec> ring, double depth) {
    return ring.stream().map(p -> p.plus(new Vec(0, 0, depth))).toList();
  }

  private static List<Vec> ring(Profile profile) {
    if (profile instanceof Profile.Circle circle) {
      return Profile.circlePoints(circle.diameter(), SIDES);
    }
    if (profile instanceof Profile.Rectangle rectangle) {
      return Profile.rectanglePoints(rectangle.x(), rectangle.y());
    }
    throw new IllegalArgumentException("no ring of corners for " + profile);
  }
}
