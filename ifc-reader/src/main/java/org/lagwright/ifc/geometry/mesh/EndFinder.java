package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;

/**
 * Finds where a mesh ends: plane patches bounded by a circle, rectangle or oval, and open edges of
 * that shape. Sleeves, flanges and the inner ends of branches are told apart from real ends.
 */
public final class EndFinder {

  /** Cosine of the least angle between an end and the wall next to it: 35 degrees for round. */
  private static final double ROUND_SHARP = 0.82;

  /** 50 degrees for rectangles: mitred walls meet at 45. */
  private static final double RECTANGULAR_SHARP = 0.64;

  /** 40 degrees: the slanted side of a shoe meets the mouth of its branch at 45. */
  private static final double SLANTED_SHARP = 0.766;

  /** 25 degrees: short of both by more than a fitted outline may lean. */
  private static final double SURELY_SMOOTH = 0.906;

  /** Faces of a patch that turn but little from the first to the last, each from its next. */
  private static final int FEW = 4;

  /** Ends whose axes differ by less than 3 degrees and a twentieth of the radius are coaxial. */
  private static final double COAXIAL_RAD = Math.toRadians(3);

  /** Thickness of a square flange over the diameter of its pipe. */
  private static final double FLANGE = 0.2;

  private static final double COAXIAL_SHIFT = 0.05;

  /** Cosine of 25 degrees: faces whose normals lie nearer to an axis are plates across it. */
  private static final double WALL = 0.9;

  /** Ends looked at, so that machines of many parts do not take long. */
  private static final int MAX_ENDS = 64;

  /**
   * No fitting or valve that is insulated has an end as small as this: what is drawn so on its body
   * is a screw, a slot, a chamfer or the edge of a sheet.
   */
  private static final double SMALLEST_M = 0.004;

  /** Outlines at one place along an axis, such as the outside and the bore of one end. */
  public static final double SAME_PLANE_M = 1e-3;

  /**
   * An end of the mesh in local coordinates, with the corners its outline was fitted to.
   *
   * @param isMouth true for an open end whose rim lies in a plane, and for the rim about the bore
   *     of a rectangular duct
   */
  record Found(Outline outline, Vec outward, List<Vec> loop, boolean isMouth) {

    Found(Outline outline, Vec outward, List<Vec> loop) {
      this(outline, outward, loop, false);
    }

    double along(Vec direction) {
      return outline.centre().dot(direction);
    }

    boolean isRound() {
      return outline.kind() == Outline.Kind.ROUND;
    }

    boolean isRectangular() {
      return outline.kind() == Outline.Kind.RECTANGULAR;
    }

    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Found o
          && outline.equals(o.outline)
          && outward.equals(o.outward)
          && loop.equals(o.loop)
          && isMouth == o.isMouth;
    }

