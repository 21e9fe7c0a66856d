package org.lagwright.takeoff.order;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** Things of sizes and worths, each as often as wanted, worth most in the room there is. */
final class Knapsack {

  private static final int NOTHING = -1;

  private final double[] best;
  private final int[] last;
  private final int[] lastSize;

  /**
   * An empty knapsack.
   *
   * @param room whole millimetres
   */
  Knapsack(int room) {
    best = new double[room + 1];
    last = new int[room + 1];
    lastSize = new int[room + 1];
    Arrays.fill(last, NOTHING);
  }

  /**
   * Offers one more thing; what was offered before may be put in beside it.
   *
   * @param size whole millimetres, above 0
   * @param worth 0 or more; what is worth nothing is never put in
   */
  void add(int thing, int size, double worth) {
    if (!(worth > 0)) {
      return;
    }
    for (int room = size; room < best.length; room++) {
      if (best[room - size] + worth > best[room]) {
        best[room] = best[room - size] + worth;
        last[room] = thing;
        lastSize[room] = size;
      }
    }
  }

  /** Worth of the fullest knapsack. */
  double worth() {
    return best[best.length - 1];
  }

  /** Names each thing in it, as often as it is in it. */
  void fill(IntConsumer each) {
    int room = best.length - 1;
    while (last[room] != NOTHING) {
      each.accept(last[room]);
      room -= lastSize[room];
    }
  }
}
