package org.lagwright.ifc.step;

import java.util.Arrays;

/**
 * A growing list of instance numbers, one or two bytes each where neighbours lie close together.
 */
final class IdLog {

  private byte[] bytes = new byte[16];
  private int length;
  private int count;
  private long last;

  void add(long id) {
    if (length + 10 > bytes.length) {
      bytes = Arrays.copyOf(bytes, bytes.length * 2);
    }
    long delta = id - last;
    long rest = (delta << 1) ^ (delta >> 63);
    while ((rest & ~0x7FL) != 0) {
      bytes[length++] = (byte) (rest | 0x80);
      rest >>>= 7;
    }
    bytes[length++] = (byte) rest;
    last = id;
    count++;
  }

  int size() {
    return count;
  }

  /** Writes all numbers in the order they were added, from a position on. */
  void copyTo(long[] target, int from) {
    long id = 0;
    int at = 0;
    for (int i = 0; i < count; i++) {
      long value = 0;
      int shift = 0;
      byte b;
      do {
        b = bytes[at++];
        value |= (b & 0x7FL) << shift;
        shift += 7;
      } while (b < 0);
      id += (value >>> 1) ^ -(value & 1);
      target[from + i] = id;
    }
  }
}
