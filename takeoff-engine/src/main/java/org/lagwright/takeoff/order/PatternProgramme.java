package org.lagwright.takeoff.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Cutting patterns of lengths: whole patterns are cut as often as the linear programme says,
 * rounded down, and what remains is packed by best fit.
 */
final class PatternProgramme {

  /** More sizes than this are left to first and best fit, for the time it takes. */
  private static final int MOST_SIZES = 400;

  /** So are more sizes times millimetres of the stock. */
  private static final long MOST_WORK = 2_500_000;

  private final int[] itemSizes;
  private final int capacity;
  private final int[] sizes;
  private final int[] demand;
  private final int[] typeOf;

  /** A pattern by the number of pieces of each size. */
  private record Counts(List<Integer> counts) implements Column {

    static Counts of(int[] counts) {
      return new Counts(Arrays.stream(counts).boxed().toList());
    }

    @Override
    public int count(int size) {
      return counts.get(size);
    }
  }

  /**
   * @param itemSizes sizes, falling
   */
  PatternProgramme(int[] itemSizes, int capacity) {
    this.itemSizes = itemSizes.clone();
    this.capacity = capacity;
    this.sizes = Arrays.stream(itemSizes).distinct().toArray();
    this.typeOf = new int[itemSizes.length];
    this.demand = new int[sizes.length];
    for (int i = 0, type = 0; i < itemSizes.length; i++) {
      if (itemSizes[i] != sizes[type]) {
        type++;
      }
      demand[type]++;
      typeOf[i] = type;
    }
  }

  /**
   * The packing with its bound; bound 0 and no bins where there are too many sizes.
   *
   * @param known bins of a packing already known; its patterns are what the programme starts from
   */
  BinPacking pack(List<List<Integer>> known) {
    List<List<Integer>> bins = new ArrayList<>();
    if (sizes.length > MOST_SIZES || sizes.length * (long) capacity > MOST_WORK) {
      return new BinPacking(bins, 0);
    }
    ColumnGeneration<Counts> columns =
        new ColumnGeneration<>(demand, start(known), prices -> worthMost(prices), known.size());
    List<Deque<Integer>> left = itemsBySize();
    for (Counts pattern : columns.wholeColumns()) {
      List<Integer> bin = take(pattern, left);
      if (!bin.isEmpty()) {
        bins.add(bin);
      }
    }
    List<Integer> rest = left.stream().flatMap(Deque::stream).sorted().toList();
    bins.addAll(BinPacking.bestFit(itemSizes, rest, capacity));
    return new BinPacking(bins, columns.lowerBound());
  }

  private Set<Counts> start(List<List<Integer>> known) {
    Set<Counts> patterns = new LinkedHashSet<>();
    for (int type = 0; type < sizes.length; type++) {
      int[] alone = new int[sizes.length];
      alone[type] = capacity / sizes[type];
      patterns.add(Counts.of(alone));
    }
    for (List<Integer> bin : known) {
      int[] counts = new int[sizes.length];
      for (int item : bin) {
        counts[typeOf[item]]++;
      }
      patterns.add(Counts.of(counts));
    }
    return patterns;
  }

  private List<Deque<Integer>> itemsBySize() {
    List<Deque<Integer>> items = new ArrayList<>();
    int item = 0;
    for (int count : demand) {
      Deque<Integer> ofOneSize = new ArrayDeque<>();
      for (int i = 0; i < count; i++) {
        ofOneSize.add(item++);
      }
      items.add(ofOneSize);
    }
    return items;
  }

  private static List<Integer> take(Counts pattern, List<Deque<Integer>> left) {
    List<Integer> bin = new ArrayList<>();
    for (int type = 0; type < left.size(); type++) {
      for (int i = 0; i < pattern.count(type) && !left.get(type).isEmpty(); i++) {
        bin.add(left.get(type).remove());
      }
    }
    return bin;
  }

  /** The pattern worth most at these prices: an unbounded knapsack over whole millimetres. */
  private Counts worthMost(double[] prices) {
    Knapsack knapsack = new Knapsack(capacity);
    for (int type = 0; type < sizes.length; type++) {
      knapsack.add(type, sizes[type], prices[type]);
    }
    int[] pattern = new int[sizes.length];
    knapsack.fill(type -> pattern[type]++);
    return Counts.of(pattern);
  }
}
