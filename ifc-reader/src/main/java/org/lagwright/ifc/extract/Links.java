package org.lagwright.ifc.extract;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Which instance numbers belong to which: a table of numbers, as an object for each would take ten
 * times the memory. First everything is added, then {@link #close} is called, then it is asked;
 * from then on it is safe for several threads.
 */
final class Links {

  static final long[] NONE = new long[0];

  private static final int SEQUENCE_BITS = 24;

  /** Up to this many values of one key, repetitions are looked for one by one. */
  private static final int FEW = 16;

  private long[] keys = new long[16];
  private long[] values = new long[16];
  private int size;

  /** Where the values of each key start; one more entry behind the last. */
  private int[] starts = new int[0];

  private boolean inOrder = true;

  /** Adds a link unless one of both is 0, which stands for none. */
  void add(long key, long value) {
    if (key == 0 || value == 0) {
      return;
    }
    if (size == keys.length) {
      keys = Arrays.copyOf(keys, size + (size >> 1));
      values = Arrays.copyOf(values, keys.length);
    }
    inOrder &= size == 0 || keys[size - 1] <= key;
    keys[size] = key;
    values[size++] = value;
  }

  /** Adds all links of a table that is not closed yet. */
  void addAll(Links more) {
    for (int i = 0; i < more.size; i++) {
      add(more.keys[i], more.values[i]);
    }
  }

  /** Sorts by key; links of one key keep their order. */
  Links close() {
    if (!inOrder) {
      sort();
    }
    int[] begins = new int[size + 1];
    int count = 0;
    for (int i = 0; i < size; i++) {
      if (i == 0 || keys[i] != keys[i - 1]) {
        keys[count] = keys[i];
        begins[count++] = i;
      }
    }
    begins[count] = size;
    starts = Arrays.copyOf(begins, count + 1);
    keys = Arrays.copyOf(keys, count);
    values = Arrays.copyOf(values, size);
    return this;
  }

  private void sort() {
    long greatest = 0;
    for (int i = 0; i < size; i++) {
      greatest = Math.max(greatest, keys[i]);
    }
    if (greatest >>> (63 - SEQUENCE_BITS) != 0 || size >>> SEQUENCE_BITS != 0) {
      sortGreat();
      return;
    }
    long[] order = new long[size];
    for (int i = 0; i < size; i++) {
      order[i] = keys[i] << SEQUENCE_BITS | i;
    }
    Arrays.sort(order);
    long[] sorted = new long[size];
    for (int i = 0; i < size; i++) {
      sorted[i] = values[(int) order[i] & ((1 << SEQUENCE_BITS) - 1)];
      keys[i] = order[i] >>> SEQUENCE_BITS;
    }
    values = sorted;
  }

  /** For instance numbers, or numbers of links, that do not fit into half a word each. */
  private void sortGreat() {
    Integer[] order = new Integer[size];
    Arrays.setAll(order, i -> i);
    long[] unsorted = keys;
    long[] unsortedValues = values;
    Arrays.sort(order, (a, b) -> Long.compare(unsorted[a], unsorted[b]));
    keys = new long[size];
    values = new long[size];
    for (int i = 0; i < size; i++) {
      keys[i] = unsorted[order[i]];
      values[i] = unsortedValues[order[i]];
    }
  }

  boolean has(long key) {
    return Arrays.binarySearch(keys, key) >= 0;
  }

  /** The value added first, 0 if there is none. */
  long first(long key) {
    int at = Arrays.binarySearch(keys, key);
    return at < 0 ? 0 : values[starts[at]];
  }

  /** The value added last, 0 if there is none. */
  long last(long key) {
    int at = Arrays.binarySearch(keys, key);
    return at < 0 ? 0 : values[starts[at + 1] - 1];
  }

  /** All values in the order they were added, each once. */
  long[] of(long key) {
    int at = Arrays.binarySearch(keys, key);
    if (at < 0) {
      return NONE;
    }
    long[] found = Arrays.copyOfRange(values, starts[at], starts[at + 1]);
    return found.length == 1 ? found : found.length <= FEW ? fewOnce(found) : manyOnce(found);
  }

  private static long[] fewOnce(long[] found) {
    int count = 0;
    for (long value : found) {
      int i = 0;
      while (i < count && found[i] != value) {
        i++;
      }
      if (i == count) {
        found[count++] = value;
      }
    }
    return count == found.length ? found : Arrays.copyOf(found, count);
  }

  private static long[] manyOnce(long[] found) {
    Set<Long> once = new LinkedHashSet<>();
    for (long value : found) {
      once.add(value);
    }
    return once.size() == found.length ? found : once.stream().mapToLong(Long::longValue).toArray();
  }
}
