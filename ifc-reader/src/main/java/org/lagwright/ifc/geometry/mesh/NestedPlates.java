package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Section;

/**
 * The plates that close a round end: one across a solid body, one around a bore. Where there are
 * two with a wall between them, bodies lie inside one another, such as a pipe and its insulation.
 */
final class NestedPlates {

  /** Share of a plate or of the edge of a wall that is there, at least; polygons have less. */
  private static final double CLOSED = 0.8;

  /** Less than the thinnest sheet, more than corners are rounded to, metres. */
  private static final double SAME_M = 4e-4;

  /**
   * What lies in the plane of the end: a plate, or the edge of a wall that begins there.
   *
   * @param nearM distance of its nearest corner from the axis
   * @param farM of its farthest corner
   * @param size area of a plate in square metres, length of an edge in metres
   */
  private record Piece(double nearM, double farM, double size) {}

  private static final class NearestFirst implements Comparator<Piece> {
    @Override
    public int compare(Piece a, Piece b) {
      return Double.compare(a.nearM, b.nearM);
    }
  }

  private final Mesh mesh;
  private final Vec centre;
  private final Vec out;
  private final double halfM;
  private final double sameM;
  private final List<Piece> plates = new ArrayList<>();
  private final List<Piece> edges = new ArrayList<>();

  private NestedPlates(Mesh mesh, ShapeEnd end) {
    this.mesh = mesh;
    this.centre = end.centre().minus(mesh.origin());
    this.out = end.out();
    this.halfM = end.section().largestSideM() / 2;
    this.sameM = Math.max(SAME_M, mesh.stepM());
  }

  /** True if several bodies end here inside one another. */
  static boolean at(Mesh mesh, ShapeEnd end) {
    return end.section() instanceof Section.Round && new NestedPlates(mesh, end).areSeveral();
  }

  private boolean areSeveral() {
    for (Mesh.Face face : mesh.faces()) {
      note(face);
    }
    int closed = 0;
    double innerM = 0;
    for (double levelM : levelsM()) {
      closed += isClosed(innerM, levelM) ? 1 : 0;
      innerM = levelM;
    }
    return closed > 1;
  }

  private void note(Mesh.Face face) {
    List<Vec> loop = mesh.points(face.loops().get(0));
    boolean plate = true;
    for (Vec corner : loop) {
      plate &= isInPlane(corner);
    }
    if (plate) {
      plates.add(piece(loop, mesh.areaNormal(face).norm()));
      return;
    }
    for (int i = 0; i < loop.size(); i++) {
      Vec from = loop.get(i);
      Vec to = loop.get((i + 1) % loop.size());
      if (isInPlane(from) && isInPlane(to)) {
        edges.add(piece(List.of(from, to), from.distanceTo(to)));
      }
    }
  }

  private boolean isInPlane(Vec corner) {
    return Math.abs(corner.minus(centre).dot(out)) < sameM;
  }

  private Piece piece(List<Vec> corners, double size) {
    double nearM = Double.MAX_VALUE;
    double farM = 0;
    for (Vec corner : corners) {
      double awayM = corner.minus(centre).across(out).norm();
      nearM = Math.min(nearM, awayM);
      farM = Math.max(farM, awayM);
    }
    return new Piece(nearM, farM, size);
  }

  /** How far from the axis walls begin, all around it, from inside out. */
  private List<Double> levelsM() {
    edges.sort(new NearestFirst());
    List<Double> levelsM = new ArrayList<>();
    int i = 0;
    while (i < edges.size() && edges.get(i).nearM < halfM + sameM) {
      double levelM = edges.get(i).nearM;
      double lengthM = 0;
      while (i < edges.size() && edges.get(i).nearM < levelM + sameM) {
        Piece edge = edges.get(i++);
        lengthM += edge.farM < levelM + 2 * sameM ? edge.size : 0;
      }
      if (lengthM > CLOSED * 2 * Math.PI * levelM) {
        levelsM.add(levelM);
      }
    }
    return levelsM;
  }

  /** True if plates close what lies between two walls, or within the inmost. */
  private boolean isClosed(double innerM, double outerM) {
    double closedM2 = 0;
    for (Piece plate : plates) {
      boolean within =
          plate.farM < outerM + 2 * sameM && (innerM == 0 || plate.nearM > innerM - sameM);
      closedM2 += within ? plate.size : 0;
    }
    return closedM2 > CLOSED * Math.PI * (outerM * outerM - innerM * innerM);
  }
}
