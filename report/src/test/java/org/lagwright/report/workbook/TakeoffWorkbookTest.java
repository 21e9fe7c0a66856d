package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;

class TakeoffWorkbookTest {

  static Stream<Takeoff> takeoffs() {
    return Stream.of(SampleTakeoff.takeoff(), SampleTakeoff.empty(), SampleTakeoff.large(1000));
  }

  @ParameterizedTest
  @MethodSource("takeoffs")
  void eachFormulaGivesTheValueCachedBesideIt(Takeoff takeoff) throws IOException {
    try (XSSFWorkbook book = read(takeoff)) {
      assertThat(LiveFormulas.checked(book)).isGreaterThan(15);
    }
  }

  @Test
  void namedTotalsHoldTheFiguresOfTheTakeoff() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      assertThat(named(book, "Elements_read").getNumericCellValue()).isEqualTo(9);
      assertThat(named(book, "Elements_left_out").getNumericCellValue()).isEqualTo(2);
      assertThat(named(book, "Account_check").getStringCellValue()).isEqualTo("OK");
      assertThat(named(book, "Insulated_length_m").getNumericCellValue()).isEqualTo(6.25);
      assertThat(named(book, "Insulated_pieces").getNumericCellValue()).isEqualTo(2);
      assertThat(named(book, "Insulation_outer_area_m2").getNumericCellValue()).isEqualTo(6.75);
      assertThat(named(book, "Insulation_volume_m3").getNumericCellValue())
          .isCloseTo(0.175, within(1e-12));
    }
  }

  @Test
  void theCheckOfTheAccountNoticesAMissingElement() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Row drain = book.getSheet("Elements").getRow(7);
      drain.removeCell(cell(drain, "Account"));
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      assertThat(evaluator.evaluate(named(book, "Account_check")).getStringValue())
          .isEqualTo("DOES NOT ADD UP");
    }
  }

  @Test
  void elementWithoutGlobalIdIsStillCounted() throws IOException {
    Takeoff takeoff = SampleTakeoff.takeoff();
    assertThat(takeoff.elements().get(8).element().globalId()).isEmpty();
    try (XSSFWorkbook book = read(takeoff)) {
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      assertThat(evaluator.evaluate(named(book, "Elements_read")).getNumberValue()).isEqualTo(9);
    }
  }

  @Test
  void totalsOfMethodsHaveRoomForTheirFigures() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Sheet measurement = book.getSheet("Measurement");
      for (int column = 3; column < 7; column++) {
        assertThat(measurement.getColumnWidth(column))
            .as("column %s", column)
            .isGreaterThanOrEqualTo(11 * 256);
      }
    }
  }

  @Test
  void textOfAModelNeverBecomesAFormula() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Row hostile = book.getSheet("Elements").getRow(6);
      assertThat(cell(hostile, "Name").getCellType()).isEqualTo(CellType.STRING);
      assertThat(cell(hostile, "Name").getStringCellValue()).isEqualTo(SampleTakeoff.HOSTILE_NAME);
      assertThat(cell(hostile, "Type").getCellType()).isEqualTo(CellType.STRING);
      assertThat(cell(hostile, "Type").getStringCellValue()).isEqualTo("@SUM(A1)");
      assertThat(cells(book.getSheet("Elements"))).noneMatch(TakeoffWorkbookTest::isFormula);
      assertThat(cells(book.getSheet("Findings"))).noneMatch(TakeoffWorkbookTest::isFormula);
    }
  }

  @Test
  void textIsShownOnOneLineAsLongAsACellMayHold() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Sheet sheet = book.getSheet("Elements");
      assertThat(cell(sheet.getRow(7), "Name").getStringCellValue()).isEqualTo("Drain   -1+2");
      assertThat(cell(sheet.getRow(9), "Name").getStringCellValue())
          .hasSize(32_767)
          .endsWith("x [cut]");
    }
  }

  @Test
  void globalIdThatLooksLikeACharacterCodeStaysAsItIs() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      assertThat(cell(book.getSheet("Elements").getRow(6), "GlobalId").getStringCellValue())
          .isEqualTo(SampleTakeoff.HOSTILE_ID);
    }
  }

  @Test
  void eachElementAndEachFindingHasARow() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      assertThat(book.getSheet("Elements").getLastRowNum()).isEqualTo(9);
      assertThat(book.getSheet("Findings").getLastRowNum()).isEqualTo(6);
      Row pipe = book.getSheet("Elements").getRow(1);
      assertThat(cell(pipe, "Size").getStringCellValue()).isEqualTo("DN50 / 60.3 mm");
      assertThat(cell(pipe, "Length m").getNumericCellValue()).isEqualTo(1.75);
      assertThat(cell(pipe, "Thickness mm").getNumericCellValue()).isEqualTo(25);
      assertThat(cell(pipe, "Governing demand").getStringCellValue())
          .isEqualTo("condensation (dew-point)");
      assertThat(cell(pipe, "Finding codes").getStringCellValue()).isEqualTo("ALREADY_INSULATED");
      Row unknown = book.getSheet("Elements").getRow(6);
      assertThat(cell(unknown, "Finding codes").getStringCellValue())
          .isEqualTo("SERVICE_UNKNOWN SIZE_UNKNOWN");
    }
  }

  @Test
  void piecesAreWholeNumbersAndMetresHaveTwoDecimals() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      DataFormatter shown = new DataFormatter(Locale.ROOT);
      List<String> quantities = new ArrayList<>();
      for (int row = 6; row <= 9; row++) {
        Row line = book.getSheet("Takeoff").getRow(row);
        String unit = line.getCell(9).getStringCellValue();
        quantities.add(shown.formatCellValue(line.getCell(10)).strip() + " " + unit);
      }
      assertThat(quantities).containsExactly("4.25 m", "1 pcs", "1 pcs", "2.00 m");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Takeoff", "Elements", "Findings"})
  void columnsAreAsWideAsTheLongestWordOfTheirHeading(String name) throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Sheet sheet = book.getSheet(name);
      Row headings = sheet.getRow(name.equals("Takeoff") ? 5 : 0);
      for (Cell heading : headings) {
        int characters = sheet.getColumnWidth(heading.getColumnIndex()) / 256;
        for (String word : heading.getStringCellValue().split(" ", -1)) {
          assertThat(word.length()).as(heading.getStringCellValue()).isLessThan(characters);
        }
      }
      assertThat(headings.getHeightInPoints()).isGreaterThan(25);
    }
  }

  @Test
  void sheetsThatPeopleReadHoldNoLabelsOfMachines() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      assertThat(cells(book))
          .filteredOn(cell -> cell.getCellType() == CellType.STRING)
          .extracting(Cell::getStringCellValue)
          .doesNotContain("pipe-segment", "pipe-fitting", "valve-body", "LEFT_OUT", "WARNING")
          .contains("pipe", "pipe fitting", "valve body", "left out", "warning");
    }
  }

  @Test
  void sheetsAreSetUpForReadingAndPrinting() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      for (Sheet sheet : book) {
        assertThat(sheet.getPrintSetup().getLandscape()).as(sheet.getSheetName()).isTrue();
        assertThat(sheet.getFitToPage()).isTrue();
        assertThat(sheet.getHeader().getLeft()).isEqualTo("Alder Quay ferry terminal && pier");
      }
    }
  }

  @Test
  void eachSheetKeepsItsTitlesPrintsOnThemAndItsTablesFilter() throws IOException {
    List<String> withTables = new ArrayList<>();
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        XSSFSheet sheet = book.getSheetAt(i);
        String name = sheet.getSheetName();
        assertThat(sheet.getPaneInformation().isFreezePane()).as(name).isTrue();
        assertThat(sheet.getRepeatingRows()).as(name).isNotNull();
        assertThat(sheet.getFooter().getRight()).isEqualTo("Page &P of &N");
        assertPrintsAll(
            sheet, new AreaReference(book.getPrintArea(i), book.getSpreadsheetVersion()));
        for (XSSFTable table : sheet.getTables()) {
          assertThat(table.getCTTable().isSetAutoFilter()).as(name).isTrue();
          assertThat(table.getEndRowIndex()).as(name).isGreaterThanOrEqualTo(sheet.getLastRowNum());
          withTables.add(name);
        }
      }
    }
    assertThat(withTables)
        .contains("Takeoff", "Fittings", "Order", "Scope", "RFI", "Trace", "Elements", "Findings");
  }

  private static void assertPrintsAll(XSSFSheet sheet, AreaReference area) {
    int columns =
        StreamSupport.stream(sheet.spliterator(), false)
            .mapToInt(Row::getLastCellNum)
            .max()
            .orElse(0);
    assertThat(area.getLastCell().getRow())
        .as(sheet.getSheetName())
        .isGreaterThanOrEqualTo(sheet.getLastRowNum());
    assertThat(area.getLastCell().getCol() + 1).as(sheet.getSheetName()).isEqualTo(columns);
  }

  @Test
  void chartsShowTheCellsOfTheSummary() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Sheet summary = book.getSheet("Summary");
      List<XSSFChart> charts = book.getSheet("Summary").getDrawingPatriarch().getCharts();
      assertThat(charts)
          .extracting(chart -> chart.getTitleText().getString())
          .containsExactly(
              "Length by service, m",
              "Outer area by service, m2",
              "Length by storey, m",
              "Outer area by storey, m2");
      for (XSSFChart chart : charts) {
        CTNumRef values =
            chart
                .getCTChart()
                .getPlotArea()
                .getBarChartArray(0)
                .getSerArray(0)
                .getVal()
                .getNumRef();
        AreaReference cells = new AreaReference(values.getF(), book.getSpreadsheetVersion());
        List<Double> shown = new ArrayList<>();
        for (CellReference cell : cells.getAllReferencedCells()) {
          shown.add(summary.getRow(cell.getRow()).getCell(cell.getCol()).getNumericCellValue());
        }
        assertThat(values.getNumCache().getPtList())
            .extracting(point -> Double.valueOf(point.getV()))
            .isEqualTo(shown);
      }
    }
  }

  @Test
  void elementsOnNoLineStandOnScopeWithTheirReason() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Sheet scope = book.getSheet("Scope");
      List<String> listed = new ArrayList<>();
      double grouped = 0;
      for (Row row : scope) {
        String first = row.getCell(0).getStringCellValue();
        if (row.getLastCellNum() > 12 && first.matches("X\\d+")) {
          listed.add(
              row.getCell(13).getStringCellValue() + ": " + row.getCell(6).getStringCellValue());
        } else if (first.equals("All")) {
          grouped = row.getCell(4).getNumericCellValue();
        }
      }
      assertThat(listed)
          .hasSize(4)
          .contains(
              SampleTakeoff.HOSTILE_NAME + ": service unknown",
              "Drain   -1+2: drains carry no insulation");
      assertThat(grouped).isEqualTo(4);
    }
  }

  @Test
  void eachLineIsTracedToTheRecordsOfItsElements() throws IOException {
    Takeoff takeoff = SampleTakeoff.takeoff();
    try (XSSFWorkbook book = read(takeoff)) {
      Sheet trace = book.getSheet("Trace");
      for (TakeoffLine line : takeoff.lines()) {
        double traced = 0;
        for (Row row : trace) {
          if (row.getCell(0).getStringCellValue().equals(line.id())) {
            traced += row.getCell(3).getNumericCellValue();
            assertThat(row.getCell(7).getStringCellValue())
                .isEqualTo("outside diameter 60.3 mm (#301 IfcCircleProfileDef.Radius = 30.15)");
            assertThat(row.getCell(8).getStringCellValue())
                .isEqualTo("service Chilled water flow (chw-name, services 1)");
            assertThat(row.getCell(11).getStringCellValue())
                .isEqualTo("thickness 21.3 mm = least thickness above the dew point");
          }
        }
        assertThat(traced).as(line.id()).isCloseTo(line.quantity(), within(1e-9));
      }
    }
  }

  @Test
  void questionsAndWarningsAreRequestsWithTheTopicThatCarriesThem() throws IOException {
    try (XSSFWorkbook book = read(SampleTakeoff.takeoff())) {
      Row question = book.getSheet("RFI").getRow(5);
      assertThat(question.getCell(0).getStringCellValue()).isEqualTo("RFI-001");
      assertThat(question.getCell(3).getStringCellValue())
          .startsWith("Which service is this, and is it insulated? Such as");
      assertThat(question.getCell(4).getStringCellValue()).isEqualTo("service unknown");
      assertThat(question.getCell(5).getStringCellValue()).isEqualTo("left out");
      assertThat(question.getCell(7).getNumericCellValue()).isEqualTo(3.5);
      assertThat(question.getCell(11).getStringCellValue()).isEqualTo("open");
      assertThat(question.getCell(13).getStringCellValue()).isEqualTo(SampleTakeoff.HOSTILE_ID);
      assertThat(question.getCell(14).getStringCellValue()).matches("[0-9a-f-]{36}");
      assertThat(book.getSheet("RFI").getLastRowNum()).isGreaterThan(6);
    }
  }

  @Test
  void equalTakeoffsGiveEqualBytes() throws IOException {
    assertThat(bytes(SampleTakeoff.takeoff())).isEqualTo(bytes(SampleTakeoff.takeoff()));
  }

  private static boolean isFormula(Cell cell) {
    return cell.getCellType() == CellType.FORMULA;
  }

  private static byte[] bytes(Takeoff takeoff) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new TakeoffWorkbook(CheckedTakeoff.of(takeoff), "9.9.9").write(out);
    return out.toByteArray();
  }

  private static XSSFWorkbook read(Takeoff takeoff) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(takeoff)));
  }

  private static Cell named(XSSFWorkbook book, String name) {
    CellReference at = new CellReference(book.getName(name).getRefersToFormula());
    return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  /** The cell of a row under a heading of the first row. */
  private static Cell cell(Row row, String heading) {
    for (Cell title : row.getSheet().getRow(0)) {
      if (title.getStringCellValue().equals(heading)) {
        return row.getCell(title.getColumnIndex());
      }
    }
    throw new AssertionError("no heading " + heading);
  }

  private static Stream<Cell> cells(XSSFWorkbook book) {
    List<Sheet> sheets = new ArrayList<>();
    book.forEach(sheets::add);
    return sheets.stream().flatMap(TakeoffWorkbookTest::cells);
  }

  private static Stream<Cell> cells(Sheet sheet) {
    return StreamSupport.stream(sheet.spliterator(), false)
        .flatMap(row -> StreamSupport.stream(row.spliterator(), false));
  }
}
