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

  /** The same where what coarse arcs lack is known. */
  private static final double SAME_FINE_LENGTH = 0.01;

  /** By how much the skin may be longer than the volume: steps of 40 degrees; folds are more. */
  private static final double COARSE = 0.03;

  private static final String WINDS =
      "body winds between its ends, length is its volume over the area of its ends";

  /**
   * A length by volume.
   *
   * @param off by what share of it other lengths are no others
   */
  private record Along(double lengthM, double off) {}

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
    Along along = even ? along(ends, mesh, topology) : null;
    Measured<Double> told = shape.lengthM();
    if (along == null
        || told != null && Math.abs(told.value() - along.lengthM()) < along.off() * told.value()) {
      return shape;
    }
    return new Shape(
        shape.form(),
        shape.section(),
        Measured.of(along.lengthM(), from.how(), from.distances()),
        shape.angleDeg(),
        null,
        shape.ends(),
        List.of(WINDS));
  }

  /** Null unless the body is one closed skin without a bore, longer than its ends are apart. */
  private static @Nullable Along along(List<Found> ends, Mesh mesh, MeshTopology topology) {
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
    Along along = finer(solid.volumeM3() / areaM2, ends, topology);
    return along.lengthM() > between.norm() ? along : null;
  }

  /**
   * Without what coarse arcs lack. A round piece that turns by a small angle {@code t} in flat
   * walls has the volume of {@code 1 - t^2 / 6} of its arc, {@code sin t / t} to that order, and
   * the skin of {@code 1 - 5 t^2 / 48} of it: its walls run along chords, {@code 1 - t^2 / 24}, and
   * are lower at their middle, in the mean {@code 1 - t^2 / 16}. Straight pieces lack nothing, so
   * what both lengths differ by tells what the whole lacks.
   */
  private static Along finer(double byVolumeM, List<Found> ends, MeshTopology topology) {
    double endsM2 = areaM2(ends.get(0)) + areaM2(ends.get(1));
    double aroundM = (aroundM(ends.get(0)) + aroundM(ends.get(1))) / 2;
    double lackM = (topology.areaM2() - endsM2) / aroundM - byVolumeM;
    boolean coarse = ends.get(0).isRound() && lackM > 0 && lackM < COARSE * byVolumeM;
    return coarse
        ? new Along(byVolumeM + lackM * 8 / 3, SAME_FINE_LENGTH)
        : new Along(byVolumeM, SAME_LENGTH);
  }

  private static double aroundM(Found end) {
    List<Vec> loop = end.loop();
    double aroundM = 0;
    for (int i = 0; i < loop.size(); i++) {
      aroundM += loop.get(i).distanceTo(loop.get((i + 1) % loop.size()));
    }
    return aroundM;
  }

  private static double areaM2(Found end) {
    return OutlineFit.areaNormal(end.loop(), end.outline().centre()).norm();
  }
}
