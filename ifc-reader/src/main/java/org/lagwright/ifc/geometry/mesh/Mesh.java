package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.surface.Patch;

/**
 * Faces over welded vertices. Coordinates are metres from a local origin, because models far from
 * zero would lose digits.
 *
 * @param origin world position of the local origin
 * @param rounding of the coordinates as they are written
 */
public record Mesh(Vec origin, List<Vec> vertices, List<Face> faces, RoundingStep rounding) {

  /**
   * A face with its loops of vertex numbers, the outer one first.
   *
   * @param plane false for curved faces, which the other members know by their edges only
   * @param patch area and flux of a curved face along its loops as they are; null if not wanted
   * @param curved nearly plane parts of a curved face by their loops, worked out when asked; null
   *     of a plane one
   */
  public record Face(
      List<int[]> loops,
      boolean plane,
      @Nullable Patch patch,
      @Nullable Supplier<List<List<List<Vec>>>> curved) {
    public Face {
      loops = List.copyOf(loops);
    }

    /** Nearly plane parts of a curved face by their loops; none of a plane one. */
    List<List<List<Vec>>> tiles() {
      return curved == null ? List.of() : curved.get();
    }
  }

  /** What the coordinates were rounded to, metres; 0 if they were not. */
  double stepM() {
    return rounding.stepM();
  }

  /** Newell's sum over all loops, as long as the face's area. */
  public Vec areaNormal(Face face) {
    Vec sum = Vec.ZERO;
    Vec base = vertices.get(face.loops().get(0)[0]);
    for (int i = 0; i < face.loops().size(); i++) {
      Vec own = OutlineFit.areaNormal(points(face.loops().get(i)), base);
      boolean hole = i > 0;
      // a hole takes away whichever way round it is written
      sum = hole ? sum.minus(own.times(Math.signum(own.dot(sum)))) : sum.plus(own);
    }
    return sum;
  }

  /** The corners of a loop, in world coordinates in metres. */
  public List<Vec> points(int[] loop) {
    List<Vec> points = new ArrayList<>(loop.length);
    for (int index : loop) {
      points.add(vertices.get(index));
    }
    return points;
  }

  /** Ends in world coordinates, without those that are degenerate. */
  List<ShapeEnd> inWorld(List<EndFinder.Found> ends) {
    List<ShapeEnd> world = new ArrayList<>(ends.size());
    for (EndFinder.Found each : ends) {
      Outline outline = each.outline();
      ShapeEnd end = outline.at(origin.plus(outline.centre())).end(each.outward());
      if (end != null) {
        world.add(end);
      }
    }
    return world;
  }

  /** Collects faces and welds their corners. */
  public static final class Builder {

    /** The corners of a face, whatever the order in which they stand. */
    private record Corners(int[] sorted) {

      static Corners of(int[] loop) {
        int[] sorted = loop.clone();
        Arrays.sort(sorted);
        return new Corners(sorted);
      }

      @Override
      public boolean equals(@Nullable Object other) {
        return other instanceof Corners corners && Arrays.equals(sorted, corners.sorted);
      }

      @Override
      public int hashCode() {
        return Arrays.hashCode(sorted);
      }
    }

    /**
     * Wide enough that most points lie in one cell together with all that could be one with them.
     */
    private static final double CELL_M = 10 * Vec.WELD_M;

    /** Odd, from the golden ratio, so that multiples spread over all bits. */
    private static final long MIX = 0x9E3779B97F4A7C15L;

    private final List<Vec> vertices = new ArrayList<>();

    /** The first vertex of the cells at each place of a hash table, plus one; 0 if none. */
    private int[] firstInCell = new int[64];

    /** The vertex behind each in the same place, plus one; 0 if none. */
    private int[] nextInCell = new int[64];

    private final List<Face> faces = new ArrayList<>();
    private final Set<Corners> corners = new HashSet<>();
    private final RoundingStep rounding = new RoundingStep();
    private @Nullable Vec origin;

    /** To note how the corners are written. */
    public RoundingStep rounding() {
      return rounding;
    }

