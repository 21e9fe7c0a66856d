package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.lagwright.report.PlainText;

/** Columns of plain text, two spaces apart, figures to the right; the last one may be wrapped. */
final class TextTable {

  /** How wide text is that is meant to be read line by line. */
  static final int WIDTH = 100;

  /** Names in models can be of any length. */
  private static final int LONGEST = 160;

  private final String indent;
  private final String alignment;
  private final List<List<String>> rows = new ArrayList<>();
  private boolean wrapped;

  /**
   * An empty table.
   *
   * @param indent what each line begins with
   * @param alignment one letter a column: {@code l} or {@code r}
   */
  TextTable(String indent, String alignment) {
    this.indent = indent;
    this.alignment = alignment;
  }

  /**
   * Wraps the last column so that lines end before {@link #WIDTH}; nothing of it is cut. Call it
   * before the first row.
   */
  TextTable wrapped() {
    wrapped = true;
    return this;
  }

  /** Adds a row with as many cells as the alignment has letters. */
  TextTable row(String... cells) {
    if (cells.length != alignment.length()) {
      throw new IllegalArgumentException("expected " + alignment.length() + " cells");
    }
    List<String> row = new ArrayList<>();
    for (String cell : cells) {
      boolean whole = wrapped && row.size() == cells.length - 1;
      row.add(whole ? PlainText.oneLine(cell) : shown(cell));
    }
    rows.add(row);
    return this;
  }

  /** Text of a model as it may be shown in a terminal: one line, cut where too long. */
  static String shown(String text) {
    String line = PlainText.oneLine(text);
    return line.codePointCount(0, line.length()) <= LONGEST
        ? line
        : line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "...";
  }

  /** The lines. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int[] widths = IntStream.range(0, alignment.length()).map(this::width).toArray();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(indent);
      int last = row.size() - 1;
      for (int i = 0; i < last; i++) {
        line.append(padded(row.get(i), alignment.charAt(i), widths[i])).append("  ");
      }
      if (wrapped) {
        lines.addAll(Wrapped.lines(line.toString(), row.get(last)));
      } else {
        line.append(padded(row.get(last), alignment.charAt(last), widths[last]));
        lines.add(line.toString().stripTrailing());
      }
    }
    return lines;
  }

  private static String padded(String cell, char alignment, int width) {
    String gap = " ".repeat(width - cell.length());
    return alignment == 'r' ? gap + cell : cell + gap;
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
  }
}
