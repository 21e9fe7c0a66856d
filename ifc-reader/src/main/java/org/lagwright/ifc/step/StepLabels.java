package org.lagwright.ifc.step;

import java.util.Arrays;
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

    boolean is(int otherHash, byte[] in, int from, int to) {
      return hash == otherHash && Arrays.equals(bytes, 0, bytes.length, in, from, to);
    }
  }

  private final @Nullable Label[] labels = new Label[REMEMBERED];

  /** The text of the bytes between two quotes. */
  String text(byte[] bytes, int from, int to) {
    int length = to - from;
    if (length > LONGEST) {
      return StepText.decode(Arrays.copyOfRange(bytes, from, to));
    }
    int hash = length;
    for (int i = from; i < to; i++) {
      hash = hash * 31 + bytes[i];
    }
    int slot = (hash ^ hash >>> 13) & (REMEMBERED - 1);
    Label label = labels[slot];
    if (label != null && label.is(hash, bytes, from, to)) {
      return label.text();
    }
    byte[] raw = Arrays.copyOfRange(bytes, from, to);
    String text = StepText.decode(raw);
    labels[slot] = new Label(hash, raw, text);
    return text;
  }
}
