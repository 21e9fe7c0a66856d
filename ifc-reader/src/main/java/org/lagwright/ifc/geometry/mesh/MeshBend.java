package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.shape.BendLegs;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** A mesh that is a bend: the arc between its ends, or the bend that its walls make. */
final class MeshBend {

  /** How far a face may lie off the axis at the end of an arc: angle, and share of the width. */
  private static final double ON_AXIS_RAD = Math.toRadians(2);

  private static final double ON_AXIS = 0.03;

  private static final String NO_ARC =
      "body does not follow an arc between its ends, its radius is not known";

  /** Share by which angles of one arc by its corners and by its normals may differ. */
  private static final double SAME_TURN = 0.04;

  private static final String NO_ONE_TURN =
      "walls of the bend do not turn as far as its corners reach, its angle is less sure";

  private final Mesh mesh;
  private final MeshTopology topology;
  private final MeshEvidence from;
  private final List<Double> knownM;

  /**
   * @param knownM diameters that are stated
   */
  MeshBend(MeshTopology topology, MeshEvidence from, List<Double> knownM) {
    this.mesh = from.mesh();
    this.topology = topology;
    this.from = from;
    this.knownM = knownM;
  }

  /**
   * With the radius of the arc between its tangents; without one if it is no arc.
   *
   * @param shape what the ends alone make
   * @param end the first of them
   */
  Shape between(Shape shape, Found end) {
    ShapeEnd a = shape.ends().get(0);
    ShapeEnd b = shape.ends().get(1);
    if (ReturnBend.isBetween(a, b)) {
      return returned(shape, end);
    }
    boolean even = BendFit.isEven(a, b);
    boolean round = BendFit.isRound(a, b);
    BendFit.Fit gored = even ? gored(a, b, end) : null;
    if (gored != null && (round || !Double.isNaN(gored.radiusM()))) {
      String problem = "pieces meet in one corner, a radius is not known";
      boolean sharp = Double.isNaN(gored.radiusM());
      return withArc(shape, gored.lengthM(), gored.radiusM(), sharp ? problem : "");
    }
    List<Vec> corners = corners();
    BendFit.Fit fit = null;
    if (even) {
      fit = round ? BendFit.of(corners, a, b) : BendFit.ofDuct(corners, a, b, inWorld(end.loop()));
    }
    if (fit != null) {
      return withArc(shape, fit.lengthM(), fit.radiusM(), "");
    }
    Shape between = end.outline().isRound() ? betweenEnds(shape) : null;
    if (between != null) {
      return between;
    }
    if (round) {
      return betweenSockets(shape, corners);
    }
    return shape.bendRadiusM() == null || !even && followsArc(shape, end, corners)
        ? shape
        : withArc(shape, Double.NaN, Double.NaN, NO_ARC);
  }

  private Shape returned(Shape shape, Found end) {
    ShapeEnd a = shape.ends().get(0);
    BendFit.Fit fit = ReturnBend.of(corners(), a, shape.ends().get(1), end);
    if (fit != null) {
      return withArc(shape, fit.lengthM(), fit.radiusM(), "");
    }
    Shape between = end.outline().isRound() ? betweenEnds(shape) : null;
    return between == null ? withArc(shape, Double.NaN, Double.NaN, NO_ARC) : between;
  }

  /** True of a reducing bend that keeps to its first width. */
  private static boolean followsArc(Shape shape, Found end, List<Vec> corners) {
    ShapeEnd a = shape.ends().get(0);
    ShapeEnd b = shape.ends().get(1);
    Vec across = a.out().cross(b.out()).cross(a.out()).unit();
    double half = Math.abs(end.outline().u().dot(across)) + Math.abs(end.outline().v().dot(across));
    return BendFit.followsArc(corners, a, b, half);
  }

  /** The pipe between the ends, which may be wider; without a radius if none can be told. */
  private Shape betweenSockets(Shape shape, List<Vec> corners) {
    ShapeEnd a = shape.ends().get(0);
    ShapeEnd b = shape.ends().get(1);
    double halfM = a.section().largestSideM() / 2;
    SocketedBend pipe = SocketedBend.of(corners, BendFit.legs(a, b), halfM);
    if (pipe == null) {
      return withArc(shape, Double.NaN, Double.NaN, NO_ARC);
    }
    Section section = new Section.Round(2 * pipe.radiusM());
    Shape bare =
        new Shape(
            Form.BEND,
            Measured.of(section, from.how(), from.walls()),
            null,
            shape.angleDeg(),
            null,
            List.of(
                new ShapeEnd(a.centreM(), a.outward(), section),
                new ShapeEnd(b.centreM(), b.outward(), section)),
            List.of());
    return withArc(bare, pipe.fit().lengthM(), pipe.fit().radiusM(), "");
  }

