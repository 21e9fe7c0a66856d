package org.lagwright.ifc.geometry.frame;

import java.util.List;
import org.lagwright.ifc.model.Point;

/** An upright box between two corners, in metres. */
public record Box(Point low, Point high) {

  /** The smallest box around points, of which there must be one at least. */
  public static Box around(List<Point> points) {
    Point first = points.get(0);
    Box box = new Box(first, first);
    for (Point point : points) {
      box = box.with(point);
    }
    return box;
  }

  private Box with(Point p) {
    return new Box(
        new Point(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()), Math.min(low.z(), p.z())),
        new Point(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()), Math.max(high.z(), p.z())));
  }

  /** The box around both. */
  public Box and(Box other) {
    return with(other.low).with(other.high);
  }

  /** The box that reaches further on all sides. */
  public Box wider(double marginM) {
    return new Box(
        new Point(low.x() - marginM, low.y() - marginM, low.z() - marginM),
        new Point(high.x() + marginM, high.y() + marginM, high.z() + marginM));
  }

  /** True if the point lies inside or on the boundary. */
  public boolean holds(Point p) {
    return p.x() >= low.x()
        && p.x() <= high.x()
        && p.y() >= low.y()
        && p.y() <= high.y()
        && p.z() >= low.z()
        && p.z() <= high.z();
  }

  /** Shortest distance between two boxes in metres, 0 where they touch. */
  public double gapM(Box other) {
    double x = gap(low.x(), high.x(), other.low.x(), other.high.x());
    double y = gap(low.y(), high.y(), other.low.y(), other.high.y());
    double z = gap(low.z(), high.z(), other.low.z(), other.high.z());
    return Math.sqrt(x * x + y * y + z * z);
  }

  private static double gap(double lowA, double highA, double lowB, double highB) {
    return Math.max(0, Math.max(lowB - highA, lowA - highB));
  }

  /** Volume in cubic metres. */
  public double volumeM3() {
    return (high.x() - low.x()) * (high.y() - low.y()) * (high.z() - low.z());
  }
}
