package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.surface.Facet;

/**
 * All points on one side of a plane: {@code normal . x <= at}.
 *
 * @param normal unit vector, out of the half space
 */
public record HalfSpace(Vec normal, double at) {

  /** Points nearer to the plane lie in it. */
  private static final double IN_PLANE_M = 1e-9;

  /** What lies on the side of a plane that its normal points away from. */
  public static HalfSpace below(Vec point, Vec normal) {
    return new HalfSpace(normal, normal.dot(point));
  }

  /** True for a point inside, and not for one in the plane. */
  public boolean holds(Vec point) {
    return off(point) < 0;
  }

  HalfSpace opposite() {
    return new HalfSpace(normal.times(-1), -at);
  }

  private double off(Vec point) {
    double off = normal.dot(point) - at;
    return Math.abs(off) < IN_PLANE_M ? 0 : off;
  }

  /**
   * What of a closed piece lies inside, closed again by a facet in the plane.
   *
   * @param cut what the closing facet is to the body
   */
  List<Facet> closed(List<Facet> piece, Facet.Role cut) {
    Closed closed = close(piece, cut);
    List<Facet> all = new ArrayList<>(closed.kept);
    all.addAll(closed.closing);
    return all;
  }

  /**
   * What of a closed piece lies inside.
   *
   * @param closing the facet in the plane that closes it again; empty if the plane cuts nothing
   */
  record Closed(List<Facet> kept, List<Facet> closing) {}

  Closed close(List<Facet> piece, Facet.Role cut) {
    List<Facet> kept = new ArrayList<>();
    List<List<Vec>> fan = new ArrayList<>();
    Vec[] tip = new Vec[1];
    for (Facet facet : piece) {
      List<List<Vec>> loops = new ArrayList<>();
      for (List<Vec> loop : facet.loops()) {
        List<Vec> inside = inside(loop);
        if (inside.size() > 2) {
          loops.add(inside);
          closeEdges(inside, tip, fan);
        }
      }
      if (!loops.isEmpty()) {
        kept.add(new Facet(loops, role(facet)));
      }
    }
    return new Closed(kept, fan.isEmpty() ? List.of() : List.of(new Facet(fan, cut)));
  }

  /** What of a facet lies inside; empty where nothing does. */
  List<Facet> part(Facet facet) {
    List<List<Vec>> loops = facet.loops().stream().map(this::inside).toList();
    List<List<Vec>> left = loops.stream().filter(loop -> loop.size() > 2).toList();
    return left.isEmpty() ? List.of() : List.of(new Facet(left, role(facet)));
  }

  /** What is left of a curved face is known by its edges only. */
  private static Facet.Role role(Facet facet) {
    return facet.patch() == null ? facet.role() : Facet.Role.EDGES;
  }

  /** Triangles from one point to every edge that lies in the plane; together they close it. */
  private void closeEdges(List<Vec> loop, Vec[] tip, List<List<Vec>> fan) {
    for (int i = 0; i < loop.size(); i++) {
      Vec a = loop.get(i);
      Vec b = loop.get((i + 1) % loop.size());
      if (off(a) == 0 && off(b) == 0) {
        tip[0] = tip[0] == null ? a : tip[0];
        fan.add(List.of(tip[0], b, a));
      }
    }
  }

  /**
   * Clips a loop (Sutherland and Hodgman, 1974). Parts of concave loops stay joined along the
   * plane, where they add no area. A loop within the plane is dropped: its neighbours close it.
   */
  private List<Vec> inside(List<Vec> loop) {
    List<Vec> kept = new ArrayList<>();
    boolean anyInside = false;
    for (int i = 0; i < loop.size(); i++) {
      Vec a = loop.get(i);
      Vec b = loop.get((i + 1) % loop.size());
      double offA = off(a);
      double offB = off(b);
      anyInside |= offA < 0;
      if (offA <= 0) {
        kept.add(a);
      }
      if (offA * offB < 0) {
        Vec cut = a.plus(b.minus(a).times(offA / (offA - offB)));
        kept.add(cut.minus(normal.times(normal.dot(cut) - at)));
      }
    }
    return anyInside ? kept : List.of();
  }
}
