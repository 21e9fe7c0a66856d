package org.lagwright.ifc.step;

import java.util.Arrays;

/**
 * Instance numbers and offsets in file order, three bytes each where the steps are small. What a
 * stretch of the file holds is noted here before the index is laid out for all of it.
 */
final class RecordLog implements RecordSink {

  private static final int ESCAPE = 0xFF;
  private static final int MAX_SHORT_STEP = 0xFFFF;
  private static final int LONGEST = 17;
  private static final int LEAST_ROOM = 1 << 10;
  private static final int MOST_ROOM = 1 << 20;

  /** Bytes of a file for which one byte here is enough, mostly. */
  private static final int FILE_BYTES = 20;

  private final long firstOffset;
  private byte[] bytes;
  private int length;
  private long lastId;
  private long lastOffset;
  private long greatestId;
  private long count;

  /**
   * @param firstOffset at or before the first record
   * @param stretch bytes of the file that will be noted here
   */
  RecordLog(long firstOffset, long stretch) {
    this.firstOffset = firstOffset;
    this.lastOffset = firstOffset;
    this.bytes = new byte[(int) Math.max(LEAST_ROOM, Math.min(MOST_ROOM, stretch / FILE_BYTES))];
  }

  /** Notes a record; numbers that stand twice are noticed later. */
  @Override
  public boolean take(long id, long offset) {
    if (length + LONGEST > bytes.length) {
      bytes = Arrays.copyOf(bytes, bytes.length + (bytes.length >> 1) + LONGEST);
    }
    long idStep = id - lastId;
    long step = offset - lastOffset;
    long folded = (idStep << 1) ^ (idStep >> 63);
    if (folded >= 0 && folded < ESCAPE && step <= MAX_SHORT_STEP) {
      bytes[length] = (byte) folded;
      bytes[length + 1] = (byte) step;
      bytes[length + 2] = (byte) (step >>> 8);
      length += 3;
    } else {
      bytes[length++] = (byte) ESCAPE;
      putLong(id);
      putLong(offset);
    }
    lastId = id;
    lastOffset = offset;
    greatestId = Math.max(greatestId, id);
    count++;
    return true;
  }

  private void putLong(long value) {
    for (int shift = 0; shift < Long.SIZE; shift += 8) {
      bytes[length++] = (byte) (value >>> shift);
    }
  }

  private long getLong(int at) {
    long value = 0;
    for (int i = 7; i >= 0; i--) {
      value = value << 8 | (bytes[at + i] & 0xFF);
    }
    return value;
  }

  /** Tells all records in order. */
  void forEach(RecordSink sink) {
    Cursor cursor = new Cursor();
    while (cursor.at < length) {
      cursor.tellSome(sink);
    }
  }

  /** Goes through the records. */
  private final class Cursor {

    /** Few, so that the loop over them is called often and soon translated. */
    private static final int SOME = 64;

    private int at;
    private long id;
    private long offset = firstOffset;

    void tellSome(RecordSink sink) {
      for (int i = 0; i < SOME && at < length; i++) {
        int folded = bytes[at] & 0xFF;
        if (folded == ESCAPE) {
          id = getLong(at + 1);
          offset = getLong(at + 9);
          at += LONGEST;
        } else {
          id += (folded >>> 1) ^ -(folded & 1);
          offset += (bytes[at + 1] & 0xFF) | (bytes[at + 2] & 0xFF) << 8;
          at += 3;
        }
        sink.take(id, offset);
      }
    }
  }

  long greatestId() {
    return greatestId;
  }

  long size() {
    return count;
  }
}