  private BendFit.@Nullable Fit gored(ShapeEnd a, ShapeEnd b, Found end) {
    double radiusM = 0;
    for (Vec corner : end.loop()) {
      radiusM = Math.max(radiusM, corner.distanceTo(end.outline().centre()));
    }
    BendLegs legs = BendFit.legs(a, b).moved(mesh.origin().times(-1));
    return GoredBend.of(mesh, topology, legs, radiusM);
  }

  private List<Vec> inWorld(List<Vec> local) {
    List<Vec> world = new ArrayList<>(local.size());
    for (Vec corner : local) {
      world.add(mesh.origin().plus(corner));
    }
    return world;
  }

  /** In world coordinates, with places on curved faces: a corner of each of their tiles. */
  private List<Vec> corners() {
    List<Vec> corners = inWorld(mesh.vertices());
    for (Mesh.Face face : mesh.faces()) {
      for (List<List<Vec>> tile : face.tiles()) {
        corners.add(tile.get(0).get(0));
      }
    }
    return corners;
  }

  private Shape withArc(Shape bend, double lengthM, double radiusM, String problem) {
    Shape known =
        new Shape(
            bend.form(),
            bend.section(),
            Double.isNaN(lengthM) ? null : Measured.of(lengthM, from.how(), from.distances()),
            bend.angleDeg(),
            Double.isNaN(radiusM) ? null : Measured.of(radiusM, from.how(), from.distances()),
            bend.ends(),
            List.of());
    return problem.isEmpty() ? known : Parts.withProblem(known, problem);
  }

  /** A round bend by its walls, null if they make none. */
  @Nullable Shape byWalls() {
    BendWalls.Bend bend = BendWalls.of(mesh, topology);
    if (bend == null) {
      return null;
    }
    Evidence walls = from.walls(bend);
    boolean sure = Math.abs(bend.spreadRad() - bend.angleRad()) < SAME_TURN * bend.angleRad();
    List<ShapeEnd> ends = mesh.inWorld(PolygonReading.asCircles(bend.ends(), knownM));
    return new Shape(
        Form.BEND,
        Parts.largest(ends, from.how(), walls),
        Measured.of(bend.radiusM() * bend.angleRad(), from.how(), walls),
        Measured.of(Math.toDegrees(bend.angleRad()), from.how(), walls),
        Measured.of(bend.radiusM(), from.how(), walls),
        ends,
        sure ? List.of() : List.of(NO_ONE_TURN));
  }

  /** Flanges hide the pipe between them: the arc that leads from end to end, null if none does. */
  private @Nullable Shape betweenEnds(Shape ends) {
    Shape arc = byWalls();
    if (arc == null || arc.section() == null) {
      return null;
    }
    Section section = arc.section().value();
    List<ShapeEnd> faces = new ArrayList<>();
    double lengthM = Objects.requireNonNull(arc.lengthM()).value();
    for (ShapeEnd end : ends.ends()) {
      double alongM = beyondM(arc, end, section.largestSideM());
      if (Double.isNaN(alongM)) {
        return null;
      }
      faces.add(new ShapeEnd(end.centreM(), end.outward(), section));
      lengthM += alongM;
    }
    return new Shape(
        Form.BEND,
        arc.section(),
        Measured.of(lengthM, from.how(), from.distances()),
        ends.angleDeg(),
        arc.bendRadiusM(),
        faces,
        List.of());
  }

  /** How far a face lies beyond the nearer end of an arc, NaN if it is not the end of its pipe. */
  private static double beyondM(Shape arc, ShapeEnd face, double sizeM) {
    ShapeEnd own = arc.ends().get(0);
    for (ShapeEnd end : arc.ends()) {
      boolean nearer =
          end.centre().distanceTo(face.centre()) < own.centre().distanceTo(face.centre());
      own = nearer ? end : own;
    }
    Vec beyond = face.centre().minus(own.centre());
    double alongM = beyond.dot(own.out());
    boolean onAxis =
        own.out().angleTo(face.out()) < ON_AXIS_RAD
            && beyond.across(own.out()).norm() < ON_AXIS * sizeM
            && alongM > -ON_AXIS * sizeM
            && face.section().largestSideM() > (1 - ON_AXIS) * sizeM;
    return onAxis ? alongM : Double.NaN;
  }
}
