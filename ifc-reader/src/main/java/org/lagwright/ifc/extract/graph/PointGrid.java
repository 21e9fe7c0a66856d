package org.lagwright.ifc.extract.graph;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import org.lagwright.ifc.model.Point;

/**
 * Finds points near a point: numbers of cells, sorted, so that building takes n log n and eight
 * bytes a point. Points are named by their place in the list.
 */
public final class PointGrid {

  /** More points than this in one cell are no joint of pipes; they are not looked at. */
  private static final int CROWD = 64;

  private static final int INDEX_BITS = 26;

  private final double cellM;

  /** Hash of the cell in the upper bits, index of the point in the lower ones. */
  private final long[] cells;

  /**
   * @param reachM the farthest that will be asked for, metres, above zero
   */
  public PointGrid(List<Point> points, double reachM) {
    if (points.size() >= 1 << INDEX_BITS) {
      throw new IllegalArgumentException(points.size() + " points are too many for a grid");
    }
    this.cellM = 2 * reachM;
    this.cells = new long[points.size()];
    for (int i = 0; i < cells.length; i++) {
      Point p = points.get(i);
      cells[i] = hash(cell(p.x()), cell(p.y()), cell(p.z())) | i;
    }
    Arrays.sort(cells);
  }

  private long cell(double coordinateM) {
    return (long) Math.floor(coordinateM / cellM);
  }

  private static long hash(long x, long y, long z) {
    long mixed = (x * 73_856_093L) ^ (y * 19_349_663L) ^ (z * 83_492_791L);
    mixed *= 0x9E3779B97F4A7C15L;
    return mixed >>> (INDEX_BITS + 1) << INDEX_BITS;
  }

  /** Every point that may lie within reach, the point itself and some farther ones included. */
  public void near(Point p, IntConsumer found) {
    long x = Math.round(p.x() / cellM);
    long y = Math.round(p.y() / cellM);
    long z = Math.round(p.z() / cellM);
    // the corner of cells next to the point; the eight cells around it hold all within reach
    for (int corner = 0; corner < 8; corner++) {
      look(hash(x - (corner & 1), y - (corner >> 1 & 1), z - (corner >> 2)), found);
    }
  }

  /** True if more points lie in some cell than those of any joint. */
  boolean hasCrowds() {
    for (int i = CROWD; i < cells.length; i++) {
      if (cells[i] >>> INDEX_BITS == cells[i - CROWD] >>> INDEX_BITS) {
        return true;
      }
    }
    return false;
  }

  /** True if more points lie in the cell of this one than those of any joint. */
  boolean isInCrowd(Point p) {
    long hash = hash(cell(p.x()), cell(p.y()), cell(p.z()));
    int last = first(hash) + CROWD;
    return last < cells.length && cells[last] >>> INDEX_BITS == hash >>> INDEX_BITS;
  }

  private int first(long hash) {
    int from = Arrays.binarySearch(cells, hash);
    return from < 0 ? -from - 1 : from;
  }

  private void look(long hash, IntConsumer found) {
    int first = first(hash);
    int end = first;
    while (end < cells.length
        && end - first <= CROWD
        && cells[end] >>> INDEX_BITS == hash >>> INDEX_BITS) {
      end++;
    }
    if (end - first <= CROWD) {
      for (int i = first; i < end; i++) {
        found.accept((int) (cells[i] & ((1L << INDEX_BITS) - 1)));
      }
    }
  }
}
