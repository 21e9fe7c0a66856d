package org.lagwright.takeoff.pack;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A table of the user: a CSV file or a sheet of a workbook. Columns are found by their heading,
 * whatever the case; every refusal names file, line and column.
 *
 * @param name file, or file and sheet, as shown in messages
 * @param headingLine line or row of the heading, from 1
 * @param columns headings in order, lower case
 * @param rows the rows below the heading that hold anything
 */
public record DataTable(String name, int headingLine, List<String> columns, List<Row> rows) {

  public DataTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Builds a table from raw cells, the first line being the heading.
   *
   * @throws PackException if there is no heading, a heading stands twice, or a row is longer
   */
  public static DataTable of(String name, List<Line> lines) {
    List<Line> filled = lines.stream().filter(line -> !line.isBlank()).toList();
    if (filled.isEmpty()) {
      throw new PackException(name + ":1:1: the table is empty. Write a heading and rows.");
    }
    Line heading = filled.get(0);
    List<String> columns = new ArrayList<>();
    for (String cell : heading.cells()) {
      String column = cell.strip().toLowerCase(Locale.ROOT);
      if (!column.isEmpty() && columns.contains(column)) {
        throw new PackException(
            place(name, heading.number(), columns.size())
                + "the column '"
                + column
                + "' stands twice. Keep one.");
      }
      columns.add(column);
    }
    List<Row> rows = new ArrayList<>();
    for (Line line : filled.subList(1, filled.size())) {
      rows.add(new Row(name, line.number(), columns, line.cells()));
    }
    return new DataTable(name, heading.number(), columns, rows);
  }

  /**
   * Refuses a table that lacks columns or has others.
   *
   * @throws PackException naming the column
   */
  public void requireColumns(Set<String> required, Set<String> optional) {
    for (String column : new TreeSet<>(required)) {
      if (!columns.contains(column)) {
        throw new PackException(
            name
                + ":"
                + headingLine
                + ": the column '"
                + column
                + "' is missing. Add it to the heading.");
      }
    }
    for (int i = 0; i < columns.size(); i++) {
      String column = columns.get(i);
      if (!column.isEmpty() && !required.contains(column) && !optional.contains(column)) {
        Set<String> known = new TreeSet<>(required);
        known.addAll(optional);
        throw new PackException(
            place(name, headingLine, i)
                + "unknown column '"
                + column
                + "'. Known here: "
                + known
                + ".");
      }
    }
  }

  /**
   * Cells as they stand in the file.
   *
   * @param number line or row number, from 1
   */
  public record Line(int number, List<String> cells) {
    public Line {
      cells = List.copyOf(cells);
    }

    boolean isBlank() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  /** One row; asks for cells by heading. */
  public static final class Row {
    private final String table;
    private final int number;
    private final Map<String, Integer> positions = new LinkedHashMap<>();
    private final List<String> cells;

    private Row(String table, int number, List<String> columns, List<String> cells) {
      this.table = table;
      this.number = number;
      this.cells = cells;
      for (int i = 0; i < columns.size(); i++) {
        positions.putIfAbsent(columns.get(i), i);
      }
      for (int i = columns.size(); i < cells.size(); i++) {
        if (!cells.get(i).isBlank()) {
          throw new PackException(
              place(table, number, i)
                  + "'"
                  + cells.get(i).strip()
                  + "' stands in no column. Remove it or give it a heading.");
        }
      }
    }

    /** Text of a cell, null where it is empty or the table lacks the column. */
    public @Nullable String findText(String column) {
      Integer at = positions.get(column);
      if (at == null || at >= cells.size() || cells.get(at).isBlank()) {
        return null;
      }
      return cells.get(at).strip();
    }

    /**
     * Text of a cell that must be one of those known, null where the cell is empty.
     *
     * @throws PackException if it is another one
     */
    public @Nullable String findOneOf(String column, Collection<String> known) {
      String text = findText(column);
      if (text != null && !known.contains(text)) {
        String all = String.join(", ", new TreeSet<>(known));
        throw refusal(column, "'" + text + "' is no " + column + ". Known: " + all + ".");
      }
      return text;
    }

    /**
     * Text of a cell that must be one of those known.
     *
     * @throws PackException if it is empty or another one
     */
    public String oneOf(String column, Collection<String> known) {
      String text = text(column);
      findOneOf(column, known);
      return text;
    }

    /**
     * Text of a cell.
     *
     * @throws PackException if it is empty
     */
    public String text(String column) {
      String text = findText(column);
      if (text == null) {
        throw refusal(column, "'" + column + "' is empty. Fill it in.");
      }
      return text;
    }

    /**
     * Number in a cell, null where it is empty. A decimal comma is read as one where no point
     * stands beside it.
     *
     * @throws PackException if it is no number
     */
    public @Nullable Double findNumber(String column) {
      String text = findText(column);
      if (text == null) {
        return null;
      }
      boolean both = text.contains(".") && text.contains(",");
      try {
        double value = both ? Double.NaN : Double.parseDouble(text.replace(',', '.'));
        if (Double.isNaN(value) || Double.isInfinite(value)) {
          throw new NumberFormatException(text);
        }
        return value;
      } catch (NumberFormatException e) {
        throw refusal(column, "'" + text + "' is no number. Write it like 12.5.");
      }
    }

    /**
     * Number in a cell.
     *
     * @throws PackException if it is empty or no number
     */
    public double number(String column) {
      Double value = findNumber(column);
      if (value == null) {
        throw refusal(column, "'" + column + "' is empty. Write a number.");
      }
      return value;
    }

    /** Line or row in its file, from 1. */
    public int number() {
      return number;
    }

    /** Where the row stands: {@code spec.xlsx, row 12}; folders are left out. */
    public String inWords() {
      return withoutFolder(table) + ", row " + number;
    }

    /** A refusal of a cell, to be thrown. */
    public PackException refusal(String column, String message) {
      return new PackException(place(table, number, positions.getOrDefault(column, 0)) + message);
    }
  }

  /** Name of the file without its folders, for results that others read. */
  public String fileName() {
    return withoutFolder(name);
  }

  private static String withoutFolder(String path) {
    return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
  }

  private static String place(String table, int line, int column) {
    return table + ":" + line + ":" + (column + 1) + ": ";
  }
}
