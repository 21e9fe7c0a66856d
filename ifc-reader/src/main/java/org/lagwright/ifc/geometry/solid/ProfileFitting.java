package org.lagwright.ifc.geometry.solid;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.mesh.MeshMeasurer;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;

/**
 * Any other fitting of a rectangular duct drawn as its side view, such as a square elbow, an offset
 * or a shoe tee: its walls are faces like those of a mesh, and its ends are found among them.
 */
final class ProfileFitting {

  /** Corners of a side view; what has more is no duct, and would take long. */
  private static final int MOST_CORNERS = 1000;

  private ProfileFitting() {}

  /** The fitting, null if none of its walls look like ends. */
  static @Nullable Shape measure(Path profile, Vec axis, Evidence depth, ShapeHints hints) {
    List<Vec> near = profile.points();
    Mesh mesh = near.size() < 4 || near.size() > MOST_CORNERS ? null : mesh(near, axis);
    if (mesh == null) {
      return null;
    }
    Shape shape = new MeshMeasurer(mesh, depth.step(), "side view", hints, How.SOLID).measure();
    return shape.ends().size() < 2 ? null : shape;
  }

  private static @Nullable Mesh mesh(List<Vec> near, Vec axis) {
    Mesh.Builder builder = new Mesh.Builder();
    builder.face(List.of(near), true);
    builder.face(List.of(far(near, axis)), true);
    for (int i = 0; i < near.size(); i++) {
      Vec from = near.get(i);
      Vec to = near.get((i + 1) % near.size());
      builder.face(List.of(List.of(from, to, to.plus(axis), from.plus(axis))), true);
    }
    return builder.build();
  }

  private static List<Vec> far(List<Vec> near, Vec axis) {
    Vec[] far = new Vec[near.size()];
    for (int i = 0; i < far.length; i++) {
      far[i] = near.get(i).plus(axis);
    }
    return List.of(far);
  }
}
