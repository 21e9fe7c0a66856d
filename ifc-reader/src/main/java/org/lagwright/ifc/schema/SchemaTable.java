package org.lagwright.ifc.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table of a schema in plain ASCII: a line of words for each entity, which is the first word; an
 * exclamation mark before it marks an abstract one. Comments stand at the beginning, after a hash.
 * Kept as bytes, since a model asks for few of its lines.
 */
final class SchemaTable {

  private static final int LOWER_TO_UPPER = 'a' - 'A';

  private final byte[] text;

  /** Where each line starts, and where the last one ends. */
  private final int[] starts;

  private SchemaTable(byte[] text) {
    this.text = text;
    int[] found = new int[64];
    int count = 0;
    for (int at = 0; at < text.length; at = nextLine(text, at)) {
      if (text[at] != '#') {
        if (count + 1 == found.length) {
          found = Arrays.copyOf(found, count * 2);
        }
        found[count++] = at;
      }
    }
    found[count] = text.length;
    this.starts = Arrays.copyOf(found, count + 1);
  }

  private static int nextLine(byte[] text, int at) {
    int end = at;
    while (end < text.length && text[end] != '\n') {
      end++;
    }
    return end + 1;
  }

  /** Reads a table that is part of the program. */
  static SchemaTable read(String resource) {
    try (InputStream in = SchemaTable.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("resource missing from the build: " + resource);
      }
      return new SchemaTable(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words of all lines. */
  List<String[]> lines() {
    List<String[]> lines = new ArrayList<>(starts.length);
    for (int line = 0; line + 1 < starts.length; line++) {
      lines.add(words(line));
    }
    return lines;
  }

  /**
   * The words of the line of an entity, null if there is none; only for tables that are sorted by
   * keyword.
   *
   * @param keyword in upper case
   */
  String @Nullable [] find(String keyword) {
    int low = 0;
    int high = starts.length - 2;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      int order = compare(keyword, middle);
      if (order == 0) {
        return words(middle);
      }
      if (order < 0) {
        high = middle - 1;
      } else {
        low = middle + 1;
      }
    }
    return null;
  }

  private int compare(String keyword, int line) {
    int from = startOfName(line);
    for (int i = 0; i < keyword.length(); i++) {
      int there = text[from + i];
      if (there >= 'a' && there <= 'z') {
        there -= LOWER_TO_UPPER;
      }
      if (keyword.charAt(i) != there) {
        // a name that ends here ends in a space, which is before every letter
        return keyword.charAt(i) - there;
      }
    }
    return text[from + keyword.length()] <= ' ' ? 0 : -1;
  }

  private int startOfName(int line) {
    return text[starts[line]] == '!' ? starts[line] + 1 : starts[line];
  }

  private String[] words(int line) {
    int from = startOfName(line);
    int to = starts[line + 1] - 1;
    return new String(text, from, to - from, StandardCharsets.ISO_8859_1).split(" ", -1);
  }
}
