package org.lagwright.ifc.step;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Where each instance starts: instance number to byte offset. Numbers come in groups of 64, which
 * lie one behind the other in large pieces of memory. A group is a bit for each number that occurs
 * and, behind it, the offset where it begins and how far from there each of its instances lies, in
 * two bytes; that takes 2.3 bytes an instance where numbers follow each other, and more where they
 * leave gaps. A group that the file comes back to, or that lies wide apart, has room for all 64
 * offsets as they are. Numbers far beyond the rest are kept in a sorted list. Several threads may
 * fill it at the same time; once {@link #finish} was called, several may ask.
 */
final class StepIndex {

  private static final int GROUP_BITS = 6;

  /** Numbers in a group. */
  private static final int GROUP = 1 << GROUP_BITS;

  private static final int BLOCK_BITS = 12;

  /** Groups that are listed together. */
  private static final int BLOCK = 1 << BLOCK_BITS;

  /** Most longs of a group: the bits, and each offset as it is. */
  private static final int ROOMY = 1 + GROUP;

  /** Longs of a group of distances before these: the bits, and the offset where it begins. */
  private static final int HEAD = 2;

  /** Distances in a long. */
  private static final int DISTANCES = 4;

  private static final int DISTANCE_BITS = Long.SIZE / DISTANCES;
  private static final long GREATEST_DISTANCE = (1L << DISTANCE_BITS) - 1;

  /** Bytes of a file, as a power of two, for which a slab has a long. */
  private static final int FILE_BITS = 8;

  private static final int LEAST_SLAB_BITS = 8;
  private static final int MOST_SLAB_BITS = 17;

  private static final long LEAST_NEAR = 1 << 16;

  /** Numbers from here on are kept in the sorted list. */
  private final long near;

  private final int slabBits;

  /** The groups; a new slab is taken where one does not fit into the last. */
  private long[][] slabs = new long[16][];

  private int slabCount;

  /** Longs of the last slab that are used. */
  private int used;

  /**
   * By block where in the slabs each group lies, times two, and one more if it has room for all;
   * zero for what does not occur.
   */
  private final int[] @Nullable [] blocks;

  private long[] farIds = new long[0];
  private long[] farOffsets = new long[0];
  private long size;
  private long greatestId;
  private boolean duplicates;

  /**
   * @param fileSize beyond the greatest offset; numbers of instances are mostly below it, too
   */
  StepIndex(long fileSize) {
    long expected = Math.max(LEAST_NEAR, fileSize);
    blocks = new int[Math.toIntExact((expected >>> GROUP_BITS + BLOCK_BITS) + 1)][];
    near = (long) blocks.length << GROUP_BITS + BLOCK_BITS;
    int bits = Long.SIZE - Long.numberOfLeadingZeros(fileSize >>> FILE_BITS);
    slabBits = Math.max(LEAST_SLAB_BITS, Math.min(MOST_SLAB_BITS, bits));
    slabs[0] = new long[1 << slabBits];
    slabCount = 1;
    // zero stands for no group
    used = 1;
  }

  /** Takes the instances of a stretch of the file, from one thread. */
  final class Filling implements RecordSink {

    /** Groups that are filled at the same time, as exporters jump back and forth. */
    private static final int OPEN = 8;

    private final long[] packed = new long[ROOMY];
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
        int length = pack(present[place], offsets, place * GROUP, packed);
        StepIndex.this.put(groups[place], packed, length);
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

  private synchronized void put(long number, long[] group, int length) {
    int block = (int) (number >>> BLOCK_BITS);
    int[] places = blocks[block];
    if (places == null) {
      places = new int[BLOCK];
      blocks[block] = places;
    }
    int i = (int) number & (BLOCK - 1);
    if (places[i] == 0) {
      places[i] = add(group, length);
    } else {
      places[i] = merge(places[i], group, length);
    }
  }

  /** Where in the slabs a group was put. */
  private int add(long[] group, int length) {
    if (used + length > 1 << slabBits) {
      if (slabCount == slabs.length) {
        slabs = Arrays.copyOf(slabs, 2 * slabCount);
      }
      slabs[slabCount++] = new long[1 << slabBits];
      used = 0;
    }
    System.arraycopy(group, 0, slabs[slabCount - 1], used, length);
    int place = Math.addExact(slabCount - 1 << slabBits, used) << 1;
    used += length;
    return length == ROOMY ? place | 1 : place;
  }

  /**
   * A group as it is kept; its instances lie close together, or it has room for all.
   *
   * @return how many longs it takes
   */
  private static int pack(long present, long[] offsets, int from, long[] group) {
    long first = Long.MAX_VALUE;
    long last = 0;
    for (long rest = present; rest != 0; rest &= rest - 1) {
      long offset = offsets[from + Long.numberOfTrailingZeros(rest)];
      first = Math.min(first, offset);
      last = Math.max(last, offset);
    }
    group[0] = present;
    if (last - first > GREATEST_DISTANCE) {
      System.arraycopy(offsets, from, group, 1, GROUP);
      return ROOMY;
    }
    group[1] = first;
    int length = HEAD;
    int bits = Long.SIZE;
    for (long rest = present; rest != 0; rest &= rest - 1) {
      if (bits == Long.SIZE) {
        bits = 0;
        group[length++] = 0;
      }
      group[length - 1] |= offsets[from + Long.numberOfTrailingZeros(rest)] - first << bits;
      bits += DISTANCE_BITS;
    }
    return length;
  }

  /** Two parts of a group in one, which has room for all; where it is. */
  private int merge(int place, long[] more, int length) {
    long[] slab = slabs[place >>> 1 + slabBits];
    int at = at(place);
    long before = slab[at];
    duplicates |= (before & more[0]) != 0;
    long[] whole = new long[ROOMY];
    whole[0] = before | more[0];
    for (int i = 0; i < GROUP; i++) {
      if ((before >>> i & 1) != 0) {
        whole[1 + i] = offset(slab, at, (place & 1) != 0, i);
      } else if ((more[0] >>> i & 1) != 0) {
        whole[1 + i] = offset(more, 0, length == ROOMY, i);
      }
    }
    if ((place & 1) == 0) {
      return add(whole, ROOMY);
    }
    System.arraycopy(whole, 0, slab, at, ROOMY);
    return place;
  }

  /** Where a group begins in its slab. */
  private int at(int place) {
    return place >>> 1 & (1 << slabBits) - 1;
  }

  /** How many numbers of a group occur before one; counted only where some are missing. */
  private static int rank(long present, int number) {
    long before = (1L << number) - 1;
    return (present & before) == before ? number : Long.bitCount(present & before);
  }

  /** Offset of a number that occurs in a group. */
  private static long offset(long[] slab, int at, boolean roomy, int number) {
    if (roomy) {
      return slab[at + 1 + number];
    }
    int rank = rank(slab[at], number);
    long distances = slab[at + HEAD + rank / DISTANCES];
    return slab[at + 1] + (distances >>> rank % DISTANCES * DISTANCE_BITS & GREATEST_DISTANCE);
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
    int[] places = blocks[(int) (id >>> GROUP_BITS + BLOCK_BITS)];
    int place = places == null ? 0 : places[(int) (id >>> GROUP_BITS) & (BLOCK - 1)];
    if (place == 0) {
      return -1;
    }
    long[] slab = slabs[place >>> 1 + slabBits];
    int at = at(place);
    int number = (int) id & (GROUP - 1);
    return (slab[at] >>> number & 1) == 0 ? -1 : offset(slab, at, (place & 1) != 0, number);
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
