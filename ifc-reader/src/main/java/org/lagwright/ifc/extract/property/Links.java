package org.lagwright.ifc.extract.property;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which instance numbers belong to which: a table of numbers, as an object for each would take ten
 * times the memory. First everything is added, then {@link #close} is called, then it is asked;
 * from then on it is safe for several threads.
 */
final class Links {

  static final long[] NONE = new long[0];

  private static final int SEQUENCE_BITS = 24;

  private static final int LEAST_ROOM = 16;

  /** Up to this many values of one key, repetitions are looked for one by one. */
  private static final int FEW = 16;

  private Numbers keys;
  private Numbers values;

  /** Where the values of each key start, and one more behind the last; null if each has one. */
  private int @Nullable [] starts;

  private boolean inOrder = true;

  /** Links whose key is that of the one before. */
  private int repeated;

  Links() {
    this(LEAST_ROOM);
  }

  /**
   * @param room links up to which it need not grow
   */
  Links(int room) {
    keys = new Numbers(room);
    values = new Numbers(room);
  }

  /** Adds a link unless one of both is 0, which stands for none. */
  void add(long key, long value) {
    if (key == 0 || value == 0) {
      return;
    }
    append(key, value);
  }

  private void append(long key, long value) {
    int size = keys.size();
    long before = size == 0 ? 0 : keys.get(size - 1);
    inOrder &= before <= key;
    repeated += before == key ? 1 : 0;
    keys.add(key);
    values.add(value);
  }

  /** Adds all links of a table that is not closed yet. */
  void addAll(Links more) {
    for (int i = 0; i < more.keys.size(); i++) {
      add(more.keys.get(i), more.values.get(i));
    }
  }

  /** Sorts by key; links of one key keep their order. */
  Links close() {
    if (!inOrder) {
      sort();
    }
    int size = keys.size();
    int count = size - repeated;
    if (repeated > 0) {
      starts = new int[count + 1];
      starts[count] = size;
      gather(starts);
    }
    keys.shorten(count);
    values.shorten(size);
    return this;
  }

  /** Puts each key once to the front, and notes where its values start. */
  private void gather(int[] begins) {
    int count = 0;
    for (int i = 0; i < keys.size(); i++) {
      if (i == 0 || keys.get(i) != keys.get(count - 1)) {
        keys.set(count, keys.get(i));
        begins[count++] = i;
      }
    }
  }

  private void sort() {
    int size = keys.size();
    long greatest = 0;
    for (int i = 0; i < size; i++) {
      greatest = Math.max(greatest, keys.get(i));
    }
    if (greatest >>> (63 - SEQUENCE_BITS) != 0 || size >>> SEQUENCE_BITS != 0) {
      sortGreat();
      return;
    }
    long[] order = new long[size];
    for (int i = 0; i < size; i++) {
      order[i] = keys.get(i) << SEQUENCE_BITS | i;
    }
    Arrays.sort(order);
    Numbers unsorted = startAnew();
    for (long each : order) {
      append(each >>> SEQUENCE_BITS, unsorted.get((int) each & ((1 << SEQUENCE_BITS) - 1)));
    }
  }

  /** For instance numbers, or numbers of links, that do not fit into half a word each. */
  private void sortGreat() {
    Numbers unsortedKeys = keys;
    Integer[] order = new Integer[keys.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> Long.compare(unsortedKeys.get(a), unsortedKeys.get(b)));
    Numbers unsorted = startAnew();
    for (int at : order) {
      append(unsortedKeys.get(at), unsorted.get(at));
    }
  }

  /** Makes room for the same links in another order; gives the values as they were. */
  private Numbers startAnew() {
    Numbers before = values;
    int size = keys.size();
    keys = new Numbers(size);
    values = new Numbers(size);
    repeated = 0;
    return before;
  }

  /** Lets go of all links. */
  void clear() {
    keys = new Numbers(0);
    values = keys;
    starts = null;
  }

  /** True if some key has links in both tables; goes through each of them once. */
  boolean sharesAKeyWith(Links other) {
    int at = 0;
    int its = 0;
    while (at < keys.size() && its < other.keys.size()) {
      long difference = keys.get(at) - other.keys.get(its);
      if (difference == 0) {
        return true;
      }
      at += difference < 0 ? 1 : 0;
      its += difference > 0 ? 1 : 0;
    }
    return false;
  }

  boolean has(long key) {
    return keys.find(key) >= 0;
  }

  /** The value added first, 0 if there is none. */
  long first(long key) {
    int at = keys.find(key);
    return at < 0 ? 0 : values.get(start(at));
  }

  /** The value added last, 0 if there is none. */
  long last(long key) {
    int at = keys.find(key);
    return at < 0 ? 0 : values.get(start(at + 1) - 1);
  }

  private int start(int at) {
    return starts == null ? at : starts[at];
  }

  /** All values in the order they were added, each once. */
  long[] of(long key) {
    int at = keys.find(key);
    if (at < 0) {
      return NONE;
    }
    long[] found = values.copy(start(at), start(at + 1));
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
