package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

/** The one pass that makes the index. Goes from statement to statement and looks into none. */
final class StepIndexer {

  private static final int PROGRESS_EVERY = 1 << 18;
  private static final int MAX_PROBLEMS = 1000;

  private final StepBytes bytes;
  private final StepLimits limits;
  private final LongConsumer progress;
  private final StepIndex index = new StepIndex();
  private final StepTypes types;
  private final List<StepProblem> problems = new ArrayList<>();
  private String schema = "";
  private boolean inData;
  private boolean sawData;

  StepIndexer(StepBytes bytes, StepLimits limits, Predicate<String> listed, LongConsumer progress) {
    this.bytes = bytes;
    this.limits = limits;
    this.progress = progress;
    this.types = new StepTypes(listed);
  }

  StepFile run() {
    long at = start();
    long statements = 0;
    while (at >= 0 && at < bytes.size()) {
      at = statement(at);
      if (++statements % PROGRESS_EVERY == 0) {
        progress.accept(at);
      }
    }
    if (!sawData) {
      throw new StepException(0, "there is no DATA section. Export the model again.");
    }
    if (inData) {
      throw new StepException(
          bytes.lineOf(bytes.size()),
          "the file ends without ENDSEC, so it is cut off. Export or copy it again.");
    }
    if (schema.isEmpty()) {
      throw new StepException(
          0, "there is no FILE_SCHEMA in the header, so the schema is not known. Export it again.");
    }
    progress.accept(bytes.size());
    return new StepFile(bytes, limits, index, types, problems, schema);
  }

  /** Offset of the first statement, behind a byte order mark and white space. */
  private long start() {
    long at = bytes.at(0) == 0xEF && bytes.at(1) == 0xBB && bytes.at(2) == 0xBF ? 3 : 0;
    ByteBuffer first = bytes.window(0);
    int from = StepScanner.skipSpace(first, (int) at, first.limit());
    byte[] magic = new byte[Math.min(12, first.limit() - from)];
    first.get(from, magic);
    if (!new String(magic, StandardCharsets.ISO_8859_1).equalsIgnoreCase("ISO-10303-21")) {
      throw new StepException(
          1,
          "this is not an IFC file in STEP format (no ISO-10303-21 at its start). Give an .ifc or"
              + " .ifczip file.");
    }
    return from;
  }

  /** Takes one statement; gives the offset behind it. */
  private long statement(long offset) {
    ByteBuffer window = bytes.window(offset);
    int begin = StepBytes.inWindow(offset);
    int at = StepScanner.skipSpace(window, begin, window.limit());
    if (at >= window.limit()) {
      return offset + (at - begin);
    }
    long here = offset + (at - begin);
    int end = StepScanner.endOfStatement(window, at);
    if (end < 0) {
      return unfinished(window, at, here);
    }
    if (end - at > limits.maxRecordBytes()) {
      throw new StepException(
          bytes.lineOf(here), "a record is longer than " + limits.maxRecordBytes() + " bytes.");
    }
    if (window.get(at) == '#') {
      instance(window, at, end, here);
    } else {
      section(window, at, end, here);
    }
    return here + (end - at);
  }

  /** What stands behind the last semicolon: nothing, an unclosed end mark, or a cut record. */
  private long unfinished(ByteBuffer window, int at, long here) {
    if (!inData && sawData) {
      return -1;
    }
    boolean instance = window.get(at) == '#';
    throw new StepException(
        bytes.lineOf(here),
        "the "
            + (instance ? "record" : "statement")
            + " that starts here never ends: the file is cut off, or a string in it is not closed."
            + " Export or copy it again.");
  }

  private void instance(ByteBuffer window, int at, int end, long here) {
    int i = at + 1;
    long id = 0;
    while (i < end
        && window.get(i) >= '0'
        && window.get(i) <= '9'
        && id < Long.MAX_VALUE / 10 - 1) {
      id = id * 10 + (window.get(i) - '0');
      i++;
    }
    i = StepScanner.skipSpace(window, i, end);
    if (id == 0 || i >= end || window.get(i) != '=') {
      problem(here, "this is no instance: a number above 0 and '=' are expected");
      return;
    }
    int from = StepScanner.skipSpace(window, i + 1, end);
    int to = from;
    while (to < end && StepScanner.isKeywordByte(window.get(to))) {
      to++;
    }
    if (!index.add(id, here)) {
      problem(here, "instance #" + id + " stands twice; the first one is used");
      return;
    }
    types.add(window, from, to, id);
    if (index.size() > limits.maxRecords()) {
      throw new StepException(0, "the file has more than " + limits.maxRecords() + " records.");
    }
  }

  private void section(ByteBuffer window, int at, int end, long here) {
    byte[] text = new byte[Math.min(end - at, 4096)];
    window.get(at, text);
    String statement = new String(text, StandardCharsets.ISO_8859_1).toUpperCase(Locale.ROOT);
    if (statement.startsWith("DATA")) {
      inData = true;
      sawData = true;
    } else if (statement.startsWith("ENDSEC")) {
      inData = false;
    } else if (statement.startsWith("FILE_SCHEMA")) {
      schema = firstQuoted(statement);
    } else if (inData) {
      problem(here, "this is no instance and was passed over");
    }
  }

  private static String firstQuoted(String statement) {
    int open = statement.indexOf('\'');
    int close = statement.indexOf('\'', open + 1);
    return open < 0 || close < 0 ? "" : statement.substring(open + 1, close).trim();
  }

  private void problem(long offset, String what) {
    if (problems.size() < MAX_PROBLEMS) {
      problems.add(new StepProblem(bytes.lineOf(offset), what));
    }
  }
}
