package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.MeshTopology.Edge;

/**
 * Sews a mesh along its seams. Some write faces that are no wider than a line, which have no plane,
 * and faces that have a corner in the middle of their neighbour's edge, so that both seem open
 * there. The faces without width are left out, and corners on open edges are put into them.
 */
final class Seams {

  /** Faces of this area and more are wide enough whatever their form, square metres. */
  private static final double WIDE_M2 = 1e-5;

  /** Open edges looked at, so that machines of loose faces do not take long. */
  private static final int MOST_EDGES = 20_000;

  private final Mesh mesh;
  private final List<Mesh.Face> faces = new ArrayList<>();
  private final double withinM;

  /** The corners at open edges by one of their coordinates, and these. */
  private int[] corners = {};

  private double[] places = {};

  private Vec along = Vec.X;

  private Seams(Mesh mesh) {
    this.mesh = mesh;
    this.withinM = Math.max(Vec.WELD_M, mesh.stepM());
  }

  /** The mesh itself if there is nothing to sew. */
  static Mesh sewn(Mesh mesh, MeshTopology topology) {
    return new Seams(mesh).sewn(topology);
  }

  private Mesh sewn(MeshTopology topology) {
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (!isLine(face, topology)) {
        faces.add(mesh.faces().get(face));
      }
    }
    if (faces.isEmpty()) {
      return mesh;
    }
    boolean whole = faces.size() == mesh.faces().size();
    Mesh wide = whole ? mesh : ofFaces();
    List<Edge> open = (whole ? topology : new MeshTopology(wide)).openEdges();
    boolean split = !open.isEmpty() && open.size() <= MOST_EDGES && split(open);
    return split ? ofFaces() : wide;
  }

  private Mesh ofFaces() {
    return new Mesh(mesh.origin(), mesh.vertices(), List.copyOf(faces), mesh.rounding());
  }

  private boolean isLine(int face, MeshTopology topology) {
    double areaM2 = topology.area(face);
    if (areaM2 >= WIDE_M2 || !mesh.faces().get(face).plane()) {
      return false;
    }
    double longestM = 0;
    int[] loop = mesh.faces().get(face).loops().get(0);
    for (int i = 0; i < loop.length; i++) {
      Vec next = mesh.vertices().get(loop[(i + 1) % loop.length]);
      longestM = Math.max(longestM, mesh.vertices().get(loop[i]).distanceTo(next));
    }
    return 2 * areaM2 < withinM * longestM;
  }

  /** Puts corners into the edges on which they lie; true if there was any. */
  private boolean split(List<Edge> open) {
    sort(open);
    Map<Edge, int[]> between = new HashMap<>();
    for (Edge edge : open) {
      int[] on = on(edge);
      if (on.length > 0) {
        between.put(edge, on);
      }
    }
    for (int face = 0; !between.isEmpty() && face < faces.size(); face++) {
      Mesh.Face old = faces.get(face);
      List<int[]> loops = new ArrayList<>(old.loops().size());
      for (int[] loop : old.loops()) {
        loops.add(split(loop, between));
      }
      if (old.plane() && !loops.equals(old.loops())) {
        faces.set(face, new Mesh.Face(loops, true, old.patch(), old.curved()));
      }
    }
    return !between.isEmpty();
  }

  private static int[] split(int[] loop, Map<Edge, int[]> between) {
    List<Integer> corners = new ArrayList<>(loop.length + 4);
    for (int i = 0; i < loop.length; i++) {
      int next = loop[(i + 1) % loop.length];
      int[] on = between.getOrDefault(Edge.of(loop[i], next), new int[0]);
      corners.add(loop[i]);
      for (int k = 0; k < on.length; k++) {
        corners.add(on[loop[i] < next ? k : on.length - 1 - k]);
      }
    }
    return corners.size() == loop.length
        ? loop
        : corners.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The corners at open edges along the coordinate axis on which they are spread most. */
  private void sort(List<Edge> open) {
    Set<Integer> all = new LinkedHashSet<>();
    for (Edge edge : open) {
      all.add(edge.a());
      all.add(edge.b());
    }
    double widestM = 0;
    for (Vec axis : List.of(Vec.X, Vec.Y, Vec.Z)) {
      double leastM = Double.MAX_VALUE;
      double mostM = -Double.MAX_VALUE;
      for (int corner : all) {
        leastM = Math.min(leastM, place(corner, axis));
        mostM = Math.max(mostM, place(corner, axis));
      }
      along = mostM - leastM > widestM ? axis : along;
      widestM = Math.max(widestM, mostM - leastM);
    }
    List<Integer> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(corner -> place(corner, along)));
    corners = sorted.stream().mapToInt(Integer::intValue).toArray();
    places = sorted.stream().mapToDouble(corner -> place(corner, along)).toArray();
  }

  private double place(int corner, Vec axis) {
    return mesh.vertices().get(corner).dot(axis);
  }

  /** The corners on an edge between its own, from the one with the smaller number on. */
  private int[] on(Edge edge) {
    Vec from = mesh.vertices().get(edge.a());
    Vec to = mesh.vertices().get(edge.b());
    double lengthM = to.distanceTo(from);
    Vec unit = to.minus(from).unit();
    double fromM = Math.min(from.dot(along), to.dot(along)) - withinM;
    double toM = Math.max(from.dot(along), to.dot(along)) + withinM;
    int first = Arrays.binarySearch(places, fromM);
    List<Integer> on = new ArrayList<>(0);
    for (int i = first < 0 ? -first - 1 : first; i < places.length && places[i] <= toM; i++) {
      Vec off = mesh.vertices().get(corners[i]).minus(from);
      double atM = off.dot(unit);
      if (atM > withinM && atM < lengthM - withinM && off.across(unit).norm() < withinM) {
        on.add(corners[i]);
      }
    }
    on.sort(Comparator.comparingDouble(c -> mesh.vertices().get(c).minus(from).dot(unit)));
    return on.stream().mapToInt(Integer::intValue).toArray();
  }
}
