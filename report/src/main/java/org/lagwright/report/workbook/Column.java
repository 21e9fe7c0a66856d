package org.lagwright.report.workbook;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A column of a {@link Table}.
 *
 * @param heading with the unit, unique in its table
 * @param widest width in characters; columns of text become narrower where their text is short
 * @param headingLook how the heading looks: over numbers it stands right
 * @param entry what a row shows here, in SI
 * @param unit the unit of it, where the heading does not tell
 */
record Column<T>(
    String heading,
    int widest,
    Look headingLook,
    Function<T, Entry> entry,
    Function<T, Unit> unit) {

  /** Room between a text and the next column. */
  private static final int GAP = 2;

  private static <T> Column<T> of(
      String heading, int widest, Look headingLook, Function<T, Entry> entry) {
    Unit unit = Unit.ofHeading(heading);
    return new Column<>(heading, widest, headingLook, entry, row -> unit);
  }

  /** The same column with units that differ from row to row. */
  Column<T> in(Function<T, Unit> unitOfRow) {
    return new Column<>(heading, widest, headingLook, entry, unitOfRow);
  }

  /** What a row shows here in the units chosen. */
  Entry shown(T row, ShownUnits units) {
    return units.entry(entry.apply(row), unit.apply(row));
  }

  /** A column of text. */
  static <T> Column<T> text(String heading, int widest, Function<T, @Nullable String> text) {
    return of(heading, widest, Look.HEADING, row -> Entry.text(text.apply(row)));
  }

  /** A column of text that may take several lines. */
  static <T> Column<T> wrapped(String heading, int widest, Function<T, @Nullable String> text) {
    return of(heading, widest, Look.HEADING, row -> Entry.text(text.apply(row), Look.WRAPPED));
  }

  /** A column of numbers. */
  static <T> Column<T> number(
      String heading, int width, Look look, Function<T, @Nullable Double> number) {
    return numbers(heading, width, row -> Entry.number(number.apply(row), look));
  }

  /** A column of numbers that look different from row to row. */
  static <T> Column<T> numbers(String heading, int width, Function<T, Entry> entry) {
    return of(heading, width, Look.HEADING_RIGHT, entry);
  }

  /** Width in characters that shows the longest of these rows, or {@link #widest}. */
  int width(List<T> rows) {
    if (headingLook == Look.HEADING_RIGHT) {
      return widest;
    }
    int longest =
        Stream.concat(Stream.of(heading.split(" ")), rows.stream().map(this::text))
            .mapToInt(String::length)
            .max()
            .orElse(0);
    int headingInTwoLines = heading.length() / 2 + GAP;
    return Math.min(widest, Math.max(headingInTwoLines, longest + GAP));
  }

  private String text(T row) {
    return entry.apply(row) instanceof Entry.Text text ? text.text() : "";
  }
}
