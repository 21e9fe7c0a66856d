package org.lagwright.ifc.append;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepFile;

/**
 * Copies an exchange file and puts records before the end of its last data section. What was there
 * is copied byte by byte and never held in memory; instance numbers go on from the greatest.
 */
public final class StepAppender {

  private final OutputStream out;
  private final String lineEnd;
  private long last;
  private long count;

  private StepAppender(OutputStream out, String lineEnd, long greatestId) {
    this.out = out;
    this.lineEnd = lineEnd;
    this.last = greatestId;
  }

  /** Says what is to be added. */
  @FunctionalInterface
  public interface Records {

    /**
     * Adds records one by one; what is referred to comes first.
     *
     * @throws IOException if it cannot be written
     */
    void addTo(StepAppender appender) throws IOException;
  }

  /**
   * Writes a file that begins and ends as the given one does.
   *
   * @param bytes the file
   * @param file the same, indexed
   * @return how many records were added
   * @throws IOException if it cannot be written
   */
  public static long append(StepBytes bytes, StepFile file, OutputStream out, Records records)
      throws IOException {
    long end = file.endOfData();
    bytes.copy(0, end, out);
    StepAppender appender = new StepAppender(out, lineEnd(bytes, end), file.greatestId());
    try {
      records.addTo(appender);
    } catch (UncheckedIOException e) {
      throw new IOException(e.getMessage(), e);
    }
    bytes.copy(end, bytes.size(), out);
    return appender.count;
  }

  /** As before the end of the data, if that is at the start of a line. */
  private static String lineEnd(StepBytes bytes, long end) {
    byte[] before = bytes.copy(Math.max(0, end - 2), end);
    return new String(before, StandardCharsets.ISO_8859_1).endsWith("\r\n") ? "\r\n" : "\n";
  }

  /**
   * Adds one record.
   *
   * @param entity name of its entity, in any case
   * @return its instance number
   * @throws UncheckedIOException if it cannot be written
   */
  public long add(String entity, List<StepValue> arguments) {
    last++;
    count++;
    String written =
        arguments.stream().map(StepValue::written).collect(Collectors.joining(",", "(", ");"));
    String record = "#" + last + "=" + entity.toUpperCase(Locale.ROOT) + written + lineEnd;
    try {
      out.write(record.getBytes(StandardCharsets.US_ASCII));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return last;
  }
}
