package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.json.TakeoffSchema;
import org.lagwright.report.workbook.LiveFormulas;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.testmodels.golden.Golden;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The demo building compared with a changed one, as a user would. */
class DemoComparisonTest {

  private static final Path DEMO = Path.of("../test-models/demo/alder-quay-ifc4.ifc");
  private static final String SETTINGS = DEMO.resolveSibling("settings.yaml").toString();

  @TempDir static Path folder;

  @Test
  void compareTellsNewIdsFromNewPiecesAndItsWorkbookAddsUp() throws IOException {
    // every pipe gets another id
    String before = Files.readString(DEMO);
    Matcher pipe = Pattern.compile("(=IFCPIPESEGMENT\\(').{22}").matcher(before);
    int[] count = {0};
    String now = pipe.replaceAll(m -> m.group(1) + String.format("1%021d", ++count[0]));
    Path revised = Files.writeString(folder.resolve("revised.ifc"), now);
    Path out = folder.resolve("comparison");

    RealRun run =
        RealRun.of(
            "compare",
            DEMO.toString(),
            revised.toString(),
            "--settings",
            SETTINGS,
            "--out",
            out.toString());

    assertThat(count[0]).isEqualTo(124);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    Golden.check(
        DemoComparisonTest.class,
        "alder-quay-compare.txt",
        run.out().replace(folder.toString(), "OUTPUT").replace('\\', '/'));
    try (InputStream in = Files.newInputStream(out.resolve("comparison.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      assertThat(book.getSheet("Changes").getLastRowNum()).isGreaterThan(100);
      assertThat(LiveFormulas.checked(book)).isGreaterThan(40);
    }
  }

  @Test
  void aLongerPipeCostsMoreAndTheSumOfDifferencesIsTheDifferenceOfSums() throws IOException {
    String before = Files.readString(DEMO);
    Path revised = folder.resolve("longer.ifc");
    Files.writeString(revised, before.replace("(#195,#14,#12,500.)", "(#195,#14,#12,1500.)"));
    Path out = folder.resolve("longer");

    RealRun run =
        RealRun.of(
            "compare",
            DEMO.toString(),
            revised.toString(),
            "--settings",
            SETTINGS,
            "--csv",
            "--out",
            out.toString());

    assertThat(run.code()).as(run.err()).isZero();
    String json = Files.readString(out.resolve("comparison.json"));
    assertThat(TakeoffSchema.errorsOfComparison(json)).isEmpty();
    JsonNode document = new JsonMapper().readTree(json);
    assertThat(document.get("schema").asString())
        .isEqualTo(
            new JsonMapper()
                .readTree(TakeoffSchema.text("comparison.schema.json"))
                .get("$id")
                .asString());
    double elements = document.at("/difference/money").doubleValue();
    double job =
        document.at("/price/now/ofTheJob").doubleValue()
            - document.at("/price/before/ofTheJob").doubleValue();
    double prices =
        document.at("/price/now/priceWithoutTax").doubleValue()
            - document.at("/price/before/priceWithoutTax").doubleValue();
    assertThat(elements).isGreaterThan(1);
    assertThat(elements + job).isCloseTo(prices, within(1e-6));
    assertThat(document.get("changes")).hasSizeGreaterThan(0);
    tablesTellWhatTheJsonTells(out, document);
    try (InputStream in = Files.newInputStream(out.resolve("comparison.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      assertThat(LiveFormulas.checked(book)).isGreaterThan(40);
      assertThat(textsOf(book.getSheet("Summary")))
          .contains("OK")
          .doesNotContain("DOES NOT ADD UP");
    }
  }

  private static void tablesTellWhatTheJsonTells(Path out, JsonNode document) throws IOException {
    DataTable changes = CsvTables.readFile(out.resolve("comparison-changes.csv"));
    assertThat(changes.rows()).hasSameSizeAs(document.get("changes"));
    assertThat(sum(changes, "hours +/-") + document.at("/differenceOfUnchanged/hours").asDouble())
        .isCloseTo(document.at("/difference/hours").asDouble(), within(1e-4));
    DataTable services = CsvTables.readFile(out.resolve("comparison-services.csv"));
    assertThat(services.rows()).hasSameSizeAs(document.get("services"));
    assertThat(sum(services, "eur +/-"))
        .isCloseTo(document.at("/difference/money").asDouble(), within(1e-4));
    assertThat(sum(services, "length m now") - sum(services, "length m before"))
        .isCloseTo(document.at("/difference/lengthM").asDouble(), within(1e-4));
  }

  private static double sum(DataTable table, String heading) {
    return table.rows().stream().mapToDouble(row -> row.number(heading)).sum();
  }

  private static List<String> textsOf(Sheet sheet) {
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        texts.add(new DataFormatter(Locale.ROOT).formatCellValue(cell));
        if (cell.getCellType() == CellType.FORMULA
            && cell.getCachedFormulaResultType() == CellType.STRING) {
          texts.add(cell.getStringCellValue());
        }
      }
    }
    return texts;
  }
}
