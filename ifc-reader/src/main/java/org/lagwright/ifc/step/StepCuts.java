package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * Guesses where a file can be cut: at a number sign that a digit follows and a semicolon precedes.
 * That may lie in a string or a comment, which only going through the file can tell.
 */
final class StepCuts {

  private final StepBytes bytes;
  private final int distance;

  /**
   * @param distance bytes from one cut to the next, and how far each is looked for
   */
  StepCuts(StepBytes bytes, int distance) {
    this.bytes = bytes;
    this.distance = distance;
  }

  /** Ascending starts of the parts, the first of them as given. */
  List<Long> from(long start) {
    List<Long> starts = new ArrayList<>(List.of(start));
    for (long at = start + distance; at < bytes.size(); at += distance) {
      long cut = next(at);
      if (cut >= 0) {
        starts.add(cut);
      }
    }
    return starts;
  }

  private long next(long offset) {
    ByteBuffer window = bytes.window(offset);
    int begin = StepBytes.inWindow(offset);
    int stop = (int) Math.min(window.limit() - 1L, (long) begin + distance);
    for (int i = begin; i < stop; i++) {
      if (window.get(i) == '#' && isDigit(window.get(i + 1)) && endsStatement(window, i - 1)) {
        return offset + (i - begin);
      }
    }
    return -1;
  }

  private static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }

  private static boolean endsStatement(ByteBuffer window, int last) {
    int i = last;
    while (i > 0 && window.get(i) >= 0 && window.get(i) <= ' ') {
      i--;
    }
    return i >= 0 && window.get(i) == ';';
  }
}
