package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.body.Body.Facets;
import org.lagwright.takeoff.body.Outline.Corner;

/**
 * Puts bodies together from flat faces. Points at one place are one corner, and a face of fewer
 * than three of them is none, so that every edge has two faces.
 */
final class FacetMaker {

  /** Shorter walls vanish in drawings and confuse programs, metres. */
  private static final double LEAST_M = 1e-4;

  private final Map<Point, Integer> indices = new HashMap<>();
  private final List<Point> corners = new ArrayList<>();
  private final List<List<Integer>> faces = new ArrayList<>();

  private FacetMaker() {}

  /** Where a leg begins at a point of its section, along its axis from where axes meet, metres. */
  @FunctionalInterface
  interface Cut {
    double atM(double uM, double vM);
  }

  /**
   * A leg that is square at its far end and cut anyhow at the near one.
   *
   * @param centre where the axes meet; the axis leads away from it
   * @param lengthM from there to the far end
   */
  static Facets leg(Pose centre, Outline outer, Outline inner, Cut cut, double lengthM) {
    FacetMaker maker = new FacetMaker();
    List<Point> nearOuter = near(centre, outer, cut, lengthM);
    List<Point> nearInner = near(centre, inner, cut, lengthM);
    List<Point> farOuter = at(centre, outer, lengthM);
    List<Point> farInner = at(centre, inner, lengthM);
    maker.walls(nearOuter, farOuter, true);
    maker.walls(farInner, nearInner, true);
    maker.walls(farOuter, farInner, true);
    maker.walls(nearInner, nearOuter, false);
    return maker.facets();
  }

  private static List<Point> near(Pose centre, Outline outline, Cut cut, double lengthM) {
    List<Point> points = new ArrayList<>();
    for (Corner c : outline.corners()) {
      double fromM = Math.min(cut.atM(c.uM(), c.vM()), lengthM - LEAST_M);
      points.add(centre.point(c.uM(), c.vM(), fromM));
    }
    return points;
  }

  private static List<Point> at(Pose pose, Outline outline, double alongM) {
    return outline.corners().stream().map(c -> pose.point(c.uM(), c.vM(), alongM)).toList();
  }

  /**
   * A ring led from pose to pose, its outlines with equally many corners everywhere.
   *
   * @param flat true if the walls between two poses are flat
   */
  static Facets sweep(List<Pose> poses, List<Outline> outer, List<Outline> inner, boolean flat) {
    FacetMaker maker = new FacetMaker();
    List<Point> firstOuter = at(poses.get(0), outer.get(0), 0);
    List<Point> firstInner = at(poses.get(0), inner.get(0), 0);
    List<Point> lastOuter = firstOuter;
    List<Point> lastInner = firstInner;
    maker.walls(firstInner, firstOuter, true);
    for (int i = 1; i < poses.size(); i++) {
      List<Point> nextOuter = at(poses.get(i), outer.get(i), 0);
      List<Point> nextInner = at(poses.get(i), inner.get(i), 0);
      maker.walls(lastOuter, nextOuter, flat);
      maker.walls(nextInner, lastInner, flat);
      lastOuter = nextOuter;
      lastInner = nextInner;
    }
    maker.walls(lastOuter, lastInner, true);
    return maker.facets();
  }

  /** Faces between two loops, whose outside is on the right of the way from the first on. */
  private void walls(List<Point> from, List<Point> to, boolean flat) {
    for (int i = 0; i < from.size(); i++) {
      int next = (i + 1) % from.size();
      if (flat) {
        face(from.get(i), from.get(next), to.get(next), to.get(i));
      } else {
        face(from.get(i), from.get(next), to.get(next));
        face(from.get(i), to.get(next), to.get(i));
      }
    }
  }

  private void face(Point... points) {
    LinkedHashSet<Integer> face = new LinkedHashSet<>();
    for (Point point : points) {
      face.add(index(point));
    }
    if (face.size() > 2) {
      faces.add(List.copyOf(face));
    }
  }

  private int index(Point point) {
    // no zero below zero, which would be another place
    Point place = new Point(point.x() + 0.0, point.y() + 0.0, point.z() + 0.0);
    return indices.computeIfAbsent(
        place,
        p -> {
          corners.add(p);
          return corners.size() - 1;
        });
  }

  private Facets facets() {
    return new Facets(corners, faces);
  }
}
