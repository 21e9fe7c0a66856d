package org.lagwright.ifc.step;

import org.jspecify.annotations.Nullable;

/**
 * Looks at one instance after the other without decoding them: the keyword, and the first argument
 * where that is a text. For records of which there are millions and few are wanted. Not safe for
 * several threads; each takes its own.
 */
public final class StepGlance {

  private static final byte[] NOTHING = new byte[0];

  /** An eighth of the bytes that are read first for an instance that leaves its page. */
  private static final int SHORT = 1 << 8;

  private final StepFile file;

  /** What the instance lies in. */
  private byte[] bytes = NOTHING;

  private int start;

  /** Behind the semicolon that ends it. */
  private int end;

  private int open;
  private @Nullable StepKeyword keyword;

  StepGlance(StepFile file) {
    this.file = file;
  }

  /**
   * Turns to an instance.
   *
   * @return its keyword; null where {@link StepFile#find} finds nothing
   */
  public @Nullable StepKeyword at(long id) {
    long offset = file.offset(id);
    keyword = null;
    if (offset >= 0) {
      bytes = file.pages().page(offset);
      start = file.pages().inPage(offset);
      end = StepScanner.endOfStatement(bytes, start, bytes.length);
      if (end < 0) {
        takeLong(offset);
      }
      int equals = StepScanner.find(bytes, start + 1, end, (byte) '=');
      int from = StepScanner.skipSpace(bytes, equals + 1, end);
      StepKeyword found = keyword(from);
      open = found == null ? -1 : openingBracket(from, found);
      keyword = open < 0 ? null : found;
    }
    return keyword;
  }

  /** Of an instance that reaches beyond its page; bounded like every record. */
  private void takeLong(long offset) {
    long most = Math.min(file.limits().maxRecordBytes(), file.bytes().size() - offset);
    long length = SHORT;
    start = 0;
    do {
      length *= 8;
      bytes = file.bytes().piece(offset, (int) Math.min(length, most));
      end = StepScanner.endOfStatement(bytes, 0, bytes.length);
    } while (end < 0 && length < most);
    end = end < 0 ? bytes.length : end;
  }

  private @Nullable StepKeyword keyword(int from) {
    if (from + StepKeywords.REACH <= bytes.length) {
      StepKeyword found = file.allKeywords().find(bytes, from);
      if (found != null) {
        return found;
      }
    }
    int to = from;
    while (to < end && StepScanner.isKeywordByte(bytes[to])) {
      to++;
    }
    return file.allKeywords().of(bytes, from, to);
  }

  /** Position of the bracket behind a keyword, -1 if there is none. */
  private int openingBracket(int from, StepKeyword itsKeyword) {
    int at = StepScanner.skipSpace(bytes, from + itsKeyword.name().length(), end);
    return !itsKeyword.name().isEmpty() && at < end && bytes[at] == '(' ? at : -1;
  }

  /** An instance with its arguments; null where {@link StepFile#find} finds nothing. */
  @Nullable StepRecord record(long id) {
    StepKeyword found = at(id);
    return found == null
        ? null
        : new StepRecord(id, found, StepArguments.parse(bytes, open, end, file.limits()));
  }

  /**
   * The first argument of the instance as {@link StepFile#label} gives it.
   *
   * @return null if it is no plain text that begins right behind the bracket
   */
  public @Nullable String firstLabel() {
    int quote = open + 1;
    if (keyword == null || quote >= end || bytes[quote] != '\'') {
      return null;
    }
    int behind = StepScanner.endOfString(bytes, quote, end);
    boolean isText = behind > 0 && behind - quote <= file.limits().maxTextBytes();
    return isText && endsArgument(behind) ? file.labels().text(bytes, quote + 1, behind - 1) : null;
  }

  /**
   * True if an argument is there and neither {@code $} nor {@code *}.
   *
   * @param index from 0
   */
  public boolean has(int index) {
    int at = keyword == null ? -1 : open + 1;
    for (int before = index; at >= 0 && at < end; ) {
      byte b = bytes[at];
      if (b == ' ') {
        at++;
      } else if (b == '\'') {
        if (before == 0) {
          return true;
        }
        at = StepScanner.endOfString(bytes, at, end);
      } else if (before == 0) {
        return isSimple(b) ? b != '$' && b != '*' : decoded(index);
      } else if (b == ',') {
        before--;
        at++;
      } else if (isSimple(b)) {
        at++;
      } else {
        return decoded(index);
      }
    }
    return false;
  }

  /** True for the bytes of numbers, references, omitted arguments and keywords. */
  private static boolean isSimple(byte b) {
    return b == '$' || b == '*' || b == '#' || b == '.' || StepScanner.isKeywordByte(b);
  }

  /** The long way, for lists, comments, ends and whatever else is no simple argument. */
  private boolean decoded(int index) {
    return switch (StepArguments.parse(bytes, open, end, file.limits()).token(index)) {
      case NULL, DERIVED, ABSENT -> false;
      default -> true;
    };
  }

  private boolean endsArgument(int at) {
    return at < end && (bytes[at] == ',' || bytes[at] == ')');
  }
}
