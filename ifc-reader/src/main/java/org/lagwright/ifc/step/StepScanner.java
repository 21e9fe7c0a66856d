package org.lagwright.ifc.step;

import java.nio.ByteBuffer;

/**
 * Finds its way through exchange-file syntax without making objects: ends of strings, comments and
 * records. Eight bytes at a time where nothing of interest can be among them.
 */
final class StepScanner {

  private static final long LOW = 0x0101010101010101L;
  private static final long HIGH = 0x8080808080808080L;
  private static final long SEMICOLONS = LOW * ';';
  private static final long QUOTES = LOW * '\'';
  private static final long SLASHES = LOW * '/';

  private StepScanner() {}

  /**
   * Position just behind the semicolon that ends the statement starting at {@code from}, -1 if the
   * window ends first. Semicolons in strings and comments do not count.
   */
  static int endOfStatement(ByteBuffer bytes, int from) {
    int at = from;
    int limit = bytes.limit();
    while (true) {
      at = skipPlain(bytes, at, limit);
      if (at >= limit) {
        return -1;
      }
      byte b = bytes.get(at);
      if (b == ';') {
        return at + 1;
      }
      if (b == '\'') {
        at = endOfString(bytes, at, limit);
      } else if (b == '/' && at + 1 < limit && bytes.get(at + 1) == '*') {
        at = endOfComment(bytes, at, limit);
      } else {
        at++;
      }
      if (at < 0) {
        return -1;
      }
    }
  }

  /** First position from {@code at} on that holds a semicolon, a quote or a slash. */
  private static int skipPlain(ByteBuffer bytes, int at, int limit) {
    int i = at;
    while (i + 8 <= limit) {
      long word = bytes.getLong(i);
      long hits =
          zeroBytes(word ^ SEMICOLONS) | zeroBytes(word ^ QUOTES) | zeroBytes(word ^ SLASHES);
      if (hits != 0) {
        return i + (Long.numberOfTrailingZeros(hits) >>> 3);
      }
      i += 8;
    }
    while (i < limit) {
      byte b = bytes.get(i);
      if (b == ';' || b == '\'' || b == '/') {
        return i;
      }
      i++;
    }
    return limit;
  }

  /** High bit set in each byte that is zero; the lowest set bit is always right. */
  private static long zeroBytes(long word) {
    return (word - LOW) & ~word & HIGH;
  }

  /**
   * Position behind the closing quote. Two quotes in a row are one inside the string, and so is a
   * quote that {@code \\S\\} escapes, unless what follows shows that the string ends there.
   */
  static int endOfString(ByteBuffer bytes, int openingQuote, int limit) {
    int i = openingQuote + 1;
    while (i < limit) {
      if (bytes.get(i) == '\'') {
        if (isEscapedQuote(bytes, openingQuote, i, limit)) {
          i++;
          continue;
        }
        if (i + 1 < limit && bytes.get(i + 1) == '\'') {
          i++;
        } else {
          return i + 1;
        }
      }
      i++;
    }
    return -1;
  }

  private static boolean isEscapedQuote(ByteBuffer bytes, int openingQuote, int quote, int limit) {
    boolean escaped =
        quote - 3 > openingQuote
            && bytes.get(quote - 1) == '\\'
            && bytes.get(quote - 2) == 'S'
            && bytes.get(quote - 3) == '\\'
            && bytes.get(quote - 4) != '\\';
    if (!escaped) {
      return false;
    }
    int next = skipSpace(bytes, quote + 1, limit);
    return next >= limit || (bytes.get(next) != ',' && bytes.get(next) != ')');
  }

  /** Position behind the closing mark of a comment. */
  static int endOfComment(ByteBuffer bytes, int openingSlash, int limit) {
    for (int i = openingSlash + 2; i + 1 < limit; i++) {
      if (bytes.get(i) == '*' && bytes.get(i + 1) == '/') {
        return i + 2;
      }
    }
    return -1;
  }

  /** Position of the next byte that is neither white space nor in a comment; the limit if none. */
  static int skipSpace(ByteBuffer bytes, int from, int limit) {
    int i = from;
    while (i < limit) {
      int b = bytes.get(i);
      if (b == '/' && i + 1 < limit && bytes.get(i + 1) == '*') {
        int end = endOfComment(bytes, i, limit);
        if (end < 0) {
          return limit;
        }
        i = end;
      } else if (b <= ' ' && b >= 0) {
        i++;
      } else {
        return i;
      }
    }
    return limit;
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
