package org.lagwright.report.workbook;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.jspecify.annotations.Nullable;

/** What stands in one cell. Text is always a string cell, whatever it begins with. */
sealed interface Entry {

  /** How it looks. */
  Look look();

  /** Writes it into a new cell. */
  default void put(Row row, int column, Styles styles) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(styles.of(look()));
    fill(cell);
  }

  /** Sets the content of the cell. */
  void fill(Cell cell);

  /** What is shown, of a formula its result: a text or a number. */
  Object value();

  /** Text, empty where null. */
  static Entry text(@Nullable String text) {
    return text(text, Look.TEXT);
  }

  /** Text, empty where null. */
  static Entry text(@Nullable String text, Look look) {
    return text == null || text.isEmpty() ? new Blank(look) : new Text(text, look);
  }

  /** A number, empty where null. */
  static Entry number(@Nullable Double number, Look look) {
    return number == null ? new Blank(look) : new Figure(number, look);
  }

  /** A formula with its computed number. */
  static Entry live(String formula, double computed, Look look) {
    return new Live(formula, computed, look);
  }

  /** Text. */
  record Text(String text, Look look) implements Entry {
    @Override
    public Object value() {
      return text;
    }

    @Override
    public void fill(Cell cell) {
      cell.setCellValue(CellText.of(text));
    }
  }

  /** A number; spreadsheets know neither NaN nor infinity. */
  record Figure(double number, Look look) implements Entry {
    public Figure {
      requireFinite(number);
    }

    @Override
    public Object value() {
      return number;
    }

    @Override
    public void fill(Cell cell) {
      cell.setCellValue(number);
    }
  }

  /**
   * A formula. The computed value is cached beside it for viewers that do not recalculate.
   *
   * @param formula without the equals sign; built from our own words only, never from text of a
   *     model
   */
  record Live(String formula, double computed, Look look) implements Entry {
    public Live {
      requireFinite(computed);
    }

    @Override
    public Object value() {
      return computed;
    }

    @Override
    public void fill(Cell cell) {
      cell.setCellFormula(formula);
      cell.setCellValue(computed);
    }
  }

  /** A formula whose result is text. */
  record LiveText(String formula, String computed, Look look) implements Entry {
    @Override
    public Object value() {
      return computed;
    }

    @Override
    public void fill(Cell cell) {
      cell.setCellFormula(formula);
      cell.setCellValue(computed);
    }
  }

  /** Nothing, in the style of its neighbours. */
  record Blank(Look look) implements Entry {
    @Override
    public Object value() {
      return "";
    }

    @Override
    public void fill(Cell cell) {
      cell.setBlank();
    }
  }

  private static void requireFinite(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("a cell cannot hold " + number);
    }
  }
}
