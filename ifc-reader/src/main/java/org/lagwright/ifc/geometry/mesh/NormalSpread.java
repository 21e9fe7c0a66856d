package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * How the normals of a mesh spread: the principal directions of their covariance, weighted by area.
 * Vertices would be biased by uneven tessellation.
 */
final class NormalSpread {

  private NormalSpread() {}

  /** Three directions at right angles to each other; empty if the mesh has no area. */
  static List<Vec> axes(Mesh mesh, MeshTopology topology) {
    List<Integer> all = new ArrayList<>(mesh.faces().size());
    for (int face = 0; face < mesh.faces().size(); face++) {
      all.add(face);
    }
    return axes(topology, all);
  }

  /** The same of some faces. */
  static List<Vec> axes(MeshTopology topology, List<Integer> faces) {
    double whole = topology.areaM2(faces);
    if (!(whole > 0 && Double.isFinite(whole))) {
      return List.of();
    }
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(covariance(topology, faces, whole));
    List<Vec> axes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double[] e = eigen.getEigenvector(i).toArray();
      axes.add(new Vec(e[0], e[1], e[2]).unit());
    }
    return axes;
  }

  private static RealMatrix covariance(MeshTopology topology, List<Integer> faces, double whole) {
    RealMatrix covariance = MatrixUtils.createRealMatrix(3, 3);
    for (int face : faces) {
      Vec n = topology.normal(face);
      double[] each = {n.x(), n.y(), n.z()};
      double share = topology.area(face) / whole;
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          // the product of both first, so that it is the same across the diagonal
          covariance.addToEntry(i, j, share * (each[i] * each[j]));
        }
      }
    }
    return covariance;
  }
}
