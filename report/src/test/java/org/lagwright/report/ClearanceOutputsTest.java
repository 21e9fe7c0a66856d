package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.json.TakeoffSchema;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import tools.jackson.databind.JsonNode;

/** Clearance against walls in workbook, JSON and CSV, each opened by another library. */
class ClearanceOutputsTest {

  @TempDir static Path folder;

  @BeforeAll
  static void takeOff() throws IOException {
    Path model = Files.writeString(folder.resolve("model.ifc"), WalledModel.text());
    RealRun run = RealRun.takeoff(model, folder, "--csv");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
  }

  @Test
  void theSheetListsClashesWithWallsByTheirMethodAndPassagesBehindThem() throws IOException {
    List<String> rows = new ArrayList<>();
    String notes;
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(folder.resolve("takeoff.xlsx")))) {
      Sheet sheet = book.getSheet("Clearance");
      notes = String.join(" ", texts(sheet.getRow(5)));
      for (int i = 9; i <= sheet.getLastRowNum(); i++) {
        List<String> cells = texts(sheet.getRow(i));
        rows.add(String.join(" | ", cells.get(0), cells.get(5), cells.get(9), cells.get(17)));
      }
    }

    assertThat(rows)
        .containsExactly(
            "bare clash | box | wall | " + WalledModel.WALL,
            "insulation clash | body | heating return | " + WalledModel.RETURN,
            "through an opening | box | wall | " + WalledModel.OPEN_WALL);
    assertThat(notes).contains("Looked at 6 elements and 2 parts of the building");
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < row.getLastCellNum(); i++) {
      texts.add(new DataFormatter().formatCellValue(row.getCell(i)));
    }
    return texts;
  }

  @Test
  void jsonHoldsTheSameAndFitsItsSchema() throws IOException {
    JsonNode clearance = RealRun.document(folder).get("clearance");
    JsonNode wall = clearance.get("clashes").get(0);
    JsonNode passage = clearance.get("passages").get(0);

    assertThat(TakeoffSchema.errors(RealRun.json(folder))).isEmpty();
    assertThat(clearance.get("building").asInt()).isEqualTo(2);
    assertThat(wall.get("method").asString()).isEqualTo("box");
    assertThat(wall.get("second").get("globalId").asString()).isEqualTo(WalledModel.WALL);
    assertThat(passage.get("part").get("globalId").asString()).isEqualTo(WalledModel.OPEN_WALL);
    assertThat(passage.get("marginM").asDouble()).isBetween(0.05, 0.1);
  }

  @Test
  void csvHoldsAsManyRows() throws IOException {
    DataTable table = CsvTables.readFile(folder.resolve("takeoff-clearance.csv"));

    assertThat(table.rows()).hasSize(3);
    assertThat(table.rows().get(2).text("cause")).isEqualTo("through an opening");
  }
}
