package org.lagwright.ifc.packed;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Reads what {@link PackedWriter} wrote, value by value in the same order. */
public final class PackedReader {

  private final Vocabulary vocabulary;
  private long base;
  private final byte[] bytes;
  private int at;

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
    long folded = count();
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
