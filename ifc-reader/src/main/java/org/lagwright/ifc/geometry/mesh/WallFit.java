package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.PlaneFit;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;

/**
 * Axis and section, round or rectangular, of a straight mesh from its walls, for bodies whose ends
 * are torn, domed, pointed or missing. The covariance of the normals, weighted by area, has the
 * axis as one of its eigenvectors: of a capped cylinder the values are {@code pi r L, pi r L, 2 pi
 * r^2}, of an open tube the last one is 0. Which of the three it is shows by the walls around it.
 */
final class WallFit {

  /** Faces whose normals lean towards the axis by less than 5 degrees are walls. */
  private static final double LEAN = Math.sin(Math.toRadians(5));

  /** Share of the surface that the walls must have; a bend or a tee has less along any axis. */
  private static final double MOST = 0.6;

  /** Share of flat walls that must stand at right angles to each other. */
  private static final double SQUARE = 0.95;

  /** Share of the walls that either pair of sides has at least. */
  private static final double LEAST_SIDE = 0.02;

  /** Share of a pair of sides that is drawn at least; a disk lies in a box without filling it. */
  private static final double LEAST_DRAWN = 0.4;

  /** Corners of a round wall leave no wider gap, seen from the axis: a hexagon has 60 degrees. */
  private static final double LARGEST_GAP_RAD = Math.toRadians(65);

  /** Corners nearer to the axis than this, over the farthest, are those of the bore. */
  private static final double OUTSIDE = 0.97;

  /** Root of the mean square by which corners of a plane cut lie off it. */
  private static final double IN_PLANE_M = 1e-4;

  private final Mesh mesh;
  private final MeshTopology topology;

  private WallFit(Mesh mesh, MeshTopology topology) {
    this.mesh = mesh;
    this.topology = topology;
  }

  /**
   * Two ends where the walls begin and stop; empty if the body is no straight one.
   *
   * @param flat true if the walls may be flat ones at right angles too
   */
  static List<Found> ends(Mesh mesh, MeshTopology topology, boolean flat) {
    return new WallFit(mesh, topology).find(flat);
  }

  private List<Found> find(boolean flat) {
    Vec best = null;
    double most = MOST * topology.areaM2();
    for (Vec axis : NormalSpread.axes(mesh, topology)) {
      double walls = walls(axis).stream().mapToDouble(topology::area).sum();
      if (walls > most) {
        most = walls;
        best = axis;
      }
    }
    if (best == null) {
      return List.of();
    }
    // four corners lie on a circle, so flat walls are looked for first
    List<Found> square = flat ? alongFlat(best) : List.of();
    return square.isEmpty() ? along(alongWalls(best)) : square;
  }

  /** Ends that are cut at a slant lean the axis; the walls alone do not. */
  private Vec alongWalls(Vec axis) {
    Vec nearest = axis;
    double most = 0;
    for (Vec other : NormalSpread.axes(topology, walls(axis))) {
      double cosine = other.dot(axis);
      nearest = Math.abs(cosine) > most ? other.times(Math.signum(cosine)) : nearest;
      most = Math.max(most, Math.abs(cosine));
    }
    return nearest;
  }

