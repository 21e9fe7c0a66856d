package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.SampleTakeoff;

class ThicknessSheetTest {

  private static final int HEADINGS = 3;

  @Test
  void eachGroupShowsItsDemandsAndWhatTheSurfaceDoes() throws IOException {
    try (XSSFWorkbook book = read()) {
      Sheet sheet = book.getSheet("Thickness");
      Row pipe = sheet.getRow(HEADINGS + 1);

      assertThat(cell(sheet, pipe, "Condensation mm").getNumericCellValue()).isEqualTo(21.3);
      assertThat(cell(sheet, pipe, "Energy rule mm").getNumericCellValue()).isEqualTo(19);
      assertThat(cell(sheet, pipe, "Governs").getStringCellValue()).isEqualTo("condensation");
      assertThat(cell(sheet, pipe, "Build-up").getStringCellValue()).isEqualTo("25 mm tube");
      assertThat(cell(sheet, pipe, "Surface above dew point K").getNumericCellValue())
          .isCloseTo(25.9 - 20.96, within(1e-9));
      double lengthM = cell(sheet, pipe, "Length m").getNumericCellValue();
      assertThat(cell(sheet, pipe, "Saved heat kWh/year").getNumericCellValue())
          .isCloseTo(70 * lengthM, within(1e-9));
    }
  }

  @Test
  void coldGroupIsSweptOverTheHumidity() throws IOException {
    try (XSSFWorkbook book = read()) {
      Sheet sheet = book.getSheet("Humidity");
      Row pipe = sheet.getRow(HEADINGS + 1);
      double lastMm = 0;
      for (int humidityPct = 50; humidityPct <= 90; humidityPct += 5) {
        double mm = cell(sheet, pipe, "mm at " + humidityPct + " %").getNumericCellValue();
        assertThat(mm).isGreaterThanOrEqualTo(lastMm);
        lastMm = mm;
      }
      assertThat(lastMm).isPositive();
      // dew point 27.1 degC and a margin of 1 K lie above the air of 28 degC
      assertThat(cell(sheet, pipe, "mm at 95 %").getStringCellValue()).isEqualTo("out of reach");
    }
  }

  private static Cell cell(Sheet sheet, Row row, String heading) {
    for (Cell cell : sheet.getRow(HEADINGS)) {
      if (cell.getStringCellValue().equals(heading)) {
        return row.getCell(cell.getColumnIndex());
      }
    }
    throw new AssertionError("no column " + heading);
  }

  private static XSSFWorkbook read() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new TakeoffWorkbook(CheckedTakeoff.of(SampleTakeoff.takeoff()), "test").write(out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }
}
