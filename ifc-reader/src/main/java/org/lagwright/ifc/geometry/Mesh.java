package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Faces over welded vertices. Coordinates are metres from a local origin, because models far from
 * zero would lose digits.
 *
 * @param origin world position of the local origin
 */
record Mesh(Vec origin, List<Vec> vertices, List<Face> faces) {

  /** Vertices closer than this are one: a hundredth of a millimetre. */
  static final double WELD_M = 1e-5;

  /**
   * A face with its loops of vertex numbers, the outer one first.
   *
   * @param plane false for curved faces, of which only the edges are known
   * @param patch area and flux of a curved face along its loops as they are; null if not wanted
   */
  record Face(List<int[]> loops, boolean plane, @Nullable Patch patch) {
    Face(List<int[]> loops, boolean plane) {
      this(loops, plane, null);
    }

    Face {
      loops = List.copyOf(loops);
    }
  }

  /** Newell's sum over all loops, as long as the face's area. */
  Vec areaNormal(Face face) {
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

  List<Vec> points(int[] loop) {
    List<Vec> points = new ArrayList<>();
    for (int index : loop) {
      points.add(vertices.get(index));
    }
    return points;
  }

  /** Collects faces and welds their corners. */
  static final class Builder {

    private record Cell(long x, long y, long z) {

      /** Mixes the bits: the usual sum gives neighbours in a regular mesh one hash. */
      @Override
      public int hashCode() {
        return Long.hashCode(((x * MIX + y) * MIX + z) * MIX);
      }

      /** Spelled out: the compiler's own is put together when first asked, which takes long. */
      @Override
      public boolean equals(@Nullable Object other) {
        return other instanceof Cell o && x == o.x && y == o.y && z == o.z;
      }
    }

    /**
     * Wide enough that most points lie in one cell together with all that could be one with them.
     */
    private static final double CELL_M = 10 * WELD_M;

    /** Odd, from the golden ratio, so that multiples spread over all bits. */
    private static final long MIX = 0x9E3779B97F4A7C15L;

    private final Map<Cell, List<Integer>> cells = new HashMap<>();
    private final List<Vec> vertices = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private final Set<List<Integer>> corners = new HashSet<>();
    private @Nullable Vec origin;

    /**
     * Adds a face by its loops of world positions. Loops that shrink to a line are dropped, and so
     * is a plane face over the same corners as an earlier one.
     */
    void face(List<List<Vec>> loops, boolean plane) {
      face(loops, plane, null);
    }

    /** Adds a face, a curved one with its figures. */
    void face(List<List<Vec>> loops, boolean plane, @Nullable Patch patch) {
      List<int[]> welded = new ArrayList<>();
      for (List<Vec> loop : loops) {
        int[] indices = weld(loop);
        if (indices.length >= 3) {
          welded.add(indices);
        }
      }
      // a dome and the disk below it have the same corners
      if (!welded.isEmpty() && (!plane || corners.add(sorted(welded.get(0))))) {
        faces.add(new Face(welded, plane, patch));
      }
    }

    private static List<Integer> sorted(int[] loop) {
      int[] sorted = loop.clone();
      Arrays.sort(sorted);
      List<Integer> corners = new ArrayList<>(sorted.length);
      for (int index : sorted) {
        corners.add(index);
      }
      return corners;
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
      for (long x = cell(point.x() - WELD_M); x <= cell(point.x() + WELD_M); x++) {
        for (long y = cell(point.y() - WELD_M); y <= cell(point.y() + WELD_M); y++) {
          for (long z = cell(point.z() - WELD_M); z <= cell(point.z() + WELD_M); z++) {
            int index = near(point, cells.getOrDefault(new Cell(x, y, z), List.of()));
            if (index >= 0) {
              return index;
            }
          }
        }
      }
      return add(point);
    }

    private static long cell(double coordinate) {
      // within what a long holds, so that the loops over cells end
      return (long) Math.floor(Math.max(-1e12, Math.min(1e12, coordinate)) / CELL_M);
    }

    private int near(Vec point, List<Integer> indices) {
      for (int index : indices) {
        if (vertices.get(index).distanceTo(point) <= WELD_M) {
          return index;
        }
      }
      return -1;
    }

    private int add(Vec point) {
      Cell cell = new Cell(cell(point.x()), cell(point.y()), cell(point.z()));
      cells.computeIfAbsent(cell, c -> new ArrayList<>(1)).add(vertices.size());
      vertices.add(point);
      return vertices.size() - 1;
    }

    /** The mesh, null if it has no face. */
    @Nullable Mesh build() {
      return origin == null || faces.isEmpty()
          ? null
          : new Mesh(origin, List.copyOf(vertices), List.copyOf(faces));
    }
  }
}
