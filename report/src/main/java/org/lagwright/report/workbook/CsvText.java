package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import org.lagwright.report.PlainText;
import org.lagwright.report.WritingFailure;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.dataformat.csv.CsvMapper;

/**
 * A table as CSV: UTF-8, commas, one row of headings, figures with a point. Of formulas the results
 * stand in it.
 */
final class CsvText {

  /** Where a text begins so, spreadsheets take it for a formula. */
  private static final String FORMULA_SIGNS = "=+-@";

  /** Figures are written to a millionth of their unit. */
  private static final int DECIMALS = 6;

  private CsvText() {}

  /**
   * Writes one; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  static void write(Table<?> table, ShownUnits units, OutputStream out) throws IOException {
    OutputStreamWriter writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    try (SequenceWriter csv =
        CsvMapper.builder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build()
            .writer()
            .writeValues(writer)) {
      csv.write(table.columns().stream().map(c -> units.heading(c.heading())).toList());
      write(table, units, csv);
    } catch (JacksonException e) {
      throw WritingFailure.of(e);
    }
    writer.flush();
  }

  private static <T> void write(Table<T> table, ShownUnits units, SequenceWriter csv) {
    for (T row : table.rows()) {
      csv.write(table.columns().stream().map(c -> shown(c.shown(row, units).value())).toList());
    }
  }

  private static Object shown(Object value) {
    if (value instanceof Double number) {
      return BigDecimal.valueOf(number)
          .setScale(DECIMALS, RoundingMode.HALF_UP)
          .stripTrailingZeros()
          .toPlainString();
    }
    String text = PlainText.oneLine(value.toString());
    boolean formula = !text.isEmpty() && FORMULA_SIGNS.indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
