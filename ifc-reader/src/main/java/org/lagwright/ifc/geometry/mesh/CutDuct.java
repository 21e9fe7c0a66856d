package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.curve.PlaneFit;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.Outline;

/**
 * A closed rectangular duct with one end or both cut at a slant, as before a mitred corner: all its
 * faces lie in two pairs of walls at right angles, with or without a bore, and two planes that cut
 * them. It ends where these meet its axis. Local coordinates, metres.
 */
final class CutDuct {

  /** Sine of the angle between directions that count as one, or as square to each other. */
  private static final double SAME = 0.01;

  /** Faces closer than this to one plane lie in it, or than what their corners are rounded to. */
  private static final double SAME_M = 2e-4;

  /** Cosine between the axis and what a cut looks along, at least: 75 degrees of slant. */
  private static final double STEEPEST = 0.25;

  /** The walls of a duct and of its bore, and two cuts. */
  private static final int MOST_PLANES = 10;

  private static final int FEWEST_PLANES = 6;

  /** A plane in which faces lie, whichever way they look. */
  private record Plane(Vec normal, double atM) {

    boolean isSame(Vec other, double otherM, double sameM) {
      double sameWayM = normal.dot(other) > 0 ? otherM : -otherM;
      return isParallel(other) && Math.abs(sameWayM - atM) < sameM;
    }

    /** True if all corners lie in it, however a face between them leans. */
    boolean holds(List<Vec> corners, double sameM) {
      for (Vec corner : corners) {
        if (Math.abs(corner.dot(normal) - atM) > sameM) {
          return false;
        }
      }
      return true;
    }

    boolean isParallel(Vec direction) {
      return normal.cross(direction).norm() < SAME;
    }

    boolean isSquareTo(Vec direction) {
      return Math.abs(normal.dot(direction)) < SAME;
    }

    /** Where a line meets it, in metres from a point on the line. */
    double metM(Vec point, Vec along) {
      return (atM - normal.dot(point)) / normal.dot(along);
    }
  }

  /** How far walls that are square to a direction reach along it. */
  private record Span(Vec along, double fromM, double toM) {

    Vec half() {
      return along.times((toM - fromM) / 2);
    }

    Vec middle() {
      return along.times((toM + fromM) / 2);
    }
  }

  private final List<Plane> planes;

  private CutDuct(List<Plane> planes) {
    this.planes = planes;
  }

  /** The two ends, square to the axis; empty for anything else, a plain box among it. */
  static List<Found> ends(Mesh mesh, MeshTopology topology) {
    double sameM = Math.max(SAME_M, mesh.stepM());
    List<Plane> planes = new ArrayList<>(FEWEST_PLANES);
    for (List<Integer> patch : largestFirst(mesh, topology)) {
      add(corners(mesh, patch), topology.normal(patch.get(0)), sameM, planes);
      if (planes.size() > MOST_PLANES) {
        return List.of();
      }
    }
    return planes.size() < FEWEST_PLANES ? List.of() : new CutDuct(planes).longest();
  }

  /** The plane patches; where corners are rounded, the small ones last, which lean. */
  private static List<List<Integer>> largestFirst(Mesh mesh, MeshTopology topology) {
    List<List<Integer>> patches = new ArrayList<>(topology.patches().values());
    if (mesh.stepM() > 0) {
      patches.sort(Comparator.comparingDouble(patch -> -topology.areaM2(patch)));
    }
    return patches;
  }

  private static List<Vec> corners(Mesh mesh, List<Integer> patch) {
    List<Vec> corners = new ArrayList<>(4 * patch.size());
    for (int face : patch) {
      corners.addAll(mesh.points(mesh.faces().get(face).loops().get(0)));
    }
    return corners;
  }

  /** The rim of a sheet is too narrow for its faces to tell their plane, but its corners do. */
  private static void add(List<Vec> corners, Vec normal, double sameM, List<Plane> planes) {
    PlaneFit fit = new PlaneFit(corners.get(0), normal);
    for (Vec corner : corners) {
      fit.add(corner);
    }
    PlaneFit.Fitted fitted = fit.plane();
    double atM = fitted.middle().dot(fitted.normal());
    for (Plane plane : planes) {
      if (plane.isSame(fitted.normal(), atM, sameM) || plane.holds(corners, sameM)) {
        return;
      }
    }
    planes.add(new Plane(fitted.normal(), atM));
  }

  /** A body with two parallel cuts may be read along these too; a duct is longer than wide. */
  private List<Found> longest() {
    List<Found> longest = List.of();
    for (int i = 0; i < planes.size(); i++) {
      for (int j = 0; j < i; j++) {
        Vec u = planes.get(i).normal;
        Vec v = planes.get(j).normal;
        List<Found> ends = planes.get(i).isSquareTo(v) ? between(u, v) : List.of();
        longest = lengthM(ends) > lengthM(longest) ? ends : longest;
      }
    }
    return longest;
  }

  private static double lengthM(List<Found> ends) {
    return ends.isEmpty()
        ? 0
        : ends.get(0).outline().centre().distanceTo(ends.get(1).outline().centre());
  }

  private List<Found> between(Vec u, Vec v) {
    Vec axis = u.cross(v).unit();
    Span acrossU = span(u);
    Span acrossV = span(v);
    List<Plane> cuts = new ArrayList<>(2);
    for (Plane plane : planes) {
      if (!plane.isParallel(u) && !plane.isParallel(v)) {
        cuts.add(plane);
      }
    }
    boolean wide = acrossU.fromM < acrossU.toM && acrossV.fromM < acrossV.toM;
    if (!wide || cuts.size() != 2 || !areCuts(cuts.get(0), cuts.get(1), axis)) {
      return List.of();
    }
    Vec middle = acrossU.middle().plus(acrossV.middle());
    Outline outline = new Outline(Outline.Kind.RECTANGULAR, middle, acrossU.half(), acrossV.half());
    double firstM = cuts.get(0).metM(middle, axis);
    double secondM = cuts.get(1).metM(middle, axis);
    Vec out = firstM < secondM ? axis : axis.times(-1);
    return List.of(
        new Found(outline.at(middle.plus(axis.times(firstM))), out.times(-1), List.of()),
        new Found(outline.at(middle.plus(axis.times(secondM))), out, List.of()));
  }

  private Span span(Vec along) {
    double fromM = Double.POSITIVE_INFINITY;
    double toM = Double.NEGATIVE_INFINITY;
    for (Plane plane : planes) {
      if (plane.isParallel(along)) {
        double atM = plane.normal.dot(along) > 0 ? plane.atM : -plane.atM;
        fromM = Math.min(fromM, atM);
        toM = Math.max(toM, atM);
      }
    }
    return new Span(along, fromM, toM);
  }

  /** True if two planes close a body along an axis, and not both squarely. */
  private static boolean areCuts(Plane a, Plane b, Vec axis) {
    boolean square = a.isParallel(axis) && b.isParallel(axis);
    boolean steep =
        Math.abs(a.normal.dot(axis)) < STEEPEST || Math.abs(b.normal.dot(axis)) < STEEPEST;
    return !square && !steep;
  }
}
