package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.surface.Torus;
import org.lagwright.ifc.geometry.surface.TorusFit;
import org.lagwright.ifc.geometry.surface.TorusFit.Sample;

/**
 * Angle, radius and section of a round bend from its walls, for bodies whose ends are torn, welded
 * shut, pointed, missing or flanged. The walls lie on a torus, and reach as far round it as their
 * corners do. The spread of their normals must agree with that: over a turn {@code a} in {@code m}
 * steps its shares along the middle radius and the middle tangent differ by {@code sin a / (m sin(a
 * / m))} of their sum.
 */
final class BendWalls {

  /** Corners are on the torus within this share of the tube's radius. */
  private static final double ON_SURFACE = 0.02;

  /** Sine by which the normal of a wall may lean along the centre line: coarse triangles do. */
  private static final double LEAN = Math.sin(Math.toRadians(20));

  /** Share of the whole surface that the walls must have; short bends are mostly ends. */
  private static final double LEAST = 0.2;

  private static final double LEAST_RAD = Math.toRadians(5);
  private static final double MOST_RAD = Math.toRadians(190);

  /**
   * Difference of the angle by the normals from that by the corners, over it: torn ends reach
   * further than the mean of their walls.
   */
  private static final double SPREAD = 0.35;

  /** Directions round the tube: nearer ones are one corner of its section. */
  private static final double ONE_CORNER_RAD = Math.toRadians(2);

  private static final int LEAST_CORNERS = 6;

  /** Two steps of a tube of six corners. */
  private static final int LEAST_FACES = 12;

  private static final double LARGEST_GAP_RAD = Math.toRadians(100);

  /** Faces and corners that the torus is fitted to, so that large meshes take no longer. */
  private static final int MOST_SAMPLES = 200;

  /**
   * What the walls tell, in local coordinates of the mesh.
   *
   * @param ends where the arc begins and stops; as many loop points as its section has corners
   * @param spreadRad the angle by the spread of the normals
   */
  record Bend(List<Found> ends, double radiusM, double angleRad, double spreadRad, int faces) {}

  private final Mesh mesh;
  private final MeshTopology topology;
  private final Torus torus;
  private final Vec middle;
  private final List<Integer> walls = new ArrayList<>();

