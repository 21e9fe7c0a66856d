package org.lagwright.ifc.step;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The arguments of one record, or the members of one list, as places in its bytes. Nothing is
 * decoded before it is asked for. Asking for an index that is not there gives {@link Token#ABSENT},
 * because real files write too few arguments.
 */
public final class StepArguments {

  /** What stands at a place. */
  public enum Token {
    /** {@code $} */
    NULL,
    /** {@code *} */
    DERIVED,
    /** {@code #12} */
    REFERENCE,
    NUMBER,
    TEXT,
    /** {@code .BEND.} */
    ENUMERATION,
    LIST,
    /** {@code IFCLABEL('x')} */
    TYPED,
    /** Binary or something malformed. */
    OTHER,
    /** No such argument. */
    ABSENT
  }

  private static final StepArguments NONE =
      new StepArguments(new byte[0], 0, new int[2], StepLimits.DEFAULT);

  private static final long COMMAS = StepScanner.LOW * ',';
  private static final long SEMICOLONS = StepScanner.LOW * ';';
  private static final long CLOSING = StepScanner.LOW * ')';
  private static final long SLASHES = StepScanner.LOW * '/';
  private static final long QUOTE_TO_SLASH = StepScanner.LOW * ('\'' ^ '/');

  /** Room for the starts of as many arguments as most records have. */
  private static final int USUAL = 11;

  private final byte[] bytes;

  /** Where the record ends. */
  private final int limit;

  /**
   * How many arguments there are, and behind that the start of each; start of i + 1 lies one byte
   * behind the comma of i or the closing bracket.
   */
  private final int[] starts;

  private final StepLimits limits;

  private StepArguments(byte[] bytes, int limit, int[] starts, StepLimits limits) {
    this.bytes = bytes;
    this.limit = limit;
    this.starts = starts;
    this.limits = limits;
  }

  /**
   * Reads the list that opens at a bracket.
   *
   * @param open position of {@code (}
   * @param limit behind the end of the record, or where the bytes end
   * @param limits brackets nested deeper read as nothing, and so do longer strings
   */
  static StepArguments parse(byte[] bytes, int open, int limit, StepLimits limits) {
    int[] starts = starts(bytes, open, limit, limits);
    return starts == null ? NONE : new StepArguments(bytes, limit, starts, limits);
  }

  /**
   * Reads the list that opens at a bracket, if the bytes do not end before it does; else null.
   *
   * @param apart true if the list must have bytes of its own, as these will be written over
   */
  static @Nullable StepArguments parseWhole(
      byte[] bytes, int open, int limit, StepLimits limits, boolean apart) {
    int[] starts = starts(bytes, open, limit, limits);
    if (starts == null) {
      return NONE;
    }
    int behind = starts[starts[0] + 1];
    if (depth(bytes[behind - 1], 1) != 0) {
      return null;
    }
    if (!apart) {
      return new StepArguments(bytes, limit, starts, limits);
    }
    for (int i = starts[0] + 1; i > 0; i--) {
      starts[i] -= open;
    }
    byte[] own = Arrays.copyOfRange(bytes, open, behind);
    return new StepArguments(own, own.length, starts, limits);
  }

  /** See {@link #starts}; null where nothing is to be read. */
  private static int @Nullable [] starts(byte[] bytes, int open, int limit, StepLimits limits) {
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
      long hits = i > from + 1 ? marks(StepScanner.word(bytes, from)) : 1L << 7;
      while (hits != 0) {
        int at = from + StepScanner.firstByte(hits);
        byte b = bytes[at];
        hits &= hits - 1;
        if (b == '\'' || b == '/') {
          i = behindMarked(bytes, at, limit);
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
    return StepScanner.zeroBytes(word ^ COMMAS)
        | StepScanner.zeroBytes((word | StepScanner.LOW) ^ CLOSING)
        | StepScanner.zeroBytes((word | QUOTE_TO_SLASH) ^ SLASHES)
        | StepScanner.zeroBytes(word ^ SEMICOLONS);
  }

  /** Position behind a string, a comment or a mere slash, -1 if it does not end. */
  private static int behindMarked(byte[] bytes, int at, int limit) {
    if (bytes[at] == '\'') {
      return StepScanner.endOfString(bytes, at, limit);
    }
    boolean comment = at + 1 < limit && bytes[at + 1] == '*';
    return comment ? StepScanner.endOfComment(bytes, at, limit) : at + 1;
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

  /** How many there are. */
  public int size() {
    return starts[0];
  }

  private int start(int index) {
    return StepScanner.skipSpace(bytes, starts[index + 1], end(index));
  }

  /** Position of the comma or bracket behind an argument. */
  private int end(int index) {
    return starts[index + 2] - 1;
  }

  /** What stands at an index. */
  public Token token(int index) {
    if (index < 0 || index >= starts[0]) {
      return Token.ABSENT;
    }
    int at = start(index);
    if (at >= end(index)) {
      return Token.OTHER;
    }
    int b = bytes[at];
    return switch (b) {
      case '$' -> Token.NULL;
      case '*' -> Token.DERIVED;
      case '#' -> Token.REFERENCE;
      case '\'' -> Token.TEXT;
      case '(' -> Token.LIST;
      case '+', '-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> Token.NUMBER;
      case '.' -> isDigit(at + 1) ? Token.NUMBER : Token.ENUMERATION;
      default -> StepScanner.isKeywordByte(b) ? Token.TYPED : Token.OTHER;
    };
  }

  private boolean isDigit(int at) {
    return at < limit && StepScanner.isDigit(bytes[at]);
  }

  /** The instance number referred to, 0 if it is no reference. */
  public long reference(int index) {
    return token(index) == Token.REFERENCE ? digits(start(index) + 1, end(index)) : 0;
  }

  private long digits(int from, int to) {
    long value = 0;
    for (int i = from; i < to && StepScanner.isDigit(bytes[i]); i++) {
      value = value * 10 + (bytes[i] - '0');
    }
    return value;
  }

  /** The number, also inside a typed value; NaN if it is none. */
  public double number(int index) {
    return switch (token(index)) {
      case NUMBER -> StepNumber.parse(bytes, start(index), trimmedEnd(index));
      case TYPED -> typed(index).number(0);
      default -> Double.NaN;
    };
  }

  private int trimmedEnd(int index) {
    int end = end(index);
    while (end > starts[index + 1] && bytes[end - 1] <= ' ') {
      end--;
    }
    return end;
  }

  /** The decoded string, also inside a typed value; empty if it is none. */
  public Optional<String> text(int index) {
    return switch (token(index)) {
      case TEXT -> decode(start(index));
      case TYPED -> typed(index).text(0);
      default -> Optional.empty();
    };
  }

  /** Like {@link #text}, for texts that repeat throughout the file; null if it is none. */
  @Nullable String label(int index, StepLabels labels) {
    return switch (token(index)) {
      case TEXT -> {
        int quote = start(index);
        int end = endOfText(quote);
        yield end < 0 ? null : labels.text(bytes, quote + 1, end - 1);
      }
      case TYPED -> typed(index).label(0, labels);
      default -> null;
    };
  }

  /** Position behind a string, -1 if it is longer than the limits allow. */
  private int endOfText(int openingQuote) {
    int end = StepScanner.endOfString(bytes, openingQuote, limit);
    return end - openingQuote > limits.maxTextBytes() ? -1 : end;
  }

  private Optional<String> decode(int openingQuote) {
    int end = endOfText(openingQuote);
    if (end < 0) {
      return Optional.empty();
    }
    return Optional.of(StepText.decode(Arrays.copyOfRange(bytes, openingQuote + 1, end - 1)));
  }

  /** The enumeration value in upper case without its dots, also inside a typed value. */
  public Optional<String> enumeration(int index) {
    return switch (token(index)) {
      case ENUMERATION -> {
        int behindDot = start(index) + 1;
        int end = trimmedEnd(index);
        int dot = end > behindDot && bytes[end - 1] == '.' ? end - 1 : end;
        yield Optional.of(slice(behindDot, dot).toUpperCase(Locale.ROOT));
      }
      case TYPED -> typed(index).enumeration(0);
      default -> Optional.empty();
    };
  }

  /** The members of a list; empty if it is none. */
  public StepArguments list(int index) {
    return token(index) == Token.LIST ? open(start(index)) : NONE;
  }

  private StepArguments open(int bracket) {
    return parse(bytes, bracket, limit, limits);
  }

  /** What stands inside a typed value; empty if it is none. */
  public StepArguments typed(int index) {
    if (token(index) != Token.TYPED) {
      return NONE;
    }
    int end = end(index);
    for (int i = start(index); i < end; i++) {
      if (bytes[i] == '(') {
        return open(i);
      }
    }
    return NONE;
  }

  /** The keyword of a typed value in upper case; empty if it is none. */
  public Optional<String> keyword(int index) {
    if (token(index) != Token.TYPED) {
      return Optional.empty();
    }
    int from = start(index);
    int to = from;
    while (to < end(index) && StepScanner.isKeywordByte(bytes[to])) {
      to++;
    }
    return Optional.of(slice(from, to).toUpperCase(Locale.ROOT));
  }

  /** Every reference in a list, in order; other members are passed over. */
  public long[] references(int index) {
    if (token(index) != Token.LIST) {
      return new long[0];
    }
    int end = end(index);
    long[] found = new long[members(index)];
    int count = 0;
    for (int i = start(index) + 1; i < end; ) {
      byte b = bytes[i];
      if (b == '#') {
        long id = 0;
        for (i++; i < end && StepScanner.isDigit(bytes[i]); i++) {
          id = id * 10 + (bytes[i] - '0');
        }
        if (id != 0) {
          found = count == found.length ? Arrays.copyOf(found, count * 2) : found;
          found[count++] = id;
        }
      } else if (b == ',' || b == ')' || (b >= 0 && b <= ' ')) {
        i++;
      } else {
        return referencesAmongOthers(index);
      }
    }
    return count == found.length ? found : Arrays.copyOf(found, count);
  }

  /** How many members a list of simple values has; of other lists perhaps another number. */
  private int members(int index) {
    int count = 1;
    for (int i = starts[index + 1]; i < starts[index + 2]; i++) {
      count += bytes[i] == ',' ? 1 : 0;
    }
    return count;
  }

  private long[] referencesAmongOthers(int index) {
    StepArguments members = list(index);
    long[] found = new long[members.size()];
    int count = 0;
    for (int i = 0; i < members.size(); i++) {
      long id = members.reference(i);
      if (id != 0) {
        found[count++] = id;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Every number in a list and in the lists inside it, flattened in order. */
  public double[] numbers(int index) {
    if (token(index) != Token.LIST) {
      return new double[0];
    }
    int end = end(index);
    double[] found = new double[members(index)];
    int count = 0;
    int i = start(index);
    while (i < end) {
      if (endsNumber(bytes[i])) {
        i++;
        continue;
      }
      int from = i;
      while (i < end && !endsNumber(bytes[i])) {
        i++;
      }
      if (count == found.length) {
        found = Arrays.copyOf(found, count * 2);
      }
      found[count++] = StepNumber.parse(bytes, from, i);
    }
    return count == found.length ? found : Arrays.copyOf(found, count);
  }

  private static boolean endsNumber(byte b) {
    return b == ',' || b == '(' || b == ')' || (b >= 0 && b <= ' ');
  }

  /** The argument as it stands in the file, for showing; at most 200 characters. */
  public String raw(int index) {
    if (index < 0 || index >= starts[0]) {
      return "";
    }
    int from = start(index);
    int to = Math.max(from, trimmedEnd(index));
    return to - from > 200 ? slice(from, from + 200) + "..." : slice(from, to);
  }

  private String slice(int from, int to) {
    return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
  }
}
