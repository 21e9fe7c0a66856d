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
 * @param entry what a row shows here
 */
record Column<T>(String heading, int widest, Look headingLook, Function<T, Entry> entry) {

  /** Room between a text and the next column. */
  private static final int GAP = 2;

  /** A column of text. */
  static <T> Column<T> text(String heading, int widest, Function<T, @Nullable String> text) {
    return new Column<>(heading, widest, Look.HEADING, row -> Entry.text(text.apply(row)));
  }

  /** A column of text that may take several lines. */
  static <T> Column<T> wrapped(String heading, int widest, Function<T, @Nullable String> text) {
    return new Column<>(
        heading, widest, Look.HEADING, row -> Entry.text(text.apply(row), Look.WRAPPED));
  }

  /** A column of numbers. */
  static <T> Column<T> number(
      String heading, int width, Look look, Function<T, @Nullable Double> number) {
    return numbers(heading, width, row -> Entry.number(number.apply(row), look));
  }

  /** A column of numbers that look different from row to row. */
  static <T> Column<T> numbers(String heading, int width, Function<T, Entry> entry) {
    return new Column<>(heading, width, Look.HEADING_RIGHT, entry);
  }

  /** Width in characters that shows the longest of these rows, or {@link #widest}. */
  int width(List<T> rows) {
    if (headingLook == Look.HEADING_RIGHT) {
      return widest;
    }
    int longest =
        Stream.concat(Stream.of(heading.split(" ")), rows.stream().map(this::shown))
            .mapToInt(String::length)
            .max()
            .orElse(0);
    int headingInTwoLines = heading.length() / 2 + GAP;
    return Math.min(widest, Math.max(headingInTwoLines, longest + GAP));
  }

  private String shown(T row) {
    return entry.apply(row) instanceof Entry.Text text ? text.text() : "";
  }
}
