package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.solid.WallFaces.Reach;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * A straight mesh that is several bodies inside one another: a pipe, its insulation, its jacket. As
 * a rule they are closed at their ends, which tells bodies from what is empty between them.
 */
final class NestedBodies {

  private static final String UNTOLD =
      "walls run inside one another, which of them is the outside of the pipe is not told";

  /** A pipe that is hollow has two walls; a third is that of another body. */
  private static final int HOLLOW = 2;

  /** Share of a ring or a wall that is there, at least; polygons have some per cent less. */
  private static final double CLOSED = 0.8;

  /** Less than the thinnest sheet, more than corners are rounded to. */
  private static final double SAME_M = 4e-4;

  /**
   * A wall that runs along most of the length.
   *
   * @param u from the axis to the wall; of a flat one, to the one pair of sides
   * @param v to the other pair of flat sides
   */
  private record Wall(Section section, double fromM, double toM, Vec u, Vec v) {

    /** How far outside the wall a place lies, metres; below 0 inside. */
    double outsideM(Vec off, Vec along) {
      return section instanceof Section.Round
          ? off.across(along).norm() - u.norm()
          : Math.max(
              Math.abs(off.dot(u)) / u.norm() - u.norm(),
              Math.abs(off.dot(v)) / v.norm() - v.norm());
    }

    double areaM2() {
      return section instanceof Section.Round
          ? Math.PI * u.dot(u)
          : 4 * Math.sqrt(u.dot(u) * v.dot(v));
    }
  }

  private final Mesh mesh;
  private final Shape shape;
  private final Measured<Section> outside;
  private final WallFaces faces;
  private final List<Double> knownM;
  private final double sameM;

  private NestedBodies(
      Mesh mesh, WallFaces faces, Shape shape, Measured<Section> outside, ShapeHints hints) {
    this.mesh = mesh;
    this.shape = shape;
    this.outside = outside;
    this.faces = faces;
    this.knownM = hints.stated().diametersM();
    this.sameM = Math.max(SAME_M, faces.roundedM());
  }

  /**
   * A straight piece with the shell that lies around it; without one, as it is.
   *
   * @param faces of the mesh, about the axis of the piece
   * @param shape what the whole mesh is taken for
   */
  static Shape in(Mesh mesh, WallFaces faces, Shape shape, ShapeHints hints) {
    Measured<Section> outside = shape.section();
    return outside != null && shape.form() == Form.STRAIGHT && shape.ends().size() == 2
        ? new NestedBodies(mesh, faces, shape, outside, hints).told()
        : shape;
  }

  private Shape told() {
    List<Wall> walls = walls();
    if (walls.size() < 2) {
      return shape;
    }
    List<CoaxialBody.Part> parts = new ArrayList<>(walls.size());
    for (int i = 0; i < walls.size(); i++) {
      Wall inner = i == 0 ? null : walls.get(i - 1);
      if (isClosed(inner, walls.get(i))) {
        parts.add(new CoaxialBody.Part(piece(walls.get(i)), inner == null ? null : inner.section));
      }
    }
    if (parts.size() < 2) {
      return parts.isEmpty() && walls.size() > HOLLOW ? Parts.withProblem(shape, UNTOLD) : shape;
    }
    Shape nested = CoaxialBody.of(parts, longest(parts), outside.evidence().step());
    return nested == null || nested.sheath() == null ? shape : withSheath(nested);
  }

  private Shape withSheath(Shape nested) {
    return new Shape(
        nested.form(),
        nested.section(),
        shape.lengthM(),
        null,
        null,
        nested.ends(),
        shape.problems(),
        nested.sheath());
  }

  private static Shape longest(List<CoaxialBody.Part> parts) {
    Shape longest = parts.get(0).shape();
    double mostM = 0;
    for (CoaxialBody.Part part : parts) {
      List<ShapeEnd> ends = part.shape().ends();
      double lengthM = ends.get(0).centreM().distanceM(ends.get(1).centreM());
      longest = lengthM > mostM ? part.shape() : longest;
      mostM = Math.max(mostM, lengthM);
    }
    return longest;
  }

  private Shape piece(Wall wall) {
    How how = outside.how();
    Evidence evidence =
        new Evidence(
            outside.evidence().step(), "walls inside one another", mesh.faces().size() + " faces");
    ShapeEnd first = shape.ends().get(0);
    Vec along = faces.along();
    Point from = first.centre().plus(along.times(wall.fromM)).point();
    Point to = first.centre().plus(along.times(wall.toM)).point();
    return new Shape(
        Form.STRAIGHT,
        Measured.of(wall.section, how, evidence),
        Measured.of(wall.toM - wall.fromM, how, evidence),
        null,
        null,
        List.of(
            new ShapeEnd(from, along.times(-1).point(), wall.section, first.width()),
            new ShapeEnd(to, along.point(), wall.section, first.width())),
        List.of());
  }

