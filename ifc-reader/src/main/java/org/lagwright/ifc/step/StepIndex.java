package org.lagwright.ifc.step;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Where each instance starts: instance number to byte offset, about 6 bytes an instance in usual
 * files. Pages of 256 numbers hold 32-bit distances from the page's first record; what lies further
 * away goes into a map.
 */
final class StepIndex {

  private static final int PAGE_BITS = 8;
  private static final int PAGE_SIZE = 1 << PAGE_BITS;

  private static final class Page {
    final long base;
    final int[] distance = new int[PAGE_SIZE];

    Page(long base) {
      this.base = base;
    }
  }

  private final Map<Long, Page> pages = new HashMap<>();
  private final Map<Long, Long> farAway = new HashMap<>();
  private long lastPageNumber = -1;
  private Page lastPage = new Page(0);
  private long size;
  private long greatestId;

  /** Adds an instance; false if the number is taken, and then nothing changes. */
  boolean add(long id, long offset) {
    if (find(id) >= 0) {
      return false;
    }
    Page page = pageFor(id, offset);
    long distance = offset - page.base;
    if (distance == (int) distance) {
      page.distance[(int) id & (PAGE_SIZE - 1)] = (int) distance;
    } else {
      farAway.put(id, offset);
    }
    size++;
    greatestId = Math.max(greatestId, id);
    return true;
  }

  private Page pageFor(long id, long offset) {
    long number = id >>> PAGE_BITS;
    if (number != lastPageNumber) {
      // the base lies one byte before the record, so that distance 0 can mean "absent"
      lastPage = pages.computeIfAbsent(number, n -> new Page(offset - 1));
      lastPageNumber = number;
    }
    return lastPage;
  }

  /** Offset of an instance, -1 if there is none. */
  long find(long id) {
    long number = id >>> PAGE_BITS;
    Page page = number == lastPageNumber ? lastPage : pages.get(number);
    if (page == null) {
      return -1;
    }
    int distance = page.distance[(int) id & (PAGE_SIZE - 1)];
    if (distance != 0) {
      return page.base + distance;
    }
    return farAway.isEmpty() ? -1 : farAway.getOrDefault(id, -1L);
  }

  long size() {
    return size;
  }

  long greatestId() {
    return greatestId;
  }

  /** A growing list of instance numbers without boxing. */
  static final class Ids {
    private long[] values = new long[16];
    private int count;

    void add(long id) {
      if (count == values.length) {
        values = Arrays.copyOf(values, count * 2);
      }
      values[count++] = id;
    }

    long[] toArray() {
      return Arrays.copyOf(values, count);
    }
  }
}
