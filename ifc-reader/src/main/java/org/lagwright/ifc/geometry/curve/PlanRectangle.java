package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.UprightBox;

/**
 * The smallest upright box around points: one side of the smallest rectangle around their plan lies
 * on a side of its convex hull (Freeman and Shapira, Determining the minimum-area encasing
 * rectangle for an arbitrary closed curve, Communications of the ACM 18 (1975) 409-413).
 */
public final class PlanRectangle {

  private static final Comparator<Vec> BY_PLAN =
      Comparator.comparingDouble(Vec::x).thenComparingDouble(Vec::y);

  private PlanRectangle() {}

  /** The box around points, of which there must be one at least. */
  public static UprightBox boxAround(List<Vec> points) {
    // from the first point on, so that false origins lose no digits
    Vec first = points.get(0);
    List<Vec> near = points.stream().map(p -> p.minus(first)).toList();
    List<Vec> hull = hull(near);
    UprightBox best = null;
    for (int i = 0; i < hull.size(); i++) {
      Vec side = hull.get((i + 1) % hull.size()).minus(hull.get(i));
      UprightBox box = box(near, hull, Math.atan2(side.y(), side.x()), first);
      if (best == null || area(box) < area(best)) {
        best = box;
      }
    }
    return best == null ? box(near, near, 0, first) : best;
  }

  private static double area(UprightBox box) {
    return box.lengthM() * box.widthM();
  }

  private static UprightBox box(List<Vec> points, List<Vec> hull, double turnRad, Vec origin) {
    Vec along = new Vec(Math.cos(turnRad), Math.sin(turnRad), 0);
    Vec across = new Vec(-along.y(), along.x(), 0);
    double[] x = range(hull, along);
    double[] y = range(hull, across);
    double[] z = range(points, Vec.Z);
    Vec centre =
        along
            .times((x[0] + x[1]) / 2)
            .plus(across.times((y[0] + y[1]) / 2))
            .plus(Vec.Z.times((z[0] + z[1]) / 2))
            .plus(origin);
    return new UprightBox(centre.point(), turnRad, x[1] - x[0], y[1] - y[0], z[1] - z[0]);
  }

  private static double[] range(List<Vec> points, Vec direction) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec point : points) {
      double at = point.dot(direction);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    return new double[] {low, high};
  }

  /** Convex hull of the plan, anticlockwise; Andrew's monotone chain. */
  private static List<Vec> hull(List<Vec> points) {
    List<Vec> sorted =
        points.stream().map(p -> new Vec(p.x(), p.y(), 0)).distinct().sorted(BY_PLAN).toList();
    List<Vec> hull = new ArrayList<>(chain(sorted));
    List<Vec> back = new ArrayList<>(sorted);
    Collections.reverse(back);
    hull.addAll(chain(back));
    return hull;
  }

  /** One side of the hull without its last point. */
  private static List<Vec> chain(List<Vec> sorted) {
    List<Vec> chain = new ArrayList<>();
    for (Vec point : sorted) {
      while (chain.size() > 1 && !turnsLeft(chain, point)) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    return chain.subList(0, Math.max(0, chain.size() - 1));
  }

  private static boolean turnsLeft(List<Vec> chain, Vec point) {
    Vec last = chain.get(chain.size() - 1);
    Vec before = chain.get(chain.size() - 2);
    return last.minus(before).cross(point.minus(last)).z() > 0;
  }
}
