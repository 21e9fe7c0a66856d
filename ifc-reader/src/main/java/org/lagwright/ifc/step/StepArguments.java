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

  private final byte[] bytes;

  /** Where the record ends. */
  private final int limit;

  /** See {@link ArgumentStarts#of}. */
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
    int[] starts = ArgumentStarts.of(bytes, open, limit, limits);
    return starts == null ? NONE : new StepArguments(bytes, limit, starts, limits);
  }

  /**
   * Reads the list that opens at a bracket, if the bytes do not end before it does; else null.
   *
   * @param apart true if the list must have bytes of its own, as these will be written over
   */
  static @Nullable StepArguments parseWhole(
      byte[] bytes, int open, int limit, StepLimits limits, boolean apart) {
    int[] starts = ArgumentStarts.of(bytes, open, limit, limits);
    if (starts == null) {
      return NONE;
    }
    if (!ArgumentStarts.areWhole(starts, bytes)) {
      return null;
    }
    if (!apart) {
      return new StepArguments(bytes, limit, starts, limits);
    }
    int behind = starts[starts[0] + 1];
    for (int i = starts[0] + 1; i > 0; i--) {
      starts[i] -= open;
    }
    byte[] own = Arrays.copyOfRange(bytes, open, behind);
    return new StepArguments(own, own.length, starts, limits);
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

  /** Behind the argument, before the white space and comments that follow it. */
  private int trimmedEnd(int index) {
    int from = starts[index + 1];
    int end = end(index);
    while (end > from && (bytes[end - 1] <= ' ' || endsComment(from, end))) {
      end = bytes[end - 1] <= ' ' ? end - 1 : startOfComment(from, end);
    }
    return end;
  }

  private boolean endsComment(int from, int end) {
    return bytes[end - 1] == '/' && end - from >= 4 && bytes[end - 2] == '*';
  }

  /** Where the comment that ends before a position starts, which stands behind no string. */
  private int startOfComment(int from, int end) {
    int at = end - 4;
    while (at > from && !(bytes[at] == '/' && bytes[at + 1] == '*')) {
      at--;
    }
    return at;
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
        int behind = bytes[i] == '/' ? StepScanner.endOfComment(bytes, i, end) : i + 1;
        i = behind < 0 ? end : behind;
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
    return b == ',' || b == '(' || b == ')' || b == '/' || (b >= 0 && b <= ' ');
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
