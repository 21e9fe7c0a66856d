package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.mesh.PolygonReading;
import org.lagwright.ifc.geometry.shape.Shape;

/** The faces of a straight mesh: how far from its axis they lie, and where along it. */
final class WallFaces {

  /** Normals of walls lean towards the axis by less than 5 degrees. */
  static final double LEAN = Math.sin(Math.toRadians(5));

  /** Relative difference up to which corners lie equally far from the axis. */
  private static final double LEVEL = 0.005;

  /** Rounded corners of one wall may differ by this many steps: the diagonal of one, and a bit. */
  private static final double STEPS_APART = 1.5;

  /**
   * Ends whose centres lie on an axis that leans no more on what they look along tell it by their
   * places: of rounded corners the plane of a small end leans by some hundredths of a degree, which
   * takes a long wall away from the axis.
   */
  private static final double IN_LINE_RAD = Math.toRadians(0.5);

  /** Corners around the axis that are one, in radians. */
  private static final double SAME_CORNER_RAD = 1e-3;

  /**
   * How far a face reaches out, and along the axis.
   *
   * @param wall true if it is as far from the axis all over
   */
  record Reach(double farM, double fromM, double toM, boolean wall, int face) {

    /** What is left of spans along the axis where this face does not lie. */
    List<double[]> outOf(List<double[]> spans) {
      return Spans.minus(spans, List.<double[]>of(new double[] {fromM, toM}));
    }
  }

  private static final class FarthestFirst implements Comparator<Reach> {
    @Override
    public int compare(Reach a, Reach b) {
      return Double.compare(b.farM, a.farM);
    }
  }

  private final Mesh mesh;
  private final Vec from;
  private final Vec along;
  private final double lengthM;
  private @Nullable List<Reach> round;

  /**
   * @param shape a straight piece with two ends
   */
  WallFaces(Mesh mesh, Shape shape) {
    this.mesh = mesh;
    this.from = shape.ends().get(0).centre().minus(mesh.origin());
    Vec between = shape.ends().get(1).centre().minus(mesh.origin()).minus(from);
    Vec out = shape.ends().get(1).out();
    this.along = between.angleTo(out) < IN_LINE_RAD ? between.unit() : out;
    this.lengthM = between.dot(along);
  }

  /** By how much corners that lie equally far from the axis may differ, metres. */
  double levelM(double farM) {
    return Math.max(LEVEL * farM, roundedM());
  }

  /** By how much rounding sets corners of one wall apart, metres. */
  double roundedM() {
    return STEPS_APART * mesh.rounding().stepM();
  }

  /** True if the corners are rounded to more than differences of sizes. */
  boolean isCoarse() {
    return mesh.rounding().isTooCoarse();
  }

  Vec along() {
    return along;
  }

  double lengthM() {
    return lengthM;
  }

  /**
   * All faces, the farthest first.
   *
   * @param side where flat walls look to; null for round ones
   */
  List<Reach> reaches(@Nullable Vec side) {
    if (side != null) {
      return sorted(side);
    }
    List<Reach> known = round;
    if (known == null) {
      known = sorted(null);
      round = known;
    }
    return known;
  }

  private List<Reach> sorted(@Nullable Vec side) {
    List<Reach> reaches = new ArrayList<>(mesh.faces().size());
    for (int face = 0; face < mesh.faces().size(); face++) {
      double nearM = Double.MAX_VALUE;
      double farM = 0;
      double leastM = Double.MAX_VALUE;
      double mostM = -Double.MAX_VALUE;
      for (int corner : mesh.faces().get(face).loops().get(0)) {
        Vec off = mesh.vertices().get(corner).minus(from);
        double awayM = side == null ? off.across(along).norm() : Math.abs(off.dot(side));
        nearM = Math.min(nearM, awayM);
        farM = Math.max(farM, awayM);
        leastM = Math.min(leastM, off.dot(along));
        mostM = Math.max(mostM, off.dot(along));
      }
      boolean wall = nearM > farM - levelM(farM) && isWall(face, side);
      reaches.add(new Reach(farM, leastM, mostM, wall, face));
    }
    reaches.sort(new FarthestFirst());
    return reaches;
  }

  private boolean isWall(int face, @Nullable Vec side) {
    Vec normal = mesh.areaNormal(mesh.faces().get(face)).unit();
    return side == null
        ? Math.abs(normal.dot(along)) < LEAN
        : normal.cross(side).norm() < LEAN && !normal.isTiny();
  }

  /**
   * Of the circle that the corners of walls stand for.
   *
   * @param knownM diameters that are stated
   */
  double diameterM(List<Reach> walls, List<Double> knownM) {
    Vec u = along.anyNormal();
    Vec v = along.cross(u);
    Set<Long> corners = new HashSet<>();
    for (Reach wall : walls) {
      for (int corner : mesh.faces().get(wall.face).loops().get(0)) {
        Vec off = mesh.vertices().get(corner).minus(from);
        corners.add(Math.round(Math.atan2(off.dot(v), off.dot(u)) / SAME_CORNER_RAD));
      }
    }
    double throughCornersM = 2 * walls.get(0).farM;
    return throughCornersM * PolygonReading.factor(corners.size(), throughCornersM, knownM);
  }
}
