package org.lagwright.ifc.packed;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;

/** Reads what {@link PackedWriter} wrote, value by value in the same order. */
public final class PackedReader {

  static final Evidence[] NONE = {};

  private final Vocabulary vocabulary;
  private long base;
  private final byte[] bytes;
  private int at;
  private Evidence[] seen = NONE;
  private int seenCount;

  /**
   * @param base as it was for the writer
   */
  public PackedReader(Vocabulary vocabulary, long base, byte[] bytes) {
    this(vocabulary, base, bytes, 0);
  }

  PackedReader(Vocabulary vocabulary, long base, byte[] bytes, int start) {
    this.vocabulary = vocabulary;
    this.base = base;
    this.bytes = bytes;
    this.at = start;
  }

  /** Goes on with another element. */
  void about(long step) {
    base = step;
    seenCount = 0;
  }

  /** Remembers an evidence that was read for this element. */
  Evidence see(Evidence evidence) {
    if (seenCount == seen.length) {
      seen = Arrays.copyOf(seen, Math.max(8, 2 * seenCount));
    }
    seen[seenCount++] = evidence;
    return evidence;
  }

  /** One of those that were read before, by its number. */
  Evidence seen(int number) {
    return seen[number];
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }

  /** See {@link PackedWriter#count}. */
  public long count() {
    long value = bytes[at++];
    if (value >= 0) {
      return value;
    }
    value &= 0x7F;
    int shift = 7;
    byte next;
    do {
      next = bytes[at++];
      value |= (next & 0x7FL) << shift;
      shift += 7;
    } while (next < 0);
    return value;
  }

  long step() {
    return step(count());
  }

  /** The instance number behind a distance as it was written. */
  long step(long folded) {
    return base + (folded >>> 1 ^ -(folded & 1));
  }

  /** See {@link PackedWriter#figure}. */
  public double figure() {
    long code = count();
    if (code != 0) {
      long folded = code - 1;
      return (folded >>> 1 ^ -(folded & 1)) / PackedWriter.DECIMALS;
    }
    double value = Double.longBitsToDouble((long) PackedWriter.LONGS.get(bytes, at));
    at += Double.BYTES;
    return value;
  }

  /** See {@link PackedWriter#text}. */
  public @Nullable String text() {
    long code = count() - 1;
    if (code < 0) {
      return null;
    }
    int chars = (int) (code >>> 1);
    int count = (code & 1) == 0 ? chars : 2 * chars;
    String text =
        new String(
            bytes,
            at,
            count,
            count == chars ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16LE);
    at += count;
    return text;
  }

  /** See {@link PackedWriter#word}. */
  public @Nullable String word() {
    long code = count();
    return code == 0 ? null : shared(vocabulary.words, code, Packings.TEXT);
  }

  <T> T shared(Shared<T> known, Packing<T> otherwise) {
    return shared(known, count(), otherwise);
  }

  private <T> T shared(Shared<T> known, long code, Packing<T> otherwise) {
    return code == 1 ? otherwise.read(this) : known.value((int) code - 2);
  }
}
