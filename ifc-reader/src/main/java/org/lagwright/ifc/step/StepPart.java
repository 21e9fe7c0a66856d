package org.lagwright.ifc.step;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One stretch of a file, gone through from statement to statement without looking into any. Starts
 * at a statement and goes on to the first one that starts at or behind its end.
 */
final class StepPart {

  /** Something to be told about a place, perhaps only if the place lies in a data section. */
  record Note(long offset, String what, boolean onlyInData) {}

  static final int MAX_NOTES = 1000;

  /** Statements taken in one loop; few, so that it is called often and soon translated. */
  private static final int SOME = 64;

  /** Of an instance number read the quick way, so that it fits. */
  private static final int MAX_DIGITS = 18;

  /** How far behind a {@code #} the quick way may read: the number, an equals sign, a keyword. */
  private static final int REACH = MAX_DIGITS + 4 + StepKeywords.REACH;

  private static final int PREPROCESSOR = 4;
  private static final int ORIGINATING_SYSTEM = 5;

  /** Ways a part can come to an early end. */
  enum Trouble {
    NONE,
    NEVER_ENDS,
    TOO_LONG,
    TOO_MANY_KEYWORDS
  }

  private final StepBytes bytes;
  private final StepLimits limits;
  private final StepKeywords keywords;
  private final long from;
  private final long to;
  private final RecordSink sink;
  private final StepTypes types = new StepTypes();
  private final List<Note> notes = new ArrayList<>();
  private final int chunkBytes;

  /** True if the chunk is the whole file, which lies in memory anyway. */
  private final boolean isWhole;

  private byte[] chunk;
  private long chunkStart;

  /** Behind the last byte of the chunk. */
  private int limit;

  /** True if the statement, or the comment before it, must be looked at with more bytes. */
  private boolean cut;

  private int notesInDataOnly;
  private long end;
  private Trouble trouble = Trouble.NONE;
  private String schema = "";
  private String exporter = "";
  private boolean sawData;
  private long endOfData = -1;

  /** Null until the part itself tells; before that it is as at the end of the part before. */
  private @Nullable Boolean inData;

  StepPart(
      StepBytes bytes,
      StepLimits limits,
      StepKeywords keywords,
      long from,
      long to,
      int chunkBytes,
      RecordSink sink) {
    this.bytes = bytes;
    this.limits = limits;
    this.keywords = keywords;
    this.from = from;
    this.to = to;
    this.sink = sink;
    this.chunkBytes = chunkBytes;
    byte[] whole = bytes.whole();
    this.isWhole = whole != null && whole.length <= chunkBytes;
    this.chunk = whole != null && isWhole ? whole : new byte[chunkBytes];
  }

  StepPart scan() {
    end = from;
    while (trouble == Trouble.NONE && end < to) {
      chunkStart = isWhole ? 0 : end;
      limit = isWhole ? chunk.length : bytes.read(end, chunk);
      cut = false;
      end = chunkStart + statements((int) (end - chunkStart));
      if (cut && end == chunkStart) {
        chunk =
            new byte
                [(int) Math.min(8L * chunk.length, limits.maxRecordBytes() + (long) chunkBytes)];
      }
    }
    return this;
  }

  /**
   * Takes statements until one starts at or behind the end of the part, or reaches beyond the
   * chunk.
   *
   * @param start of the first one, or of white space before it
   * @return where that one starts
   */
  private int statements(int start) {
    int stop = (int) Math.min(to - chunkStart, limit);
    int at = next(start);
    while (isGoingOn(at, stop)) {
      at = some(at, stop);
    }
    return at;
  }

  private boolean isGoingOn(int at, int stop) {
    return at < stop && !cut && trouble == Trouble.NONE;
  }

  private int some(int from, int stop) {
    int at = from;
    for (int i = 0; i < SOME && isGoingOn(at, stop); i++) {
      at = statement(at);
    }
    return at;
  }

  /** Takes one statement the quick way if it is usual; gives the start of the next one. */
  private int statement(int at) {
    if (chunk[at] != '#' || at + REACH > limit) {
      return anyStatement(at);
    }
    long word = StepScanner.word(chunk, at + 1);
    int digits = StepNumber.leadingDigits(word);
    long id = digits == 0 ? 0 : StepNumber.wholeNumber(word, digits);
    int i = at + 1 + digits;
    if (digits == 8) {
      for (; i < at + MAX_DIGITS && StepScanner.isDigit(chunk[i]); i++) {
        id = id * 10 + (chunk[i] - '0');
      }
    }
    return id == 0 || chunk[i] != '=' ? anyStatement(at) : usual(at, id, i + 1);
  }

  private int usual(int at, long id, int behindEquals) {
    int from = chunk[behindEquals] == ' ' ? behindEquals + 1 : behindEquals;
    StepKeyword keyword = keywords.find(chunk, from);
    if (keyword == null) {
      return anyStatement(at);
    }
    int end = StepScanner.endOfStatement(chunk, from + keyword.name().length(), stop(at));
    if (end < 0) {
      return unfinished(at);
    }
    take(id, at, keyword);
    return next(end);
  }

  /** Where a record that starts at a position must have ended. */
  private int stop(int at) {
    return (int) Math.min(limit, (long) at + limits.maxRecordBytes());
  }

