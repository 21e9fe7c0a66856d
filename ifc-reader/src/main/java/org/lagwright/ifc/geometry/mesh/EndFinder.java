package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
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

  /** Cosine of 25 degrees: faces whose normals lie nearer to an axis are plates across it. */
  private static final double WALL = 0.9;

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

  private boolean standsBack;

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
    for (Found end : CoaxialEnds.outermost(oneSize ? all : withoutDetails(all), oneSize)) {
      if (!runsIntoBody(end)) {
        ends.add(end);
      }
    }
    standsBack = backs.areAmong(ends);
    return backs.takenOff(ends);
  }

  /** True if one of the ends that were found last is the back of a flange whose front is torn. */
  boolean standsBack() {
    return standsBack;
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
      backs.add(end, outer, hole);
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

  /** True if a ray out of the end, a little off its centre, meets a face. */
  private boolean runsIntoBody(Found end) {
    return new MeshRay(nearCentre(end), end.outward())
        .meets(mesh, topology, Double.POSITIVE_INFINITY, 2);
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
        return new MeshRay(nearCentre(a), along)
            .meets(mesh, topology, between.norm() - SAME_PLANE_M, WALL);
      }
    }
    return false;
  }

  private static Vec nearCentre(Found end) {
    Vec off = end.outline().u().times(0.13).plus(end.outline().v().times(0.07));
    return end.outline().centre().plus(off);
  }
}
