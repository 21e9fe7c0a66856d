package org.lagwright.report.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.report.json.TakeoffJson;
import org.lagwright.report.workbook.TakeoffWorkbook;

class OutputFolderTest {

  @TempDir Path folder;

  /** A disk that is full after some bytes. */
  private static final class FullDisk extends OutputStream {
    private int left = 100;

    @Override
    public void write(int b) throws IOException {
      if (left-- <= 0) {
        throw new IOException("No space left");
      }
    }
  }

  @Test
  void earlierOutputsStayAsTheyWereWhereALaterOneFails() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "earlier");
    Map<String, OutputFolder.Content> contents = new LinkedHashMap<>();
    contents.put("a.txt", out -> out.write("new".getBytes(StandardCharsets.UTF_8)));
    contents.put(
        "b.txt",
        out -> {
          out.write(1);
          throw new IOException("No space left");
        });
    assertThatThrownBy(() -> new OutputFolder(folder).write(contents))
        .isInstanceOf(OutputException.class)
        .hasMessageContaining("cannot be written (No space left). Free the place or choose");
    assertThat(folder.resolve("a.txt")).hasContent("earlier");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void earlierOutputsAreReplacedAndNothingElseIsLeft() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "earlier and longer");
    List<Path> written =
        new OutputFolder(folder)
            .write(Map.of("a.txt", out -> out.write("new".getBytes(StandardCharsets.UTF_8))));
    assertThat(written).containsExactly(folder.resolve("a.txt"));
    assertThat(folder.resolve("a.txt")).hasContent("new");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void workbookTellsOfAFullDiskAsFailedWriting() {
    assertThatThrownBy(
            () ->
                new TakeoffWorkbook(CheckedTakeoff.of(SampleTakeoff.takeoff()), "9.9.9")
                    .write(new FullDisk()))
        .isInstanceOf(IOException.class);
  }

  @Test
  void jsonTellsOfAFullDiskAsFailedWriting() {
    assertThatThrownBy(
            () ->
                new TakeoffJson(CheckedTakeoff.of(SampleTakeoff.takeoff()), "9.9.9")
                    .write(new FullDisk()))
        .isInstanceOf(IOException.class)
        .hasMessage("No space left");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