    @Override
    public int hashCode() {
      return (outline.hashCode() * 31 + outward.hashCode()) * 31 + loop.hashCode();
    }
  }

  private final Mesh mesh;
  private final MeshTopology topology;

  /** Of each connected piece, by its number. */
  private final @Nullable Vec[] centroids;

  EndFinder(Mesh mesh, MeshTopology topology) {
    this.mesh = mesh;
    this.topology = topology;
    double[] areas = new double[mesh.vertices().size()];
    centroids = new Vec[areas.length];
    for (int face = 0; face < mesh.faces().size(); face++) {
      double area = topology.area(face);
      int piece = topology.piece(face);
      Vec middle = Vec.mean(mesh.points(mesh.faces().get(face).loops().get(0))).times(area);
      Vec sum = centroids[piece];
      centroids[piece] = sum == null ? middle : sum.plus(middle);
      areas[piece] += area;
    }
    for (int piece = 0; piece < areas.length; piece++) {
      Vec sum = centroids[piece];
      centroids[piece] = sum == null ? null : sum.times(1 / areas[piece]);
    }
  }

  /**
   * The ends, each once, none inside the body.
   *
   * @param oneSize true if the body has one size from end to end, whatever is set on its ends
   */
  List<Found> find(boolean oneSize) {
    return find(oneSize, RECTANGULAR_SHARP);
  }

  private static List<Found> withoutDetails(List<Found> all) {
    List<Found> left = new ArrayList<>(all.size());
    for (Found end : all) {
      if (Math.min(end.outline.u().norm(), end.outline.v().norm()) >= SMALLEST_M / 2) {
        left.add(end);
      }
    }
    return left;
  }

  /** The same with flat sides next to slanted ones: walls of mitres, or mouths of shoes. */
  List<Found> findSlanted(boolean oneSize) {
    return find(oneSize, SLANTED_SHARP);
  }

  private List<Found> find(boolean oneSize, double rectangularSharp) {
    List<Found> all = new ArrayList<>();
    FlangeBacks backs = new FlangeBacks(mesh, topology);
    for (Map.Entry<Integer, List<Integer>> patch : topology.patches().entrySet()) {
      addPatch(patch.getKey(), patch.getValue(), rectangularSharp, all, backs);
    }
    for (int[] loop : MeshTopology.loops(topology.openEdges())) {
      List<Vec> points = mesh.points(loop);
      Outline outline = OutlineFit.fit(points);
      if (outline != null) {
        int piece = topology.pieceOfVertex(loop[0]);
        all.add(outward(outline, piece, points, isInPlane(points, outline)));
      }
    }
    List<Found> ends = new ArrayList<>();
    for (Found end : outermost(oneSize ? all : withoutDetails(all), oneSize)) {
      if (!runsIntoBody(end)) {
        ends.add(end);
      }
    }
    return backs.takenOff(ends);
  }

  /** False for the rim of a tray or a rail, which runs along its turned up edges. */
  private static boolean isInPlane(List<Vec> rim, Outline outline) {
    for (Vec corner : rim) {
      if (Math.abs(corner.minus(outline.centre()).dot(outline.normal())) > SAME_PLANE_M) {
        return false;
      }
    }
    return true;
  }

  private void addPatch(
      int patch,
      List<Integer> faces,
      double rectangularSharp,
      List<Found> into,
      FlangeBacks backs) {
    if (faces.size() == 1 && isWall(faces.get(0), patch)) {
      return;
    }
    List<MeshTopology.Edge> boundary = topology.boundary(faces);
    // the normal of few faces is that of each of them
    if (faces.size() <= FEW
        && !isSharp(boundary, patch, topology.normal(faces.get(0)), SURELY_SMOOTH)) {
      return;
    }
    List<int[]> loops = MeshTopology.loops(boundary);
    int[] outer = largest(loops);
    Outline outline = outer == null ? null : OutlineFit.fit(mesh.points(outer));
    if (outer == null || outline == null) {
      return;
    }
    double sharp = outline.kind() == Outline.Kind.RECTANGULAR ? rectangularSharp : ROUND_SHARP;
    if (!isSharp(boundary, patch, outline.normal(), sharp)) {
      return;
    }
    int[] hole = loops.size() == 2 ? loops.get(loops.get(0) == outer ? 1 : 0) : null;
    boolean rim = hole != null && isRim(outline, hole);
    Found end = outward(outline, topology.piece(faces.get(0)), mesh.points(outer), rim);
    into.add(end);
    if (hole != null) {
      backs.add(end, hole);
    }
  }

  private boolean isRim(Outline outline, int[] inner) {
    Outline bore =
        outline.kind() == Outline.Kind.RECTANGULAR ? OutlineFit.fit(mesh.points(inner)) : null;
    return bore != null && outline.isBoredBy(bore);
  }

  /**
   * True for a triangle or quadrilateral that turns but little into the face next to it. Of round
   * bodies these are most faces by far, and no outline need be fitted to them.
   */
  private boolean isWall(int face, int patch) {
    List<int[]> loops = mesh.faces().get(face).loops();
    int[] outer = loops.get(0);
    if (loops.size() > 1 || outer.length > 4) {
      return false;
    }
    Vec normal = topology.normal(face);
    for (int i = 0; i < outer.length; i++) {
      int next = outer[(i + 1) % outer.length];
      if (!topology.isSharp(outer[i], next, patch, normal, SURELY_SMOOTH)) {
        return true;
      }
    }
    return false;
  }

  /** True if all faces next to a patch are turned away from it by more than the angle. */
  private boolean isSharp(List<MeshTopology.Edge> boundary, int patch, Vec normal, double cosine) {
    for (MeshTopology.Edge edge : boundary) {
      if (!topology.isSharp(edge.a(), edge.b(), patch, normal, cosine)) {
        return false;
      }
    }
    return true;
  }

  private int @Nullable [] largest(List<int[]> loops) {
    int[] largest = null;
    double largestM2 = 0;
    for (int[] loop : loops) {
      List<Vec> points = mesh.points(loop);
      double areaM2 = OutlineFit.areaNormal(points, points.get(0)).norm();
      if (largest == null || areaM2 > largestM2) {
        largest = loop;
        largestM2 = areaM2;
      }
    }
    return largest;
  }

  /** Faces may be turned inside out, so the outside is where the piece's centroid is not. */
  private Found outward(Outline outline, int piece, List<Vec> loop, boolean isMouth) {
    Vec normal = outline.normal();
    Vec known = centroids[piece];
    Vec centroid = known == null ? Vec.ZERO : known;
    double side = outline.centre().minus(centroid).dot(normal);
    boolean round = outline.kind() == Outline.Kind.ROUND;
    List<Vec> corners = round ? OutlineFit.turning(loop) : loop;
    return new Found(outline, side < 0 ? normal.times(-1) : normal, corners, isMouth);
  }

  /**
   * Of coaxial ends the position of the outermost and the size of the smallest; but the steps of a
   * reducer are no ends.
   */
  private static List<Found> outermost(List<Found> all, boolean oneSize) {
    List<List<Found>> clusters = new ArrayList<>();
    List<Found> byAxisSize = new ArrayList<>(all);
    byAxisSize.sort(new LargestFirst());
    for (Found end : byAxisSize) {
      List<Found> home = null;
      for (List<Found> cluster : clusters) {
        home = home == null && coaxial(cluster.get(0), end) ? cluster : home;
      }
      if (home == null) {
        clusters.add(new ArrayList<>(List.of(end)));
      } else {
        home.add(end);
      }
    }
    for (int i = 0; !oneSize && i < clusters.size() && i < MAX_ENDS; i++) {
      for (int j = 0; j < i; j++) {
        Steps.remove(clusters.get(j), clusters.get(i), clusters.size() == 2);
      }
    }
    // largest first; nothing with more ends is a pipe or a duct
    List<Found> outermost = new ArrayList<>();
    for (List<Found> cluster : clusters.subList(0, Math.min(MAX_ENDS, clusters.size()))) {
      outermost.add(merged(cluster));
    }
    return outermost;
  }

  private static final class LargestFirst implements Comparator<Found> {
    @Override
    public int compare(Found a, Found b) {
      return Double.compare(-a.outline().largestHalfM(), -b.outline().largestHalfM());
    }
  }

  private static boolean coaxial(Found a, Found b) {
    return a.outward().angleTo(b.outward()) < COAXIAL_RAD && onOneAxis(a, b) && areOneEnd(a, b);
  }

  /** A flat side may lie over the foot of a round branch; only a flange is as near as this. */
  private static boolean areOneEnd(Found a, Found b) {
    double apartM = Math.abs(b.along(a.outward()) - a.along(a.outward()));
    double halfM = Math.min(a.outline().largestHalfM(), b.outline().largestHalfM());
    return a.isRectangular() == b.isRectangular() || apartM < FLANGE * 2 * halfM;
  }

  /** True if the axis of one end passes through the middle of the other. */
  static boolean onOneAxis(Found a, Found b) {
    Vec between = b.outline().centre().minus(a.outline().centre());
    double size = Math.min(a.outline().largestHalfM(), b.outline().largestHalfM());
    double turn = a.outward().angleTo(b.outward());
    return Math.min(turn, Math.PI - turn) < COAXIAL_RAD
        && between.across(a.outward()).norm() < Math.max(SAME_PLANE_M, COAXIAL_SHIFT * size);
  }

  private static Found merged(List<Found> cluster) {
    Vec direction = cluster.get(0).outward();
    List<Found> perPlane = new ArrayList<>();
    double outermost = Double.NEGATIVE_INFINITY;
    for (Found end : cluster) {
      outermost = Math.max(outermost, end.along(direction));
      boolean bore = false;
      for (Found outside : perPlane) {
        bore |= Math.abs(outside.along(direction) - end.along(direction)) < SAME_PLANE_M;
      }
      if (!bore) {
        perPlane.add(end);
      }
    }
    Found smallest = perPlane.get(perPlane.size() - 1);
    double shift = outermost - smallest.along(direction);
    Vec centre = smallest.outline().centre().plus(direction.times(shift));
    return new Found(
        smallest.outline().at(centre), smallest.outward(), smallest.loop(), smallest.isMouth());
  }

  /** True if a ray out of the end, a little off its centre, meets a face. */
  private boolean runsIntoBody(Found end) {
    return isMet(nearCentre(end), end.outward(), Double.POSITIVE_INFINITY, 2);
  }

  /**
   * True if the body strays from the line between two ends, so that its wall crosses it: a curved
   * piece that comes back to its axis. Flanges and what is set on a pipe reach beyond it too, but
   * leave its middle free; plates across it are no walls.
   */
  boolean isCurvedBetween(Found a, Found b) {
    Vec between = b.outline().centre().minus(a.outline().centre());
    Vec along = between.unit();
    double besideM =
        BendFit.OUTSIDE * Math.max(a.outline().largestHalfM(), b.outline().largestHalfM());
    for (Vec corner : mesh.vertices()) {
      if (corner.minus(a.outline().centre()).across(along).norm() > besideM) {
        return isMet(nearCentre(a), along, between.norm() - SAME_PLANE_M, WALL);
      }
    }
    return false;
  }

  private static Vec nearCentre(Found end) {
    Vec off = end.outline().u().times(0.13).plus(end.outline().v().times(0.07));
    return end.outline().centre().plus(off);
  }

  /** True if a ray meets a plane face that is no steeper to it, cosine of its normal, and near. */
  private boolean isMet(Vec from, Vec direction, double withinM, double mostSlope) {
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (mesh.faces().get(face).plane() && hits(face, from, direction, withinM, mostSlope)) {
        return true;
      }
    }
    return false;
  }

  private boolean hits(int face, Vec from, Vec direction, double withinM, double mostSlope) {
    Vec normal = topology.normal(face);
    double slope = normal.dot(direction);
    if (Math.abs(slope) < 1e-6 || Math.abs(slope) > mostSlope) {
      return false;
    }
    int[] outer = mesh.faces().get(face).loops().get(0);
    double at = mesh.vertices().get(outer[0]).minus(from).dot(normal) / slope;
    return at > SAME_PLANE_M
        && at < withinM
        && contains(face, from.plus(direction.times(at)), normal);
  }

  /** Crossing test over all loops of a face, in the plane of its normal. */
  private boolean contains(int face, Vec point, Vec normal) {
    Vec u = normal.anyNormal();
    Vec v = normal.cross(u);
    boolean inside = false;
    for (int[] loop : mesh.faces().get(face).loops()) {
      for (int i = 0; i < loop.length; i++) {
        Vec a = mesh.vertices().get(loop[i]).minus(point);
        Vec b = mesh.vertices().get(loop[(i + 1) % loop.length]).minus(point);
        boolean crosses = a.dot(v) > 0 != b.dot(v) > 0;
        double share = a.dot(v) / (a.dot(v) - b.dot(v));
        if (crosses && a.dot(u) + share * (b.dot(u) - a.dot(u)) > 0) {
          inside = !inside;
        }
      }
    }
    return inside;
  }
}
