package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.geometry.curve.PlaneFit;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * Puts plane patches together that rounded coordinates have torn: a thin triangle of an end may be
 * tilted by several degrees although its corners lie in the plane as well as others do. Patches
 * grow from the largest on by those whose corners lie in their plane, which is drawn anew each
 * time.
 */
final class RoundedPatches {

  /** Corners lie this many steps off a plane, which itself is drawn through rounded ones. */
  private static final double STEPS_OFF = 2;

  /**
   * Root of their mean square; what is rounded to a step lies off by {@code 1 / sqrt(12)} of it.
   */
  private static final double MEAN_STEPS_OFF = 0.5;

  private static final int NONE = -1;

  /** Cosine of 45 degrees: more is a side, however low. */
  private static final double TILT = 0.7;

  private final Mesh mesh;
  private final MeshTopology topology;
  private final double offM;

  /** Patches that are not part of a grown one yet. */
  private final Map<Integer, List<Integer>> waiting;

  /** The waiting patch of each face; {@link #NONE} of those that are not plane. */
  private final int[] patchOf;

  private RoundedPatches(Mesh mesh, MeshTopology topology) {
    this.mesh = mesh;
    this.topology = topology;
    this.offM = STEPS_OFF * mesh.stepM();
    this.waiting = topology.patches();
    this.patchOf = new int[mesh.faces().size()];
    Arrays.fill(patchOf, NONE);
    for (Map.Entry<Integer, List<Integer>> patch : waiting.entrySet()) {
      for (int face : patch.getValue()) {
        patchOf[face] = patch.getKey();
      }
    }
  }

  /** Joins the patches of a topology. */
  static void join(Mesh mesh, MeshTopology topology) {
    new RoundedPatches(mesh, topology).join();
  }

  private record Sized(int patch, double areaM2) {}

  private static final class LargestFirst implements Comparator<Sized> {
    @Override
    public int compare(Sized a, Sized b) {
      return Double.compare(b.areaM2, a.areaM2);
    }
  }

  private void join() {
    List<Sized> largestFirst = new ArrayList<>(waiting.size());
    for (Map.Entry<Integer, List<Integer>> patch : waiting.entrySet()) {
      largestFirst.add(new Sized(patch.getKey(), topology.areaM2(patch.getValue())));
    }
    largestFirst.sort(new LargestFirst());
    for (Sized sized : largestFirst) {
      List<Integer> faces = waiting.remove(sized.patch);
      if (faces != null) {
        grow(faces);
      }
    }
  }

  /** Faces with the plane through them. */
  private final class Grown {
    private final List<Integer> faces = new ArrayList<>();
    private final Vec from;
    private final PlaneFit corners;
    private Vec areaNormal = Vec.ZERO;
    private Vec moment = Vec.ZERO;
    private double areaM2;
    private double reachM;

    /** How many faces there were when a patch was refused; it is asked again only among more. */
    private final Map<Integer, Integer> refused = new HashMap<>();

    Grown(int first) {
      this.from = corners(first).get(0);
      this.corners = new PlaneFit(from, topology.normal(first));
    }

    void add(int face) {
      double faceM2 = topology.area(face);
      Vec own = topology.normal(face).times(faceM2);
      areaNormal = own.dot(areaNormal) < 0 ? areaNormal.minus(own) : areaNormal.plus(own);
      List<Vec> loop = corners(face);
      moment = moment.plus(Vec.mean(loop).times(faceM2));
      areaM2 += faceM2;
      faces.add(face);
      for (Vec corner : loop) {
        corners.add(corner);
        reachM = Math.max(reachM, corner.distanceTo(from));
      }
    }

    boolean takes(int patch, List<Integer> others) {
      Integer refusedAt = refused.get(patch);
      if (refusedAt != null && refusedAt == faces.size()) {
        return false;
      }
      boolean takes = holds(others);
      if (!takes) {
        refused.put(patch, faces.size());
      }
      return takes;
    }

    private boolean holds(List<Integer> others) {
      Vec normal = areaNormal.unit();
      Vec middle = moment.times(1 / areaM2);
      double narrowM = areaM2 / reachM;
      boolean within = true;
      for (int face : others) {
        if (Math.abs(topology.normal(face).dot(normal)) < TILT) {
          return false;
        }
        for (int corner : mesh.faces().get(face).loops().get(0)) {
          Vec away = mesh.vertices().get(corner).minus(middle);
          double awayM = Math.abs(away.dot(normal));
          within &= awayM <= offM;
          if (awayM > offM * (1 + away.norm() / narrowM)) {
            return false;
          }
        }
      }
      return within || isPlaneWith(others);
    }

    /** Narrow faces, as those of a ring, lean too much to tell the plane, but their corners do. */
    private boolean isPlaneWith(List<Integer> others) {
      for (int face : others) {
        for (Vec corner : corners(face)) {
          corners.add(corner);
        }
      }
      PlaneFit.Fitted plane = corners.plane();
      boolean holds = plane.meanOffM() < MEAN_STEPS_OFF * mesh.stepM();
      for (int face : others) {
        for (Vec corner : corners(face)) {
          holds &= plane.offM(corner) <= offM;
          corners.remove(corner);
        }
      }
      return holds;
    }

    private List<Vec> corners(int face) {
      return mesh.points(mesh.faces().get(face).loops().get(0));
    }
  }

  private void grow(List<Integer> first) {
    Grown grown = new Grown(first.get(0));
    for (int face : first) {
      grown.add(face);
    }
    int before;
    do {
      before = grown.faces.size();
      for (int i = 0; i < grown.faces.size(); i++) {
        addAround(grown.faces.get(i), grown);
      }
    } while (grown.faces.size() > before);
  }

  private void addAround(int face, Grown grown) {
    for (int[] loop : mesh.faces().get(face).loops()) {
      for (int i = 0; i < loop.length; i++) {
        int beyond = topology.across(face, loop[i], loop[(i + 1) % loop.length]);
        int patch = beyond < 0 ? NONE : patchOf[beyond];
        List<Integer> others = waiting.get(patch);
        if (others != null && grown.takes(patch, others)) {
          waiting.remove(patch);
          topology.joinPatches(face, beyond);
          for (int other : others) {
            grown.add(other);
          }
        }
      }
    }
  }
}
