package org.lagwright.report.workbook;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A column of a {@link Table}.
 *
 * @param heading with the unit, unique in its table
 * @param width in characters
 * @param headingLook how the heading looks: over numbers it stands right
 * @param entry what a row shows here
 */
record Column<T>(String heading, int width, Look headingLook, Function<T, Entry> entry) {

  /** A column of text. */
  static <T> Column<T> text(String heading, int width, Function<T, @Nullable String> text) {
    return new Column<>(heading, width, Look.HEADING, row -> Entry.text(text.apply(row)));
  }

  /** A column of text that may take several lines. */
  static <T> Column<T> wrapped(String heading, int width, Function<T, @Nullable String> text) {
    return new Column<>(
        heading, width, Look.HEADING, row -> Entry.text(text.apply(row), Look.WRAPPED));
  }

  /** A column of numbers. */
  static <T> Column<T> number(
      String heading, int width, Look look, Function<T, @Nullable Double> number) {
    return new Column<>(
        heading, width, Look.HEADING_RIGHT, row -> Entry.number(number.apply(row), look));
  }
}