  /** From inside out. */
  private List<Wall> walls() {
    List<Wall> walls = new ArrayList<>();
    Point width = shape.ends().get(0).width();
    if (outside.value() instanceof Section.Round) {
      for (List<Reach> level : levels(null)) {
        Vec u = faces.along().anyNormal().times(level.get(0).farM());
        Section section = new Section.Round(faces.diameterM(level, knownM));
        if (isAround(areaM2(level), section)) {
          walls.add(new Wall(section, fromM(level), toM(level), u, u));
        }
      }
    } else if (outside.value() instanceof Section.Rectangular && width != null) {
      Vec wide = Vec.of(width);
      addFlat(wide, faces.along().cross(wide), walls);
    }
    return walls;
  }

  private void addFlat(Vec wide, Vec high, List<Wall> walls) {
    List<List<Reach>> sides = levels(wide);
    List<List<Reach>> lids = levels(high);
    for (int i = 0; sides.size() == lids.size() && i < sides.size(); i++) {
      double halfWidthM = sides.get(i).get(0).farM();
      double halfHeightM = lids.get(i).get(0).farM();
      Section section = new Section.Rectangular(2 * halfWidthM, 2 * halfHeightM);
      if (isAround(areaM2(sides.get(i)) + areaM2(lids.get(i)), section)) {
        Vec u = wide.times(halfWidthM);
        Vec v = high.times(halfHeightM);
        walls.add(new Wall(section, fromM(sides.get(i)), toM(sides.get(i)), u, v));
      }
    }
  }

  /** True if there is wall on all sides for most of the length; a channel has some of it. */
  private boolean isAround(double wallM2, Section section) {
    return wallM2 > CLOSED * MainWall.MOST * section.perimeterM() * faces.lengthM();
  }

  private double areaM2(List<Reach> level) {
    double areaM2 = 0;
    for (Reach reach : level) {
      areaM2 += mesh.areaNormal(mesh.faces().get(reach.face())).norm();
    }
    return areaM2;
  }

  private static double fromM(List<Reach> level) {
    double fromM = Double.MAX_VALUE;
    for (Reach face : level) {
      fromM = Math.min(fromM, face.fromM());
    }
    return fromM;
  }

  private static double toM(List<Reach> level) {
    double toM = -Double.MAX_VALUE;
    for (Reach face : level) {
      toM = Math.max(toM, face.toM());
    }
    return toM;
  }

  /**
   * The walls that lie equally far out and run along most of the length, from inside out.
   *
   * @param side where flat walls look to; null for round ones
   */
  private List<List<Reach>> levels(@Nullable Vec side) {
    List<Reach> reaches = new ArrayList<>(faces.reaches(side));
    reaches.removeIf(reach -> !reach.wall());
    List<List<Reach>> levels = new ArrayList<>();
    int i = 0;
    while (i < reaches.size()) {
      double farM = reaches.get(i).farM();
      List<Reach> level = new ArrayList<>();
      while (i < reaches.size() && reaches.get(i).farM() > farM - sameM) {
        level.add(reaches.get(i++));
      }
      if (runsAlong(level)) {
        levels.add(0, level);
      }
    }
    return levels;
  }

  private boolean runsAlong(List<Reach> level) {
    List<double[]> left = List.<double[]>of(new double[] {0, faces.lengthM()});
    for (Reach face : level) {
      left = face.outOf(left);
    }
    return Spans.sum(left) < (1 - MainWall.MOST) * faces.lengthM();
  }

  /** True if plates across the axis close what lies between two walls, or within the inmost. */
  private boolean isClosed(@Nullable Wall inner, Wall outer) {
    double ringM2 = outer.areaM2() - (inner == null ? 0 : inner.areaM2());
    double closedM2 = 0;
    for (Mesh.Face face : mesh.faces()) {
      Vec areaNormal = mesh.areaNormal(face);
      if (areaNormal.unit().cross(faces.along()).norm() < WallFaces.LEAN
          && isBetween(face, inner, outer)) {
        closedM2 += areaNormal.norm();
      }
    }
    return closedM2 > 2 * CLOSED * ringM2;
  }

  /** True of a plate within the outer wall, none of it within the inner one. */
  private boolean isBetween(Mesh.Face face, @Nullable Wall inner, Wall outer) {
    Vec axis = shape.ends().get(0).centre().minus(mesh.origin());
    boolean leaves = inner == null;
    for (Vec corner : mesh.points(face.loops().get(0))) {
      Vec off = corner.minus(axis);
      double beyondM = inner == null ? 0 : inner.outsideM(off, faces.along());
      if (outer.outsideM(off, faces.along()) > sameM || beyondM < -sameM) {
        return false;
      }
      leaves |= beyondM > sameM;
    }
    return leaves;
  }
}
