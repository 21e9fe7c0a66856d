package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.price.PricedItem;
import org.lagwright.takeoff.settings.Settings;

/**
 * The estimator changes a marked cell, and the totals become those that the engine computes for
 * that value.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LiveEstimateTest {

  private static final double CENT = 1e-6;
  private static final String TERMS =
      "list: prices.csv, currency: EUR, labourRatePerH: 40, toolsPct: 3, overheadPct: 12,"
          + " markupPct: 8, taxPct: 19";

  @TempDir static Path folder;

  private final ModelPipeline pipeline = new ModelPipeline();
  private List<MepModel> models = List.of();
  private Takeoff before = SampleTakeoff.empty();

  @BeforeAll
  void takeOffTheDemo() throws IOException {
    Path demo = Path.of("..", "test-models", "demo", "alder-quay-ifc4.ifc");
    models =
        List.of(pipeline.readModel(demo, 0, pipeline.defaultSettings(), ProgressListener.SILENT));
    before = takeoff(TERMS, "");
  }

  @Test
  void aPriceSaysWhatIsNotInIt() throws IOException {
    int leftOut = before.totals().leftOut();
    int onSite = before.order().withoutPieces().size();
    assertThat(List.of(leftOut, onSite)).allMatch(count -> count > 1);
    try (XSSFWorkbook book = book(before)) {
      assertThat(texts(book.getSheet("Price")))
          .contains(
              "NOT in this price: "
                  + leftOut
                  + " elements left out (sheet Scope); material of "
                  + onSite
                  + " elements cut on site.");
    }
  }

  private static List<String> texts(Sheet sheet) {
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING) {
          texts.add(cell.getStringCellValue());
        }
      }
    }
    return texts;
  }

  @Test
  void packsThatAreUsedUpLeaveNoRest() {
    List<PricedItem> items = Objects.requireNonNull(before.price()).items();
    assertThat(items)
        .as("net and whole packs differ by rounding in some")
        .anyMatch(item -> item.item().boughtQuantity() < item.item().netQuantity())
        .allMatch(item -> item.beyondNet() >= 0);
  }

  @Test
  void theFormulasAgreeWithTheEngine() throws IOException {
    try (XSSFWorkbook book = book(before)) {
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      for (String name : List.of("Labour", "Hours", "Price")) {
        for (Row row : book.getSheet(name)) {
          for (Cell cell : row) {
            assertCached(evaluator, cell);
          }
        }
      }
    }
  }

  private static void assertCached(FormulaEvaluator evaluator, Cell cell) {
    if (cell.getCellType() == CellType.FORMULA
        && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
      assertThat(evaluator.evaluate(cell).getNumberValue())
          .as(cell.getSheet().getSheetName() + "!" + cell.getAddress())
          .isCloseTo(cell.getNumericCellValue(), within(1e-9 * (1 + cell.getNumericCellValue())));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Rate of one hour | 55 | labourRatePerH: 40 | labourRatePerH: 55",
        "Small tools and consumables, % of labour | 6 | toolsPct: 3 | toolsPct: 6",
        "Overhead, % of the above | 20 | overheadPct: 12 | overheadPct: 20",
        "Profit, % | 11 | markupPct: 8 | markupPct: 11",
        "Tax, % | 7 | taxPct: 19 | taxPct: 7"
      })
  void aChangedTermMovesThePriceAsTheEngineWould(String label, double value, String from, String to)
      throws IOException {
    Takeoff wanted = takeoff(TERMS.replace(from, to), "");
    try (XSSFWorkbook book = book(before)) {
      input(book.getSheet("Price"), label).setCellValue(value);

      assertThat(total(book))
          .isCloseTo(Objects.requireNonNull(wanted.price()).buildUp().total(), within(CENT));
    }
  }

  @Test
  void marginInsteadOfMarkupMovesThePrice() throws IOException {
    Takeoff wanted = takeoff(TERMS.replace("markupPct", "marginPct"), "");
    try (XSSFWorkbook book = book(before)) {
      input(book.getSheet("Price"), "Profit as markup on cost or margin in the price")
          .setCellValue("margin");

      assertThat(total(book))
          .isCloseTo(Objects.requireNonNull(wanted.price()).buildUp().total(), within(CENT));
    }
  }

  @Test
  void aChangedFactorMovesHoursAndPriceAsTheEngineWould() throws IOException {
    Takeoff wanted = takeoff(TERMS, "labour: {factors: {cold: 1.4, outdoor: 1.6}}\n");
    try (XSSFWorkbook book = book(before)) {
      input(book.getSheet("Labour"), "cold services: glued, sealed, closed off in compartments")
          .setCellValue(1.4);
      input(book.getSheet("Labour"), "outdoors: weather, roof").setCellValue(1.6);

      assertThat(hours(book)).isCloseTo(wanted.labour().hours(), within(CENT));
      assertThat(total(book))
          .isCloseTo(Objects.requireNonNull(wanted.price()).buildUp().total(), within(CENT));
    }
  }

  @Test
  void aChangedNormMovesHoursAsTheEngineWould() throws IOException {
    String own = "item,unit,value\nsection,h/m3,50\n";
    Files.writeString(folder.resolve("norms.csv"), own);
    Takeoff wanted = takeoff(TERMS, "labour: {norms: norms.csv}\n");
    try (XSSFWorkbook book = book(before)) {
      input(book.getSheet("Labour"), "section (section-clad)").setCellValue(50);

      assertThat(hours(book)).isCloseTo(wanted.labour().hours(), within(CENT));
    }
  }

  @Test
  void aPriceFilledInMakesTheOrderComplete() throws IOException {
    Takeoff takeoff = SampleTakeoff.takeoff();
    try (XSSFWorkbook book = book(takeoff)) {
      Sheet sheet = book.getSheet("Price");
      Cell verdict = starting(sheet, "INCOMPLETE");
      int filled = 0;
      for (Row row : sheet) {
        Cell place = row.getCell(10);
        if (place != null && place.getStringCellValue().equals("NO PRICE")) {
          row.getCell(6).setCellValue(2.5);
          filled++;
        }
      }
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();

      assertThat(filled).isPositive();
      assertThat(evaluator.evaluate(verdict).getStringValue()).startsWith("complete");
    }
  }

  @Test
  void withoutPriceListTheSheetSaysSo() throws IOException {
    try (XSSFWorkbook book = book(SampleTakeoff.empty())) {
      assertThat(book.getSheet("Price").getRow(1).getCell(0).getStringCellValue())
          .startsWith("There is no price: no price list is given, and none is invented.");
    }
  }

  @Test
  void startingValuesAreCalledUnverifiedOnTheSheet() throws IOException {
    try (XSSFWorkbook book = book(SampleTakeoff.takeoff())) {
      Row norm =
          row(
              book.getSheet("Labour"),
              "tube on pipe up to 60.5 mm, up to 25.5 mm thick (tube-dn50)");

      assertThat(norm.getCell(3).getStringCellValue())
          .isEqualTo("unverified: common practice, no source");
      assertThat(((XSSFCellStyle) norm.getCell(1).getCellStyle()).getFillForegroundXSSFColor())
          .isNotNull();
    }
  }

  @Test
  void normsAndPricesMayBeWorkbooks() throws IOException {
    sheet("norms.xlsx", "item", "unit", "value", "tube", "h/m", 0.5);
    sheet("prices.xlsx", "goods", "unit", "price", "tube", "m", 7.25);
    Takeoff takeoff =
        takeoff(TERMS.replace("prices.csv", "prices.xlsx"), "labour: {norms: norms.xlsx}\n");

    assertThat(takeoff.labour().normsInUse())
        .filteredOn(norm -> norm.item().equals("tube"))
        .singleElement()
        .extracting(Norm::value)
        .isEqualTo(0.5);
    assertThat(Objects.requireNonNull(takeoff.price()).items())
        .filteredOn(PricedItem::isPriced)
        .isNotEmpty()
        .allMatch(item -> item.perUnit() == 7.25);
  }

  @Test
  void aWrongCellOfAWorkbookIsNamedWithFileRowAndColumn() throws IOException {
    sheet("prices.xlsx", "goods", "unit", "price", "tube", "m", "cheap");

    assertThatThrownBy(() -> takeoff(TERMS.replace("prices.csv", "prices.xlsx"), ""))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("prices.xlsx")
        .hasMessageContaining(":2:3: 'cheap' is no number");
  }

  /** A workbook with a heading and one row of three cells each. */
  private static void sheet(String name, Object... cells) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(folder.resolve(name))) {
      Sheet sheet = book.createSheet("List");
      for (int i = 0; i < cells.length; i++) {
        Row row = i % 3 == 0 ? sheet.createRow(i / 3) : sheet.getRow(i / 3);
        if (cells[i] instanceof Double number) {
          row.createCell(i % 3).setCellValue(number);
        } else {
          row.createCell(i % 3).setCellValue(cells[i].toString());
        }
      }
      book.write(out);
    }
  }

  private Takeoff takeoff(String terms, String more) throws IOException {
    Files.writeString(
        folder.resolve("prices.csv"), "goods,unit,price\ntube,m,6\nsection,m,9\nsheet,m2,20\n");
    Path file = folder.resolve("settings.yaml");
    Files.writeString(file, "price: {" + terms + "}\n" + more);
    Settings settings = pipeline.readSettings(file);
    return pipeline.takeOff(models, settings);
  }

  private static XSSFWorkbook book(Takeoff takeoff) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new TakeoffWorkbook(CheckedTakeoff.of(takeoff), "9.9.9").write(out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  private static double hours(XSSFWorkbook book) {
    Cell cell = row(book.getSheet("Labour"), "Total, hours").getCell(1);
    return book.getCreationHelper().createFormulaEvaluator().evaluate(cell).getNumberValue();
  }

  private static double total(XSSFWorkbook book) {
    Cell cell = row(book.getSheet("Price"), "Price with tax").getCell(2);
    return book.getCreationHelper().createFormulaEvaluator().evaluate(cell).getNumberValue();
  }

  private static Cell input(Sheet sheet, String label) {
    return row(sheet, label).getCell(1);
  }

  private static Row row(Sheet sheet, String label) {
    return starting(sheet, label).getRow();
  }

  private static Cell starting(Sheet sheet, String label) {
    for (Row row : sheet) {
      Cell cell = row.getCell(0);
      if (cell != null && text(cell).startsWith(label)) {
        return cell;
      }
    }
    throw new AssertionError("no row " + label);
  }

  private static String text(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC ? "" : cell.getStringCellValue();
  }
}
