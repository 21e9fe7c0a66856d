package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.settings.UnitSystem;

class FittingsSheetTest {

  @Test
  void sizesThatLookLikeWildcardsOrOperatorsAreCountedApart() throws IOException {
    List<TakeoffLine> lines =
        List.of(bends("L001", "DN*", 2), bends("L002", "DN50", 3), bends("L003", ">1?", 5));
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book, UnitSystem.METRIC);
      LinesSheet takeoff = new LinesSheet(lines);
      Sheet all = book.createSheet("Takeoff");
      takeoff.write(all, styles);
      takeoff.table().writeRows(all, styles);
      Sheet sheet = book.createSheet("Fittings");
      FittingsSheet fittings = new FittingsSheet(takeoff.table());
      fittings.write(sheet, styles);
      fittings.table().writeRows(sheet, styles);
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      evaluator.evaluateAll();
      assertThat(List.of(4, 5, 6, 2))
          .extracting(row -> sheet.getRow(row).getCell(3).getNumericCellValue())
          .containsExactly(2.0, 3.0, 5.0, 10.0);
      assertThat(sheet.getRow(2).getCell(4).getNumericCellValue()).isEqualTo(10);
    }
  }

  private static TakeoffLine bends(String id, String size, int pieces) {
    return new TakeoffLine(
        id,
        "cold-water",
        "Cold water",
        Kind.PIPE_FITTING,
        Form.BEND,
        size,
        "indoor",
        "flexible-foam",
        "flexible foam",
        0.019,
        "19 mm tube",
        "pcs",
        pieces,
        0,
        0,
        List.of(),
        "dew-point");
  }
}
