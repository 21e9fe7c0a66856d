package org.lagwright.ifc.step;

/**
 * Guesses where a file can be cut into pieces of about one size: at a number sign that a digit
 * follows and a semicolon precedes. That may lie in a string or a comment, which only going through
 * the file can tell.
 */
final class StepCuts {

  /** Bytes that are looked through at a time; mostly one piece holds a cut. */
  private static final int PIECE = 1 << 12;

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
    byte[] piece = new byte[(int) Math.min(PIECE, distance)];
    long stop = Math.min(bytes.size(), offset + distance) - 1;
    byte before = 0;
    for (long from = offset; from < stop; ) {
      int length = bytes.read(from, piece);
      for (int i = 0; i + 1 < length && from + i < stop; i++) {
        if (before == ';' && piece[i] == '#' && StepScanner.isDigit(piece[i + 1])) {
          return from + i;
        }
        before = piece[i] >= 0 && piece[i] <= ' ' ? before : piece[i];
      }
      from += Math.max(1, length - 1);
    }
    return -1;
  }
}
