package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;

/** Holds the value cached beside each formula against what the spreadsheet library makes of it. */
public final class LiveFormulas {

  private LiveFormulas() {}

  /** Checks every formula of a workbook; returns how many there are. */
  public static int checked(Workbook book) {
    FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
    int formulas = 0;
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            assertCachedValue(cell, evaluator.evaluate(cell));
            formulas++;
          }
        }
      }
    }
    return formulas;
  }

  private static void assertCachedValue(Cell cell, CellValue evaluated) {
    String at = cell.getAddress() + " = " + cell.getCellFormula();
    assertThat(evaluated.getCellType()).as(at).isEqualTo(cell.getCachedFormulaResultType());
    if (evaluated.getCellType() == CellType.STRING) {
      assertThat(evaluated.getStringValue()).as(at).isEqualTo(cell.getStringCellValue());
    } else {
      assertThat(evaluated.getNumberValue())
          .as(at)
          .isCloseTo(cell.getNumericCellValue(), within(1e-9));
    }
  }
}