  private List<Integer> walls(Vec axis) {
    List<Integer> walls = new ArrayList<>();
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (topology.area(face) > 0 && Math.abs(topology.normal(face).dot(axis)) < LEAN) {
        walls.add(face);
      }
    }
    return walls;
  }

  private List<Found> along(Vec axis) {
    List<Vec> corners =
        walls(axis).stream()
            .flatMap(face -> mesh.faces().get(face).loops().stream())
            .flatMap(loop -> mesh.points(loop).stream())
            .distinct()
            .toList();
    Outline all = round(corners, Vec.mean(corners), axis, 0);
    Vec middle = all == null ? middle(corners, axis) : all.centre();
    double farthest = corners.stream().mapToDouble(p -> offM(p, middle, axis)).max().orElse(0);
    Outline outside = round(corners, middle, axis, OUTSIDE * farthest);
    if (outside == null || outside.kind() != Outline.Kind.ROUND) {
      return List.of();
    }
    List<Vec> rims =
        corners.stream().filter(p -> offM(p, middle, axis) >= OUTSIDE * farthest).toList();
    double from = atM(corners, rims, outside, axis.times(-1));
    double to = atM(corners, rims, outside, axis);
    Vec foot = outside.centre().across(axis);
    List<Vec> ring = ring(corners, middle, axis, OUTSIDE * farthest);
    if (!isAllRound(ring, foot)) {
      return List.of();
    }
    return List.of(
        new Found(outside.at(foot.plus(axis.times(-from))), axis.times(-1), ring),
        new Found(outside.at(foot.plus(axis.times(to))), axis, ring));
  }

  /**
   * How far a wall reaches one way. Where its outermost corners of that half lie in one plane that
   * leans, it is cut at a slant, and the plane meets the axis there.
   */
  private double atM(List<Vec> corners, List<Vec> rims, Outline outside, Vec way) {
    double reached = corners.stream().mapToDouble(way::dot).max().orElse(0);
    double most = rims.stream().mapToDouble(way::dot).max().orElse(0);
    double least = rims.stream().mapToDouble(way::dot).min().orElse(0);
    PlaneFit fit = new PlaneFit(outside.centre(), way);
    for (Vec corner : rims) {
      if (corner.dot(way) > (most + least) / 2) {
        fit.add(corner);
      }
    }
    PlaneFit.Fitted plane = fit.plane();
    boolean cut =
        reached - most < EndFinder.SAME_PLANE_M
            && plane.meanOffM() < Math.max(IN_PLANE_M, mesh.stepM());
    Vec foot = outside.centre().across(way);
    return cut ? plane.middle().minus(foot).dot(plane.normal()) / way.dot(plane.normal()) : reached;
  }

  /** Edges of a box lie on a circle too, each at both ends, but they are few. */
  private static boolean isAllRound(List<Vec> ring, Vec centre) {
    Vec last = ring.get(ring.size() - 1).minus(centre);
    for (Vec corner : ring) {
      Vec next = corner.minus(centre);
      if (last.angleTo(next) > LARGEST_GAP_RAD) {
        return false;
      }
      last = next;
    }
    return true;
  }

  /** Flat walls at right angles: they reach as far as their corners do. */
  private List<Found> alongFlat(Vec axis) {
    List<Integer> walls = walls(axis);
    int largest = walls.get(0);
    double all = 0;
    for (int face : walls) {
      largest = topology.area(face) > topology.area(largest) ? face : largest;
      all += topology.area(face);
    }
    Vec u = topology.normal(largest).across(axis).unit();
    Vec v = axis.cross(u);
    double square = 0;
    double alongU = 0;
    for (int face : walls) {
      double toU = Math.abs(topology.normal(face).dot(u));
      double toV = Math.abs(topology.normal(face).dot(v));
      square += Math.max(toU, toV) > Math.cos(Math.asin(LEAN)) ? topology.area(face) : 0;
      alongU += toU > toV ? topology.area(face) : 0;
    }
    boolean fourWalls = alongU > LEAST_SIDE * all && alongU < (1 - LEAST_SIDE) * all;
    if (square < SQUARE * all || !fourWalls) {
      return List.of();
    }
    List<Vec> corners =
        walls.stream()
            .flatMap(face -> mesh.faces().get(face).loops().stream())
            .flatMap(loop -> mesh.points(loop).stream())
            .toList();
    Vec middle = middle(corners, axis, u);
    double halfU = half(corners, u);
    double halfV = half(corners, v);
    Outline outline = new Outline(Outline.Kind.RECTANGULAR, middle, u.times(halfU), v.times(halfV));
    double from = corners.stream().mapToDouble(axis::dot).min().orElse(0);
    double to = corners.stream().mapToDouble(axis::dot).max().orElse(0);
    double lengthM = to - from;
    if (alongU < LEAST_DRAWN * 4 * halfV * lengthM
        || all - alongU < LEAST_DRAWN * 4 * halfU * lengthM) {
      return List.of();
    }
    return List.of(
        new Found(outline.at(middle.plus(axis.times(from))), axis.times(-1), corners),
        new Found(outline.at(middle.plus(axis.times(to))), axis, corners));
  }

  private static double half(List<Vec> corners, Vec side) {
    double least = corners.stream().mapToDouble(side::dot).min().orElse(0);
    double most = corners.stream().mapToDouble(side::dot).max().orElse(0);
    return (most - least) / 2;
  }

  /** Middle between the outermost corners in two directions across the axis. */
  private static Vec middle(List<Vec> corners, Vec axis) {
    return middle(corners, axis, axis.anyNormal());
  }

  private static Vec middle(List<Vec> corners, Vec axis, Vec u) {
    Vec sum = Vec.ZERO;
    for (Vec side : List.of(u, axis.cross(u))) {
      double least = corners.stream().mapToDouble(side::dot).min().orElse(0);
      double most = corners.stream().mapToDouble(side::dot).max().orElse(0);
      sum = sum.plus(side.times((least + most) / 2));
    }
    return sum;
  }

  private static double offM(Vec corner, Vec middle, Vec axis) {
    return corner.minus(middle).across(axis).norm();
  }

  private static @Nullable Outline round(List<Vec> corners, Vec middle, Vec axis, double fromM) {
    return OutlineFit.fit(ring(corners, middle, axis, fromM));
  }

  /** The corners as the axis sees them, in their order around it. */
  private static List<Vec> ring(List<Vec> corners, Vec middle, Vec axis, double fromM) {
    Vec u = axis.anyNormal();
    Vec v = axis.cross(u);
    Vec centre = middle.across(axis);
    return corners.stream()
        .filter(p -> offM(p, middle, axis) >= fromM)
        .map(p -> p.across(axis))
        .sorted(
            Comparator.comparingDouble(
                p -> Math.atan2(p.minus(centre).dot(v), p.minus(centre).dot(u))))
        .toList();
  }
}
