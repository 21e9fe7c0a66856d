package org.lagwright.ifc.geometry.mesh;

import org.lagwright.ifc.geometry.frame.Vec;

/**
 * A ray through a mesh.
 *
 * @param direction unit vector
 */
record MeshRay(Vec from, Vec direction) {

  /** True if it meets a plane face that is no steeper to it, cosine of its normal, and near. */
  boolean meets(Mesh mesh, MeshTopology topology, double withinM, double mostSlope) {
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (mesh.faces().get(face).plane()
          && hits(mesh, face, topology.normal(face), withinM, mostSlope)) {
        return true;
      }
    }
    return false;
  }

  private boolean hits(Mesh mesh, int face, Vec normal, double withinM, double mostSlope) {
    double slope = normal.dot(direction);
    if (Math.abs(slope) < 1e-6 || Math.abs(slope) > mostSlope) {
      return false;
    }
    int[] outer = mesh.faces().get(face).loops().get(0);
    double at = mesh.vertices().get(outer[0]).minus(from).dot(normal) / slope;
    return at > EndFinder.SAME_PLANE_M
        && at < withinM
        && contains(mesh, face, from.plus(direction.times(at)), normal);
  }

  /** Crossing test over all loops of a face, in the plane of its normal. */
  private static boolean contains(Mesh mesh, int face, Vec point, Vec normal) {
    Vec u = normal.anyNormal();
    Vec v = normal.cross(u);
    boolean inside = false;
    for (int[] loop : mesh.faces().get(face).loops()) {
      for (int i = 0; i < loop.length; i++) {
        Vec a = mesh.vertices().get(loop[i]).minus(point);
        Vec b = mesh.vertices().get(loop[(i + 1) % loop.length]).minus(point);
        boolean crosses = a.dot(v) > 0 != b.dot(v) > 0;
        double share = a.dot(v) / (a.dot(v) - b.dot(v));
        if (crosses && a.dot(u) + share * (b.dot(u) - a.dot(u)) > 0) {
          inside = !inside;
        }
      }
    }
    return inside;
  }
}
