package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files beyond 2^31 bytes. Run by the Maven profile {@code large}, as they take minutes. */
@Tag("large")
class LargeFileTest {

  private static final String HEADER = "ISO-10303-21;HEADER;FILE_SCHEMA(('IFC4'));ENDSEC;DATA;\n";
  private static final String END = "ENDSEC;END-ISO-10303-21;\n";
  private static final long GIB = 1L << 30;

  @TempDir Path folder;

  /**
   * Records just before, across and just behind each place where positions outgrow something: the
   * windows of 1 GiB, 31 bits, 32 bits. The gaps between them are holes, which read as white space.
   */
  @Test
  void recordsAreFoundAcrossEveryBoundary() throws IOException {
    Path file = folder.resolve("sparse.ifc");
    long[] places = {GIB, 2 * GIB, 3 * GIB, 4 * GIB, 5 * GIB};
    try (FileChannel out =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      write(out, 0, HEADER);
      for (int i = 0; i < places.length; i++) {
        write(out, places[i] - 40, record(3 * i + 1, "before"));
        write(out, places[i] - 5, record(3 * i + 2, "across"));
        write(out, places[i] + 40, record(3 * i + 3, "behind"));
      }
      write(out, 5 * GIB + 100, END);
    }

    StepFile step = open(file);

    assertThat(step.problems()).isEmpty();
    assertThat(step.size()).isEqualTo(15);
    for (int i = 0; i < places.length; i++) {
      assertThat(step.offset(3 * i + 1)).isEqualTo(places[i] - 40);
      assertThat(step.offset(3 * i + 2)).isEqualTo(places[i] - 5);
      assertThat(step.offset(3 * i + 3)).isEqualTo(places[i] + 40);
      assertThat(text(step, 3 * i + 2)).isEqualTo("across");
      assertThat(text(step, 3 * i + 3)).isEqualTo("behind");
    }
  }

  @Test
  void millionsOfRecordsBeyondTwoGibibytesAreAllFound() throws IOException {
    Path file = folder.resolve("full.ifc");
    int count = 12_000_000;
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20)) {
      out.write(HEADER.getBytes(StandardCharsets.US_ASCII));
      for (int i = 1; i <= count; i++) {
        out.write(filled(i).getBytes(StandardCharsets.US_ASCII));
      }
      out.write(END.getBytes(StandardCharsets.US_ASCII));
    }
    assertThat(Files.size(file)).isGreaterThan(2 * GIB);

    StepFile step = open(file);

    assertThat(step.size()).isEqualTo(count);
    assertThat(step.counts().get("IFCPIPESEGMENT")).isEqualTo(count / 1000);
    assertThat(step.ids(List.of("IFCPIPESEGMENT")))
        .hasSize(count / 1000)
        .startsWith(1000)
        .endsWith(count);
    for (int i = 1; i <= count; i += 997) {
      assertThat(Objects.requireNonNull(step.find(i)).arguments().number(1)).isEqualTo(i);
    }
  }

  private static String filled(int i) {
    String keyword = i % 1000 == 0 ? "IFCPIPESEGMENT" : "IFCCARTESIANPOINT";
    return "#" + i + "=" + keyword + "('" + "filling; ".repeat(16) + "'," + i + ".);\n";
  }

  private static String record(int id, String text) {
    return String.format(Locale.ROOT, "#%d=IFCLABEL('%s');", id, text);
  }

  private static void write(FileChannel out, long at, String text) throws IOException {
    out.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII)), at);
  }

  private static StepFile open(Path file) throws IOException {
    return StepFile.open(StepBytes.map(file), StepLimits.DEFAULT, k -> true, n -> {});
  }

  private static String text(StepFile step, long id) {
    return Objects.requireNonNull(step.find(id)).arguments().text(0).orElseThrow();
  }
}
