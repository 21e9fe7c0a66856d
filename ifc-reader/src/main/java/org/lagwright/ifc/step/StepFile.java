package org.lagwright.ifc.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * An exchange file, indexed. Records are decoded when asked for and not kept.
 *
 * <p>Safe for use by several threads.
 */
public final class StepFile {

  /** Threads that look for instances at the same time; if there are more, pages are lost. */
  private static final int FINDERS = 1 << 6;

  private final StepBytes bytes;
  private final StepLimits limits;
  private final StepIndex index;
  private final StepKeywords keywords;
  private final List<StepTypes> types;
  private final List<StepProblem> problems;
  private final StepHeader header;
  private final long endOfData;
  private final StepLabels labels = new StepLabels();
  private final @Nullable Finder[] finders = new Finder[FINDERS];

  StepFile(
      StepBytes bytes,
      StepLimits limits,
      StepIndex index,
      StepKeywords keywords,
      List<StepTypes> types,
      List<StepProblem> problems,
      StepHeader header,
      long endOfData) {
    this.bytes = bytes;
    this.limits = limits;
    this.index = index;
    this.keywords = keywords;
    this.types = List.copyOf(types);
    this.problems = List.copyOf(problems);
    this.header = header;
    this.endOfData = endOfData;
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
    int partBytes = StepIndexer.partBytes(bytes.size());
    int chunkBytes = StepIndexer.chunkBytes(bytes);
    return new StepIndexer(bytes, limits, listed, progress, partBytes, chunkBytes).run();
  }

  /**
   * The first schema identifier of FILE_SCHEMA, upper case, without making an index; empty if it
   * does not stand near the beginning of the file.
   *
   * @throws StepException if it is no exchange file
   */
  public static String schemaAtStart(StepBytes bytes, StepLimits limits) {
    return StepIndexer.schemaAtStart(bytes, limits);
  }

  /** The first schema identifier of FILE_SCHEMA, upper case. */
  public String schema() {
    return header.schema();
  }

  /** The program that wrote the file, as its header has it; empty if it does not say. */
  public String exporter() {
    return header.exporter();
  }

  /** Where the last data section ends: offset of its ENDSEC, bytes from the start of the file. */
  public long endOfData() {
    return endOfData;
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

  /** Instance numbers of some keywords, ascending; only for keywords listed at {@link #open}. */
  public long[] ids(List<String> wanted) {
    List<StepKeyword> known = new ArrayList<>();
    for (String keyword : wanted) {
      StepKeyword itself = keywords.named(keyword);
      if (itself != null && itself.listed()) {
        known.add(itself);
      }
    }
    return StepTypes.ids(types, known);
  }

  /** How many instances of one keyword. */
  public int count(StepKeyword keyword) {
    return StepTypes.count(types, keyword);
  }

  /** How many instances of each keyword, sorted by keyword. */
  public Map<String, Integer> counts() {
    return StepTypes.counts(types, keywords.all());
  }

  /**
   * A text argument, for texts that repeat throughout the file: equal ones come out as one object.
   *
   * @return null if the argument is no text
   */
  public @Nullable String label(StepArguments arguments, int index) {
    return arguments.label(index, labels);
  }

  /** The bounds this file is held to. */
  public StepLimits limits() {
    return limits;
  }

  /** All keywords of the file by their numbers. */
  public List<StepKeyword> keywords() {
    return keywords.all();
  }

  /** Where an instance starts, bytes from the start of the file; -1 if there is none. */
  public long offset(long id) {
    return index.find(id);
  }

  /** The instance with a number; null if there is none, or if it is an external mapping. */
  public @Nullable StepRecord find(long id) {
    return finder().glance.record(id);
  }

  /** What one thread finds instances with. */
  private final class Finder {
    final Thread owner;
    final StepPages pages = new StepPages(bytes);
    final StepGlance glance = new StepGlance(StepFile.this, pages);

    Finder(Thread owner) {
      this.owner = owner;
    }
  }

  /** That of this thread. Another one may take its place, but never what stands there. */
  private Finder finder() {
    Thread thread = Thread.currentThread();
    int place = (int) thread.getId() & (FINDERS - 1);
    Finder finder = finders[place];
    if (finder == null || finder.owner != thread) {
      finder = new Finder(thread);
      finders[place] = finder;
    }
    return finder;
  }

  StepBytes bytes() {
    return bytes;
  }

  StepKeywords allKeywords() {
    return keywords;
  }

  StepLabels labels() {
    return labels;
  }

  /** For this thread, to look at many instances without decoding them. */
  public StepGlance glance() {
    return new StepGlance(this, finder().pages);
  }
}
