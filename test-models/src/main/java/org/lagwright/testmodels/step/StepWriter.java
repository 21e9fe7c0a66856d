package org.lagwright.testmodels.step;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Writes the records of one STEP file, into memory or, for files of any size, to a sink. The same
 * calls give the same bytes.
 */
public final class StepWriter {

  /** Written into every header, so that files do not change with the clock. */
  private static final String TIME_STAMP = "2026-01-01T00:00:00";

  private static final String TRAILER = "ENDSEC;\nEND-ISO-10303-21;\n";

  /** Characters kept before they go to the sink. */
  private static final int PENDING = 1 << 16;

  private final @Nullable Appendable sink;
  private final StringBuilder text = new StringBuilder();
  private final Map<String, Ref> shared = new HashMap<>();
  private final Map<String, Long> counts = new TreeMap<>();
  private long flushed;
  private long next = 1;
  private long end = Long.MAX_VALUE;

  /**
   * Writes into memory.
   *
   * @param schemaId name for FILE_SCHEMA, such as {@code IFC4}
   * @param fileName name for FILE_NAME
   */
  public StepWriter(String schemaId, String fileName) {
    this(schemaId, fileName, null);
  }

  /** Writes to a sink, which takes the last record with {@link #finish}. */
  public static StepWriter to(Appendable sink, String schemaId, String fileName) {
    return new StepWriter(schemaId, fileName, sink);
  }

  private StepWriter(String schemaId, String fileName, @Nullable Appendable sink) {
    this.sink = sink;
    text.append(
        """
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION(('ViewDefinition [notYetAssigned]'),'2;1');
        FILE_NAME(%s,'%s',(''),(''),'Lagwright test-models','','');
        FILE_SCHEMA(('%s'));
        ENDSEC;
        DATA;
        """
            .formatted(StepText.encode(fileName), TIME_STAMP, schemaId));
  }

  /** Makes the next record carry this number; must be above all numbers used so far. */
  public void numberFrom(long first) {
    if (first < next) {
      throw new IllegalArgumentException("#" + first + " may be taken, next free is #" + next);
    }
    next = first;
  }

  /** Numbers left out for records that come later, so that numbers do not ascend in the file. */
  public record Reserved(long first, int count) {}

  /** Leaves out as many numbers. What {@link #within} does not use of them stays a gap. */
  public Reserved reserve(int count) {
    Reserved reserved = new Reserved(next, count);
    next += count;
    return reserved;
  }

  /**
   * Numbers the records that are added meanwhile from what was left out before. Once for each.
   *
   * @throws IllegalStateException where there are more records than numbers
   */
  public void within(Reserved reserved, Runnable records) {
    long after = next;
    next = reserved.first();
    end = next + reserved.count();
    records.run();
    next = after;
    end = Long.MAX_VALUE;
  }

  /**
   * Adds one record.
   *
   * @param entity name in any case
   * @param arguments attribute values in file order, see {@link StepText#append}
   */
  public Ref add(String entity, @Nullable Object... arguments) {
    return append(entity, record(entity, arguments));
  }

  /** As {@link #add}, but gives the earlier record where an equal one was shared before. */
  public Ref share(String entity, @Nullable Object... arguments) {
    String record = record(entity, arguments).toString();
    Ref known = shared.get(record);
    if (known == null) {
      known = append(entity, record);
      shared.put(record, known);
    }
    return known;
  }

  /** Forgets what was shared, so that memory does not grow with the file. */
  public void forget() {
    shared.clear();
  }

  /** How many records of which entity there are, by name in upper case. */
  public Map<String, Long> counts() {
    return Collections.unmodifiableMap(counts);
  }

  /** Characters so far, which are bytes as all is ASCII. */
  public long size() {
    return flushed + text.length();
  }

  /** The whole file, if it was written into memory. Lines end in a single line feed. */
  public String text() {
    if (sink != null) {
      throw new IllegalStateException("the text went to a sink");
    }
    return text + TRAILER;
  }

  /** Ends the file in the sink. */
  public void finish() {
    text.append(TRAILER);
    flush();
  }

  private Ref append(String entity, CharSequence record) {
    if (next >= end) {
      throw new IllegalStateException("no number left for " + record);
    }
    Ref ref = new Ref(next++);
    text.append('#').append(ref.id()).append('=').append(record).append(";\n");
    counts.merge(entity.toUpperCase(Locale.ROOT), 1L, Long::sum);
    if (sink != null && text.length() > PENDING) {
      flush();
    }
    return ref;
  }

  private void flush() {
    if (sink == null) {
      throw new IllegalStateException("the text stays in memory");
    }
    try {
      sink.append(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    flushed += text.length();
    text.setLength(0);
  }

  private static StringBuilder record(String entity, @Nullable Object[] arguments) {
    StringBuilder out = new StringBuilder(entity.toUpperCase(Locale.ROOT));
    StepText.list(out, Arrays.asList(arguments));
    return out;
  }
}
