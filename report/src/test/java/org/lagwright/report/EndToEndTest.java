package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.report.json.TakeoffSchema;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.demo.DemoQuantity;
import org.lagwright.testmodels.golden.Golden;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.tiny.TinyModels;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The demo building from file to workbook, with the real reader and engine. */
class EndToEndTest {

  private static final Path DEMO = Path.of("../test-models/demo");
  private static final String SETTINGS = DEMO.resolve("settings.yaml").toString();

  /** A chilled water pipe on the roof. */
  private static final String PIPE = "0QNdEoMmCr08whKU8miXBB";

  /** Outdoor air duct from a rectangle to a circle, in the plant room. */
  private static final String TRANSITION = "0b5dTw2ImwHvOEaTX9is93";

  private static final String CHILLER = "1bou6vMSiobwqiPhpt3mm2";

  /** Insulation the demo shows on two pipes; it is no piece of the design. */
  private static final int COVERINGS = 2;

  private static final String ON_LINE = "on line";
  private static final String OUT_OF_SCOPE = "out of scope";

  @TempDir static Path folder;

  private static final Map<String, RealRun> RUNS = new HashMap<>();

  @BeforeAll
  static void takeOffTheDemo() {
    for (String schema : List.of("ifc2x3", "ifc4", "ifc4x3")) {
      RUNS.put(schema, run(schema, folder.resolve(schema)));
    }
  }

  private static RealRun run(String schema, Path out) {
    return RealRun.takeoff(model(schema), out, "--settings", SETTINGS);
  }

