package org.lagwright.ifc.geometry.mesh;

import java.util.Arrays;

/**
 * The edges of a mesh and the faces at each, in the order in which they were added. Numbers in
 * arrays, as large meshes have hundreds of thousands.
 */
final class EdgeTable {

  static final int NONE = -1;

  private static final long MIX = 0x9E3779B97F4A7C15L;

  /** Vertices of each edge, the smaller number in the upper half. */
  private long[] edges = new long[32];

  private int count;

  /** Number of the edge at each place of a hash table, plus one; 0 where there is none. */
  private int[] slots = new int[64];

  /** First and last use of each edge by a face. */
  private int[] first = new int[32];

  private int[] last = new int[32];
  private int[] faces = new int[64];
  private int[] next = new int[64];
  private int uses;

  /** Notes that a face has an edge; the same one may have it twice. */
  void add(int a, int b, int face) {
    long edge = key(a, b);
    int slot = slot(edge);
    if (uses == faces.length) {
      faces = Arrays.copyOf(faces, uses * 2);
      next = Arrays.copyOf(next, uses * 2);
    }
    faces[uses] = face;
    next[uses] = NONE;
    if (slots[slot] == 0) {
      append(edge, slot);
    } else {
      int number = slots[slot] - 1;
      next[last[number]] = uses;
      last[number] = uses;
    }
    uses++;
  }

  private void append(long edge, int slot) {
    if (count == edges.length) {
      edges = Arrays.copyOf(edges, count * 2);
      first = Arrays.copyOf(first, count * 2);
      last = Arrays.copyOf(last, count * 2);
    }
    edges[count] = edge;
    first[count] = uses;
    last[count] = uses;
    slots[slot] = ++count;
    if (2 * count > slots.length) {
      slots = new int[slots.length * 2];
      for (int i = 0; i < count; i++) {
        slots[slot(edges[i])] = i + 1;
      }
    }
  }

  private static long key(int a, int b) {
    return (long) Math.min(a, b) << Integer.SIZE | Math.max(a, b);
  }

  /** The place that holds an edge, or the free one where it would stand. */
  private int slot(long edge) {
    long mixed = edge * MIX;
    int slot = (int) (mixed ^ mixed >>> Integer.SIZE) & (slots.length - 1);
    while (slots[slot] != 0 && edges[slots[slot] - 1] != edge) {
      slot = (slot + 1) & (slots.length - 1);
    }
    return slot;
  }

  /** How many edges there are. */
  int size() {
    return count;
  }

  /** Number of the edge between two vertices, from 0; {@link #NONE} if there is none. */
  int find(int a, int b) {
    return slots[slot(key(a, b))] - 1;
  }

  /** The edge's vertex of the smaller number. */
  int a(int edge) {
    return (int) (edges[edge] >>> Integer.SIZE);
  }

  /** The edge's vertex of the larger number. */
  int b(int edge) {
    return (int) edges[edge];
  }

  /** The first use of an edge, {@link #NONE} for no edge. */
  int firstUse(int edge) {
    return edge == NONE ? NONE : first[edge];
  }

  /** The next use of the same edge, {@link #NONE} behind the last. */
  int nextUse(int use) {
    return next[use];
  }

  /** The face of a use. */
  int face(int use) {
    return faces[use];
  }

  /** How many faces have the edge. */
  int uses(int edge) {
    int number = 0;
    for (int use = first[edge]; use != NONE; use = next[use]) {
      number++;
    }
    return number;
  }
}
