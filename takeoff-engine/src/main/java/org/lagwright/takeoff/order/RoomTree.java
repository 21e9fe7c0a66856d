package org.lagwright.takeoff.order;

import java.util.Arrays;

/** Room left in each of many bins; finds the first bin with enough of it in logarithmic time. */
final class RoomTree {

  private final int leaves;
  private final int[] most;

  /**
   * @param bins number of bins, all empty
   * @param capacity room in each
   */
  RoomTree(int bins, int capacity) {
    this.leaves = Integer.highestOneBit(Math.max(1, bins) * 2 - 1);
    this.most = new int[2 * leaves];
    Arrays.fill(most, capacity);
  }

  int firstWithRoomFor(int size) {
    int node = 1;
    while (node < leaves) {
      node = most[2 * node] >= size ? 2 * node : 2 * node + 1;
    }
    return node - leaves;
  }

  void take(int bin, int size) {
    int node = bin + leaves;
    most[node] -= size;
    for (node /= 2; node > 0; node /= 2) {
      most[node] = Math.max(most[2 * node], most[2 * node + 1]);
    }
  }
}
