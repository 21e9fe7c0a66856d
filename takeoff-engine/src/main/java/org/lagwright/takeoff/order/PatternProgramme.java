package org.lagwright.takeoff.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Cutting patterns by column generation after Gilmore and Gomory (A linear programming approach to
 * the cutting-stock problem, Operations Research 9, 1961): prices of the sizes come from a linear
 * programme, the pattern worth most at these prices from a knapsack, until none is worth more than
 * a bin. Whole patterns are then cut as often as the programme says, rounded down, and what remains
 * is packed by best fit.
 */
final class PatternProgramme {

  /** More sizes than this are left to first and best fit, for the time it takes. */
  private static final int MOST_SIZES = 150;

  private static final int MOST_ROUNDS = 600;

  /** A pattern must be worth this much more than a bin to count; also guards the rounding. */
  private static final double TOLERANCE = 1e-6;

  private final int[] itemSizes;
  private final int capacity;
  private final int[] sizes;
  private final int[] demand;
  private final List<int[]> patterns = new ArrayList<>();
  private double bound;

  /**
   * @param itemSizes sizes, falling
   */
  PatternProgramme(int[] itemSizes, int capacity) {
    this.itemSizes = itemSizes;
    this.capacity = capacity;
    this.sizes = Arrays.stream(itemSizes).distinct().toArray();
    this.demand = new int[sizes.length];
    for (int i = 0, type = 0; i < itemSizes.length; i++) {
      if (itemSizes[i] != sizes[type]) {
        type++;
      }
      demand[type]++;
    }
    if (sizes.length <= MOST_SIZES) {
      generate();
    }
  }

  /** Bins that no packing can do with less than; 0 where nothing was computed. */
  int lowerBound() {
    return (int) Math.ceil(bound - TOLERANCE);
  }

  /** The packing, empty where there are too many sizes. */
  List<List<Integer>> pack() {
    List<List<Integer>> bins = new ArrayList<>();
    if (patterns.isEmpty()) {
      return bins;
    }
    List<Deque<Integer>> left = itemsBySize();
    double[] often = solveForPatterns();
    for (int p = 0; p < often.length; p++) {
      for (int times = (int) Math.floor(often[p] + TOLERANCE); times > 0; times--) {
        List<Integer> bin = take(patterns.get(p), left);
        if (!bin.isEmpty()) {
          bins.add(bin);
        }
      }
    }
    List<Integer> rest = left.stream().flatMap(Deque::stream).sorted().toList();
    bins.addAll(BinPacking.bestFit(itemSizes, rest, capacity));
    return bins;
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

  private static List<Integer> take(int[] pattern, List<Deque<Integer>> left) {
    List<Integer> bin = new ArrayList<>();
    for (int type = 0; type < pattern.length; type++) {
      for (int i = 0; i < pattern[type] && !left.get(type).isEmpty(); i++) {
        bin.add(left.get(type).remove());
      }
    }
    return bin;
  }

  private void generate() {
    for (int type = 0; type < sizes.length; type++) {
      int[] alone = new int[sizes.length];
      alone[type] = capacity / sizes[type];
      patterns.add(alone);
    }
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] prices = solveForPrices();
      int[] pattern = worthMost(prices);
      double worth = worth(pattern, prices);
      bound = Math.max(bound, worth(demand, prices) / Math.max(1, worth));
      if (worth <= 1 + TOLERANCE) {
        return;
      }
      patterns.add(pattern);
    }
  }

  private static double worth(int[] counts, double[] prices) {
    double worth = 0;
    for (int type = 0; type < counts.length; type++) {
      worth += counts[type] * prices[type];
    }
    return worth;
  }

  /** Highest total of prices at which no known pattern is worth more than one bin. */
  private double[] solveForPrices() {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> prices = new ArrayList<>();
    for (int type = 0; type < sizes.length; type++) {
      prices.add(model.addVariable("p" + type).lower(0).upper(1).weight(demand[type]));
    }
    for (int p = 0; p < patterns.size(); p++) {
      Expression worth = model.addExpression("w" + p).upper(1);
      for (int type = 0; type < sizes.length; type++) {
        if (patterns.get(p)[type] != 0) {
          worth.set(prices.get(type), patterns.get(p)[type]);
        }
      }
    }
    return values(model.maximise(), sizes.length);
  }

  /** How often to cut each pattern so that the demand is met with the least bins. */
  private double[] solveForPatterns() {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> often = new ArrayList<>();
    for (int p = 0; p < patterns.size(); p++) {
      often.add(model.addVariable("x" + p).lower(0).weight(1));
    }
    for (int type = 0; type < sizes.length; type++) {
      Expression made = model.addExpression("d" + type).lower(demand[type]);
      for (int p = 0; p < patterns.size(); p++) {
        if (patterns.get(p)[type] != 0) {
          made.set(often.get(p), patterns.get(p)[type]);
        }
      }
    }
    return values(model.minimise(), patterns.size());
  }

  private static double[] values(Optimisation.Result result, int count) {
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = Math.max(0, result.doubleValue(i));
    }
    return values;
  }

  /** The pattern worth most at these prices: an unbounded knapsack over whole millimetres. */
  private int[] worthMost(double[] prices) {
    double[] best = new double[capacity + 1];
    int[] last = new int[capacity + 1];
    for (int room = 0; room <= capacity; room++) {
      last[room] = -1;
      if (room > 0) {
        best[room] = best[room - 1];
      }
      for (int type = 0; type < sizes.length; type++) {
        if (sizes[type] <= room && best[room - sizes[type]] + prices[type] > best[room]) {
          best[room] = best[room - sizes[type]] + prices[type];
          last[room] = type;
        }
      }
    }
    int[] pattern = new int[sizes.length];
    for (int room = capacity; room > 0; ) {
      if (last[room] < 0) {
        room--;
      } else {
        pattern[last[room]]++;
        room -= sizes[last[room]];
      }
    }
    return pattern;
  }
}
