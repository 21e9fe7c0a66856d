package org.lagwright.ifc.step;

import java.nio.ByteBuffer;

/**
 * Guesses where a file can be cut into pieces of about one size: at a number sign that a digit
 * follows and a semicolon precedes. That may lie in a string or a comment, which only going through
 * the file can tell.
 */
final class StepCuts {

  private final StepBytes bytes;
  private final long start;
  private final long distance;

  /**
   * @param start where the first piece begins
   * @param distance bytes from one cut to the next, and how far each is looked for
   */
  StepCuts(StepBytes bytes, long start, long distance) {
    this.bytes = bytes;
    this.start = start;
    this.distance = distance;
  }

  /** How many pieces there are at most. */
  int count() {
    return Math.toIntExact((bytes.size() - start - 1) / distance + 1);
  }

  /** Where a piece begins, -1 if there is no cut and it belongs to the one before. */
  long begin(int piece) {
    if (piece == 0) {
      return start;
    }
    long from = start + piece * distance;
    bytes.await(from + distance);
    return next(from);
  }

  /** Where a piece ends: at the next cut there is, or with the file. */
  long end(int piece) {
    for (int next = piece + 1; next < count(); next++) {
      long begin = begin(next);
      if (begin >= 0) {
        return begin;
      }
    }
    bytes.await(bytes.size());
    return bytes.size();
  }

  private long next(long offset) {
    ByteBuffer window = bytes.window(offset);
    int begin = StepBytes.inWindow(offset);
    int stop = (int) Math.min(window.limit() - 1L, begin + distance - 1);
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
