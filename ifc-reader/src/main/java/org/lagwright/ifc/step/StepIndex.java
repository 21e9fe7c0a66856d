package org.lagwright.ifc.step;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Where each instance starts: instance number to byte offset. Numbers come in groups of 64; of each
 * group there is one array with a bit for each number that occurs, and behind it the offsets of
 * those, in their order. That takes 4.5 bytes an instance where numbers follow each other, and more
 * where they leave gaps. Numbers far beyond the rest are kept in a sorted list. Several threads may
 * fill it at the same time; once {@link #finish} was called, several may ask.
 */
final class StepIndex {

  private static final int GROUP_BITS = 6;

  /** Numbers in a group. */
  private static final int GROUP = 1 << GROUP_BITS;

  private static final int BLOCK_BITS = 12;

  /** Groups that are listed together. */
  private static final int BLOCK = 1 << BLOCK_BITS;

  /** Ints of a group before its offsets: a bit for each number. */
  private static final int HEAD = 2;

  private static final long LEAST_NEAR = 1 << 16;

  /** True for files beyond 4 GiB: bits 32 to 39 of the offsets stand behind them, four an int. */
  private final boolean wide;

  /** Numbers from here on are kept in the sorted list. */
  private final long near;

  /** The groups, by block; what does not occur is null. */
  private final int[] @Nullable [] @Nullable [] blocks;

  private long[] farIds = new long[0];
  private long[] farOffsets = new long[0];
  private long size;
  private long greatestId;
  private boolean duplicates;

  /**
   * @param fileSize beyond the greatest offset; numbers of instances are mostly below it, too
   */
  StepIndex(long fileSize) {
    wide = fileSize > 1L << Integer.SIZE;
    long expected = Math.max(LEAST_NEAR, fileSize);
    blocks = new int[Math.toIntExact((expected >>> GROUP_BITS + BLOCK_BITS) + 1)][][];
    near = (long) blocks.length << GROUP_BITS + BLOCK_BITS;
  }

  /** Takes the instances of a stretch of the file, from one thread. */
  final class Filling implements RecordSink {

    /** Groups that are filled at the same time, as exporters jump back and forth. */
    private static final int OPEN = 8;

    private final long[] groups = new long[OPEN];
    private final long[] present = new long[OPEN];
    private final long[] offsets = new long[OPEN * GROUP];
    private long[] far = new long[0];
    private int farCount;
    private long count;
    private long greatest;
    private boolean twice;

    /** Notes an instance; numbers that stand twice are noticed later. */
    @Override
    public boolean take(long id, long offset) {
      count(id);
      if (id >= near) {
        takeFar(id, offset);
        return true;
      }
      int place = place(id);
      long bit = 1L << id;
      twice |= (present[place] & bit) != 0;
      present[place] |= bit;
      offsets[place * GROUP + (int) (id & (GROUP - 1))] = offset;
      return true;
    }

    private void count(long id) {
      count++;
      greatest = Math.max(greatest, id);
    }

    /** Where the group of a number is open. */
    private int place(long id) {
      long group = id >>> GROUP_BITS;
      int place = (int) group & (OPEN - 1);
      if (groups[place] != group) {
        put(place);
        groups[place] = group;
      }
      return place;
    }

    private void takeFar(long id, long offset) {
      if (farCount == far.length) {
        far = Arrays.copyOf(far, Math.max(16, farCount * 2));
      }
      far[farCount] = id;
      far[farCount + 1] = offset;
      farCount += 2;
    }

    /**
     * Notes an instance unless one of its number stands earlier in the file; only by one thread,
     * and in an index made by {@link #again}.
     */
    boolean takeFirst(long id, long offset) {
      if (id < near) {
        boolean isOpen = (present[place(id)] & 1L << id) != 0;
        return !isOpen && find(id) < 0 && take(id, offset);
      }
      boolean isFirst = putFar(id, offset);
      if (isFirst) {
        count(id);
      }
      return isFirst;
    }

    private void put(int place) {
      if (present[place] != 0) {
        StepIndex.this.put(groups[place], packed(present[place], offsets, place * GROUP));
        present[place] = 0;
      }
    }

    /** Hands over all that was taken. */
    void close() {
      for (int place = 0; place < OPEN; place++) {
        put(place);
      }
      StepIndex.this.add(this);
    }
  }

  private synchronized void add(Filling done) {
    int before = farIds.length;
    int more = done.farCount / 2;
    if (more > 0) {
      farIds = Arrays.copyOf(farIds, before + more);
      farOffsets = Arrays.copyOf(farOffsets, before + more);
      for (int i = 0; i < more; i++) {
        farIds[before + i] = done.far[2 * i];
        farOffsets[before + i] = done.far[2 * i + 1];
      }
    }
    size += done.count;
    greatestId = Math.max(greatestId, done.greatest);
    duplicates |= done.twice;
  }

  private synchronized void put(long number, int[] group) {
    int block = (int) (number >>> BLOCK_BITS);
    int @Nullable [] @Nullable [] groups = blocks[block];
    if (groups == null) {
      groups = new int[BLOCK][];
      blocks[block] = groups;
    }
    int place = (int) number & (BLOCK - 1);
    int[] before = groups[place];
    groups[place] = before == null ? group : merged(before, group);
  }

  /** A group as it is kept. */
  private int[] packed(long present, long[] offsets, int from) {
    int count = Long.bitCount(present);
    int[] group = new int[HEAD + count + (wide ? (count + 3) / 4 : 0)];
    group[0] = (int) present;
    group[1] = (int) (present >>> Integer.SIZE);
    int at = 0;
    for (int i = 0; i < GROUP; i++) {
      if ((present >>> i & 1) != 0) {
        long offset = offsets[from + i];
        group[HEAD + at] = (int) offset;
        if (wide) {
          group[HEAD + count + (at >>> 2)] |= (int) (offset >>> Integer.SIZE) << 8 * (at & 3);
        }
        at++;
      }
    }
    return group;
  }

  /** Two parts of a group in one. */
  private int[] merged(int[] one, int[] other) {
    long ofOne = present(one);
    long ofOther = present(other);
    duplicates |= (ofOne & ofOther) != 0;
    long[] offsets = new long[GROUP];
    for (int i = 0; i < GROUP; i++) {
      long bit = 1L << i;
      if ((ofOne & bit) != 0) {
        offsets[i] = offset(one, rank(ofOne, i));
      } else if ((ofOther & bit) != 0) {
        offsets[i] = offset(other, rank(ofOther, i));
      }
    }
    return packed(ofOne | ofOther, offsets, 0);
  }

  private static long present(int[] group) {
    return (long) group[1] << Integer.SIZE | (group[0] & 0xFFFFFFFFL);
  }

  /** How many numbers of a group occur before one; counted only where some are missing. */
  private static int rank(long present, int number) {
    long before = (1L << number) - 1;
    return (present & before) == before ? number : Long.bitCount(present & before);
  }

  private long offset(int[] group, int rank) {
    long low = group[HEAD + rank] & 0xFFFFFFFFL;
    if (!wide) {
      return low;
    }
    int highs = HEAD + Long.bitCount(present(group));
    long high = group[highs + (rank >>> 2)] >>> 8 * (rank & 3) & 0xFF;
    return high << Integer.SIZE | low;
  }

  /** To be called when all is taken, before anything is asked. */
  void finish() {
    if (farIds.length == 0) {
      return;
    }
    long[] sorted = farIds.clone();
    Arrays.sort(sorted);
    long[] offsets = new long[sorted.length];
    for (int i = 0; i < farIds.length; i++) {
      int place = Arrays.binarySearch(sorted, farIds[i]);
      duplicates |= offsets[place] != 0;
      offsets[place] = farOffsets[i];
    }
    farIds = sorted;
    farOffsets = offsets;
  }

  /** True if some number stands twice; then the records must be taken in order. */
  boolean hasDuplicates() {
    return duplicates;
  }

  /** An index without anything, to be filled by {@link Filling#takeFirst} with the same. */
  StepIndex again(long fileSize) {
    StepIndex empty = new StepIndex(fileSize);
    int count = 0;
    long[] ids = new long[farIds.length];
    for (long id : farIds) {
      if (count == 0 || ids[count - 1] != id) {
        ids[count++] = id;
      }
    }
    empty.farIds = Arrays.copyOf(ids, count);
    empty.farOffsets = new long[count];
    return empty;
  }

  /** False if another one of its number was there before. */
  private boolean putFar(long id, long offset) {
    int place = Arrays.binarySearch(farIds, id);
    boolean first = farOffsets[place] == 0;
    if (first) {
      farOffsets[place] = offset;
    }
    return first;
  }

  /** Offset of an instance, -1 if there is none. */
  long find(long id) {
    if (id < 0) {
      return -1;
    }
    if (id >= near) {
      int far = Arrays.binarySearch(farIds, id);
      return far < 0 ? -1 : farOffsets[far];
    }
    int @Nullable [] @Nullable [] groups = blocks[(int) (id >>> GROUP_BITS + BLOCK_BITS)];
    int[] group = groups == null ? null : groups[(int) (id >>> GROUP_BITS) & (BLOCK - 1)];
    if (group == null) {
      return -1;
    }
    long present = present(group);
    int number = (int) id & (GROUP - 1);
    return (present >>> number & 1) == 0 ? -1 : offset(group, rank(present, number));
  }

  /** How many instances. */
  long size() {
    return size;
  }

  /** Greatest instance number, 0 if there is none. */
  long greatestId() {
    return greatestId;
  }
}
