package org.lagwright.ifc.step;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Finds where the arguments of a list start; eight bytes at a time where they hide nothing. */
final class ArgumentStarts {

  private static final long COMMAS = StepScanner.LOW * ',';
  private static final long CLOSING = StepScanner.LOW * ')';

  /** A mark in the first of eight bytes. */
  private static final long FIRST = 1L << 7;

  /** Room for the arguments of most records, their number and the end of the last one. */
  private static final int USUAL = 11;

  private ArgumentStarts() {}

  /**
   * The starts of all arguments of the list that opens at a bracket.
   *
   * @param open position of {@code (}
   * @param limit behind the end of the record, or where the bytes end
   * @return how many arguments there are, and behind that the start of each and one more, which is
   *     one byte behind what ended the last one; null if there is none, or too many brackets within
   *     brackets
   */
  static int @Nullable [] of(byte[] bytes, int open, int limit, StepLimits limits) {
    int first = StepScanner.skipSpace(bytes, open + 1, limit);
    if (first < limit && bytes[first] == ')') {
      return null;
    }
    int[] starts = new int[USUAL];
    starts[1] = open + 1;
    int depth = 1;
    int i = open + 1;
    while (i >= 0 && i < limit && depth > 0) {
      int from = i;
      i = from + 8 <= limit ? from + 8 : from + 1;
      long hits = i > from + 1 ? marks(StepScanner.word(bytes, from)) : FIRST;
      while (hits != 0) {
        int at = from + StepScanner.firstByte(hits);
        byte b = bytes[at];
        hits &= hits - 1;
        if (b == '\'' || b == '/') {
          i = StepScanner.endOfMarked(bytes, at, limit);
          break;
        }
        depth = depth(b, depth);
        if (depth > limits.maxNesting()) {
          return null;
        }
        if (depth == 0 || (b == ',' && depth == 1)) {
          if (++starts[0] + 1 == starts.length) {
            starts = Arrays.copyOf(starts, starts.length * 2);
          }
          starts[starts[0] + 1] = at + 1;
          hits = depth == 0 ? 0 : hits;
        }
      }
    }
    return starts;
  }

  /**
   * High bit set in the bytes that may open, close, part or hide arguments, and perhaps in a few
   * behind them that do not.
   */
  private static long marks(long word) {
    // both brackets differ in one bit, so one test finds both
    return StepScanner.marks(word)
        | StepScanner.zeroBytes(word ^ COMMAS)
        | StepScanner.zeroBytes((word | StepScanner.LOW) ^ CLOSING);
  }

  private static int depth(byte b, int depth) {
    return switch (b) {
      case '(' -> depth + 1;
      case ')' -> depth - 1;
      // a statement ends here; a missing bracket must not swallow the next one
      case ';' -> 0;
      default -> depth;
    };
  }

  /** True if the bytes did not end before the list did. */
  static boolean areWhole(int[] starts, byte[] bytes) {
    return depth(bytes[starts[starts[0] + 1] - 1], 1) == 0;
  }
}
