package org.lagwright.ifc.step;

import java.util.Arrays;
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
  private final StepPages pages;

  /** What the instance lies in. */
  private byte[] bytes = NOTHING;

  private int start;

  /** Behind the semicolon that ends it. */
  private int end;

  /** Where the keyword stands. */
  private int from;

  private int open;
  private @Nullable StepKeyword keyword;

  /** What {@link #hasThird} tells. */
  private boolean third;

  /**
   * @param pages of the thread that will look
   */
  StepGlance(StepFile file, StepPages pages) {
    this.file = file;
    this.pages = pages;
  }

  /**
   * Turns to an instance.
   *
   * @return its keyword; null where {@link StepFile#find} finds nothing
   */
  public @Nullable StepKeyword at(long id) {
    long offset = turnTo(id);
    if (offset >= 0) {
      end = StepScanner.endOfStatement(bytes, start, bytes.length);
      boolean inPage = end >= 0;
      if (!inPage) {
        takeLong(offset);
      }
      takeHead();
      if (inPage && pages.change()) {
        takeApart();
      }
    }
    return keyword;
  }

  /**
   * Turns to where an instance starts, and takes the end of its page for its own.
   *
   * @return its offset, negative if there is none
   */
  private long turnTo(long id) {
    long offset = file.offset(id);
    keyword = null;
    if (offset >= 0) {
      bytes = pages.page(offset);
      start = pages.inPage(offset);
      end = bytes.length;
    }
    return offset;
  }

  /** Copies the instance, as its page may be written over before all is asked. */
  private void takeApart() {
    bytes = Arrays.copyOfRange(bytes, from, end);
    open -= from;
    end -= from;
    from = 0;
  }

  /** Looks for the keyword and the bracket behind it. */
  private void takeHead() {
    int equals = StepScanner.find(bytes, start + 1, end, (byte) '=');
    from = StepScanner.skipSpace(bytes, equals + 1, end);
    StepKeyword found = keyword();
    open = found == null ? -1 : openingBracket(found);
    keyword = open < 0 ? null : found;
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

  private @Nullable StepKeyword keyword() {
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
  private int openingBracket(StepKeyword itsKeyword) {
    int at = StepScanner.skipSpace(bytes, from + itsKeyword.name().length(), end);
    return !itsKeyword.name().isEmpty() && at < end && bytes[at] == '(' ? at : -1;
  }

  /** An instance with its arguments; null where {@link StepFile#find} finds nothing. */
  @Nullable StepRecord record(long id) {
    StepRecord usual = usual(id);
    if (usual != null) {
      return usual;
    }
    StepKeyword found = at(id);
    return found == null
        ? null
        : new StepRecord(id, found, StepArguments.parse(bytes, open, end, file.limits()));
  }

  /**
   * An instance whose arguments end within its page, so that its end need not be looked for; null
   * if there is none.
   */
  private @Nullable StepRecord usual(long id) {
    if (turnTo(id) < 0) {
      return null;
    }
    takeHead();
    if (keyword == null) {
      return null;
    }
    StepArguments arguments =
        StepArguments.parseWhole(bytes, open, end, file.limits(), pages.change());
    return arguments == null ? null : new StepRecord(id, keyword, arguments);
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
   * What the instance begins with, from its keyword to the comma behind its first argument.
   *
   * @return null if {@link #firstLabel} gives nothing, or no comma follows
   */
  public byte @Nullable [] beginning() {
    if (firstLabel() == null) {
      return null;
    }
    int behind = StepScanner.endOfString(bytes, open + 1, end);
    return bytes[behind] == ',' ? Arrays.copyOfRange(bytes, from, behind + 1) : null;
  }

  /**
   * Turns to an instance that begins like one before; much quicker than {@link #at}. Nothing but
   * {@link #hasThird} can be asked afterwards.
   *
   * @param beginning as {@link #beginning} gave it
   * @return false if it begins otherwise, or its second or third argument is none of the usual
   */
  public boolean isLike(long id, byte[] beginning) {
    keyword = null;
    long offset = file.offset(id);
    if (offset < 0) {
      return false;
    }
    byte[] page = pages.page(offset);
    int at = pages.inPage(offset) + 1;
    while (at < page.length && StepScanner.isDigit(page[at])) {
      at++;
    }
    int second = at + 1 + beginning.length;
    return second < page.length
        && page[at] == '='
        && Arrays.equals(page, at + 1, second, beginning, 0, beginning.length)
        && readThird(page, second);
  }

  private boolean readThird(byte[] page, int second) {
    int comma =
        switch (page[second]) {
          case '$' -> second + 1;
          case '\'' -> StepScanner.endOfString(page, second, page.length);
          default -> -1;
        };
    if (comma < 0 || comma + 1 >= page.length || page[comma] != ',') {
      return false;
    }
    byte b = page[comma + 1];
    third = b != '$' && b != '*';
    return isSimple(b);
  }

  /** True if the third argument of an instance that {@link #isLike} found has a value. */
  public boolean hasThird() {
    return third;
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
