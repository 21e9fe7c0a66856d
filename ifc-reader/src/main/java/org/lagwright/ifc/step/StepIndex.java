package org.lagwright.ifc.step;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLongArray;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.threads.Workers;

/**
 * Where each instance starts: instance number to byte offset. One bit for each number says whether
 * it occurs, and how many bits lie before it says where its offset stands among all offsets. That
 * takes 4 to 5 bytes an instance, whatever gaps the numbers have; numbers far beyond the rest are
 * kept in a sorted list, at 8 bytes more. Once filled, safe for several threads.
 */
final class StepIndex {

  private static final int WORD_BITS = 6;
  private static final long MIN_BITS = 1 << 16;

  /** Numbers up to this many times the count of records have a bit each. */
  private static final long BITS_PER_RECORD = 32;

  private final long bitCount;
  private final AtomicLongArray present;
  private final int[] ranks;
  private final AtomicBoolean duplicates = new AtomicBoolean();
  private long[] farIds = new long[0];
  private int nearCount;
  private int[] low = new int[0];

  /** Bits 32 to 39 of the offsets, for files beyond 4 GiB. */
  private byte @Nullable [] high;

  private StepIndex(long records, long greatestId) {
    long bits = Math.min(greatestId, Math.max(MIN_BITS, records * BITS_PER_RECORD)) + 1;
    int words = (int) ((bits + 63) >>> WORD_BITS);
    bitCount = (long) words << WORD_BITS;
    present = new AtomicLongArray(words);
    ranks = new int[words];
  }

  /**
   * Finds room for the records of all logs.
   *
   * @param fileSize beyond the greatest offset
   */
  static StepIndex layOut(List<RecordLog> logs, long fileSize, Workers workers) {
    long records = 0;
    long greatest = 0;
    for (RecordLog log : logs) {
      records += log.size();
      greatest = Math.max(greatest, log.greatestId());
    }
    StepIndex index = new StepIndex(records, greatest);
    Marking marking = index.new Marking(logs);
    workers.inOrder(logs.size(), 1, marking);
    index.takeFarIds(marking.farIds);
    index.countRanks();
    index.low = new int[index.size()];
    index.high = fileSize > 1L << Integer.SIZE ? new byte[index.size()] : null;
    return index;
  }

  /** Notes which numbers occur, one log after the other. */
  private final class Marking implements Workers.Work<Marker> {
    private final List<RecordLog> logs;
    private long[] farIds = new long[0];

    Marking(List<RecordLog> logs) {
      this.logs = logs;
    }

    @Override
    public Marker on(int from, int to) {
      return new Marker().mark(logs.get(from));
    }

    @Override
    public void take(Marker done) {
      int before = farIds.length;
      farIds = Arrays.copyOf(farIds, before + done.farCount);
      System.arraycopy(done.far, 0, farIds, before, done.farCount);
    }
  }

  /** Notes which numbers of one log occur. */
  private final class Marker implements RecordSink {
    private int word;
    private long mask;
    private long[] far = new long[0];
    private int farCount;

    Marker mark(RecordLog log) {
      log.forEach(this);
      flush();
      return this;
    }

    @Override
    public boolean take(long id, long offset) {
      if (id >= bitCount) {
        takeFar(id);
        return true;
      }
      int itsWord = (int) (id >>> WORD_BITS);
      if (itsWord != word) {
        flush();
        word = itsWord;
      }
      long bit = 1L << id;
      if ((mask & bit) != 0) {
        duplicates.set(true);
      }
      mask |= bit;
      return true;
    }

    private void takeFar(long id) {
      if (farCount == far.length) {
        far = Arrays.copyOf(far, Math.max(16, farCount * 2));
      }
      far[farCount++] = id;
    }

    private void flush() {
      long before = present.get(word);
      while (!present.compareAndSet(word, before, before | mask)) {
        before = present.get(word);
      }
      if ((before & mask) != 0) {
        duplicates.set(true);
      }
      mask = 0;
    }
  }

  private void takeFarIds(long[] all) {
    Arrays.sort(all);
    int count = 0;
    for (int i = 0; i < all.length; i++) {
      if (i > 0 && all[i] == all[i - 1]) {
        duplicates.set(true);
      } else {
        all[count++] = all[i];
      }
    }
    farIds = Arrays.copyOf(all, count);
  }

  private void countRanks() {
    int rank = 0;
    for (int word = 0; word < ranks.length; word++) {
      ranks[word] = rank;
      rank += Long.bitCount(present.get(word));
    }
    nearCount = rank;
  }

  /** True if some number stands twice; then the records must be put in order. */
  boolean hasDuplicates() {
    return duplicates.get();
  }

  /** Puts the records of all logs into their places; only if there are no duplicates. */
  void fill(List<RecordLog> logs, Workers workers) {
    workers.inOrder(logs.size(), 1, new Filling(logs));
  }

  private final class Filling implements Workers.Work<Integer>, RecordSink {
    private final List<RecordLog> logs;

    Filling(List<RecordLog> logs) {
      this.logs = logs;
    }

    @Override
    public Integer on(int from, int to) {
      logs.get(from).forEach(this);
      return to;
    }

    @Override
    public boolean take(long id, long offset) {
      set(rank(id), offset);
      return true;
    }
  }

  /** Puts one record into its place; false if an earlier one has it. */
  boolean putFirst(long id, long offset) {
    int rank = rank(id);
    boolean first = offset(rank) == 0;
    if (first) {
      set(rank, offset);
    }
    return first;
  }

  private void set(int rank, long offset) {
    low[rank] = (int) offset;
    if (high != null) {
      high[rank] = (byte) (offset >>> Integer.SIZE);
    }
  }

  private long offset(int rank) {
    long upper = high == null ? 0 : high[rank] & 0xFFL;
    return upper << Integer.SIZE | (low[rank] & 0xFFFFFFFFL);
  }

  /** Place of a number among all, negative if it does not occur. */
  private int rank(long id) {
    if (id >= bitCount) {
      int far = Arrays.binarySearch(farIds, id);
      return far < 0 ? -1 : nearCount + far;
    }
    if (id < 0) {
      return -1;
    }
    int word = (int) (id >>> WORD_BITS);
    long bits = present.get(word);
    long bit = 1L << id;
    return (bits & bit) == 0 ? -1 : ranks[word] + Long.bitCount(bits & (bit - 1));
  }

  /** Offset of an instance, -1 if there is none. */
  long find(long id) {
    int rank = rank(id);
    return rank < 0 ? -1 : offset(rank);
  }

  /** How many instances. */
  int size() {
    return nearCount + farIds.length;
  }

  /** Greatest instance number, 0 if there is none. */
  long greatestId() {
    if (farIds.length > 0) {
      return farIds[farIds.length - 1];
    }
    for (int word = ranks.length - 1; word >= 0; word--) {
      long bits = present.get(word);
      if (bits != 0) {
        return ((long) word << WORD_BITS) + 63 - Long.numberOfLeadingZeros(bits);
      }
    }
    return 0;
  }
}
