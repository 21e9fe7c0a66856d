package org.lagwright.report.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.settings.Settings;

/** Tables that the settings name, as workbooks. */
class UserTablesTest {

  @TempDir Path folder;

  @Test
  void specificationOfAWorkbookNamesItsRow() throws IOException {
    workbook(
        new Object[] {"service", "upToMm", "thicknessMm", "source"},
        new Object[] {"chilled-water-flow", 60.3, 25, "4.2"},
        new Object[] {"chilled-water-flow", null, 32, null});
    Settings settings =
        new ModelPipeline()
            .readSettings(
                Files.writeString(
                    folder.resolve("job.yaml"), "demands: {specificationFile: spec.xlsx}\n"));

    assertThat(settings.demands().rows()).hasSize(2);
    assertThat(settings.demands().rows().get(0).upToMm()).isEqualTo(60.3);
    assertThat(settings.demands().rows().get(0).source()).endsWith("spec.xlsx, row 2: 4.2");
    assertThat(settings.demands().rows().get(1).thicknessMm()).isEqualTo(32);
  }

  @Test
  void fileThatIsNoWorkbookIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("spec.xlsx"), "no workbook");

    assertThatThrownBy(() -> UserTables.read(file)).isInstanceOf(PackException.class);
    assertThatThrownBy(() -> UserTables.read(folder.resolve("none.xlsx")))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("no such file");
  }

  private void workbook(Object[]... lines) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(folder.resolve("spec.xlsx"))) {
      var sheet = book.createSheet("Specification");
      for (int i = 0; i < lines.length; i++) {
        Row row = sheet.createRow(i);
        for (int j = 0; j < lines[i].length; j++) {
          if (lines[i][j] instanceof Number number) {
            row.createCell(j).setCellValue(number.doubleValue());
          } else if (lines[i][j] != null) {
            row.createCell(j).setCellValue(lines[i][j].toString());
          }
        }
      }
      book.write(out);
    }
  }
}
