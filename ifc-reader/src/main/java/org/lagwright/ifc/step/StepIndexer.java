package org.lagwright.ifc.step;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.threads.Workers;

/**
 * Makes the index. The file is cut where statements seem to start, the parts are gone through at
 * the same time, and if each part ends exactly where the next one begins, the cuts were right.
 * Otherwise, as with records in comments, the file is gone through once more in one part.
 */
final class StepIndexer {

  private static final int LEAST_PART_BYTES = 1 << 20;
  private static final int MOST_PART_BYTES = 1 << 24;
  private static final int PARTS = 16;

  private static final int CHUNK_BYTES = 1 << 18;

  /** Most headers are shorter. */
  private static final int FIRST_LOOK = 1 << 9;

  /** How far the first statement is looked for. */
  private static final int MAX_PRELUDE = 1 << 20;

  private final StepBytes bytes;
  private final StepLimits limits;
  private final Predicate<String> listed;
  private final LongConsumer progress;
  private final int partBytes;
  private final int chunkBytes;
  private StepKeywords keywords;

  StepIndexer(
      StepBytes bytes,
      StepLimits limits,
      Predicate<String> listed,
      LongConsumer progress,
      int partBytes,
      int chunkBytes) {
    this.bytes = bytes;
    this.limits = limits;
    this.listed = listed;
    this.progress = progress;
    this.partBytes = partBytes;
    this.chunkBytes = chunkBytes;
    this.keywords = new StepKeywords(listed, limits.maxKeywords());
  }

  /** Parts whose start costs nothing, and yet so many that all processors finish together. */
  static int partBytes(long fileBytes) {
    return (int) Math.max(LEAST_PART_BYTES, Math.min(MOST_PART_BYTES, fileBytes / PARTS));
  }

  /**
   * Bytes that a part goes through at a time; few enough to stay close to the processor, unless all
   * lie in memory.
   */
  static int chunkBytes(StepBytes bytes) {
    byte[] whole = bytes.whole();
    return whole == null ? CHUNK_BYTES : whole.length;
  }

  StepFile run() {
    try (Workers workers = Workers.forThisMachine()) {
      return run(workers);
    }
  }

  private StepFile run(Workers workers) {
    long start = start(bytes);
    Scan scan = scan(new StepCuts(bytes, start, partBytes), workers);
    if (!isContiguous(scan.parts)) {
      scan = scan(new StepCuts(bytes, start, Long.MAX_VALUE), workers);
    }
    List<StepPart> parts = scan.parts;
    StepIndex index = scan.index;
    refuseTrouble(parts);
    refuseTooMany(index.size());
    index.finish();
    if (index.hasDuplicates()) {
      keywords = new StepKeywords(listed, limits.maxKeywords());
      index = index.again(bytes.size());
      StepIndex.Filling filling = index.new Filling();
      parts = List.of(part(start, bytes.size(), filling::takeFirst).scan());
      filling.close();
    }
    progress.accept(bytes.size());
    return file(index, parts);
  }

  private StepFile file(StepIndex index, List<StepPart> parts) {
    List<StepTypes> types = new ArrayList<>(parts.size());
    long endOfData = -1;
    for (StepPart part : parts) {
      types.add(part.types());
      endOfData = Math.max(endOfData, part.endOfData());
    }
    return new StepFile(
        bytes, limits, index, keywords, types, problems(parts), header(parts), endOfData);
  }

  /**
   * The schema identifier, without an index; empty if none stands near the beginning.
   *
   * @throws StepException if it is no exchange file
   */
  static String schemaAtStart(StepBytes bytes, StepLimits limits) {
    long start = start(bytes);
    StepKeywords unlisted = new StepKeywords(new Unlisted(), limits.maxKeywords());
    String schema = "";
    for (int length = FIRST_LOOK; schema.isEmpty() && length <= MAX_PRELUDE; length *= 16) {
      long end = Math.min(bytes.size(), start + length);
      RecordSink none = new Passed();
      int chunkBytes = chunkBytes(bytes);
      schema = new StepPart(bytes, limits, unlisted, start, end, chunkBytes, none).scan().schema();
    }
    return schema;
  }

  private static final class Passed implements RecordSink {
    @Override
    public boolean take(long id, long offset) {
      return true;
    }
  }

  private static final class Unlisted implements Predicate<String> {
    @Override
    public boolean test(String keyword) {
      return false;
    }
  }

  /** Offset of the first statement, behind a byte order mark and white space. */
  private static long start(StepBytes bytes) {
    bytes.await(MAX_PRELUDE);
    long at = bytes.at(0) == 0xEF && bytes.at(1) == 0xBB && bytes.at(2) == 0xBF ? 3 : 0;
    byte[] first = bytes.piece(0, MAX_PRELUDE);
    int from = StepScanner.skipSpace(first, (int) at, first.length);
    int length = Math.min(12, first.length - from);
    String magic = new String(first, from, length, StandardCharsets.ISO_8859_1);
    if (!magic.equalsIgnoreCase("ISO-10303-21")) {
      throw new StepException(
          1,
          "this is not an IFC file in STEP format (no ISO-10303-21 at its start). Give an .ifc or"
              + " .ifczip file.");
    }
    return from;
  }

