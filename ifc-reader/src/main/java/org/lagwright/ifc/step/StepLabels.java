package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import org.jspecify.annotations.Nullable;

/**
 * Texts that occur again and again in a file, such as names of properties: each is decoded once,
 * and equal ones come out as one object. Remembers a limited number; safe for several threads.
 */
final class StepLabels {

  private static final int REMEMBERED = 1 << 13;

  /** Longer texts hardly repeat. */
  private static final int LONGEST = 64;

  private record Label(int hash, byte[] bytes, String text) {

    boolean is(int otherHash, ByteBuffer in, int from, int length) {
      if (hash != otherHash || bytes.length != length) {
        return false;
      }
      for (int i = 0; i < length; i++) {
        if (bytes[i] != in.get(from + i)) {
          return false;
        }
      }
      return true;
    }
  }

  private final @Nullable Label[] labels = new Label[REMEMBERED];

  /** The text of the bytes between two quotes. */
  String text(ByteBuffer bytes, int from, int to) {
    int length = to - from;
    if (length > LONGEST) {
      return StepText.decode(bytes(bytes, from, length));
    }
    int hash = length;
    for (int i = from; i < to; i++) {
      hash = hash * 31 + bytes.get(i);
    }
    int slot = (hash ^ hash >>> 13) & (REMEMBERED - 1);
    Label label = labels[slot];
    if (label != null && label.is(hash, bytes, from, length)) {
      return label.text();
    }
    byte[] raw = bytes(bytes, from, length);
    String text = StepText.decode(raw);
    labels[slot] = new Label(hash, raw, text);
    return text;
  }

  private static byte[] bytes(ByteBuffer in, int from, int length) {
    byte[] raw = new byte[length];
    in.get(from, raw);
    return raw;
  }
}
