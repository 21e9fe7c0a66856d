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
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The wall of a straight mesh that shows along most of its length. Where it is narrower than the
 * ends they are flanges or a socket, and the wall is the size of the pipe.
 */
public final class MainWall {

  /** A wall shows along more than this share of the length. */
  private static final double MOST = 0.5;

  /** Normals of walls lean towards the axis by less than 5 degrees. */
  private static final double LEAN = Math.sin(Math.toRadians(5));

  /**
   * Ends whose centres lie on an axis that leans no more on what they look along tell it by their
   * places: of rounded corners the plane of a small end leans by some hundredths of a degree, which
   * takes a long wall away from the axis.
   */
  private static final double IN_LINE_RAD = Math.toRadians(0.5);

  /** Relative difference up to which corners lie equally far from the axis. */
  private static final double LEVEL = 0.005;

  /** Corners around the axis that are one, in radians. */
  private static final double SAME_CORNER_RAD = 1e-3;

  /**
   * How far a face reaches out, and along the axis.
   *
   * @param wall true if it is as far from the axis all over
   */
  private record Reach(double farM, double fromM, double toM, boolean wall, int face) {}

  /** The farthest first. */
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
  private final ShapeHints hints;

  private MainWall(Mesh mesh, Shape shape, ShapeHints hints) {
    this.mesh = mesh;
    this.from = shape.ends().get(0).centre().minus(mesh.origin());
    Vec between = shape.ends().get(1).centre().minus(mesh.origin()).minus(from);
    Vec out = shape.ends().get(1).out();
    this.along = between.angleTo(out) < IN_LINE_RAD ? between.unit() : out;
    this.lengthM = between.dot(along);
    this.hints = hints;
  }

  /** A straight segment with the section of its wall; anything else, and plain pipes, as it is. */
  public static Shape in(Mesh mesh, Shape shape, ShapeHints hints) {
    Measured<Section> end = shape.section();
    boolean straight =
        hints.straight()
            && end != null
            && shape.ends().size() == 2
            && shape.ends().get(0).out().dot(shape.ends().get(1).out()) < -Math.cos(LEAN);
    if (end == null || !straight) {
      return shape;
    }
    Section wall = new MainWall(mesh, shape, hints).section(shape, end.value());
    boolean narrower = wall != null && wall.perimeterM() < end.value().perimeterM();
    return wall == null || !narrower || Ends.same(wall, end.value())
        ? shape
        : with(shape, wall, end, mesh.faces().size());
  }

  /** The bore of a round straight mesh that runs along most of it, null if there is none. */
  public static @Nullable Section bore(Mesh mesh, Shape shape) {
    Measured<Section> outside = shape.section();
    if (outside == null
        || !(outside.value() instanceof Section.Round)
        || shape.ends().size() != 2) {
      return null;
    }
    MainWall wall = new MainWall(mesh, shape, ShapeHints.NONE);
    double narrowestM = outside.value().largestSideM() / 2 * (1 - 2 * LEVEL);
    List<double[]> left = List.<double[]>of(new double[] {0, wall.lengthM});
    double boreM = 0;
    for (Reach reach : wall.reaches(null)) {
      if (reach.wall && reach.farM < narrowestM) {
        left = minus(left, reach);
        boreM = Math.max(boreM, reach.farM);
      }
    }
    return Spans.sum(left) < (1 - MOST) * wall.lengthM ? new Section.Round(2 * boreM) : null;
  }

  private static Shape with(Shape shape, Section wall, Measured<Section> end, int faces) {
    Evidence evidence =
        new Evidence(end.evidence().step(), "wall along most of the length", faces + " faces");
    Candidate<Section> lost =
        new Candidate<>(end.value(), end.how(), end.evidence(), CoaxialBody.END_ONLY);
    return new Shape(
        Form.STRAIGHT,
        new Measured<>(wall, end.how(), evidence, List.of(lost)),
        shape.lengthM(),
        null,
        null,
        shape.ends(),
        shape.problems());
  }

  private @Nullable Section section(Shape shape, Section end) {
    if (end instanceof Section.Round) {
      List<Reach> walls = shown(null);
      return walls.isEmpty() ? null : new Section.Round(diameterM(walls));
    }
    Point width = shape.ends().get(0).width();
    if (width == null || !(end instanceof Section.Rectangular)) {
      return null;
    }
    List<Reach> sides = shown(Vec.of(width));
    List<Reach> levels = shown(along.cross(Vec.of(width)));
    return sides.isEmpty() || levels.isEmpty()
        ? null
        : new Section.Rectangular(2 * sides.get(0).farM, 2 * levels.get(0).farM);
  }

  /**
   * The walls that show along most of the length, empty if none do.
   *
   * @param side where flat walls look to; null for round ones
   */
  private List<Reach> shown(@Nullable Vec side) {
    List<Reach> faces = reaches(side);
    faces.sort(new FarthestFirst());
    List<double[]> left = List.<double[]>of(new double[] {0, lengthM});
    int i = 0;
    while (i < faces.size() && !left.isEmpty()) {
      double farM = faces.get(i).farM;
      List<Reach> level = new ArrayList<>();
      List<double[]> others = left;
      double beforeM = Spans.sum(left);
      while (i < faces.size() && faces.get(i).farM > farM * (1 - LEVEL)) {
        Reach face = faces.get(i);
        if (face.wall) {
          level.add(face);
          left = minus(left, face);
        }
        others = minus(others, face);
        i++;
      }
      if (beforeM - Spans.sum(left) > MOST * lengthM) {
        return level;
      }
      left = Spans.and(left, others);
    }
    return List.of();
  }

  private static List<double[]> minus(List<double[]> spans, Reach face) {
    return Spans.minus(spans, List.<double[]>of(new double[] {face.fromM, face.toM}));
  }

  private List<Reach> reaches(@Nullable Vec side) {
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
      boolean wall = nearM > farM * (1 - LEVEL) && isWall(face, side);
      reaches.add(new Reach(farM, leastM, mostM, wall, face));
    }
    return reaches;
  }

  private boolean isWall(int face, @Nullable Vec side) {
    Vec normal = mesh.areaNormal(mesh.faces().get(face)).unit();
    return side == null
        ? Math.abs(normal.dot(along)) < LEAN
        : normal.cross(side).norm() < LEAN && !normal.isTiny();
  }

  /** Of the circle that the corners of the walls stand for. */
  private double diameterM(List<Reach> walls) {
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
    return throughCornersM
        * PolygonReading.factor(corners.size(), throughCornersM, hints.stated().diametersM());
  }
}
