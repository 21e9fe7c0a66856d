package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lagwright.takeoff.pack.PackInfo;

/**
 * What results rest on is shown with its source and status; no file of data is left out of that.
 */
class AvailablePacksTest {

  @Test
  void everyFileThatHasAnIdIsListed() throws IOException, URISyntaxException {
    List<String> listed = Takeoff.availablePacks().stream().map(PackInfo::id).toList();
    List<String> bundled = idsOfFiles();
    assertThat(bundled).hasSizeGreaterThan(20).doesNotHaveDuplicates();
    assertThat(listed).containsAll(bundled);
  }

  private static List<String> idsOfFiles() throws IOException, URISyntaxException {
    URI scope = Objects.requireNonNull(Takeoff.class.getResource("scope/scope.yaml")).toURI();
    Path folder = Path.of(scope).resolve("../..").normalize();
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".yaml"))
          .flatMap(f -> id(f).stream())
          .toList();
    }
  }

  private static List<String> id(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.filter(l -> l.startsWith("id: ")).map(l -> l.substring(4).strip()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
