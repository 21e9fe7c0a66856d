package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.surface.Facet;

/** A duct with square or mitred corners, drawn as a mesh, whose flat walls look like ends too. */
final class MitredElbow {

  /** Relative difference of the outer surface from that of a mitred duct. */
  private static final double SAME_AREA = 0.005;

  /** Sine of the angle, and share of the end's half size, up to which a facet lies in an end. */
  private static final double IN_END = 0.01;

  private final Mesh mesh;
  private final MeshTopology topology;
  private @Nullable List<Facet> outside;

  private MitredElbow(Mesh mesh, MeshTopology topology) {
    this.mesh = mesh;
    this.topology = topology;
  }

  /**
   * The two ends of equal size between which a mitred duct has the outer surface that the mesh has;
   * empty if there are none.
   */
  static List<Found> ends(Mesh mesh, MeshTopology topology, List<Found> found) {
    MitredElbow elbow = new MitredElbow(mesh, topology);
    for (int i = 0; i < found.size(); i++) {
      for (int j = i + 1; j < found.size(); j++) {
        if (elbow.isBetween(found.get(i), found.get(j))) {
          return List.of(found.get(i), found.get(j));
        }
      }
    }
    return List.of();
  }

  private boolean isBetween(Found a, Found b) {
    double legsM = Mitre.legsM(a, b);
    double expected = a.outline().section().perimeterM() * legsM;
    return legsM > 0
        && expected * (1 - SAME_AREA) < topology.areaM2()
        && Math.abs(wallM2(a, b) - expected) < SAME_AREA * expected;
  }

  /** The outer faces, told from bores when first asked for, as most bodies are no elbows. */
  private List<Facet> outside() {
    List<Facet> known = outside;
    if (known == null) {
      known = new ArrayList<>();
      for (List<Facet> piece : MeshSolid.of(mesh, topology, true).pieces()) {
        for (Facet facet : piece) {
          if (facet.role() == Facet.Role.OUTER) {
            known.add(facet);
          }
        }
      }
      outside = known;
    }
    return known;
  }

  private double wallM2(Found a, Found b) {
    double wallM2 = 0;
    for (Facet facet : outside()) {
      wallM2 += liesIn(a, facet) || liesIn(b, facet) ? 0 : facet.areaNormal().norm();
    }
    return wallM2;
  }

  private boolean liesIn(Found end, Facet facet) {
    Vec off = facet.loops().get(0).get(0).minus(mesh.origin()).minus(end.outline().centre());
    return facet.areaNormal().unit().cross(end.outward()).norm() < IN_END
        && Math.abs(off.dot(end.outward())) < IN_END * end.outline().largestHalfM();
  }
}
