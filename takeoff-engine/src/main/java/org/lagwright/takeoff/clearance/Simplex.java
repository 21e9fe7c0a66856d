package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * The point of a point, line, triangle or tetrahedron that is nearest to the origin: of all parts
 * whose own nearest point lies within them, the one with the smallest distance.
 */
final class Simplex {

  /** Flatter than this a part is no triangle or tetrahedron; its edges tell as much. */
  private static final double FLAT = 1e-14;

  private Simplex() {}

  /**
   * What was found.
   *
   * @param corners those of the part that holds the point
   */
  record Nearest(Point point, List<Point> corners) {
    Nearest {
      corners = List.copyOf(corners);
    }
  }

  /** The nearest point of one to four corners. */
  static Nearest nearest(List<Point> corners) {
    Nearest best = new Nearest(corners.get(0), List.of(corners.get(0)));
    for (int chosen = 1; chosen < 1 << corners.size(); chosen++) {
      List<Point> part = new ArrayList<>(4);
      for (int i = 0; i < corners.size(); i++) {
        if ((chosen >> i & 1) == 1) {
          part.add(corners.get(i));
        }
      }
      Point within = within(part);
      if (within != null && Direction.length(within) < Direction.length(best.point())) {
        best = new Nearest(within, part);
      }
    }
    return best;
  }

  /** The point of a plane through all corners, null where it lies outside of them. */
  private static @Nullable Point within(List<Point> part) {
    Point origin = part.get(0);
    return switch (part.size()) {
      case 1 -> origin;
      case 2 -> onLine(origin, Direction.between(origin, part.get(1)));
      case 3 ->
          onPlane(
              origin,
              Direction.between(origin, part.get(1)),
              Direction.between(origin, part.get(2)));
      default ->
          inBody(
              origin,
              Direction.between(origin, part.get(1)),
              Direction.between(origin, part.get(2)),
              Direction.between(origin, part.get(3)));
    };
  }

  private static @Nullable Point onLine(Point p, Point a) {
    double square = Direction.dot(a, a);
    double share = -Direction.dot(p, a) / square;
    return square > 0 && share > 0 && share < 1 ? Direction.plus(p, a, share) : null;
  }

  private static @Nullable Point onPlane(Point p, Point a, Point b) {
    double aa = Direction.dot(a, a);
    double bb = Direction.dot(b, b);
    double ab = Direction.dot(a, b);
    double pa = -Direction.dot(p, a);
    double pb = -Direction.dot(p, b);
    double det = aa * bb - ab * ab;
    double s = (pa * bb - pb * ab) / det;
    double t = (pb * aa - pa * ab) / det;
    boolean inside = det > FLAT * aa * bb && s > 0 && t > 0 && s + t < 1;
    return inside ? Direction.plus(Direction.plus(p, a, s), b, t) : null;
  }

  /** The origin itself where it lies inside. */
  private static @Nullable Point inBody(Point p, Point a, Point b, Point c) {
    double det = Direction.dot(a, Direction.cross(b, c));
    Point to = Direction.opposite(p);
    double s = Direction.dot(to, Direction.cross(b, c)) / det;
    double t = Direction.dot(a, Direction.cross(to, c)) / det;
    double u = Direction.dot(a, Direction.cross(b, to)) / det;
    double size = Direction.length(a) * Direction.length(b) * Direction.length(c);
    boolean inside = Math.abs(det) > FLAT * size && s > 0 && t > 0 && u > 0 && s + t + u < 1;
    return inside ? new Point(0, 0, 0) : null;
  }
}