  private Scan scan(StepCuts cuts, Workers workers) {
    keywords = new StepKeywords(listed, limits.maxKeywords());
    Scan scan = new Scan(cuts);
    workers.inOrder(cuts.count(), 1, scan);
    return scan;
  }

  /** A part; none where there is no cut. */
  private record Scanned(@Nullable StepPart part) {}

  /** Goes through the parts. */
  private final class Scan implements Workers.Work<Scanned> {
    private final StepCuts cuts;
    final StepIndex index = new StepIndex(bytes.size());
    final List<StepPart> parts = new ArrayList<>();
    private int done;

    Scan(StepCuts cuts) {
      this.cuts = cuts;
    }

    @Override
    public Scanned on(int at, int next) {
      long from = cuts.begin(at);
      if (from < 0) {
        return new Scanned(null);
      }
      StepIndex.Filling filling = index.new Filling();
      StepPart part = part(from, cuts.end(at), filling).scan();
      filling.close();
      return new Scanned(part);
    }

    @Override
    public void take(Scanned scanned) {
      if (scanned.part != null) {
        parts.add(scanned.part);
      }
      done++;
      progress.accept(Math.min(bytes.size(), (long) done * partBytes));
    }
  }

  private StepPart part(long from, long to, RecordSink sink) {
    return new StepPart(bytes, limits, keywords, from, to, chunkBytes, sink);
  }

  private static boolean isContiguous(List<StepPart> parts) {
    for (int i = 0; i + 1 < parts.size(); i++) {
      if (parts.get(i).end() != parts.get(i + 1).from()) {
        return false;
      }
    }
    return true;
  }

  /** Only the last part can be in trouble, as all others end where the next one begins. */
  private void refuseTrouble(List<StepPart> parts) {
    StepPart last = parts.get(parts.size() - 1);
    boolean sawData = false;
    for (StepPart part : parts) {
      sawData |= part.sawData();
    }
    boolean inData = endsInData(parts);
    switch (last.trouble()) {
      case NONE -> refuseWithoutEnd(sawData, inData);
      case NEVER_ENDS -> {
        // behind the data there may be an end mark without its semicolon, or anything else
        if (inData || !sawData) {
          throw neverEnds(last.end());
        }
      }
      case TOO_LONG ->
          throw at(last.end(), "a record is longer than " + limits.maxRecordBytes() + " bytes.");
      case TOO_MANY_KEYWORDS ->
          throw at(last.end(), "there are more than " + limits.maxKeywords() + " keywords.");
    }
    if (header(parts).schema().isEmpty()) {
      throw new StepException(
          0, "there is no FILE_SCHEMA in the header, so the schema is not known. Export it again.");
    }
  }

  private static boolean endsInData(List<StepPart> parts) {
    boolean inData = false;
    for (StepPart part : parts) {
      inData = part.endsInData(inData);
    }
    return inData;
  }

  private void refuseWithoutEnd(boolean sawData, boolean inData) {
    if (!sawData) {
      throw new StepException(0, "there is no DATA section. Export the model again.");
    }
    if (inData) {
      throw at(
          bytes.size(), "the file ends without ENDSEC, so it is cut off. Export or copy it again.");
    }
  }

  private StepException neverEnds(long offset) {
    String what = bytes.at(offset) == '#' ? "record" : "statement";
    return at(
        offset,
        "the "
            + what
            + " that starts here never ends: the file is cut off, or a string in it is not closed."
            + " Export or copy it again.");
  }

  private StepException at(long offset, String message) {
    return new StepException(bytes.lineOf(offset), message);
  }

  private void refuseTooMany(long records) {
    if (records > limits.maxRecords()) {
      throw new StepException(0, "the file has more than " + limits.maxRecords() + " records.");
    }
  }

  /** Of what stands there several times the last counts. */
  private static StepHeader header(List<StepPart> parts) {
    String schema = "";
    String program = "";
    for (StepPart part : parts) {
      schema = part.schema().isEmpty() ? schema : part.schema();
      program = part.exporter().isEmpty() ? program : part.exporter();
    }
    return new StepHeader(schema, program);
  }

  private List<StepProblem> problems(List<StepPart> parts) {
    List<StepPart.Note> notes = new ArrayList<>();
    boolean inData = false;
    for (StepPart part : parts) {
      for (StepPart.Note note : part.notes()) {
        if (inData || !note.onlyInData()) {
          notes.add(note);
        }
      }
      inData = part.endsInData(inData);
    }
    List<StepPart.Note> shown = notes.subList(0, Math.min(notes.size(), StepPart.MAX_NOTES));
    long[] offsets = new long[shown.size()];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = shown.get(i).offset();
    }
    long[] lines = bytes.linesOf(offsets);
    List<StepProblem> problems = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      problems.add(new StepProblem(lines[i], shown.get(i).what()));
    }
    return problems;
  }
}
