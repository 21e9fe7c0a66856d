package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.solid.WallFaces.Reach;
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

  /** Length of the deepest sockets over the size of their pipe. Common practice, no source. */
  private static final double SOCKET = 2;

  /** Share of the length from which a wider or narrower part counts. */
  private static final double LONG = 0.25;

  /** Share of the size by which such a part is wider or narrower. */
  private static final double DIFFERS_BY = 0.02;

  private static final String WIDER = "part of the body is wider than the size that is measured";

  private static final String NARROWER =
      "part of the body is narrower than the size that is measured";

  /** A wall shows along more than this share of the length. */
  static final double MOST = 0.5;

  private final WallFaces faces;
  private final ShapeHints hints;

  private MainWall(WallFaces faces, ShapeHints hints) {
    this.faces = faces;
    this.hints = hints;
  }

  /** A straight segment with the section of its wall; anything else, and plain pipes, as it is. */
  public static Shape in(Mesh mesh, Shape shape, ShapeHints hints) {
    Measured<Section> end = shape.section();
    boolean straight =
        hints.straight()
            && end != null
            && shape.ends().size() == 2
            && shape.ends().get(0).out().dot(shape.ends().get(1).out()) < -Math.cos(WallFaces.LEAN);
    if (end == null || !straight) {
      return shape;
    }
    WallFaces faces = new WallFaces(mesh, shape);
    Section wall = new MainWall(faces, hints).section(shape, end.value());
    boolean narrower =
        wall != null
            && wall.perimeterM() < end.value().perimeterM()
            && !Ends.same(wall, end.value());
    Shape bare = wall == null || !narrower ? shape : with(shape, wall, end, mesh.faces().size());
    Shape nested = NestedBodies.in(mesh, faces, bare, hints);
    String besides = nested.sheath() == null ? besides(faces, bare) : null;
    return besides == null ? nested : Parts.withProblem(nested, besides);
  }

  /** What a round body is for longer than any socket is, besides its section; null if nothing. */
  private static @Nullable String besides(WallFaces faces, Shape shape) {
    Measured<Section> section = shape.section();
    if (section == null || faces.isCoarse() || !(section.value() instanceof Section.Round)) {
      return null;
    }
    double sizeM = section.value().largestSideM();
    List<double[]> whole = List.<double[]>of(new double[] {0, faces.lengthM()});
    List<double[]> notWider = whole;
    List<double[]> narrower = whole;
    for (Reach reach : faces.reaches(null)) {
      if (reach.wall() && reach.farM() > sizeM / 2 * (1 + DIFFERS_BY)) {
        notWider = reach.outOf(notWider);
      }
      if (reach.farM() > sizeM / 2 * (1 - DIFFERS_BY)) {
        narrower = reach.outOf(narrower);
      }
    }
    double longM = Math.max(LONG * faces.lengthM(), SOCKET * sizeM);
    if (isLonger(Spans.minus(whole, notWider), longM)) {
      return WIDER;
    }
    boolean shown = Spans.sum(narrower) < (1 - MOST) * faces.lengthM();
    return shown && isLonger(narrower, longM) ? NARROWER : null;
  }

  private static boolean isLonger(List<double[]> spans, double longM) {
    for (double[] span : spans) {
      if (span[1] - span[0] > longM) {
        return true;
      }
    }
    return false;
  }

  /** The bore of a round straight mesh that runs along most of it, null if there is none. */
  public static @Nullable Section bore(Mesh mesh, Shape shape) {
    Measured<Section> outside = shape.section();
    if (outside == null
        || !(outside.value() instanceof Section.Round)
        || shape.ends().size() != 2) {
      return null;
    }
    WallFaces wall = new WallFaces(mesh, shape);
    double outsideM = outside.value().largestSideM() / 2;
    double narrowestM = outsideM - 2 * wall.levelM(outsideM);
    List<double[]> left = List.<double[]>of(new double[] {0, wall.lengthM()});
    double boreM = 0;
    for (Reach reach : wall.reaches(null)) {
      if (reach.wall() && reach.farM() < narrowestM) {
        left = reach.outOf(left);
        boreM = Math.max(boreM, reach.farM());
      }
    }
    return Spans.sum(left) < (1 - MOST) * wall.lengthM() ? new Section.Round(2 * boreM) : null;
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
      return walls.isEmpty()
          ? null
          : new Section.Round(faces.diameterM(walls, hints.stated().diametersM()));
    }
    Point width = shape.ends().get(0).width();
    if (width == null || !(end instanceof Section.Rectangular)) {
      return null;
    }
    List<Reach> sides = shown(Vec.of(width));
    List<Reach> levels = shown(faces.along().cross(Vec.of(width)));
    return sides.isEmpty() || levels.isEmpty()
        ? null
        : new Section.Rectangular(2 * sides.get(0).farM(), 2 * levels.get(0).farM());
  }

  /**
   * The walls that show along most of the length, empty if none do.
   *
   * @param side where flat walls look to; null for round ones
   */
  private List<Reach> shown(@Nullable Vec side) {
    List<Reach> reaches = faces.reaches(side);
    List<double[]> left = List.<double[]>of(new double[] {0, faces.lengthM()});
    int i = 0;
    while (i < reaches.size() && !left.isEmpty()) {
      double farM = reaches.get(i).farM();
      List<Reach> level = new ArrayList<>();
      List<double[]> others = left;
      double beforeM = Spans.sum(left);
      while (i < reaches.size() && reaches.get(i).farM() > farM - faces.levelM(farM)) {
        Reach face = reaches.get(i);
        if (face.wall()) {
          level.add(face);
          left = face.outOf(left);
        }
        others = face.outOf(others);
        i++;
      }
      if (beforeM - Spans.sum(left) > MOST * faces.lengthM()) {
        return level;
      }
      left = Spans.and(left, others);
    }
    return List.of();
  }
}
