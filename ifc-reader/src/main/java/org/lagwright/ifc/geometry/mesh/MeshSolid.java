package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.MeshTopology.Edge;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.geometry.surface.Facet.Role;
import org.lagwright.ifc.geometry.surface.Patch;

/** Turns a mesh into a body: faces wound alike, bores told from outer walls. */
public final class MeshSolid {

  /** Sum of the area normals over the area, up to which a body without shared edges is closed. */
  private static final double CLOSED = 1e-6;

  /** Faces of a body that others are cut with. */
  private static final int MAX_SIDES = 2000;

  /** How far corners may lie beyond a side of a convex body. */
  private static final double CONVEX_M = 1e-6;

  private final Mesh mesh;
  private final MeshTopology topology;

  /** Which faces are wound the other way round than most of those they hang together with. */
  private final boolean[] flipped;

  private final boolean[] bore;

  private MeshSolid(Mesh mesh, MeshTopology topology) {
    this.mesh = mesh;
    this.topology = topology;
    int faces = mesh.faces().size();
    this.flipped = new boolean[faces];
    this.bore = new boolean[faces];
    windAlike();
  }

  /**
   * The body in world coordinates.
   *
   * @param saidClosed true if the file says that it is a solid
   */
  public static Solid of(Mesh mesh, boolean saidClosed) {
    return of(mesh, new MeshTopology(mesh), saidClosed);
  }

  /** The same of a mesh whose topology is known. */
  static Solid of(Mesh mesh, MeshTopology topology, boolean saidClosed) {
    return new MeshSolid(mesh, topology).solid(saidClosed);
  }

  /** The faces of each connected piece. */
  private Collection<List<Integer>> byPiece() {
    Map<Integer, List<Integer>> byPiece = new LinkedHashMap<>();
    for (int face = 0; face < mesh.faces().size(); face++) {
      List<Integer> piece = byPiece.get(topology.piece(face));
      if (piece == null) {
        piece = new ArrayList<>();
        byPiece.put(topology.piece(face), piece);
      }
      piece.add(face);
    }
    return byPiece.values();
  }

  private Solid solid(boolean saidClosed) {
    Collection<List<Integer>> byPiece = byPiece();
    List<List<Facet>> pieces = new ArrayList<>();
    boolean plane = true;
    boolean known = true;
    for (Mesh.Face face : mesh.faces()) {
      plane &= face.plane();
      known &= face.plane() || face.patch() != null;
    }
    boolean closed = known && (saidClosed || topology.isClosed());
    for (List<Integer> faces : byPiece) {
      turnOutwards(faces);
    }
    findBores();
    for (List<Integer> faces : byPiece) {
      List<Facet> facets = facets(faces);
      closed = closed && (topology.isClosed() || sumsUp(facets));
      pieces.add(facets);
    }
    Tool tool = closed && plane && pieces.size() == 1 ? tool(pieces.get(0)) : null;
    return new Solid(pieces, tool, closed);
  }

  private static boolean sumsUp(List<Facet> facets) {
    Vec sum = Vec.ZERO;
    double area = 0;
    for (Facet facet : facets) {
      sum = sum.plus(facet.areaNormal());
      area += facet.areaNormal().norm();
    }
    return sum.norm() < CLOSED * area;
  }

  /** What others are cut with, null if it is not convex or of too many sides. */
  static @Nullable Tool tool(List<Facet> facets) {
    if (facets.size() > MAX_SIDES) {
      return null;
    }
    for (Facet side : facets) {
      Vec on = side.loops().get(0).get(0);
      Vec normal = side.areaNormal().unit();
      for (Facet other : facets) {
        for (Vec corner : other.loops().get(0)) {
          if (corner.minus(on).dot(normal) > CONVEX_M) {
            return null;
          }
        }
      }
    }
    return Solid.convex(facets);
  }

  private List<Facet> facets(List<Integer> faces) {
    List<Facet> facets = new ArrayList<>(faces.size());
    for (int face : faces) {
      facets.add(facet(face));
    }
    return facets;
  }

  private Facet facet(int face) {
    List<List<Vec>> loops = new ArrayList<>();
    Vec outer = Vec.ZERO;
    for (int[] indices : mesh.faces().get(face).loops()) {
      List<Vec> loop = new ArrayList<>();
      for (int index : indices) {
        loop.add(mesh.vertices().get(index).plus(mesh.origin()));
      }
      Vec own = OutlineFit.areaNormal(loop, loop.get(0));
      boolean turn = loops.isEmpty() ? flipped[face] : own.dot(outer) > 0;
      if (turn) {
        Collections.reverse(loop);
      }
      outer = loops.isEmpty() ? own.times(turn ? -1 : 1) : outer;
      loops.add(loop);
    }
    Role role = bore[face] ? Role.INNER : Role.OUTER;
    Patch patch = mesh.faces().get(face).patch();
    if (patch != null) {
      return new Facet(loops, role, flipped[face] ? patch.reversed() : patch);
    }
    return new Facet(loops, mesh.faces().get(face).plane() ? role : Role.EDGES);
  }

