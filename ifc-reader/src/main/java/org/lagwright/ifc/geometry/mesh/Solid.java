package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.geometry.surface.Facet.Role;

/**
 * A body by its facets, in pieces that do not overlap and are each closed.
 *
 * @param tool the same body as something to cut others with, null if it is neither convex nor made
 *     of convex bodies
 * @param closed false if edges are open, so that there is a surface but no volume
 */
public record Solid(List<List<Facet>> pieces, @Nullable Tool tool, boolean closed) {

  /** Facets times planes that cut them. Two bends or spheres have more, which may take minutes. */
  private static final long MAX_CUTS = 2_000_000;

  /** A convex piece whose sides are its facets. */
  public static Tool convex(List<Facet> facets) {
    List<HalfSpace> sides = new ArrayList<>();
    for (Facet facet : facets) {
      Vec normal = facet.areaNormal().unit();
      if (!normal.isTiny()) {
        sides.add(HalfSpace.below(facet.loops().get(0).get(0), normal));
      }
    }
    return new Tool.Convex(sides);
  }

  /** Its surface. */
  public Stream<Facet> facets() {
    return pieces.stream().flatMap(List::stream);
  }

  /** Corners of its surface, in metres. */
  public List<Vec> corners() {
    return facets().flatMap(facet -> facet.loops().stream()).flatMap(List::stream).toList();
  }

  /** Facets with their normals out of the body, whatever mirror it was read through. */
  public static List<Facet> outwards(List<Facet> closed) {
    return volumeM3(closed) < 0 ? closed.stream().map(Facet::reversed).toList() : closed;
  }

  static double volumeM3(List<Facet> closed) {
    if (closed.isEmpty()) {
      return 0;
    }
    Vec tip = closed.get(0).loops().get(0).get(0);
    return closed.stream().mapToDouble(facet -> facet.volumeM3(tip)).sum();
  }

  /** Its volume in m3. */
  public double volumeM3() {
    return pieces.stream().mapToDouble(Solid::volumeM3).sum();
  }

  private boolean isCurved() {
    return facets().anyMatch(facet -> facet.patch() != null);
  }

  /** The pieces with curved faces in tiles, so that they can be cut. */
  private List<List<Facet>> plane() {
    return !isCurved()
        ? pieces
        : pieces.stream().map(piece -> piece.stream().flatMap(Facet::plane).toList()).toList();
  }

  /** The tool; that of curved faces is only made when something is cut with them. */
  private @Nullable Tool cutting() {
    boolean untold = tool == null && closed && pieces.size() == 1 && isCurved();
    return untold ? MeshSolid.tool(plane().get(0)) : tool;
  }

  /** The tool for another body, null if there is none or the work would have no end. */
  private @Nullable Tool cutting(Solid other) {
    Tool own = cutting();
    long facets = other.plane().stream().mapToLong(List::size).sum();
    return own == null || facets * own.planes() > MAX_CUTS ? null : own;
  }

  /** This without another body; null if that cannot be cut with. */
  public @Nullable Solid minus(Solid other) {
    Tool by = other.cutting(this);
    Tool left = tool == null || by == null ? null : new Tool.Minus(tool, by);
    return by == null ? null : new Solid(by.outside(plane(), Role.INNER), left, closed);
  }

  /** What this and another body have in common; null if neither can be cut with. */
  public @Nullable Solid and(Solid other) {
    Tool by = other.cutting(this);
    if (by == null) {
      return cutting(other) == null ? null : other.and(this);
    }
    Tool both = tool == null ? null : new Tool.Both(tool, by);
    return new Solid(by.inside(plane(), Role.OUTER), both, closed);
  }

  /** Both bodies as one; null if neither can be cut with. */
  public @Nullable Solid plus(Solid other) {
    Tool own = cutting(other);
    if (own == null) {
      return other.cutting(this) == null ? null : other.plus(this);
    }
    List<List<Facet>> all = new ArrayList<>();
    Tool by = other.cutting(this);
    for (List<Facet> piece : plane()) {
      all.add(by == null ? piece : by.split(piece));
    }
    all.addAll(own.outside(other.plane(), Role.SEAM));
    return new Solid(all, by == null ? null : new Tool.AnyOf(List.of(own, by)), closed);
  }
}
