package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Solid;
import org.lagwright.ifc.geometry.mesh.Tool;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.profile.ProfileArea;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.geometry.surface.Facet.Role;

/** Bodies that a profile leaves behind on its way from station to station. */
final class SweptFacets {

  /** Sine of the turn at a corner up to which a loop counts as convex. */
  private static final double CONVEX = 1e-9;

  /** Slices that a body to cut with may have; a straight one has one. */
  private static final int MAX_SLICES = 400;

  private SweptFacets() {}

  /**
   * The body of regions moved through frames.
   *
   * @param end the regions at the last station, with the same loops and numbers of points; the
   *     regions in between are in proportion
   * @param ring true if the last station is the first one again
   */
  static Solid sweep(
      List<ProfileArea> start, List<ProfileArea> end, List<Frame> stations, boolean ring) {
    List<List<Facet>> pieces = new ArrayList<>();
    List<Tool> tools = new ArrayList<>();
    for (int i = 0; i < start.size(); i++) {
      ProfileArea from = start.get(i);
      ProfileArea to = end.get(i);
      pieces.add(Solid.outwards(facets(from, to, stations, ring)));
      Tool tool = tool(from, to, stations);
      if (tool != null) {
        tools.add(tool);
      }
    }
    boolean whole = tools.size() == start.size();
    return new Solid(pieces, !whole ? null : tools.size() == 1 ? tools.get(0) : anyOf(tools), true);
  }

  private static Tool anyOf(List<Tool> tools) {
    return new Tool.AnyOf(tools);
  }

  /** True if every loop of one region has its counterpart in the other. */
  static boolean alike(List<ProfileArea> a, List<ProfileArea> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      List<List<Vec>> first = a.get(i).loops();
      List<List<Vec>> second = b.get(i).loops();
      for (int k = 0; k < Math.max(first.size(), second.size()); k++) {
        if (first.size() != second.size() || first.get(k).size() != second.get(k).size()) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<Facet> facets(
      ProfileArea from, ProfileArea to, List<Frame> stations, boolean ring) {
    List<Facet> facets = new ArrayList<>();
    boolean tapered = !from.equals(to);
    for (int k = 0; k < from.loops().size(); k++) {
      Role role = k == 0 ? Role.OUTER : Role.INNER;
      List<Vec> last = ring(from, to, k, stations, 0);
      for (int s = 1; s < stations.size(); s++) {
        List<Vec> next = ring(from, to, k, stations, s);
        wall(last, next, role, tapered, facets);
        last = next;
      }
    }
    if (!ring) {
      facets.add(cap(from, stations.get(0)).reversed());
      facets.add(cap(to, stations.get(stations.size() - 1)));
    }
    return facets;
  }

  private static Facet cap(ProfileArea region, Frame frame) {
    return new Facet(region.loops(), Role.OUTER).in(frame);
  }

  private static List<Vec> ring(
      ProfileArea from, ProfileArea to, int loop, List<Frame> stations, int station) {
    Frame frame = stations.get(station);
    List<Vec> first = from.loops().get(loop);
    List<Vec> last = to.loops().get(loop);
    double share = (double) station / (stations.size() - 1);
    List<Vec> ring = new ArrayList<>(first.size());
    for (int i = 0; i < first.size(); i++) {
      Vec p = first.get(i);
      ring.add(frame.point(p.plus(last.get(i).minus(p).times(share))));
    }
    return ring;
  }

  private static void wall(
      List<Vec> from, List<Vec> to, Role role, boolean tapered, List<Facet> into) {
    for (int i = 0; i < from.size(); i++) {
      int next = (i + 1) % from.size();
      Vec a = from.get(i);
      Vec b = from.get(next);
      Vec c = to.get(next);
      Vec d = to.get(i);
      if (tapered) {
        into.add(Facet.of(List.of(a, b, c), role));
        into.add(Facet.of(List.of(a, c, d), role));
      } else {
        into.add(Facet.of(List.of(a, b, c, d), role));
      }
    }
  }

  /** The body as something to cut with, null if its profile is not convex. */
  private static @Nullable Tool tool(ProfileArea from, ProfileArea to, List<Frame> stations) {
    boolean convex =
        from.loops().stream().allMatch(SweptFacets::isConvex)
            && to.loops().stream().allMatch(SweptFacets::isConvex);
    if (!convex || stations.size() > MAX_SLICES) {
      return null;
    }
    Tool whole = slices(from.outer(), to.outer(), stations);
    List<Tool> bores = new ArrayList<>();
    for (int i = 0; i < from.holes().size(); i++) {
      bores.add(slices(from.holes().get(i), to.holes().get(i), stations));
    }
    return bores.isEmpty() ? whole : new Tool.Minus(whole, anyOf(bores));
  }

  /**
   * The ends of a slice come before its walls: cut first by walls, whatever lies beyond the slice
   * would be shattered, and by each slice again.
   */
  private static Tool slices(List<Vec> from, List<Vec> to, List<Frame> stations) {
    ProfileArea first = ProfileArea.of(from, List.of());
    ProfileArea last = ProfileArea.of(to, List.of());
    List<Tool> slices = new ArrayList<>();
    for (int s = 1; s < stations.size(); s++) {
      List<Vec> near = ring(first, last, 0, stations, s - 1);
      List<Vec> far = ring(first, last, 0, stations, s);
      List<Facet> slice = new ArrayList<>();
      slice.add(Facet.of(near, Role.OUTER).reversed());
      slice.add(Facet.of(far, Role.OUTER));
      wall(near, far, Role.OUTER, false, slice);
      slices.add(Solid.convex(Solid.outwards(slice)));
    }
    return slices.size() == 1 ? slices.get(0) : anyOf(slices);
  }

  private static boolean isConvex(List<Vec> loop) {
    double sign = Math.signum(OutlineFit.areaNormal(loop, loop.get(0)).z());
    for (int i = 0; i < loop.size(); i++) {
      Vec a = loop.get((i + 1) % loop.size()).minus(loop.get(i));
      Vec b = loop.get((i + 2) % loop.size()).minus(loop.get((i + 1) % loop.size()));
      if (a.cross(b).z() * sign < -CONVEX * a.norm() * b.norm()) {
        return false;
      }
    }
    return true;
  }
}
