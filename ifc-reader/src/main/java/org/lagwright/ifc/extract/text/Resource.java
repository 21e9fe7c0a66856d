package org.lagwright.ifc.extract.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Data files of this package: one fact a line, comments start with a hash. */
public final class Resource {

  /** Asking for each file by name would search all modules of Java each time. */
  private static final URL HERE =
      Objects.requireNonNull(Resource.class.getResource("Resource.class"));

  private Resource() {}

  /** The lines of a file without comments and blank lines. */
  public static List<String> lines(String name) {
    String text;
    try (InputStream in = new URL(HERE, name).openStream()) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("resource missing from the build: " + name, e);
    }
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < text.length(); ) {
      int end = text.indexOf('\n', from);
      String line = text.substring(from, end < 0 ? text.length() : end);
      if (!line.isBlank() && line.charAt(0) != '#') {
        lines.add(line);
      }
      from = end < 0 ? text.length() : end + 1;
    }
    return lines;
  }
}
