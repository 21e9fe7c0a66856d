package org.lagwright.testmodels.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Triangles that another program made of a product.
 *
 * @param step record number
 * @param cornersM x, y, z of each corner in the world, metres
 * @param triangles three corners each
 */
public record TriangleMesh(long step, double[] cornersM, int[] triangles) {

  /** Corners nearer than this are one, metres. */
  private static final double SAME_M = 1e-6;

  /** A corner by its place. */
  private record Place(long x, long y, long z) {}

  private record Edge(Place from, Place to) {
    Edge back() {
      return new Edge(to, from);
    }
  }

  private Place place(int corner) {
    return new Place(
        Math.round(cornersM[3 * corner] / SAME_M),
        Math.round(cornersM[3 * corner + 1] / SAME_M),
        Math.round(cornersM[3 * corner + 2] / SAME_M));
  }

  /**
   * Volume enclosed, cubic metres. Where ends are left open, each open loop counts as closed by a
   * flat face: sweeps are drawn without their end faces.
   */
  public double volumeM3() {
    Map<Edge, Integer> open = new HashMap<>();
    Place tip = place(0);
    double six = 0;
    for (int i = 0; i < triangles.length; i += 3) {
      Place a = place(triangles[i]);
      Place b = place(triangles[i + 1]);
      Place c = place(triangles[i + 2]);
      six += six(tip, a, b, c);
      for (Edge edge : List.of(new Edge(a, b), new Edge(b, c), new Edge(c, a))) {
        count(open, edge);
      }
    }
    for (List<Place> loop : loops(open)) {
      for (int i = 1; i + 1 < loop.size(); i++) {
        six += six(tip, loop.get(0), loop.get(i), loop.get(i + 1));
      }
    }
    return Math.abs(six) / 6 * SAME_M * SAME_M * SAME_M;
  }

  private static void count(Map<Edge, Integer> open, Edge edge) {
    if (edge.from().equals(edge.to())) {
      return;
    }
    Integer opposite = open.get(edge.back());
    if (opposite == null) {
      open.merge(edge, 1, Integer::sum);
    } else if (opposite == 1) {
      open.remove(edge.back());
    } else {
      open.put(edge.back(), opposite - 1);
    }
  }

  /** Loops that close what is open: the open edges backwards. */
  private static List<List<Place>> loops(Map<Edge, Integer> open) {
    Map<Place, List<Place>> next = new HashMap<>();
    open.forEach(
        (edge, times) -> {
          for (int i = 0; i < times; i++) {
            next.computeIfAbsent(edge.to(), k -> new ArrayList<>()).add(edge.from());
          }
        });
    List<List<Place>> loops = new ArrayList<>();
    while (!next.isEmpty()) {
      Place start = next.keySet().iterator().next();
      List<Place> loop = new ArrayList<>();
      Place at = start;
      do {
        loop.add(at);
        List<Place> ways = next.getOrDefault(at, List.of());
        if (ways.isEmpty()) {
          throw new IllegalStateException("an open edge of #" + start + " leads nowhere");
        }
        Place to = ways.remove(ways.size() - 1);
        if (ways.isEmpty()) {
          next.remove(at);
        }
        at = to;
      } while (!at.equals(start));
      loops.add(loop);
    }
    return loops;
  }

  private static double six(Place tip, Place a, Place b, Place c) {
    double ax = a.x() - tip.x();
    double ay = a.y() - tip.y();
    double az = a.z() - tip.z();
    double bx = b.x() - tip.x();
    double by = b.y() - tip.y();
    double bz = b.z() - tip.z();
    double cx = c.x() - tip.x();
    double cy = c.y() - tip.y();
    double cz = c.z() - tip.z();
    return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
}