  private BendWalls(Mesh mesh, MeshTopology topology, Torus torus) {
    this.mesh = mesh;
    this.topology = topology;
    this.torus = torus;
    Vec sum = Vec.ZERO;
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (topology.area(face) > 0 && isWall(face)) {
        walls.add(face);
        sum = sum.plus(centroid(mesh, face).minus(torus.centre()).times(topology.area(face)));
      }
    }
    this.middle = sum.across(torus.axis()).unit();
  }

  /** The bend, null if most walls lie on no torus or go nearly all round it. */
  static @Nullable Bend of(Mesh mesh, MeshTopology topology) {
    List<Vec> axes = NormalSpread.axes(mesh, topology);
    List<Sample> faces = faces(mesh, topology);
    if (axes.isEmpty() || faces.size() < LEAST_FACES) {
      return null;
    }
    Torus torus = TorusFit.of(axes, some(faces), some(corners(mesh, topology)));
    return torus == null ? null : new BendWalls(mesh, topology, torus).bend();
  }

  private static List<Sample> faces(Mesh mesh, MeshTopology topology) {
    List<Sample> faces = new ArrayList<>();
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (topology.area(face) > 0) {
        faces.add(new Sample(centroid(mesh, face), topology.normal(face), topology.area(face)));
      }
    }
    return faces;
  }

  private static List<Sample> corners(Mesh mesh, MeshTopology topology) {
    Map<Integer, Double> areas = new HashMap<>();
    for (int face = 0; face < mesh.faces().size(); face++) {
      int[] loop = mesh.faces().get(face).loops().get(0);
      for (int corner : loop) {
        areas.merge(corner, topology.area(face) / loop.length, Double::sum);
      }
    }
    List<Sample> corners = new ArrayList<>();
    areas.forEach(
        (corner, area) -> corners.add(new Sample(mesh.vertices().get(corner), Vec.ZERO, area)));
    return corners;
  }

  /** Drawn at random, as every so many of a regular mesh would all lie on a few lines of it. */
  private static List<Sample> some(List<Sample> all) {
    List<Sample> some = new ArrayList<>(all);
    if (all.size() > MOST_SAMPLES) {
      Collections.shuffle(some, new Random(all.size()));
    }
    return some.subList(0, Math.min(all.size(), MOST_SAMPLES));
  }

  private static Vec centroid(Mesh mesh, int face) {
    return Vec.mean(mesh.points(mesh.faces().get(face).loops().get(0)));
  }

  private boolean isWall(int face) {
    for (Vec corner : mesh.points(mesh.faces().get(face).loops().get(0))) {
      if (Math.abs(torus.off(corner)) > ON_SURFACE * torus.minor()) {
        return false;
      }
    }
    return Math.abs(torus.along(topology.normal(face), centroid(mesh, face))) < LEAN;
  }

  private @Nullable Bend bend() {
    List<Vec> corners =
        walls.stream()
            .flatMap(face -> mesh.points(mesh.faces().get(face).loops().get(0)).stream())
            .distinct()
            .toList();
    double[] along = corners.stream().mapToDouble(this::azimuth).sorted().toArray();
    double[] round =
        round(
            corners.stream()
                .map(torus::tube)
                .mapToDouble(tube -> Math.atan2(tube.y(), tube.x()))
                .sorted()
                .toArray());
    if (along.length == 0 || middle.isTiny() || !isAllRound(round)) {
      return null;
    }
    double from = along[0];
    double turn = along[along.length - 1] - from;
    double spread = spread(from + turn / 2, distinct(along, 0.02 * turn).length - 1);
    boolean agrees = Math.abs(spread - turn) < SPREAD * turn;
    if (turn < LEAST_RAD || turn > MOST_RAD || !agrees || !isMost(from, turn)) {
      return null;
    }
    List<Found> ends = List.of(end(from, -1, round), end(from + turn, 1, round));
    return new Bend(ends, torus.major(), turn, spread, walls.size());
  }

  /** Angle about the axis of the torus from the middle of the walls. */
  private double azimuth(Vec point) {
    Vec q = point.minus(torus.centre());
    return Math.atan2(q.dot(torus.axis().cross(middle)), q.dot(middle));
  }

  /** The first of each group of sorted figures that differ by less than a step. */
  private static double[] distinct(double[] sorted, double step) {
    double[] distinct = new double[sorted.length];
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (double figure : sorted) {
      if (figure - last > step) {
        distinct[count++] = figure;
      }
      last = figure;
    }
    return Arrays.copyOf(distinct, count);
  }

  /** Angles round the tube at which its section has corners; the last may be the first again. */
  private static double[] round(double[] sorted) {
    double[] round = distinct(sorted, ONE_CORNER_RAD);
    int last = sorted.length - 1;
    boolean again = last > 0 && sorted[0] + 2 * Math.PI - sorted[last] < ONE_CORNER_RAD;
    return again ? Arrays.copyOf(round, round.length - 1) : round;
  }

  private static boolean isAllRound(double[] round) {
    if (round.length < LEAST_CORNERS) {
      return false;
    }
    double gap = round[0] + 2 * Math.PI - round[round.length - 1];
    for (int i = 1; i < round.length; i++) {
      gap = Math.max(gap, round[i] - round[i - 1]);
    }
    return gap < LARGEST_GAP_RAD;
  }

  /** Enough of the whole surface, and more than all else between both ends, as a bore is not. */
  private boolean isMost(double from, double turn) {
    double between = 0;
    for (int face = 0; face < mesh.faces().size(); face++) {
      between += areaBetween(face, from, turn);
    }
    double own = 0;
    double ownBetween = 0;
    for (int face : walls) {
      own += topology.area(face);
      ownBetween += areaBetween(face, from, turn);
    }
    return own > LEAST * topology.areaM2() && ownBetween > between / 2;
  }

  /** Area of a face if it lies well between both ends, else 0. */
  private double areaBetween(int face, double from, double turn) {
    double at = azimuth(centroid(mesh, face)) - from;
    return at > 0.05 * turn && at < 0.95 * turn ? topology.area(face) : 0;
  }

  /** The angle over which normals spread as those of the walls do; NaN if none does. */
  private double spread(double middleAt, int steps) {
    Vec radius = middle.turned(torus.axis(), middleAt);
    Vec tangent = torus.axis().cross(radius);
    double alongRadius = 0;
    double alongTangent = 0;
    for (int face : walls) {
      Vec normal = topology.normal(face);
      alongRadius += topology.area(face) * Math.pow(normal.dot(radius), 2);
      alongTangent += topology.area(face) * Math.pow(normal.dot(tangent), 2);
    }
    double share = (alongRadius - alongTangent) / (alongRadius + alongTangent);
    if (steps < 2 || !Double.isFinite(share)) {
      return Double.NaN;
    }
    double low = 0;
    double high = Math.min(4, 3 * steps);
    for (int i = 0; i < 50; i++) {
      double angle = (low + high) / 2;
      boolean less = Math.sin(angle) / (steps * Math.sin(angle / steps)) > share;
      low = less ? angle : low;
      high = less ? high : angle;
    }
    return low;
  }

  private Found end(double azimuth, int sign, double[] round) {
    Vec radius = middle.turned(torus.axis(), azimuth);
    Vec centre = torus.centre().plus(radius.times(torus.major()));
    Vec outward = torus.axis().cross(radius).times(sign);
    List<Vec> loop = new ArrayList<>();
    for (double at : round) {
      Vec off = radius.times(Math.cos(at)).plus(torus.axis().times(Math.sin(at)));
      loop.add(centre.plus(off.times(torus.minor())));
    }
    return new Found(Outline.circle(centre, outward, torus.minor()), outward, loop);
  }
}
