package org.lagwright.testmodels.ifc;

import java.util.List;
import java.util.stream.IntStream;

/** A cross-section centred on its origin. All lengths in millimetres. */
public sealed interface Profile {

  /** A full circle. */
  record Circle(double diameter) implements Profile {}

  /** A ring; the diameter is the outer one. */
  record Ring(double diameter, double wall) implements Profile {}

  /** A full rectangle. */
  record Rectangle(double x, double y) implements Profile {}

  /** A closed polygon; z of the points is not used, the first point is not repeated. */
  record Polygon(List<Vec> points) implements Profile {
    public Polygon {
      points = List.copyOf(points);
    }
  }

  /** The corners on a circle, counter-clockwise, beginning on the x axis. */
  static List<Vec> circlePoints(double diameter, int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> 2 * Math.PI * i / count)
        .map(a -> new Vec(diameter / 2 * Math.cos(a), diameter / 2 * Math.sin(a), 0))
        .toList();
  }

  /** The corners of a rectangle, counter-clockwise. */
  static List<Vec> rectanglePoints(double x, double y) {
    return List.of(
        new Vec(x / 2, y / 2, 0),
        new Vec(-x / 2, y / 2, 0),
        new Vec(-x / 2, -y / 2, 0),
        new Vec(x / 2, -y / 2, 0));
  }
}
