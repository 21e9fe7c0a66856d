package org.lagwright.ifc.extract.property;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A growing list of numbers from 0 on: four bytes each as long as all fit, eight from then on. */
final class Numbers {

  private int[] narrow;
  private long @Nullable [] wide;
  private int size;

  /**
   * @param room numbers up to which it need not grow
   */
  Numbers(int room) {
    narrow = new int[room];
  }

  void add(long number) {
    if (wide == null && number > Integer.MAX_VALUE) {
      wide = Arrays.stream(narrow).asLongStream().toArray();
      narrow = new int[0];
    }
    if (size == room()) {
      resize(Math.max(16, size + (size >> 1)));
    }
    set(size++, number);
  }

  /** Puts a number that is in the list, or is no greater than one of it, into another place. */
  void set(int at, long number) {
    if (wide == null) {
      narrow[at] = (int) number;
    } else {
      wide[at] = number;
    }
  }

  long get(int at) {
    return wide == null ? narrow[at] : wide[at];
  }

  int size() {
    return size;
  }

  private int room() {
    return wide == null ? narrow.length : wide.length;
  }

  /** Drops what lies behind the first numbers, and gives back the room of it. */
  void shorten(int count) {
    size = count;
    resize(count);
  }

  private void resize(int room) {
    if (wide == null) {
      narrow = Arrays.copyOf(narrow, room);
    } else {
      wide = Arrays.copyOf(wide, room);
    }
  }

  /** Place of a number among ascending ones, negative if it is not there. */
  int find(long number) {
    if (wide != null) {
      return Arrays.binarySearch(wide, number);
    }
    return number > Integer.MAX_VALUE || number < 0
        ? -1
        : Arrays.binarySearch(narrow, (int) number);
  }

  /** The numbers from one place up to but not including another. */
  long[] copy(int from, int to) {
    long[] copy = new long[to - from];
    for (int i = from; i < to; i++) {
      copy[i - from] = get(i);
    }
    return copy;
  }
}
