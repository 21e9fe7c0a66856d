package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import org.jspecify.annotations.Nullable;

/**
 * Looks at one instance after the other without decoding them: the keyword, and the first argument
 * where that is a text. For records of which there are millions and few are wanted. Not safe for
 * several threads; each takes its own.
 */
public final class StepGlance {

  private static final ByteBuffer NOTHING = ByteBuffer.allocate(0);

  private final StepFile file;
  private final StepLabels labels;
  private ByteBuffer window = NOTHING;
  private int open;
  private @Nullable StepKeyword keyword;

  StepGlance(StepFile file, StepLabels labels) {
    this.file = file;
    this.labels = labels;
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
      window = file.window(offset);
      int from = StepFile.startOfKeyword(window, StepBytes.inWindow(offset));
      StepKeyword found = file.keyword(window, from);
      open = found == null ? -1 : StepFile.openingBracket(window, from, found);
      keyword = open < 0 ? null : found;
    }
    return keyword;
  }

  /**
   * The first argument of the instance as {@link StepFile#label} gives it.
   *
   * @return null if it is no plain text that begins right behind the bracket
   */
  public @Nullable String firstLabel() {
    int quote = open + 1;
    if (keyword == null || quote >= window.limit() || window.get(quote) != '\'') {
      return null;
    }
    int end = StepScanner.endOfString(window, quote, window.limit());
    boolean isText = end > 0 && end - quote <= file.limits().maxTextBytes();
    return isText && endsArgument(end) ? labels.text(window, quote + 1, end - 1) : null;
  }

  /**
   * True if an argument is there and neither {@code $} nor {@code *}.
   *
   * @param index from 0
   */
  public boolean has(int index) {
    int limit = window.limit();
    int at = keyword == null ? -1 : open + 1;
    for (int before = index; at >= 0 && at < limit; ) {
      byte b = window.get(at);
      if (b == ' ') {
        at++;
      } else if (b == '\'') {
        if (before == 0) {
          return true;
        }
        at = StepScanner.endOfString(window, at, limit);
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
    return switch (StepArguments.parse(window, open, file.limits()).token(index)) {
      case NULL, DERIVED, ABSENT -> false;
      default -> true;
    };
  }

  private boolean endsArgument(int at) {
    return at < window.limit() && (window.get(at) == ',' || window.get(at) == ')');
  }
}
