package org.lagwright.report.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.PackException;

/** Tables that settings name: the first sheet of a workbook ({@code .xlsx}), else CSV. */
final class UserTables {

  private UserTables() {}

  /**
   * Reads a table.
   *
   * @throws PackException if the file is missing, unreadable or no table
   */
  static DataTable read(Path file) {
    boolean workbook = file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    return workbook ? firstSheet(file) : CsvTables.readFile(file);
  }

  private static DataTable firstSheet(Path file) {
    if (!Files.exists(file)) {
      throw new PackException(file + ": no such file. Check the path.");
    }
    try (Workbook book = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = book.getSheetAt(0);
      List<DataTable.Line> lines = new ArrayList<>();
      for (Row row : sheet) {
        lines.add(new DataTable.Line(row.getRowNum() + 1, cells(row)));
      }
      return DataTable.of(file.toString(), lines);
    } catch (IOException | OpenXML4JRuntimeException e) {
      throw new PackException(file + ": no workbook that can be read. Save it as .xlsx or CSV.", e);
    }
  }

  private static List<String> cells(Row row) {
    DataFormatter formatter = new DataFormatter(Locale.ROOT);
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.getLastCellNum(); i++) {
      cells.add(text(row.getCell(i, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK), formatter));
    }
    return cells;
  }

  /** Numbers with all their digits, whatever the cell shows; of formulas the value kept. */
  private static String text(Cell cell, DataFormatter formatter) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> String.valueOf(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      default -> formatter.formatCellValue(cell);
    };
  }
}
