package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.workbook.LiveFormulas;

/** A model whose names are formulas: no sheet and no CSV may ever reckon with them. */
class HostileTextTest {

  private static final Path DEMO = Path.of("../test-models/demo");

  @TempDir static Path folder;

  private static final Set<String> NAMES =
      Set.of("=1+1", "+A1", "@x", "-2", "=Chilled water flow", "=HYPERLINK(\"http://x.invalid\")");

  @BeforeAll
  static void takeOff() throws IOException {
    String model =
        Files.readString(DEMO.resolve("alder-quay-ifc4.ifc"))
            .replace("'Ground floor'", "'=1+1'")
            .replace("'Upper floor'", "'+A1'")
            .replace("'Roof'", "'@x'")
            .replace("'Mineral wool'", "'-2'")
            .replace("'Chilled water flow'", "'=Chilled water flow'")
            .replace("'Pipe DN 15'", "'=HYPERLINK(\"http://x.invalid\")'")
            .replace("'Pipe DN 100'", "'-2'")
            .replace("'DN100'", "'=1+1'");
    Path file = Files.writeString(folder.resolve("=1+1.ifc"), model);
    RealRun run =
        RealRun.takeoff(
            file, folder, "--settings", DEMO.resolve("settings.yaml").toString(), "--csv");
    assertThat(run.code()).as(run.err()).isZero();
  }

  @Test
  void noSheetTakesTextOfTheModelForAFormula() throws IOException {
    Set<String> found = new HashSet<>();
    Set<String> sheets = new HashSet<>();
    try (InputStream in = Files.newInputStream(folder.resolve("takeoff.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            assertThat(isFormulaOf(cell))
                .as(sheet.getSheetName() + "!" + cell.getAddress())
                .isFalse();
            if (cell.getCellType() == CellType.STRING
                && NAMES.contains(cell.getStringCellValue())) {
              found.add(cell.getStringCellValue());
              sheets.add(sheet.getSheetName());
            }
          }
        }
      }
      assertThat(LiveFormulas.checked(book)).isGreaterThan(500);
    }
    assertThat(found).containsAll(NAMES);
    assertThat(sheets).contains("Summary", "Coverage", "Hours", "Scope", "Elements", "Trace");
  }

  private static boolean isFormulaOf(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        && NAMES.stream().anyMatch(name -> ("=" + cell.getCellFormula()).equals(name));
  }

  @Test
  void noCsvBeginsATextLikeAFormula() throws IOException {
    Set<String> found = new HashSet<>();
    try (var files = Files.newDirectoryStream(folder, "*.csv")) {
      for (Path file : files) {
        for (String cell : cells(Files.readString(file, StandardCharsets.UTF_8))) {
          boolean number = cell.matches("-?\\d+(\\.\\d+)?");
          assertThat(number || !cell.matches("(?s)[=+@\\-\\t\\r].*"))
              .as(file.getFileName() + ": " + cell)
              .isTrue();
          if (cell.startsWith("'")) {
            found.add(cell.substring(1));
          }
        }
      }
    }
    assertThat(found).containsAll(NAMES);
  }

  /** Cells after RFC 4180, read by hand: not by what wrote them. */
  private static List<String> cells(String csv) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : csv.toCharArray()) {
      if (c == '"') {
        if (!quoted && !cell.isEmpty()) {
          cell.append(c);
        }
        quoted = !quoted;
      } else if (!quoted && (c == ',' || c == '\n')) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    return cells;
  }
}
