package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;

/** What a mesh draws besides the one straight piece that it is taken for. Local coordinates. */
final class Strays {

  /**
   * Share of the surface from which a part beside the axis is a pipe of its own; handles, lugs and
   * branches have less.
   */
  private static final double LARGE = 0.25;

  /** Pieces that leave less between them touch. */
  private static final double TOUCH_M = 0.001;

  private static final String BESIDE = "a part of the body lies beside the piece that is measured";

  private static final String GAP = "the body has a gap, which counts as length";

  private final Mesh mesh;
  private final MeshTopology topology;
  private final Vec from;
  private final Vec along;
  private final double lengthM;

  private Strays(Mesh mesh, MeshTopology topology, Shape straight) {
    List<ShapeEnd> ends = straight.ends();
    this.mesh = mesh;
    this.topology = topology;
    this.from = ends.get(0).centre().minus(mesh.origin());
    Vec between = ends.get(1).centre().minus(ends.get(0).centre());
    this.along = between.unit();
    this.lengthM = between.norm();
  }

  /**
   * What is wrong with taking a mesh for one straight piece, null if nothing is.
   *
   * @param straight a piece whose first two ends are those of a straight run
   */
  static @Nullable String in(Mesh mesh, MeshTopology topology, Shape straight) {
    double halfM = straight.ends().get(0).section().largestSideM() / 2;
    Strays strays = new Strays(mesh, topology, straight);
    return strays.anyBeside(halfM) ? BESIDE : strays.hasGap() ? GAP : null;
  }

  private boolean anyBeside(double halfM) {
    Vec[] moments = new Vec[mesh.vertices().size()];
    double[] areas = new double[moments.length];
    for (int face = 0; face < mesh.faces().size(); face++) {
      int piece = topology.piece(face);
      Vec middle = Vec.mean(mesh.points(mesh.faces().get(face).loops().get(0)));
      Vec moment = middle.minus(from).times(topology.area(face));
      moments[piece] = moments[piece] == null ? moment : moments[piece].plus(moment);
      areas[piece] += topology.area(face);
    }
    double largeM2 = LARGE * topology.areaM2();
    for (int piece = 0; piece < areas.length; piece++) {
      if (areas[piece] > largeM2
          && moments[piece].times(1 / areas[piece]).across(along).norm() > halfM) {
        return true;
      }
    }
    return false;
  }

  private boolean hasGap() {
    List<double[]> left = new ArrayList<>(List.<double[]>of(new double[] {0, lengthM}));
    for (int face = 0; face < mesh.faces().size(); face++) {
      double leastM = Double.MAX_VALUE;
      double mostM = -Double.MAX_VALUE;
      for (int corner : mesh.faces().get(face).loops().get(0)) {
        double atM = mesh.vertices().get(corner).minus(from).dot(along);
        leastM = Math.min(leastM, atM);
        mostM = Math.max(mostM, atM);
      }
      left = Spans.minus(left, List.<double[]>of(new double[] {leastM, mostM}));
    }
    for (double[] gap : left) {
      if (gap[1] - gap[0] > TOUCH_M) {
        return true;
      }
    }
    return false;
  }
}