  private int next(int behind) {
    if (behind + 1 < limit && chunk[behind] == '\n' && chunk[behind + 1] == '#') {
      return behind + 1;
    }
    int next = StepScanner.endOfSpace(chunk, behind, limit);
    if (next < 0 && !endsFile()) {
      return unfinished(behind);
    }
    return next < 0 ? limit : next;
  }

  private void take(long id, int at, StepKeyword keyword) {
    long offset = chunkStart + at;
    if (sink.take(id, offset)) {
      types.add(keyword, id);
    } else {
      note(offset, "instance #" + id + " stands twice; the first one is used", false);
    }
  }

  private int anyStatement(int at) {
    int behind = StepScanner.endOfStatement(chunk, at, stop(at));
    if (behind < 0) {
      return unfinished(at);
    }
    if (chunk[at] == '#') {
      instance(at, behind);
    } else {
      section(at, behind);
    }
    return next(behind);
  }

  /** For what starts at a position and does not end within the chunk. */
  private int unfinished(int at) {
    if (stop(at) < limit) {
      trouble = Trouble.TOO_LONG;
    } else if (endsFile()) {
      trouble = Trouble.NEVER_ENDS;
    } else {
      cut = true;
    }
    return at;
  }

  private boolean endsFile() {
    return chunkStart + limit >= bytes.size();
  }

  private void instance(int at, int end) {
    int i = at + 1;
    long id = 0;
    while (i < end && StepScanner.isDigit(chunk[i]) && id < Long.MAX_VALUE / 10 - 1) {
      id = id * 10 + (chunk[i] - '0');
      i++;
    }
    i = StepScanner.skipSpace(chunk, i, end);
    if (id == 0 || i >= end || chunk[i] != '=') {
      note(chunkStart + at, "this is no instance: a number above 0 and '=' are expected", false);
      return;
    }
    int from = StepScanner.skipSpace(chunk, i + 1, end);
    int to = from;
    while (to < end && StepScanner.isKeywordByte(chunk[to])) {
      to++;
    }
    if (to - from > StepKeywords.MAX_BYTES) {
      note(chunkStart + at, "this is no instance: its keyword never ends", false);
      return;
    }
    StepKeyword keyword = keywords.of(chunk, from, to);
    if (keyword == null) {
      trouble = Trouble.TOO_MANY_KEYWORDS;
    } else {
      take(id, at, keyword);
    }
  }

  private void section(int at, int end) {
    int length = Math.min(end - at, 4096);
    String statement =
        new String(chunk, at, length, StandardCharsets.ISO_8859_1).toUpperCase(Locale.ROOT);
    if (statement.startsWith("DATA")) {
      inData = true;
      sawData = true;
    } else if (statement.startsWith("ENDSEC")) {
      endOfData = inData == null || inData ? chunkStart + at : endOfData;
      inData = false;
    } else if (statement.startsWith("FILE_SCHEMA")) {
      schema = firstQuoted(statement);
    } else if (statement.startsWith("FILE_NAME")) {
      exporter = exporter(at, end);
    } else if (inData == null || inData) {
      note(chunkStart + at, "this is no instance and was passed over", inData == null);
    }
  }

  /**
   * ISO 10303-21: the sixth argument of FILE_NAME names the program, the fifth what wrote for it.
   */
  private String exporter(int at, int end) {
    int open = StepScanner.find(chunk, at, end, (byte) '(');
    if (open < 0 || open >= end) {
      return "";
    }
    StepArguments name = StepArguments.parse(chunk, open, end, limits);
    String program = name.text(ORIGINATING_SYSTEM).orElse("").strip();
    return program.isEmpty() ? name.text(PREPROCESSOR).orElse("").strip() : program;
  }

  private static String firstQuoted(String statement) {
    int open = statement.indexOf('\'');
    int close = statement.indexOf('\'', open + 1);
    return open < 0 || close < 0 ? "" : statement.substring(open + 1, close).trim();
  }

  /** Keeps as many as can be shown, whatever the parts before turn out to be. */
  private void note(long offset, String what, boolean onlyInData) {
    int same = onlyInData ? notesInDataOnly : notes.size() - notesInDataOnly;
    if (same < MAX_NOTES) {
      notes.add(new Note(offset, what, onlyInData));
      notesInDataOnly += onlyInData ? 1 : 0;
    }
  }

  long from() {
    return from;
  }

  /** Start of the statement behind the part; of the one that is in trouble if one is. */
  long end() {
    return end;
  }

  Trouble trouble() {
    return trouble;
  }

  /** In the order of their places. */
  List<Note> notes() {
    return notes;
  }

  StepTypes types() {
    return types;
  }

  /** The last schema identifier in the part, empty if there is none. */
  String schema() {
    return schema;
  }

  /** The exporting program by the header in the part, empty if there is none. */
  String exporter() {
    return exporter;
  }

  boolean sawData() {
    return sawData;
  }

  /** Offset of the last ENDSEC in the part that may end a data section, -1 if there is none. */
  long endOfData() {
    return endOfData;
  }

  /** True if the part ends in a data section. */
  boolean endsInData(boolean beginsInData) {
    return inData == null ? beginsInData : inData;
  }
}