  /** Walks over edges of two faces; such faces pass their edge in opposite directions. */
  private void windAlike() {
    boolean[] seen = new boolean[flipped.length];
    for (int first = 0; first < flipped.length; first++) {
      if (!seen[first]) {
        windAlike(first, seen);
      }
    }
  }

  private void windAlike(int first, boolean[] seen) {
    List<Integer> patch = new ArrayList<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(first));
    seen[first] = true;
    double turned = 0;
    double all = 0;
    while (!open.isEmpty()) {
      int face = open.pop();
      patch.add(face);
      all += topology.area(face);
      turned += flipped[face] ? topology.area(face) : 0;
      for (int[] loop : mesh.faces().get(face).loops()) {
        for (int i = 0; i < loop.length; i++) {
          int other = topology.across(face, loop[i], loop[(i + 1) % loop.length]);
          if (other >= 0 && !seen[other]) {
            seen[other] = true;
            boolean same = passes(other, loop[i], loop[(i + 1) % loop.length]);
            flipped[other] = same != flipped[face];
            open.push(other);
          }
        }
      }
    }
    if (turned > all / 2) {
      turn(patch);
    }
  }

  private void turn(List<Integer> faces) {
    for (int face : faces) {
      flipped[face] = !flipped[face];
    }
  }

  /** True if a loop of a face runs from a to b and not from b to a. */
  private boolean passes(int face, int a, int b) {
    for (int[] loop : mesh.faces().get(face).loops()) {
      for (int i = 0; i < loop.length; i++) {
        if (loop[i] == a && loop[(i + 1) % loop.length] == b) {
          return true;
        }
      }
    }
    return false;
  }

  private void turnOutwards(List<Integer> faces) {
    if (Solid.volumeM3(facets(faces)) < 0) {
      turn(faces);
    }
  }

  /** What is behind the inner edge of a ring-shaped end is a bore. */
  private void findBores() {
    Map<Integer, Integer> rings = new LinkedHashMap<>();
    List<Edge> mouths = new ArrayList<>();
    for (Map.Entry<Integer, List<Integer>> patch : topology.patches().entrySet()) {
      List<int[]> loops = MeshTopology.loops(topology.boundary(patch.getValue()));
      if (loops.size() == 2) {
        for (int face : patch.getValue()) {
          rings.put(face, patch.getKey());
        }
        mouths.addAll(edges(smaller(loops)));
      }
    }
    Deque<Integer> open = new ArrayDeque<>();
    for (Edge edge : mouths) {
      List<Integer> faces = topology.facesAt(edge);
      for (int ring : faces) {
        for (int behind : faces) {
          if (rings.containsKey(ring) && !rings.containsKey(behind) && isBehind(ring, behind)) {
            open.push(behind);
          }
        }
      }
    }
    flood(open, rings);
  }

  private void flood(Deque<Integer> open, Map<Integer, Integer> rings) {
    while (!open.isEmpty()) {
      int face = open.pop();
      if (bore[face] || rings.containsKey(face)) {
        continue;
      }
      bore[face] = true;
      int[] loop = mesh.faces().get(face).loops().get(0);
      for (int i = 0; i < loop.length; i++) {
        int other = topology.across(face, loop[i], loop[(i + 1) % loop.length]);
        if (other >= 0) {
          open.push(other);
        }
      }
    }
  }

  private boolean isBehind(int ring, int face) {
    Vec normal = topology.normal(ring).times(flipped[ring] ? -1 : 1);
    Vec on = mesh.vertices().get(mesh.faces().get(ring).loops().get(0)[0]);
    Vec middle = Vec.mean(mesh.points(mesh.faces().get(face).loops().get(0)));
    return middle.minus(on).dot(normal) < 0;
  }

  private int[] smaller(List<int[]> loops) {
    double first = OutlineFit.areaNormal(mesh.points(loops.get(0)), Vec.ZERO).norm();
    double second = OutlineFit.areaNormal(mesh.points(loops.get(1)), Vec.ZERO).norm();
    return first < second ? loops.get(0) : loops.get(1);
  }

  private static List<Edge> edges(int[] loop) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < loop.length; i++) {
      edges.add(Edge.of(loop[i], loop[(i + 1) % loop.length]));
    }
    return edges;
  }
}
