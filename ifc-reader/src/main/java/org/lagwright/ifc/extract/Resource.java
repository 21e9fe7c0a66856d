package org.lagwright.ifc.extract;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Data files of this package: one fact a line, comments start with a hash. */
final class Resource {

  private Resource() {}

  /** The lines of a file without comments and blank lines. */
  static List<String> lines(String name) {
    InputStream in = Resource.class.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalStateException("resource missing from the build: " + name);
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return reader.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