    /** Adds the faces of a mesh that was read before. */
    public void add(Mesh mesh) {
      rounding.note(mesh.rounding);
      for (Face face : mesh.faces) {
        List<List<Vec>> loops = new ArrayList<>(face.loops.size());
        for (int[] indices : face.loops) {
          List<Vec> loop = new ArrayList<>(indices.length);
          for (int index : indices) {
            loop.add(mesh.origin.plus(mesh.vertices.get(index)));
          }
          loops.add(loop);
        }
        face(loops, face.plane, face.patch, face.curved);
      }
    }

    /**
     * Adds a face by its loops of world positions. Loops that shrink to a line are dropped, and so
     * is a plane face over the same corners as an earlier one.
     */
    public void face(List<List<Vec>> loops, boolean plane) {
      face(loops, plane, null, null);
    }

    /** Adds a face, a curved one with its figures and its tiles. */
    public void face(
        List<List<Vec>> loops,
        boolean plane,
        @Nullable Patch patch,
        @Nullable Supplier<List<List<List<Vec>>>> curved) {
      List<int[]> welded = new ArrayList<>();
      for (List<Vec> loop : loops) {
        int[] indices = weld(loop);
        if (indices.length >= 3) {
          welded.add(indices);
        }
      }
      // a dome and the disk below it have the same corners
      if (!welded.isEmpty() && (!plane || corners.add(Corners.of(welded.get(0))))) {
        faces.add(new Face(welded, plane, patch, curved));
      }
    }

    private int[] weld(List<Vec> loop) {
      int[] indices = new int[loop.size()];
      int count = 0;
      for (Vec point : loop) {
        int index = weld(point);
        if (count == 0 || indices[count - 1] != index) {
          indices[count++] = index;
        }
      }
      if (count > 1 && indices[0] == indices[count - 1]) {
        count--;
      }
      return Arrays.copyOf(indices, count);
    }

    private int weld(Vec world) {
      if (origin == null) {
        origin = world;
      }
      Vec point = world.minus(origin);
      long toX = cell(point.x() + Vec.WELD_M);
      long toY = cell(point.y() + Vec.WELD_M);
      long toZ = cell(point.z() + Vec.WELD_M);
      for (long x = cell(point.x() - Vec.WELD_M); x <= toX; x++) {
        for (long y = cell(point.y() - Vec.WELD_M); y <= toY; y++) {
          for (long z = cell(point.z() - Vec.WELD_M); z <= toZ; z++) {
            int index = near(point, firstInCell[slot(x, y, z)]);
            if (index >= 0) {
              return index;
            }
          }
        }
      }
      return add(point);
    }

    private int slot(long x, long y, long z) {
      long mixed = ((x * MIX + y) * MIX + z) * MIX;
      return (int) (mixed >>> Integer.SIZE) & (firstInCell.length - 1);
    }

    private static long cell(double coordinate) {
      // within what a long holds, so that the loops over cells end
      return (long) Math.floor(Math.max(-1e12, Math.min(1e12, coordinate)) / CELL_M);
    }

    /** The vertex at a point among those of a cell, and perhaps of others, from one on. */
    private int near(Vec point, int first) {
      for (int at = first; at > 0; at = nextInCell[at - 1]) {
        if (vertices.get(at - 1).distanceTo(point) <= Vec.WELD_M) {
          return at - 1;
        }
      }
      return -1;
    }

    private int add(Vec point) {
      vertices.add(point);
      if (vertices.size() > nextInCell.length) {
        nextInCell = new int[2 * nextInCell.length];
        firstInCell = new int[nextInCell.length];
        for (int i = 0; i < vertices.size(); i++) {
          enter(i);
        }
      } else {
        enter(vertices.size() - 1);
      }
      return vertices.size() - 1;
    }

    private void enter(int vertex) {
      Vec point = vertices.get(vertex);
      int slot = slot(cell(point.x()), cell(point.y()), cell(point.z()));
      nextInCell[vertex] = firstInCell[slot];
      firstInCell[slot] = vertex + 1;
    }

    /** The mesh, null if it has no face. */
    public @Nullable Mesh build() {
      return origin == null || faces.isEmpty()
          ? null
          : new Mesh(origin, List.copyOf(vertices), List.copyOf(faces), rounding);
    }
  }
}
