package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.RealRun;

/**
 * LibreOffice opens the workbooks of the demo building, calculates every formula anew, and gets
 * what we wrote beside it.
 */
@Tag("office")
class RecalculationTest {

  private static final Path DEMO = Path.of("..", "test-models", "demo");

  @TempDir Path folder;

  @BeforeAll
  static void officeIsThere() {
    assumeTrue(Soffice.isInstalled(), "LibreOffice (soffice) is not installed");
  }

  @Test
  void theTakeoffIsTheSameRecalculated() throws IOException, InterruptedException {
    RealRun run =
        RealRun.takeoff(
            DEMO.resolve("alder-quay-ifc4.ifc"),
            folder,
            "--settings",
            DEMO.resolve("settings.yaml").toString());
    assertThat(run.code()).as(run.err()).isZero();

    assertThat(compared(folder.resolve("takeoff.xlsx")))
        .containsKeys("Summary", "Takeoff", "Fittings", "Order", "Labour", "Hours", "Price")
        .allSatisfy((sheet, formulas) -> assertThat(formulas).as(sheet).isPositive());
  }

  @Test
  void theComparisonIsTheSameRecalculated() throws IOException, InterruptedException {
    Path before = DEMO.resolve("alder-quay-ifc4.ifc");
    String longer = Files.readString(before).replace(",500.);", ",900.);");
    Path now = Files.writeString(folder.resolve("later.ifc"), longer);
    RealRun run =
        RealRun.of(
            "compare",
            before.toString(),
            now.toString(),
            "--out",
            folder.toString(),
            "--settings",
            DEMO.resolve("settings.yaml").toString());
    assertThat(run.code()).as(run.err()).isZero();

    Map<String, Integer> formulas = compared(folder.resolve("comparison.xlsx"));

    assertThat(formulas).containsOnlyKeys("Summary", "Changes");
    assertThat(formulas.get("Summary")).isGreaterThan(60);
    assertThat(formulas.get("Changes")).isGreaterThan(10);
  }

  /** What is wrong beside a formula is made right, so the numbers compared are not our own. */
  @Test
  void aWrongNumberBesideAFormulaDoesNotSurvive() throws IOException, InterruptedException {
    Path workbook = folder.resolve("wrong.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        var out = Files.newOutputStream(workbook)) {
      Cell cell = book.createSheet("A").createRow(0).createCell(0);
      cell.setCellFormula("1+1");
      cell.setCellValue(3);
      book.write(out);
    }
    try (XSSFWorkbook book = open(Soffice.recalculated(workbook, folder))) {
      assertThat(book.getSheet("A").getRow(0).getCell(0).getNumericCellValue()).isEqualTo(2);
    }
  }

  /** Formulas by sheet; each has no error and the value that we wrote. */
  private Map<String, Integer> compared(Path workbook) throws IOException, InterruptedException {
    Map<String, Integer> formulas = new TreeMap<>();
    try (XSSFWorkbook ours = open(workbook);
        XSSFWorkbook theirs = open(Soffice.recalculated(workbook, folder))) {
      for (Sheet sheet : ours) {
        Sheet other = theirs.getSheet(sheet.getSheetName());
        assertThat(other).as(sheet.getSheetName()).isNotNull();
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              assertSame(cell, other.getRow(row.getRowNum()).getCell(cell.getColumnIndex()));
              formulas.merge(sheet.getSheetName(), 1, Integer::sum);
            }
          }
        }
      }
    }
    return formulas;
  }

  private static void assertSame(Cell ours, Cell theirs) {
    String at =
        ours.getSheet().getSheetName() + "!" + ours.getAddress() + " " + ours.getCellFormula();
    assertThat(theirs.getCellType()).as(at).isEqualTo(CellType.FORMULA);
    assertThat(theirs.getCachedFormulaResultType())
        .as(at)
        .isEqualTo(ours.getCachedFormulaResultType());
    if (ours.getCachedFormulaResultType() == CellType.STRING) {
      assertThat(theirs.getStringCellValue()).as(at).isEqualTo(ours.getStringCellValue());
    } else {
      double value = ours.getNumericCellValue();
      assertThat(theirs.getNumericCellValue())
          .as(at)
          .isCloseTo(value, within(1e-9 * (1 + Math.abs(value))));
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
