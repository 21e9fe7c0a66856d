package org.lagwright.ifc.geometry.mesh;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;

/**
 * A piece that winds from end to end, as a flexible duct of several bends. Its volume is the area
 * of its section times the length of the line on which the middles of its sections lie (Pappus of
 * Alexandria, for any line that the section stands square on).
 */
final class WoundPiece {

  /** A length along an arc is kept if the volume gives no other; coarse arcs lack that much. */
  private static final double SAME_LENGTH = 0.03;

  private static final String WINDS =
      "body winds between its ends, length is its volume over the area of its ends";

  private WoundPiece() {}

  /**
   * The shape with the length that its volume gives, if that is another one.
   *
   * @param shape what two ends make
   * @param ends in local coordinates of the mesh
   */
  static Shape of(
      Shape shape, List<Found> ends, Mesh mesh, MeshTopology topology, MeshEvidence from) {
    boolean even =
        ends.size() == 2
            && shape.form() != Form.REDUCER
            && shape.form() != Form.TRANSITION
            && Ends.same(ends.get(0).outline().section(), ends.get(1).outline().section());
    Double alongM = even ? alongM(ends, mesh, topology) : null;
    Measured<Double> told = shape.lengthM();
    if (alongM == null
        || told != null && Math.abs(told.value() - alongM) < SAME_LENGTH * told.value()) {
      return shape;
    }
    return new Shape(
        shape.form(),
        shape.section(),
        Measured.of(alongM, from.how(), from.distances()),
        shape.angleDeg(),
        null,
        shape.ends(),
        List.of(WINDS));
  }

  /** Null unless the body is one closed skin without a bore, longer than its ends are apart. */
  private static @Nullable Double alongM(List<Found> ends, Mesh mesh, MeshTopology topology) {
    Solid solid = MeshSolid.of(mesh, topology, false);
    boolean skin = solid.closed() && solid.pieces().size() == 1;
    for (Facet facet : skin ? solid.pieces().get(0) : List.<Facet>of()) {
      skin &= facet.role() == Facet.Role.OUTER;
    }
    if (!skin) {
      return null;
    }
    double areaM2 = (areaM2(ends.get(0)) + areaM2(ends.get(1))) / 2;
    Vec between = ends.get(1).outline().centre().minus(ends.get(0).outline().centre());
    double alongM = solid.volumeM3() / areaM2;
    return alongM > between.norm() ? alongM : null;
  }

  private static double areaM2(Found end) {
    return OutlineFit.areaNormal(end.loop(), end.outline().centre()).norm();
  }
}
