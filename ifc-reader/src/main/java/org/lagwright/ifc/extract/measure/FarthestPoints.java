package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.model.Point;

/**
 * How far the two of some points lie apart that are the farthest from each other. Starts with those
 * farthest from the middle and ends when the others lie too near to it; a manifold may have
 * thousands of ports.
 */
final class FarthestPoints {

  /** A point, and how far it lies from the middle of all. */
  private record Ray(Point atM, double lengthM) {}

  private static final Comparator<Ray> LONGEST_FIRST =
      new Comparator<>() {
        @Override
        public int compare(Ray a, Ray b) {
          return Double.compare(b.lengthM, a.lengthM);
        }
      };

  private final double apartM;
  private long compared;

  FarthestPoints(List<Point> points) {
    this.apartM = points.size() < 2 ? 0 : farthest(rays(points));
  }

  /** Metres; 0 of less than two points. */
  double apartM() {
    return apartM;
  }

  /** How many pairs were looked at. */
  long compared() {
    return compared;
  }

  private static List<Ray> rays(List<Point> points) {
    Box box = Box.around(points);
    Point low = box.low();
    Point high = box.high();
    Point middle =
        new Point((low.x() + high.x()) / 2, (low.y() + high.y()) / 2, (low.z() + high.z()) / 2);
    List<Ray> rays = new ArrayList<>(points.size());
    for (Point point : points) {
      rays.add(new Ray(point, point.distanceM(middle)));
    }
    if (rays.size() > 2) {
      Collections.sort(rays, LONGEST_FIRST);
    }
    return rays;
  }

  private double farthest(List<Ray> rays) {
    double most = 0;
    for (int i = 0; i < rays.size() && rays.get(0).lengthM + rays.get(i).lengthM > most; i++) {
      for (int j = 0; j < i && rays.get(i).lengthM + rays.get(j).lengthM > most; j++) {
        compared++;
        most = Math.max(most, rays.get(i).atM.distanceM(rays.get(j).atM));
      }
    }
    return most;
  }
}
