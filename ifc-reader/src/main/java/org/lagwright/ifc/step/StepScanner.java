package org.lagwright.ifc.step;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Finds its way through exchange-file syntax without making objects: ends of strings, comments and
 * records. Eight bytes at a time where nothing of interest can be among them.
 */
final class StepScanner {

  static final long LOW = 0x0101010101010101L;
  static final long HIGH = 0x8080808080808080L;

  /** Shifted up by n bytes, the highest byte is n. */
  private static final long BYTE_NUMBERS = 0x0001020304050607L;

  private static final long SEMICOLONS = LOW * ';';
  private static final long SLASHES = LOW * '/';
  private static final long QUOTE_TO_SLASH = LOW * ('\'' ^ '/');

  private static final VarHandle WORDS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private StepScanner() {}

  /** Eight bytes as one number, the first of them lowest. */
  static long word(byte[] bytes, int at) {
    return (long) WORDS.get(bytes, at);
  }

  /**
   * Position just behind the semicolon that ends the statement starting at {@code from}, -1 if
   * there is none before the limit. Semicolons in strings and comments do not count.
   */
  static int endOfStatement(byte[] bytes, int from, int limit) {
    int at = skipPlain(bytes, from, limit);
    while (at >= 0 && at < limit) {
      byte b = bytes[at];
      if (b == ';') {
        return at + 1;
      }
      at = skipPlain(bytes, endOfMarked(bytes, at, limit), limit);
    }
    return -1;
  }

  /** Position behind a string, a comment or a mere slash; -1 if it does not end. */
  static int endOfMarked(byte[] bytes, int at, int limit) {
    if (bytes[at] == '\'') {
      return endOfString(bytes, at, limit);
    }
    boolean comment = at + 1 < limit && bytes[at + 1] == '*';
    return comment ? endOfComment(bytes, at, limit) : at + 1;
  }

  /**
   * First position from {@code at} on that holds a semicolon, a quote or a slash; the limit if none
   * does, -1 if already {@code at} is negative.
   */
  private static int skipPlain(byte[] bytes, int at, int limit) {
    if (at < 0) {
      return at;
    }
    int i = at;
    while (i + 8 <= limit) {
      long word = word(bytes, i);
      long hits = marks(word);
      if (hits != 0) {
        return i + firstByte(hits);
      }
      i += 8;
    }
    while (i < limit) {
      byte b = bytes[i];
      if (b == ';' || b == '\'' || b == '/') {
        return i;
      }
      i++;
    }
    return limit;
  }

  /** High bit set in the bytes that are a semicolon, a quote or a slash; see {@link #zeroBytes}. */
  static long marks(long word) {
    // a quote and a slash differ in one bit, so one test finds both
    return zeroBytes(word ^ SEMICOLONS) | zeroBytes((word | QUOTE_TO_SLASH) ^ SLASHES);
  }

  /** First position from {@code at} on that holds a byte; the limit if none does. */
  static int find(byte[] bytes, int at, int limit, byte wanted) {
    long pattern = LOW * wanted;
    int i = at;
    while (i + 8 <= limit) {
      long hits = zeroBytes(word(bytes, i) ^ pattern);
      if (hits != 0) {
        return i + firstByte(hits);
      }
      i += 8;
    }
    while (i < limit && bytes[i] != wanted) {
      i++;
    }
    return Math.min(i, limit);
  }

  /**
   * Number of the first byte, 0 to 7, whose high bit is set; the other bits do not count. By a
   * multiplication, as the quick compiler of Java counts zeros in many steps.
   *
   * @param highBits not 0
   */
  static int firstByte(long highBits) {
    return (int) ((((highBits & -highBits) >>> 7) * BYTE_NUMBERS) >>> 56);
  }

  /** High bit set in each byte that is zero; the lowest set bit is always right. */
  static long zeroBytes(long word) {
    return (word - LOW) & ~word & HIGH;
  }

  /**
   * Position behind the closing quote. Two quotes in a row are one inside the string, and so is a
   * quote that {@code \\S\\} escapes, unless what follows shows that the string ends there.
   */
  static int endOfString(byte[] bytes, int openingQuote, int limit) {
    int i = find(bytes, openingQuote + 1, limit, (byte) '\'');
    while (i < limit) {
      if (isEscapedQuote(bytes, openingQuote, i, limit)) {
        i = find(bytes, i + 1, limit, (byte) '\'');
      } else if (i + 1 < limit && bytes[i + 1] == '\'') {
        i = find(bytes, i + 2, limit, (byte) '\'');
      } else {
        return i + 1;
      }
    }
    return -1;
  }

  private static boolean isEscapedQuote(byte[] bytes, int openingQuote, int quote, int limit) {
    boolean escaped =
        quote - 3 > openingQuote
            && bytes[quote - 1] == '\\'
            && bytes[quote - 2] == 'S'
            && bytes[quote - 3] == '\\'
            && bytes[quote - 4] != '\\';
    if (!escaped) {
      return false;
    }
    int next = skipBlanks(bytes, quote + 1, limit);
    return next >= limit || (bytes[next] != ',' && bytes[next] != ')');
  }

  private static int skipBlanks(byte[] bytes, int from, int limit) {
    int i = from;
    while (i < limit && bytes[i] >= 0 && bytes[i] <= ' ') {
      i++;
    }
    return i;
  }

  /** Position behind the closing mark of a comment. */
  static int endOfComment(byte[] bytes, int openingSlash, int limit) {
    int i = find(bytes, openingSlash + 3, limit, (byte) '/');
    while (i < limit && bytes[i - 1] != '*') {
      i = find(bytes, i + 1, limit, (byte) '/');
    }
    return i < limit ? i + 1 : -1;
  }

  /** Position of the next byte that is neither white space nor in a comment; the limit if none. */
  static int skipSpace(byte[] bytes, int from, int limit) {
    int end = endOfSpace(bytes, from, limit);
    return end < 0 ? limit : end;
  }

  /** Like {@link #skipSpace}, but -1 if a comment does not end before the limit. */
  static int endOfSpace(byte[] bytes, int from, int limit) {
    int i = from;
    while (i < limit) {
      int b = bytes[i];
      if (b == '/' && i + 1 < limit && bytes[i + 1] == '*') {
        i = endOfComment(bytes, i, limit);
        if (i < 0) {
          return -1;
        }
      } else if (b <= ' ' && b >= 0) {
        i++;
      } else {
        return i;
      }
    }
    return limit;
  }

  static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }

  /** True for letters, digits, underscore and hyphen: what a keyword is made of. */
  static boolean isKeywordByte(int b) {
    return (b >= 'A' && b <= 'Z')
        || (b >= 'a' && b <= 'z')
        || (b >= '0' && b <= '9')
        || b == '_'
        || b == '-';
  }
}
