package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.mesh.MeshTopology.Edge;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.shape.Ends;

/**
 * Flanges and sockets around the ends of a fitting that is one body. The end is as wide as its
 * flange, but where the flange has its back, the pipe comes out of it.
 */
final class FlangeBacks {

  /** Share of half its width up to which a branch surely is no socket around it. */
  private static final double BARE = 0.8;

  /**
   * What comes out of the back of a socket is no narrower than its bore, but for the last digit.
   */
  private static final double NO_NARROWER = 0.98;

  /** A face with one hole, be it the front or the back of a flange; the edges by their vertices. */
  private record Ring(Found face, int[] rim, int[] hole) {}

  private final Mesh mesh;
  private final MeshTopology topology;
  private final List<Ring> rings = new ArrayList<>();

  FlangeBacks(Mesh mesh, MeshTopology topology) {
    this.mesh = mesh;
    this.topology = topology;
  }

  /** Notes a face with one hole. */
  void add(Found face, int[] rim, int[] hole) {
    rings.add(new Ring(face, rim, hole));
  }

  /** True if an end is the back of a flange or socket whose front is torn. */
  boolean areAmong(List<Found> ends) {
    for (Ring ring : rings) {
      for (Found end : ends) {
        if (ring.face.equals(end)
            && leadsInwards(ring, end)
            && !leadsInwards(ring.rim, end, end.outward())) {
          return true;
        }
      }
    }
    return false;
  }

  /** The ends, those with a flange or a socket as wide as the pipe behind it. */
  List<Found> takenOff(List<Found> ends) {
    List<Found> bare = new ArrayList<>(ends.size());
    for (Found end : ends) {
      bare.add(takenOff(end, ends));
    }
    List<Found> agreed = new ArrayList<>(ends.size());
    for (int i = 0; i < ends.size(); i++) {
      agreed.add(isAlone(i, ends, bare) ? ends.get(i) : bare.get(i));
    }
    return agreed;
  }

  /**
   * True if the other end of a run that has one size keeps it: what begins behind one of two equal
   * flanges only may be a shaft or a foot, and the run would have two sizes.
   */
  private static boolean isAlone(int of, List<Found> ends, List<Found> bare) {
    Found end = ends.get(of);
    for (int i = 0; i < ends.size(); i++) {
      Found other = ends.get(i);
      if (other != end
          && bare.get(i) == other
          && other.outward().dot(end.outward()) < 0
          && CoaxialEnds.onOneAxis(end, other)
          && Ends.same(end.outline().section(), other.outline().section())) {
        return bare.get(of) != end;
      }
    }
    return false;
  }

  private Found takenOff(Found end, List<Found> ends) {
    for (Ring ring : rings) {
      Outline pipe =
          isBehind(ring.face, end, ends) && leadsInwards(ring, end)
              ? OutlineFit.fit(mesh.points(ring.hole))
              : null;
      if (pipe != null && isWithin(end, pipe) && !isBore(end, pipe)) {
        Outline bare = pipe.at(end.outline().centre());
        return new Found(bare, end.outward(), mesh.points(ring.hole));
      }
    }
    return end;
  }

  /** How far behind an end a ring lies, metres. */
  private static double behindM(Found ring, Found end) {
    return end.along(end.outward()) - ring.along(end.outward());
  }

  /** True if a ring is as wide as an end and behind it, so far as flanges and sockets are deep. */
  private static boolean isBehind(Found ring, Found end, List<Found> ends) {
    double deepM = behindM(ring, end);
    return deepM > EndFinder.SAME_PLANE_M
        && ring.outward().dot(end.outward()) > 0
        && CoaxialEnds.onOneAxis(end, ring)
        && Ends.same(ring.outline().section(), end.outline().section())
        && (deepM < Steps.FLAT * 2 * end.outline().largestHalfM() || isBeforeAll(ring, end, ends));
  }

  /**
   * True if all branches leave the run behind a ring: it is a socket, and no step from one size of
   * the run to the other.
   */
  private static boolean isBeforeAll(Found ring, Found end, List<Found> ends) {
    boolean branched = false;
    for (Found other : ends) {
      boolean inLine = CoaxialEnds.onOneAxis(end, other);
      double bareM = other.along(end.outward()) + BARE * other.outline().largestHalfM();
      if (!inLine && bareM > ring.along(end.outward())) {
        return false;
      }
      branched |= !inLine;
    }
    return branched;
  }

  /** True if all that begins at the hole of a ring leads away from the end. */
  private boolean leadsInwards(Ring ring, Found end) {
    return leadsInwards(ring.hole, ring.face, end.outward());
  }

  private boolean leadsInwards(int[] edge, Found ring, Vec outward) {
    double planeM = ring.along(outward) + EndFinder.SAME_PLANE_M;
    for (int i = 0; i < edge.length; i++) {
      for (int face : topology.facesAt(Edge.of(edge[i], edge[(i + 1) % edge.length]))) {
        for (int corner : mesh.faces().get(face).loops().get(0)) {
          if (mesh.vertices().get(corner).dot(outward) > planeM) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private static boolean isWithin(Found end, Outline pipe) {
    Vec off = pipe.centre().minus(end.outline().centre());
    return pipe.kind() == end.outline().kind()
        && pipe.largestHalfM() < end.outline().largestHalfM()
        && off.across(end.outward()).norm() < EndFinder.SAME_PLANE_M;
  }

  /** True of what is narrower than the opening in the front of the end: a bore. */
  private boolean isBore(Found end, Outline pipe) {
    for (Ring ring : rings) {
      boolean front =
          Math.abs(behindM(ring.face, end)) < EndFinder.SAME_PLANE_M
              && CoaxialEnds.onOneAxis(end, ring.face);
      Outline opening = front ? OutlineFit.fit(mesh.points(ring.hole)) : null;
      if (opening != null && pipe.largestHalfM() < NO_NARROWER * opening.largestHalfM()) {
        return true;
      }
    }
    return false;
  }
}
