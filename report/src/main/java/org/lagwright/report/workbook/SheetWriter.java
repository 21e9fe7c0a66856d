package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;

/** Writes rows one below the other. */
final class SheetWriter {

  private final Sheet sheet;
  private final Styles styles;
  private List<Unit> units = List.of();
  private int next;

  SheetWriter(Sheet sheet, Styles styles) {
    this.sheet = sheet;
    this.styles = styles;
  }

  /** Width of the columns in characters. */
  void widths(int... characters) {
    for (int i = 0; i < characters.length; i++) {
      sheet.setColumnWidth(i, characters[i] * 256);
    }
  }

  /** The large line on top. */
  void title(String text) {
    row(Entry.text(text, Look.TITLE));
  }

  /** A small grey line. */
  void note(String text) {
    row(Entry.text(text, Look.NOTE));
  }

  /** A blank row. */
  void skip() {
    next++;
  }

  /** Leaves rows blank until this one is the next. */
  void skipTo(int row) {
    next = Math.max(next, row);
  }

  /** A blank row and the name of a section, underlined over so many columns. */
  void section(String text, int columns) {
    units = List.of();
    next++;
    Entry[] entries = new Entry[columns];
    entries[0] = Entry.text(text, Look.SECTION);
    for (int i = 1; i < columns; i++) {
      entries[i] = new Entry.Blank(Look.SECTION);
    }
    row(entries);
  }

  /**
   * A row of headings; empty text leaves a gap in the same colour.
   *
   * @param firstNumber position of the first column of numbers
   * @param lastNumber position of the last one
   */
  void headings(int firstNumber, int lastNumber, String... texts) {
    Entry[] entries = new Entry[texts.length];
    for (int i = 0; i < texts.length; i++) {
      boolean number = i >= firstNumber && i <= lastNumber;
      entries[i] = Entry.text(texts[i], number ? Look.HEADING_RIGHT : Look.HEADING);
    }
    row(entries);
    units = Stream.of(texts).map(Unit::ofHeading).toList();
  }

  /** What follows stands above a table, in its columns. */
  void above(Table<?> table) {
    units = table.columns().stream().map(column -> Unit.ofHeading(column.heading())).toList();
  }

  /** An entry in units that no heading above it tells. */
  Entry in(Unit unit, Entry entry) {
    return styles.units().entry(entry, unit);
  }

  /** A row in the units of the headings above it; returns its position, from 0. */
  int row(Entry... entries) {
    Row row = sheet.createRow(next);
    List<Entry> shown = new ArrayList<>();
    for (int i = 0; i < entries.length; i++) {
      Unit unit = i < units.size() ? units.get(i) : Unit.NONE;
      shown.add(styles.units().entry(entries[i], unit));
      shown.get(i).put(row, i, styles);
    }
    RowHeight.fit(row, shown);
    return next++;
  }

  /**
   * A sentence across so many columns. Spreadsheets do not fit the height of merged cells, so
   * sentences that need two lines get them here.
   */
  void merged(String text, int columns) {
    int characters = 0;
    for (int i = 0; i < columns; i++) {
      characters += sheet.getColumnWidth(i) / 256;
    }
    Entry entry = Entry.text(text, Look.WRAPPED);
    Row row = sheet.getRow(row(entry));
    sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), 0, columns - 1));
    RowHeight.fit(row, entry, characters);
  }

  /** Joins cells of the row written last, for text wider than its column. */
  void join(int firstColumn, int lastColumn) {
    // the checked way holds each against all before it, and no row is joined twice
    sheet.addMergedRegionUnsafe(new CellRangeAddress(next - 1, next - 1, firstColumn, lastColumn));
  }

  /** Position of the row that is written next, from 0. */
  int next() {
    return next;
  }

  /** Absolute reference without sheet: {@code $B$7}. */
  static String cell(int row, int column) {
    return new CellReference(row, column, true, true).formatAsString();
  }

  /** Range of one column without sheet: {@code $B$7:$B$9}. */
  static String column(int column, int firstRow, int lastRow) {
    return cell(firstRow, column) + ":" + cell(lastRow, column);
  }
}
