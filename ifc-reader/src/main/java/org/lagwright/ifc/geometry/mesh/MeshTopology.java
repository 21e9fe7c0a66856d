package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.OutlineFit;

/** What hangs together in a mesh: edges, coplanar patches, connected pieces, boundary loops. */
final class MeshTopology {

  /** Faces that turn by less belong to one patch; a 900-gon turns by 0.4 degrees. */
  private static final double COPLANAR = Math.sin(Math.toRadians(0.2));

  /** Holes that are no wider are left where corners were rounded, no face is missing there. */
  private static final double SLIT_M = 5e-4;

  /** An edge by its vertices, the smaller number first. */
  record Edge(int a, int b) {
    static Edge of(int from, int to) {
      return new Edge(Math.min(from, to), Math.max(from, to));
    }

    /** Mixes the bits: the usual sum gives edges of neighbouring vertices one hash. */
    @Override
    public int hashCode() {
      return Long.hashCode((((long) a << 32) | b) * 0x9E3779B97F4A7C15L);
    }

    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Edge o && a == o.a && b == o.b;
    }
  }

  private final Mesh mesh;
  private final Vec[] normals;
  private final double[] areas;
  private final EdgeTable edges = new EdgeTable();
  private final DisjointSets pieces;
  private final DisjointSets patches;

  /** Finds the edges and pieces of a mesh. */
  MeshTopology(Mesh mesh) {
    this.mesh = mesh;
    this.pieces = new DisjointSets(mesh.vertices().size());
    this.patches = new DisjointSets(mesh.faces().size());
    this.normals = new Vec[mesh.faces().size()];
    this.areas = new double[mesh.faces().size()];
    for (int face = 0; face < mesh.faces().size(); face++) {
      index(face);
    }
    joinPatches();
    if (mesh.stepM() > 0) {
      RoundedPatches.join(mesh, this);
    }
  }

  private void index(int face) {
    Vec areaNormal = mesh.areaNormal(mesh.faces().get(face));
    normals[face] = areaNormal.unit();
    areas[face] = areaNormal.norm();
    List<int[]> loops = mesh.faces().get(face).loops();
    for (int[] loop : loops) {
      for (int i = 0; i < loop.length; i++) {
        int next = loop[i + 1 == loop.length ? 0 : i + 1];
        edges.add(loop[i], next, face);
        pieces.join(loop[i], next);
      }
      pieces.join(loop[0], loops.get(0)[0]);
    }
  }

  /** Also across edges of more than two faces, where several bodies touch. */
  private void joinPatches() {
    for (int edge = 0; edge < edges.size(); edge++) {
      for (int one = edges.firstUse(edge); one != EdgeTable.NONE; one = edges.nextUse(one)) {
        for (int two = edges.firstUse(edge); two != EdgeTable.NONE; two = edges.nextUse(two)) {
          joinIfCoplanar(edges.face(one), edges.face(two));
        }
      }
    }
  }

  private void joinIfCoplanar(int a, int b) {
    boolean plane = a < b && mesh.faces().get(a).plane() && mesh.faces().get(b).plane();
    if (plane && normals[a].cross(normals[b]).norm() < COPLANAR) {
      joinPatches(a, b);
    }
  }

  /** Makes the patches of two faces one. */
  void joinPatches(int a, int b) {
    patches.join(a, b);
  }

  Vec normal(int face) {
    return normals[face];
  }

  /** Area of a face in m2. */
  double area(int face) {
    return areas[face];
  }

  /** Area of all faces, square metres. */
  double areaM2() {
    double whole = 0;
    for (double area : areas) {
      whole += area;
    }
    return whole;
  }

  /** Area of some faces, square metres. */
  double areaM2(List<Integer> faces) {
    double sum = 0;
    for (int face : faces) {
      sum += area(face);
    }
    return sum;
  }

  /** Number of the connected piece that a face belongs to. */
  int piece(int face) {
    return pieces.find(mesh.faces().get(face).loops().get(0)[0]);
  }

  int pieceOfVertex(int vertex) {
    return pieces.find(vertex);
  }

  /** Plane patches: their faces by patch number. */
  Map<Integer, List<Integer>> patches() {
    Map<Integer, List<Integer>> byPatch = new LinkedHashMap<>();
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (mesh.faces().get(face).plane() && area(face) > 0) {
        add(face, patches.find(face), byPatch);
      }
    }
    return byPatch;
  }

  /** True if every edge is shared by an even number of faces. */
  boolean isClosed() {
    for (int edge = 0; edge < edges.size(); edge++) {
      if (edges.uses(edge) % 2 != 0) {
        return false;
      }
    }
    return true;
  }

  List<Integer> facesAt(Edge edge) {
    List<Integer> faces = new ArrayList<>(2);
    int number = edges.find(edge.a, edge.b);
    for (int use = edges.firstUse(number); use != EdgeTable.NONE; use = edges.nextUse(use)) {
      faces.add(edges.face(use));
    }
    return faces;
  }

  /** The one face beyond an edge of a face, -1 if there is none or more than one. */
  int across(int face, int a, int b) {
    int edge = edges.find(a, b);
    if (edge == EdgeTable.NONE || edges.uses(edge) != 2) {
      return -1;
    }
    int use = edges.firstUse(edge);
    return edges.face(edges.face(use) == face ? edges.nextUse(use) : use);
  }

  /** Edges that only one face of a patch has. */
  List<Edge> boundary(List<Integer> patch) {
    Set<Edge> once = new HashSet<>();
    List<Edge> inOrder = new ArrayList<>();
    for (int face : patch) {
      for (int[] loop : mesh.faces().get(face).loops()) {
        for (int i = 0; i < loop.length; i++) {
          Edge edge = Edge.of(loop[i], loop[(i + 1) % loop.length]);
          inOrder.add(edge);
          if (!once.add(edge)) {
            once.remove(edge);
          }
        }
      }
    }
    inOrder.retainAll(once);
    return inOrder;
  }

  /** Edges that only one face of the whole mesh has. */
  List<Edge> openEdges() {
    List<Edge> open = new ArrayList<>();
    for (int edge = 0; edge < edges.size(); edge++) {
      if (edges.uses(edge) == 1) {
        open.add(new Edge(edges.a(edge), edges.b(edge)));
      }
    }
    return open;
  }

  /** True if triangles are missing in a wall: open edges of it close to loops of three. */
  boolean hasHoles() {
    for (int[] loop : loops(openEdges())) {
      if (loop.length == 3 && isWide(mesh.points(loop))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isWide(List<Vec> triangle) {
    double areaM2 = OutlineFit.areaNormal(triangle, triangle.get(0)).norm();
    double longestM =
        Math.max(
            triangle.get(0).distanceTo(triangle.get(1)),
            Math.max(
                triangle.get(1).distanceTo(triangle.get(2)),
                triangle.get(2).distanceTo(triangle.get(0))));
    return 2 * areaM2 > SLIT_M * longestM;
  }

  /**
   * True if the faces beyond an edge of a patch are turned away from it by more than the angle
   * whose cosine is given; so is an edge with nothing beyond.
   */
  boolean isSharp(int a, int b, int patch, Vec patchNormal, double cosine) {
    int use = edges.firstUse(edges.find(a, b));
    for (; use != EdgeTable.NONE; use = edges.nextUse(use)) {
      int face = edges.face(use);
      boolean beyond = patches.find(face) != patch && mesh.faces().get(face).plane();
      if (beyond && Math.abs(normals[face].dot(patchNormal)) > cosine) {
        return false;
      }
    }
    return true;
  }

  /** Chains edges to closed loops of vertex numbers; where more than two meet, any way on. */
  static List<int[]> loops(List<Edge> boundary) {
    Map<Integer, List<Edge>> at = new HashMap<>();
    for (Edge edge : boundary) {
      add(edge, edge.a(), at);
      add(edge, edge.b(), at);
    }
    Set<Edge> used = new HashSet<>();
    List<int[]> loops = new ArrayList<>();
    for (Edge first : boundary) {
      if (used.add(first)) {
        List<Integer> loop = follow(first, at, used);
        if (loop.size() >= 3) {
          int[] vertices = new int[loop.size()];
          for (int i = 0; i < vertices.length; i++) {
            vertices[i] = loop.get(i);
          }
          loops.add(vertices);
        }
      }
    }
    return loops;
  }

  private static <V> void add(V value, int key, Map<Integer, List<V>> lists) {
    List<V> list = lists.get(key);
    if (list == null) {
      list = new ArrayList<>();
      lists.put(key, list);
    }
    list.add(value);
  }

  /** The loop from an edge on; empty if it does not come back to its start. */
  private static List<Integer> follow(Edge first, Map<Integer, List<Edge>> at, Set<Edge> used) {
    List<Integer> loop = new ArrayList<>(List.of(first.a()));
    int vertex = first.b();
    while (vertex != first.a()) {
      loop.add(vertex);
      Edge next = null;
      for (Edge edge : at.getOrDefault(vertex, List.of())) {
        next = next == null && !used.contains(edge) ? edge : next;
      }
      if (next == null) {
        return List.of();
      }
      used.add(next);
      vertex = next.a() == vertex ? next.b() : next.a();
    }
    return loop;
  }
}
