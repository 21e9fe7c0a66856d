package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;

/**
 * Outlines about one axis that look the same way: the outside and the bore of a wall, a socket, a
 * flange and the pipe in it. Each such set is one end.
 */
final class CoaxialEnds {

  /** Ends whose axes differ by less than 3 degrees and a twentieth of the radius are coaxial. */
  private static final double COAXIAL_RAD = Math.toRadians(3);

  /** Thickness of a square flange over the diameter of its pipe. */
  private static final double FLANGE = 0.2;

  /** Share of its size by which what lies within an end may stand out, by rounding. */
  private static final double SAME = 0.01;

  private static final double COAXIAL_SHIFT = 0.05;

  /** Ends looked at, so that machines of many parts do not take long. */
  private static final int MAX_ENDS = 64;

  private CoaxialEnds() {}

  /**
   * Of coaxial ends the position of the outermost and the size of the smallest; but the steps of a
   * reducer are no ends.
   */
  static List<Found> outermost(List<Found> all, boolean oneSize) {
    List<List<Found>> clusters = new ArrayList<>();
    List<Found> byAxisSize = new ArrayList<>(all);
    byAxisSize.sort(new LargestFirst());
    for (Found end : byAxisSize) {
      List<Found> home = null;
      for (List<Found> cluster : clusters) {
        home = home == null && coaxial(cluster.get(0), end) ? cluster : home;
      }
      if (home != null) {
        home.add(end);
      } else if (clusters.size() < MAX_ENDS) {
        clusters.add(new ArrayList<>(List.of(end)));
      }
    }
    for (int i = 0; !oneSize && i < clusters.size(); i++) {
      for (int j = 0; j < i; j++) {
        Steps.remove(clusters.get(j), clusters.get(i), clusters.size() == 2);
      }
    }
    // largest first; nothing with more ends is a pipe or a duct
    List<Found> outermost = new ArrayList<>();
    for (List<Found> cluster : clusters) {
      outermost.add(merged(cluster));
    }
    return outermost;
  }

  private static final class LargestFirst implements Comparator<Found> {
    @Override
    public int compare(Found a, Found b) {
      return Double.compare(-a.outline().largestHalfM(), -b.outline().largestHalfM());
    }
  }

  private static boolean coaxial(Found a, Found b) {
    return a.outward().angleTo(b.outward()) < COAXIAL_RAD && onOneAxis(a, b) && areOneEnd(a, b);
  }

  /** A flat side may lie over the foot of a round branch; only a flange is as near as this. */
  private static boolean areOneEnd(Found a, Found b) {
    double apartM = Math.abs(b.along(a.outward()) - a.along(a.outward()));
    double halfM = Math.min(a.outline().largestHalfM(), b.outline().largestHalfM());
    return a.isRectangular() == b.isRectangular() || apartM < FLANGE * 2 * halfM;
  }

  /** True if the axis of one end passes through the middle of the other. */
  static boolean onOneAxis(Found a, Found b) {
    Vec between = b.outline().centre().minus(a.outline().centre());
    double size = Math.min(a.outline().largestHalfM(), b.outline().largestHalfM());
    double turn = a.outward().angleTo(b.outward());
    return Math.min(turn, Math.PI - turn) < COAXIAL_RAD
        && between.across(a.outward()).norm()
            < Math.max(EndFinder.SAME_PLANE_M, COAXIAL_SHIFT * size);
  }

  private static Found outermost(List<Found> cluster, Vec direction) {
    Found outermost = cluster.get(0);
    for (Found end : cluster) {
      outermost = end.along(direction) > outermost.along(direction) ? end : outermost;
    }
    return outermost;
  }

  /**
   * False for the side of a branch behind the flat end of its run, which is longer than that end is
   * wide, as the branch stands out of the run.
   */
  private static boolean isWithin(Found end, Found last) {
    if (!end.isRectangular() || !last.isRectangular()) {
      return true;
    }
    Vec u = last.outline().u();
    Vec v = last.outline().v();
    boolean larger = end.outline().largestHalfM() >= last.outline().largestHalfM();
    return larger
        || halfM(end, u.unit()) < (1 + SAME) * u.norm()
            && halfM(end, v.unit()) < (1 + SAME) * v.norm();
  }

  private static double halfM(Found end, Vec along) {
    return Math.abs(end.outline().u().dot(along)) + Math.abs(end.outline().v().dot(along));
  }

  private static Found merged(List<Found> cluster) {
    Vec direction = cluster.get(0).outward();
    List<Found> perPlane = new ArrayList<>();
    Found last = outermost(cluster, direction);
    double outermost = last.along(direction);
    for (Found end : cluster) {
      boolean counts = isWithin(end, last);
      for (Found outside : perPlane) {
        // a second one in its plane is a bore
        counts &=
            Math.abs(outside.along(direction) - end.along(direction)) >= EndFinder.SAME_PLANE_M;
      }
      if (counts) {
        perPlane.add(end);
      }
    }
    Found smallest = perPlane.get(perPlane.size() - 1);
    double shift = outermost - smallest.along(direction);
    Vec centre = smallest.outline().centre().plus(direction.times(shift));
    return new Found(
        smallest.outline().at(centre), smallest.outward(), smallest.loop(), smallest.isMouth());
  }
}
