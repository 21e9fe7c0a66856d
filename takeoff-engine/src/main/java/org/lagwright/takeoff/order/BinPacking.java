package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Items in as few bins as can be found, with a proven lower bound.
 *
 * @param bins indices of the items in each bin, ascending
 * @param lowerBound bins that no packing can do with less than
 */
record BinPacking(List<List<Integer>> bins, int lowerBound) {

  /**
   * Packs items.
   *
   * @param sizes sizes, falling
   */
  static BinPacking best(int[] sizes, int capacity) {
    List<List<Integer>> best = firstFit(sizes, capacity);
    List<List<Integer>> bestFit = bestFit(sizes, allOf(sizes), capacity);
    if (bestFit.size() < best.size()) {
      best = bestFit;
    }
    int bound = largeItemBound(sizes, capacity);
    if (best.size() > bound) {
      BinPacking byPatterns = new PatternProgramme(sizes, capacity).pack(best);
      bound = Math.max(bound, byPatterns.lowerBound());
      if (!byPatterns.bins().isEmpty() && byPatterns.bins().size() < best.size()) {
        best = byPatterns.bins();
      }
    }
    return new BinPacking(best, bound);
  }

  /** First-fit decreasing: each item into the first bin that has room. */
  static List<List<Integer>> firstFit(int[] sizes, int capacity) {
    List<List<Integer>> bins = new ArrayList<>();
    RoomTree rooms = new RoomTree(sizes.length, capacity);
    for (int i = 0; i < sizes.length; i++) {
      int bin = rooms.firstWithRoomFor(sizes[i]);
      if (bin == bins.size()) {
        bins.add(new ArrayList<>());
      }
      bins.get(bin).add(i);
      rooms.take(bin, sizes[i]);
    }
    return bins;
  }

  /** Best-fit decreasing: each item into the fullest bin that has room. */
  static List<List<Integer>> bestFit(int[] sizes, List<Integer> items, int capacity) {
    List<List<Integer>> bins = new ArrayList<>();
    TreeMap<Integer, List<Integer>> byRoom = new TreeMap<>();
    for (int item : items) {
      Map.Entry<Integer, List<Integer>> fullest = byRoom.ceilingEntry(sizes[item]);
      int room = capacity;
      int bin = bins.size();
      if (fullest == null) {
        bins.add(new ArrayList<>());
      } else {
        room = fullest.getKey();
        List<Integer> alike = fullest.getValue();
        bin = alike.remove(alike.size() - 1);
        if (alike.isEmpty()) {
          byRoom.remove(room);
        }
      }
      bins.get(bin).add(item);
      byRoom.computeIfAbsent(room - sizes[item], r -> new ArrayList<>()).add(bin);
    }
    return bins;
  }

  private static List<Integer> allOf(int[] sizes) {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < sizes.length; i++) {
      all.add(i);
    }
    return all;
  }

  /**
   * The bound of Martello and Toth (Knapsack Problems, 1990, chapter 8: bound L2; from memory): for
   * each small size, items that cannot share a bin with one so small count whole.
   */
  static int largeItemBound(int[] sizes, int capacity) {
    int bound = (int) divideUp(Arrays.stream(sizes).asLongStream().sum(), capacity);
    for (int small : Arrays.stream(sizes).filter(s -> 2 * s <= capacity).distinct().toArray()) {
      bound = Math.max(bound, boundFrom(sizes, capacity, small));
    }
    return bound;
  }

  private static int boundFrom(int[] sizes, int capacity, int small) {
    int alone = 0;
    int halves = 0;
    long halfSum = 0;
    long smallSum = 0;
    for (int size : sizes) {
      if (size > capacity - small) {
        alone++;
      } else if (2 * size > capacity) {
        halves++;
        halfSum += size;
      } else if (size >= small) {
        smallSum += size;
      }
    }
    long over = smallSum - ((long) halves * capacity - halfSum);
    return alone + halves + (int) Math.max(0, divideUp(over, capacity));
  }

  private static long divideUp(long value, int by) {
    return Math.floorDiv(value + by - 1, (long) by);
  }
}
