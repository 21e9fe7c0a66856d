package org.lagwright.ifc.geometry.surface;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.OutlineFit;

/**
 * A plane piece of a body's surface. Its loops are summed with their signs, so holes wind the other
 * way round and loops may overlap as long as the sum is right. Metres.
 *
 * @param loops seen from outside the outer loop winds counter-clockwise
 * @param patch figures of a curved face, of which the loops are the edges; null if it is plane
 */
public record Facet(List<List<Vec>> loops, Role role, @Nullable Patch patch) {

  /** A flat face by its outer loop and its holes, in metres. */
  public Facet(List<List<Vec>> loops, Role role) {
    this(loops, role, null);
  }

  /** What a facet is to the body. */
  public enum Role {
    /** Outer surface. */
    OUTER,
    /** Surface of a bore, a void or a cut. */
    INNER,
    /** A curved face of which only the edges are known. */
    EDGES,
    /** No surface at all: where a body was cut into pieces that still hang together. */
    SEAM
  }

  /** A flat face without holes. */
  public static Facet of(List<Vec> loop, Role role) {
    return new Facet(List.of(loop), role);
  }

  /** At right angles to the facet, as long as its area. */
  public Vec areaNormal() {
    return areaNormal(loops);
  }

  /** The same of loops alone. */
  public static Vec areaNormal(List<List<Vec>> loops) {
    Vec sum = Vec.ZERO;
    for (List<Vec> loop : loops) {
      sum = sum.plus(OutlineFit.areaNormal(loop, loop.get(0)));
    }
    return sum;
  }

  /** Its share of the volume of a closed body: a pyramid over the facet with its tip at a point. */
  public double volumeM3(Vec tip) {
    return patch == null
        ? loops.get(0).get(0).minus(tip).dot(areaNormal()) / 3
        : patch.volumeM3(tip, areaNormal());
  }

  /** Its area in m2. */
  public double areaM2() {
    return patch == null ? areaNormal().norm() : patch.areaM2();
  }

  /** Itself, or the tiles of a curved face. */
  public Stream<Facet> plane() {
    List<List<List<Vec>>> tiles = patch == null ? List.of() : patch.tiles().get();
    return tiles.isEmpty() ? Stream.of(this) : tiles.stream().map(tile -> new Facet(tile, role));
  }

  /** The same face, seen from the other side. */
  public Facet reversed() {
    List<List<Vec>> turned = new ArrayList<>();
    for (List<Vec> loop : loops) {
      List<Vec> copy = new ArrayList<>(loop);
      Collections.reverse(copy);
      turned.add(copy);
    }
    return new Facet(turned, role, patch == null ? null : patch.reversed());
  }

  /** The same face in another role. */
  public Facet as(Role newRole) {
    return new Facet(loops, newRole, patch);
  }

  /** The same face, of a frame, in the surrounding one. */
  public Facet in(Frame frame) {
    return new Facet(
        loops.stream().map(loop -> loop.stream().map(frame::point).toList()).toList(), role);
  }
}
