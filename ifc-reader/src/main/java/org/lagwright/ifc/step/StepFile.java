package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

/**
 * An exchange file, indexed. Records are decoded when asked for and not kept.
 *
 * <p>Safe for use by one thread.
 */
public final class StepFile {

  private final StepBytes bytes;
  private final StepLimits limits;
  private final StepIndex index;
  private final StepTypes types;
  private final List<StepProblem> problems;
  private final String schema;

  StepFile(
      StepBytes bytes,
      StepLimits limits,
      StepIndex index,
      StepTypes types,
      List<StepProblem> problems,
      String schema) {
    this.bytes = bytes;
    this.limits = limits;
    this.index = index;
    this.types = types;
    this.problems = List.copyOf(problems);
    this.schema = schema;
  }

  /**
   * Makes the index in one pass.
   *
   * @param listed which keywords (upper case) {@link #ids} will be asked for
   * @param progress told the number of bytes read, now and then
   * @throws StepException if it is no exchange file, is cut off, or is over the limits
   */
  public static StepFile open(
      StepBytes bytes, StepLimits limits, Predicate<String> listed, LongConsumer progress) {
    return new StepIndexer(bytes, limits, listed, progress).run();
  }

  /** The first schema identifier of FILE_SCHEMA, upper case. */
  public String schema() {
    return schema;
  }

  /** How many instances the file has. */
  public long size() {
    return index.size();
  }

  /** Greatest instance number in use. */
  public long greatestId() {
    return index.greatestId();
  }

  /** What reading stepped over. */
  public List<StepProblem> problems() {
    return problems;
  }

  /** Instance numbers of one keyword in file order; only for keywords listed at {@link #open}. */
  public long[] ids(String keyword) {
    return types.ids(keyword);
  }

  /** How many instances of each keyword, sorted by keyword. */
  public Map<String, Integer> counts() {
    return types.counts();
  }

  /** The bounds this file is held to. */
  public StepLimits limits() {
    return limits;
  }

  /** The instance with a number; empty if there is none, or if it is an external mapping. */
  public Optional<StepRecord> find(long id) {
    long offset = index.find(id);
    if (offset < 0) {
      return Optional.empty();
    }
    ByteBuffer window = bytes.window(offset);
    int limit = window.limit();
    int at = StepBytes.inWindow(offset) + 1;
    while (at < limit && window.get(at) != '=') {
      at++;
    }
    int from = StepScanner.skipSpace(window, at + 1, limit);
    int to = from;
    while (to < limit && StepScanner.isKeywordByte(window.get(to))) {
      to++;
    }
    int open = StepScanner.skipSpace(window, to, limit);
    if (from == to || open >= limit || window.get(open) != '(') {
      return Optional.empty();
    }
    return Optional.of(
        new StepRecord(
            id, keyword(window, from, to), StepArguments.parse(window, open, limits.maxNesting())));
  }

  private static String keyword(ByteBuffer window, int from, int to) {
    byte[] name = new byte[to - from];
    window.get(from, name);
    return new String(name, StandardCharsets.ISO_8859_1).toUpperCase(Locale.ROOT);
  }
}
