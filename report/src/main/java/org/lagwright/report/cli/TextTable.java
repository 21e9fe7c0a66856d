package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.report.PlainText;

/** Columns of plain text, two spaces apart, figures to the right. */
final class TextTable {

  /** Names in models can be of any length. */
  private static final int LONGEST = 160;

  private final String indent;
  private final String alignment;
  private final List<List<String>> rows = new ArrayList<>();

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

  /** Adds a row with as many cells as the alignment has letters. */
  TextTable row(String... cells) {
    if (cells.length != alignment.length()) {
      throw new IllegalArgumentException("expected " + alignment.length() + " cells");
    }
    List<String> row = new ArrayList<>();
    for (String cell : cells) {
      row.add(shown(cell));
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
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(indent);
      for (int i = 0; i < row.size(); i++) {
        line.append(i == 0 ? "" : "  ").append(padded(row.get(i), i));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private String padded(String cell, int column) {
    String gap = " ".repeat(width(column) - cell.length());
    return alignment.charAt(column) == 'r' ? gap + cell : cell + gap;
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
  }
}