  private static Path model(String schema) {
    return DEMO.resolve("alder-quay-" + schema + ".ifc");
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void withoutItsPortsEveryElementHasTheSameServiceSizeAndLength(Schema schema) throws IOException {
    Path out = folder.resolve("without-ports-" + schema.label());
    Path file = Files.writeString(folder.resolve("a.ifc"), AlderQuay.writeWithoutPorts(schema));
    RealRun run = RealRun.takeoff(file, out, "--settings", SETTINGS);

    assertThat(run.err()).isEmpty();
    assertThat(essentials(out)).isEqualTo(essentials(folder.resolve(schema.label())));
  }

  /** Without apparatus, whose ports are all that joins it to its pipes. */
  private static Map<String, String> essentials(Path out) throws IOException {
    Map<String, String> essentials = new TreeMap<>();
    for (JsonNode element : RealRun.items(RealRun.document(out), "elements")) {
      if (List.of("equipment", "terminal").contains(element.get("kind").asString())) {
        continue;
      }
      // solids carry noise in the last digits
      String length =
          element.path("lengthM").isNumber()
              ? String.format(Locale.ROOT, "%.6f", element.get("lengthM").asDouble())
              : "-";
      essentials.put(
          element.get("globalId").asString(),
          String.join(
              " ",
              element.get("kind").asString(),
              element.get("form").asString(),
              element.path("section").toString(),
              element.path("ends").toString(),
              length,
              element.path("service").path("id").toString(),
              element.path("scope").toString(),
              element.path("thicknessM").toString()));
    }
    assertThat(essentials).hasSizeGreaterThan(200);
    return essentials;
  }

  @Test
  void summaryOfTheDemoReadsLikeAnEstimate() throws IOException {
    RealRun run = Objects.requireNonNull(RUNS.get("ifc4"));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    String shown = run.out().replace(folder.toString(), "OUTPUT").replace('\\', '/');
    Golden.check(EndToEndTest.class, "alder-quay-summary.txt", shown);
  }

  @ParameterizedTest
  @CsvSource({
    PIPE + ", alder-quay-explain.txt",
    TRANSITION + ", alder-quay-explain-transition.txt",
    CHILLER + ", alder-quay-explain-chiller.txt"
  })
  void explanationsLetEveryNumberBeChecked(String id, String golden) throws IOException {
    RealRun run = RealRun.of("explain", id, model("ifc4").toString(), "--settings", SETTINGS);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    Golden.check(EndToEndTest.class, golden, run.out());
  }

  @Test
  void verifySaysWhatIsNotCoveredAndItsExitCodeHoldsItAgainstTheLeast() throws IOException {
    String demo = model("ifc4").toString();
    RealRun run = RealRun.of("verify", demo, "--settings", SETTINGS);
    RealRun lenient = RealRun.of("verify", demo, "--settings", SETTINGS, "--least", "0");

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(1);
    assertThat(lenient.code()).isZero();
    assertThat(lenient.out()).isEqualTo(run.out());
    Golden.check(EndToEndTest.class, "alder-quay-verify.txt", run.out());
  }

  @Test
  void tablesComeAsCsvWithTheFiguresOfTheJson() throws IOException {
    Path out = folder.resolve("csv");
    RealRun run = RealRun.takeoff(model("ifc4"), out, "--settings", SETTINGS, "--csv");

    assertThat(run.code()).isZero();
    double quantity = 0;
    DataTable lines = CsvTables.readFile(out.resolve("takeoff-takeoff.csv"));
    for (DataTable.Row row : lines.rows()) {
      quantity += row.number("quantity");
    }
    double expected =
        RealRun.items(RealRun.document(out), "lines").stream()
            .mapToDouble(line -> line.get("quantity").asDouble())
            .sum();
    assertThat(quantity).isCloseTo(expected, within(1e-3));
    assertThat(CsvTables.readFile(out.resolve("takeoff-elements.csv")).rows())
        .hasSameSizeAs(RealRun.items(RealRun.document(out), "elements"));
    assertThat(CsvTables.readFile(out.resolve("takeoff-measurement.csv")).rows())
        .hasSize(
            RealRun.items(RealRun.document(out), "measurements").stream()
                .mapToInt(method -> method.get("rows").size())
                .sum())
        .allMatch(row -> !row.text("rule").isEmpty() && !row.text("status").isEmpty());
    DataTable requests = CsvTables.readFile(out.resolve("takeoff-rfi.csv"));
    double price = RealRun.document(out).at("/price/priceWithoutTax").asDouble();
    assertThat(requests.rows())
        .allSatisfy(row -> assertThat(row.number("eur without tax affected")).isBetween(0.0, price))
        .filteredOn(row -> row.text("assumed until answered").startsWith("left out"))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.number("eur without tax affected")).isZero());
    assertThat(requests.rows()).anyMatch(row -> row.number("eur without tax affected") > 1);
    try (Stream<Path> files = Files.list(out)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .contains(
              "takeoff-order.csv",
              "takeoff-coverage.csv",
              "takeoff-findings.csv",
              "takeoff-hours.csv",
              "takeoff-thickness.csv");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3", "ifc4x3"})
  void eachSchemaGivesTheLinesOfIfc4(String schema) throws IOException {
    assertThat(linesWithoutIds(schema)).hasSizeGreaterThan(100).isEqualTo(linesWithoutIds("ifc4"));
  }

  private static List<String> linesWithoutIds(String schema) throws IOException {
    return RealRun.items(RealRun.document(folder.resolve(schema)), "lines").stream()
        .map(line -> inWords((ObjectNode) line))
        .toList();
  }

  /** Angles are in degrees or radians by schema; a degree is written with nine decimals. */
  private static String inWords(ObjectNode line) {
    int count = line.get("elements").size();
    return line.properties().stream()
            .filter(property -> !property.getKey().equals("elements"))
            .map(property -> property.getKey() + " " + inWords(property.getValue()))
            .collect(Collectors.joining(", "))
        + ", elements "
        + count;
  }

  private static String inWords(JsonNode value) {
    return value.isNumber()
        ? String.format(Locale.ROOT, "%.6f", value.asDouble())
        : value.asString();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3", "ifc4", "ifc4x3"})
  void everyElementReadIsInOnePlaceInJsonAndWorkbook(String schema) throws IOException {
    Path out = folder.resolve(schema);
    JsonNode document = RealRun.document(out);
    Map<String, Long> places =
        RealRun.items(document, "elements").stream()
            .collect(
                Collectors.groupingBy(e -> e.get("account").asString(), Collectors.counting()));
    assertThat(places).containsOnlyKeys(ON_LINE, "left out", OUT_OF_SCOPE);
    assertTold(document, out, "onLines", "Elements_on_lines", places.getOrDefault(ON_LINE, 0L));
    assertTold(document, out, "leftOut", "Elements_left_out", places.getOrDefault("left out", 0L));
    assertTold(
        document,
        out,
        "outOfScope",
        "Elements_out_of_scope",
        places.getOrDefault(OUT_OF_SCOPE, 0L));
    long read = places.values().stream().mapToLong(Long::longValue).sum();
    assertTold(document, out, "read", "Elements_read", read);
    assertThat(read).isEqualTo(AlderQuay.pieces().size() + COVERINGS);
    assertThat(RealRun.named(out, "Account_check")).isEqualTo("OK");
  }

  private static void assertTold(
      JsonNode document, Path out, String total, String name, long counted) throws IOException {
    assertThat(document.at("/totals/" + total).asLong()).as(total).isEqualTo(counted);
    assertThat(RealRun.named(out, name)).as(name).isEqualTo(String.valueOf(counted));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3", "ifc4", "ifc4x3"})
  void everyMetreOfTheDesignIsOnALineInAQuestionOrOutOfScope(String schema) throws IOException {
    JsonNode document = RealRun.document(folder.resolve(schema));
    Map<String, JsonNode> elements =
        RealRun.items(document, "elements").stream()
            .collect(Collectors.toMap(e -> e.get("globalId").asString(), e -> e));
    Map<String, Double> metres = new TreeMap<>();
    for (JsonNode line : RealRun.items(document, "lines")) {
      double quantity =
          line.get("unit").asString().equals("m") ? line.get("quantity").asDouble() : 0;
      assertThat(add(metres, line, elements, "/quantities/lengthM"))
          .as(line.get("id").asString())
          .isCloseTo(quantity, within(1e-9));
    }
    for (JsonNode question : RealRun.items(document, "questions")) {
      assertThat(add(metres, question, elements, "/lengthM"))
          .as(question.get("what").asString())
          .isCloseTo(question.get("lengthM").asDouble(), within(1e-9));
    }
    elements.values().stream()
        .filter(e -> e.get("account").asString().equals(OUT_OF_SCOPE) && isSegment(e))
        .forEach(e -> metres.merge(system(e), e.get("lengthM").asDouble(), Double::sum));
    metres.remove("");
    assertThat(metres.keySet()).isEqualTo(designedM().keySet());
    designedM().forEach((s, m) -> assertThat(metres.get(s)).as(s).isCloseTo(m, within(1e-6)));
  }

  /** Adds the segments among the elements of a line or question to their systems; their sum. */
  private static double add(
      Map<String, Double> metres, JsonNode holder, Map<String, JsonNode> elements, String path) {
    double sum = 0;
    for (JsonNode id : holder.get("elements")) {
      JsonNode element = Objects.requireNonNull(elements.get(id.asString()));
      double lengthM = isSegment(element) ? element.at(path).asDouble() : 0;
      metres.merge(system(element), lengthM, Double::sum);
      sum += lengthM;
    }
    return sum;
  }

  private static boolean isSegment(JsonNode element) {
    return element.get("kind").asString().endsWith("-segment");
  }

  /** The system of a segment; apparatus that several share counts no metres. */
  private static String system(JsonNode element) {
    return isSegment(element) ? element.get("system").asString() : "";
  }

  private static Map<String, Double> designedM() {
    return AlderQuay.quantities().stream()
        .filter(quantity -> quantity.kind().endsWith("-segment"))
        .collect(
            Collectors.groupingBy(
                DemoQuantity::system,
                TreeMap::new,
                Collectors.summingDouble(DemoQuantity::lengthM)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3", "ifc4", "ifc4x3"})
  void jsonOfTheDemoFitsTheSchema(String schema) throws IOException {
    assertThat(TakeoffSchema.errors(RealRun.json(folder.resolve(schema)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "air: {outdoor: {temperatureC: 28, relativeHumidityPct: 98}}",
        "air: {indoor: {temperatureC: 24, relativeHumidityPct: 100}}",
        "condensationMarginK: 20"
      })
  void airInWhichNothingStaysDryGivesBothFilesAndAFinding(String wet) throws IOException {
    Path settings = Files.writeString(folder.resolve("wet.yaml"), wet);
    Path out = folder.resolve("wet" + wet.hashCode());

    RealRun run = RealRun.takeoff(model("ifc4"), out, "--settings", settings.toString());

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("CONDENSATION_OUT_OF_REACH");
    assertThat(TakeoffSchema.errors(RealRun.json(out))).isEmpty();
  }

  static List<String> tinyModels() {
    return TinyModels.list();
  }

  @ParameterizedTest
  @MethodSource("tinyModels")
  void jsonOfATinyModelFitsTheSchemaUnlessThereIsNothingToLag(String name, @TempDir Path own)
      throws IOException {
    Path model = Files.write(own.resolve("model.ifc"), TinyModels.read(name));
    Path out = own.resolve("out");
    RealRun run = RealRun.takeoff(model, out);
    if (run.code() == 3) {
      assertThat(run.err()).contains("there is no pipe, duct, fitting or valve in the model");
      assertThat(Files.readString(model)).doesNotContain("IFCPIPESEGMENT(", "IFCDUCTSEGMENT(");
      assertThat(out).doesNotExist();
    } else {
      assertThat(run.code()).as(run.err()).isZero();
      assertThat(TakeoffSchema.errors(RealRun.json(out))).isEmpty();
      assertThat(RealRun.named(out, "Account_check")).isEqualTo("OK");
    }
  }

  @Test
  void twoRunsGiveTheSameBytes() throws IOException {
    Path again = folder.resolve("again");
    assertThat(run("ifc4", again).code()).isZero();
    for (String name : List.of("takeoff.xlsx", "takeoff.json")) {
      assertThat(again.resolve(name))
          .as(name)
          .hasSameBinaryContentAs(folder.resolve("ifc4").resolve(name));
    }
  }

  @Test
  void severalModelsAreTakenOffTogether() throws IOException {
    Path out = folder.resolve("both");
    RealRun run = RealRun.takeoff(model("ifc4"), out, model("ifc2x3").toString());
    assertThat(run.err()).isEmpty();
    JsonNode document = RealRun.document(out);
    assertThat(document.at("/totals/read").asInt())
        .isEqualTo(2 * (AlderQuay.pieces().size() + COVERINGS));
    assertThat(StreamSupport.stream(document.get("models").spliterator(), false))
        .extracting(model -> model.get("file").asString())
        .containsExactly("alder-quay-ifc4.ifc", "alder-quay-ifc2x3.ifc");
  }

  /** One building exported twice: everything is read twice and counted once. */
  @Test
  void modelThatIsGivenTwiceIsCountedOnce() throws IOException {
    Path once = folder.resolve("once");
    Path twice = folder.resolve("twice");
    RealRun.takeoff(model("ifc4"), once);
    RealRun.takeoff(model("ifc4"), twice, model("ifc2x3").toString());

    JsonNode both = RealRun.document(twice);
    assertThat(both.get("lines")).isEqualTo(RealRun.document(once).get("lines"));
    assertThat(RealRun.items(both, "elements"))
        .filteredOn(e -> e.get("rule").asString().equals("repeated"))
        .hasSize(AlderQuay.pieces().size() + COVERINGS)
        .allSatisfy(e -> assertThat(e.get("reason").asString()).contains("in alder-quay-ifc4.ifc"));
    assertThat(RealRun.items(both, "findings"))
        .filteredOn(f -> f.get("code").asString().equals("REPEATED_ELEMENTS"))
        .hasSize(1);
    assertThat(RealRun.named(twice, "Account_check")).isEqualTo("OK");
  }
}
