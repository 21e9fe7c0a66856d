package org.lagwright.ifc.packed;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;

/** Writes the values of one element behind each other; what is small takes a byte. */
public final class PackedWriter {

  static final VarHandle LONGS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  /** One over the last decimal of a short figure. */
  static final double DECIMALS = 1e4;

  /** Beyond this a figure is not shorter than its bits. */
  private static final long LARGEST_SHORT = 1L << 47;

  private static final int ROOM = 256;
  private static final int LONGEST_NUMBER = 10;

  private final Vocabulary vocabulary;
  private long base;
  private byte[] bytes = new byte[ROOM];
  private int length;
  private Evidence[] seen = PackedReader.NONE;
  private int seenCount;

  /**
   * @param base instance number of the element; others are written as distances from it
   */
  public PackedWriter(Vocabulary vocabulary, long base) {
    this.vocabulary = vocabulary;
    this.base = base;
  }

  /** Goes on with another element. */
  void about(long step) {
    base = step;
    seenCount = 0;
  }

  int length() {
    return length;
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }

  private void makeRoom(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
    }
  }

  /** A number from 0 on, which is small as a rule; all bits of it count. */
  public void count(long value) {
    makeRoom(LONGEST_NUMBER);
    long rest = value;
    while ((rest & ~0x7FL) != 0) {
      bytes[length++] = (byte) (rest | 0x80);
      rest >>>= 7;
    }
    bytes[length++] = (byte) rest;
  }

  /** An instance number. */
  void step(long step) {
    count(folded(step));
  }

  /** The distance from the element, as a number from 0 on that is small where the distance is. */
  private long folded(long step) {
    long distance = step - base;
    return distance << 1 ^ distance >> 63;
  }

  /**
   * Writes the instance number of a new evidence, which the caller goes on with; or 0 and the
   * number among those that were written for this element.
   */
  boolean isNew(Evidence evidence) {
    for (int i = 0; i < seenCount; i++) {
      if (seen[i].equals(evidence)) {
        count(0);
        count(i);
        return false;
      }
    }
    if (seenCount == seen.length) {
      seen = Arrays.copyOf(seen, Math.max(8, 2 * seenCount));
    }
    seen[seenCount++] = evidence;
    count(1 + folded(evidence.step()));
    return true;
  }

  /** A figure, with all its bits. One of up to four decimals, as people write them, is short. */
  public void figure(double value) {
    long shifted = Math.round(value * DECIMALS);
    double again = shifted / DECIMALS;
    if (shifted < LARGEST_SHORT
        && shifted > -LARGEST_SHORT
        && Double.doubleToRawLongBits(again) == Double.doubleToRawLongBits(value)) {
      count(1 + (shifted << 1 ^ shifted >> 63));
    } else {
      count(0);
      makeRoom(Double.BYTES);
      LONGS.set(bytes, length, Double.doubleToRawLongBits(value));
      length += Double.BYTES;
    }
  }

  /** A text that is the element's own, or null. */
  public void text(@Nullable String text) {
    if (text == null) {
      count(0);
      return;
    }
    boolean wide = isWide(text);
    count(1 + ((long) text.length() << 1 | (wide ? 1 : 0)));
    makeRoom(2 * text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      bytes[length++] = (byte) c;
      if (wide) {
        bytes[length++] = (byte) (c >>> 8);
      }
    }
  }

  private static boolean isWide(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > 0xFF) {
        return true;
      }
    }
    return false;
  }

  /** A text that other elements have as well, or null. */
  public void word(@Nullable String word) {
    if (word == null) {
      count(0);
    } else {
      shared(vocabulary.words, word, Packings.TEXT);
    }
  }

  /** A value by its number from 2 on; after a 1 the value itself, where there is no room for it. */
  <T> void shared(Shared<T> known, T value, Packing<T> otherwise) {
    int number = known.numberOf(value);
    count(number == Shared.NONE ? 1 : number + 2);
    if (number == Shared.NONE) {
      otherwise.write(value, this);
    }
  }

  /** All that was written. */
  public byte[] bytes() {
    return Arrays.copyOf(bytes, length);
  }
}
