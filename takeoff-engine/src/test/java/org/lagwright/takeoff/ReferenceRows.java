package org.lagwright.takeoff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Rows of a CSV of published numbers: comment lines begin with #, then a header, then semicolon
 * separated values.
 */
public final class ReferenceRows {

  private ReferenceRows() {}

  /** One row by the names of the header; prints as its line. */
  public record Row(Map<String, String> cells, String line) {

    public String text(String column) {
      String value = cells.get(column);
      if (value == null) {
        throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
      }
      return value;
    }

    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    /** A tolerance written as 0.2% of the published value or as an absolute number. */
    public double tolerance(double published) {
      String text = text("tolerance");
      return text.endsWith("%")
          ? Math.abs(published) * Double.parseDouble(text.substring(0, text.length() - 1)) / 100
          : Double.parseDouble(text);
    }

    @Override
    public String toString() {
      return line;
    }
  }

  public static List<Row> read(Class<?> owner, String name) {
    try (InputStream in = owner.getResourceAsStream(name)) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(l -> !l.startsWith("#"))
              .toList();
      String[] header = lines.get(0).split(";", -1);
      return lines.stream().skip(1).map(l -> row(header, l)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String[] header, String line) {
    String[] values = line.split(";", -1);
    if (values.length != header.length) {
      throw new IllegalArgumentException(
          values.length + " cells under " + header.length + " headings: " + line);
    }
    Map<String, String> cells = new HashMap<>();
    for (int i = 0; i < header.length; i++) {
      cells.put(header[i], values[i]);
    }
    return new Row(cells, line);
  }
}
