package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.PlainText;
import org.lagwright.report.WritingFailure;
import org.lagwright.takeoff.Takeoff;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.dataformat.csv.CsvMapper;

/**
 * The tables of the workbook as CSV for other programs: UTF-8, commas, one row of headings, figures
 * with a point. Of formulas the results stand in it.
 */
public final class TakeoffTables {

  /** Where a text begins so, spreadsheets take it for a formula. */
  private static final String FORMULA_SIGNS = "=+-@";

  /** Figures are written to a millionth of their unit. */
  private static final int DECIMALS = 6;

  private final Map<String, Table<?>> tables = new LinkedHashMap<>();

  /** Prepares the tables of one takeoff. */
  public TakeoffTables(CheckedTakeoff checked) {
    Takeoff takeoff = checked.takeoff();
    add(new LinesSheet(takeoff.lines()).table());
    add(new OrderSheet(takeoff).table());
    add(new CuttingSheet(takeoff.order()).table());
    add(new ThicknessSheet(takeoff).table());
    add(new SweepSheet(takeoff).table());
    add(new CoverageSheet(checked.coverage()).table());
    // results stand in CSV, so it does not matter where the norms are
    add(new HoursSheet(takeoff.labour(), norm -> "A1").table());
    add(new ElementsSheet(takeoff).table());
    add(new FindingsSheet(takeoff).table());
  }

  private void add(Table<?> table) {
    tables.put(fileName(table.sheetName()), table);
  }

  private static String fileName(String sheet) {
    return "takeoff-" + sheet.toLowerCase(Locale.ROOT).replace(' ', '-') + ".csv";
  }

  /** Names of the files. */
  public List<String> names() {
    return List.copyOf(tables.keySet());
  }

  /**
   * Writes one; the stream stays open.
   *
   * @param name of {@link #names}
   * @throws IOException if the stream cannot be written
   */
  public void write(String name, OutputStream out) throws IOException {
    Table<?> table = tables.get(name);
    if (table == null) {
      throw new IllegalArgumentException("no table " + name);
    }
    OutputStreamWriter writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    try (SequenceWriter csv =
        CsvMapper.builder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build()
            .writer()
            .writeValues(writer)) {
      csv.write(table.columns().stream().map(Column::heading).toList());
      write(table, csv);
    } catch (JacksonException e) {
      throw WritingFailure.of(e);
    }
    writer.flush();
  }

  private static <T> void write(Table<T> table, SequenceWriter csv) {
    for (T row : table.rows()) {
      csv.write(table.columns().stream().map(c -> shown(c.entry().apply(row).value())).toList());
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
