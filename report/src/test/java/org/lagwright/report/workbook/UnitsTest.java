package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.report.RealRun;
import org.lagwright.takeoff.settings.UnitSystem;

/** The demo in the units of the United States against the demo in SI, cell by cell. */
class UnitsTest {

  private static final Path DEMO = Path.of("..", "test-models", "demo");

  @TempDir static Path folder;

  @BeforeAll
  static void takeOffInBoth() throws IOException {
    String settings =
        Files.readString(DEMO.resolve("settings.yaml"))
            .replace("norms.csv", DEMO.resolve("norms.csv").toAbsolutePath().toString())
            .replace("prices.csv", DEMO.resolve("prices.csv").toAbsolutePath().toString());
    run("metric", settings);
    run("us", settings + "units: us\n");
  }

  private static void run(String name, String settings) throws IOException {
    Path file = Files.writeString(folder.resolve(name + ".yaml"), settings);
    RealRun run =
        RealRun.takeoff(
            DEMO.resolve("alder-quay-ifc4.ifc"),
            folder.resolve(name),
            "--csv",
            "--settings",
            file.toString());
    assertThat(run.code()).as(run.err()).isZero();
  }

  private static XSSFWorkbook book(String name) throws IOException {
    try (InputStream in = Files.newInputStream(folder.resolve(name).resolve("takeoff.xlsx"))) {
      return new XSSFWorkbook(in);
    }
  }

  /** Factors by hand: foot 0.3048 m, inch 25.4 mm. */
  @ParameterizedTest
  @CsvSource({
    "Summary, Length m, Length ft, 3.280839895, 0.001",
    "Summary, Outer area m2, Outer area ft2, 10.763910417, 0.001",
    "Summary, Volume m3, Volume ft3, 35.314666721, 0.001",
    "Takeoff, Thickness mm, Thickness in, 0.0393700787, 0.001",
    "Thickness, Insulated W/m, Insulated Btu/(h ft), 1.040022, 0.001",
    "Coverage, Length m, Length ft, 3.280839895, 0.001",
    "Elements, Outer area m2, Outer area ft2, 10.763910417, 0.001",
    "Cutting plan, Length m, Length ft, 3.280839895, 0.001"
  })
  void figuresUnderAHeadingAreConvertedWithIt(
      String sheet, String metric, String us, double factor, double tolerance) throws IOException {
    try (XSSFWorkbook si = book("metric");
        XSSFWorkbook ip = book("us")) {
      List<Double> before = under(si.getSheet(sheet), metric);
      List<Double> after = under(ip.getSheet(sheet), us);
      assertThat(after).hasSameSizeAs(before).isNotEmpty();
      for (int i = 0; i < before.size(); i++) {
        assertThat(after.get(i))
            .isCloseTo(before.get(i) * factor, within(tolerance * (1 + Math.abs(before.get(i)))));
      }
    }
  }

  @Test
  void temperaturesAreInFahrenheit() throws IOException {
    try (XSSFWorkbook si = book("metric");
        XSSFWorkbook ip = book("us")) {
      List<Double> before = under(si.getSheet("Thickness"), "Medium degC");
      List<Double> after = under(ip.getSheet("Thickness"), "Medium degF");
      assertThat(before).contains(6.0);
      assertThat(after).contains(42.8).hasSameSizeAs(before);
    }
  }

  @Test
  void formulasTotalInBothAndMoneyAndHoursAreTheSame() throws IOException {
    try (XSSFWorkbook si = book("metric");
        XSSFWorkbook ip = book("us")) {
      assertThat(LiveFormulas.checked(ip)).isEqualTo(LiveFormulas.checked(si));
      for (String name : List.of("Price", "Hours", "Labour")) {
        compare(
            si.getSheet(name),
            ip.getSheet(name),
            (one, other) -> {
              if (isMoneyOrHours(one)) {
                assertThat(other.getNumericCellValue())
                    .as(name + "!" + one.getAddress())
                    .isCloseTo(
                        one.getNumericCellValue(),
                        within(1e-9 * (1 + Math.abs(one.getNumericCellValue()))));
              }
            });
      }
    }
  }

  /** In these sheets what a formula makes is hours or money; references to norms excepted. */
  private static boolean isMoneyOrHours(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        && cell.getCachedFormulaResultType() == CellType.NUMERIC
        && !cell.getCellFormula().matches("Labour!\\$?[A-Z]+\\$?\\d+");
  }

  private static void compare(Sheet one, Sheet other, BiConsumer<Cell, Cell> check) {
    for (Row row : one) {
      for (Cell cell : row) {
        check.accept(cell, other.getRow(row.getRowNum()).getCell(cell.getColumnIndex()));
      }
    }
  }

  @Test
  void otherProgramsStillReadSi() throws IOException {
    String us = Files.readString(folder.resolve("us").resolve("takeoff.json"));
    String metric = Files.readString(folder.resolve("metric").resolve("takeoff.json"));
    assertThat(us.replace("\"units\" : \"us\"", "\"units\" : \"metric\"")).isEqualTo(metric);
  }

  @Test
  void csvHasTheUnitsOfTheWorkbook() throws IOException {
    String takeoff = Files.readString(folder.resolve("us").resolve("takeoff-takeoff.csv"));
    assertThat(takeoff.lines().findFirst().orElseThrow())
        .contains("\"Thickness in\"", "\"Outer area ft2\"")
        .doesNotContain(" mm");
    assertThat(takeoff).contains(",ft,").doesNotContain(",m,");
  }

  @ParameterizedTest
  @CsvSource({
    "DN50 / 60.3 mm, DN50 / 2.374 in",
    "300 x 200 mm, 11.811 x 7.874 in",
    "114.3 / 76.1 mm, 4.5 / 2.996 in",
    "32 mm tube + 25.4 mm sheet, 1.26 in tube + 1 in sheet",
    "tube of 2 m, tube of 6.562 ft",
    "cartridge of 310 ml, cartridge of 310 ml"
  })
  void sizesInWordsAreConverted(String metric, String us) {
    Entry shown = new ShownUnits(UnitSystem.US).entry(Entry.text(metric), Unit.SIZES);
    assertThat(shown.value()).isEqualTo(us);
    assertThat(new ShownUnits(UnitSystem.METRIC).entry(Entry.text(metric), Unit.SIZES).value())
        .isEqualTo(metric);
  }

  /** Numbers below the first such heading down to the end, in its column. */
  private static List<Double> under(Sheet sheet, String heading) {
    List<Double> numbers = new ArrayList<>();
    int column = -1;
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (column < 0
            && cell.getCellType() == CellType.STRING
            && cell.getStringCellValue().equals(heading)) {
          column = cell.getColumnIndex();
        }
      }
      Cell below = column < 0 ? null : row.getCell(column);
      boolean number = below != null && below.getCellType() == CellType.NUMERIC;
      boolean formula =
          below != null
              && below.getCellType() == CellType.FORMULA
              && below.getCachedFormulaResultType() == CellType.NUMERIC;
      if (below != null && (number || formula)) {
        numbers.add(below.getNumericCellValue());
      } else if (column >= 0 && !numbers.isEmpty() && sheet.getSheetName().equals("Summary")) {
        break;
      }
    }
    return numbers;
  }
}
