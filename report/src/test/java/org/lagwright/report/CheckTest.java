package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.report.json.TakeoffSchema;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.testmodels.golden.Golden;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code lagwright check} on the demo building: 279 of 283 elements miss nothing needed. */
class CheckTest {

  private static final String DEMO = "../test-models/demo/alder-quay-ifc4.ifc";

  @TempDir Path folder;

  private RealRun check(String... more) {
    String[] args = new String[more.length + 3];
    args[0] = "check";
    args[1] = "--out";
    args[2] = folder.toString();
    System.arraycopy(more, 0, args, 3, more.length);
    return RealRun.of(args);
  }

  @Test
  void itSaysHowReadyTheModelIsWhoMissesMostAndWhatToAsk() throws IOException {
    RealRun run = check(DEMO);

    assertThat(run.err()).isEmpty();
    String shown = run.out().replace(folder.toString(), "OUTPUT").replace('\\', '/');
    Golden.check(CheckTest.class, "alder-quay-check.txt", shown);
  }

  @ParameterizedTest
  @CsvSource({"100, 1", "98.7, 1", "98.5, 0", "0, 0"})
  void exitCodeTellsWhetherLessIsReadyThanTheLeast(String least, int code) {
    assertThat(check(DEMO, "--least", least).code()).isEqualTo(code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"150", "-5", "NaN", "most"})
  void aLeastThatNoModelCouldMeetIsAMistake(String least) {
    RealRun run = check(DEMO, "--least", least);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("expected a number from 0 to 100 but was '" + least + "'");
  }

  @Test
  void withoutLeastEverythingMustBeReady() {
    assertThat(check(DEMO).code()).isEqualTo(1);
  }

  @Test
  void jsonFitsItsSchemaAndTableAndJsonTellTheSame() throws IOException {
    check(DEMO);
    String json = Files.readString(folder.resolve("readiness.json"));
    JsonNode document = new JsonMapper().readTree(json);
    long missing = 0;
    for (JsonNode row : document.get("rows")) {
      missing += row.get("missing").asLong();
    }
    double inTable = 0;
    DataTable table = CsvTables.readFile(folder.resolve("readiness.csv"));
    for (DataTable.Row row : table.rows()) {
      inTable += row.number("missing");
    }

    assertThat(TakeoffSchema.errorsOfReadiness(json)).isEmpty();
    assertThat(TakeoffSchema.errorsOfReadiness(json.replace("readyPct", "readyShare")))
        .isNotEmpty();
    assertThat(document.get("models").get(0).get("exporter").asString())
        .isEqualTo("Lagwright test-models");
    assertThat(document.get("elements").asInt()).isEqualTo(283);
    assertThat(missing).isPositive();
    assertThat(inTable).isEqualTo((double) missing);
  }

  @Test
  void jsonSaysWhichVersionOfTheSchemaItFollows() throws IOException {
    check(DEMO);
    JsonMapper mapper = new JsonMapper();
    String json = Files.readString(folder.resolve("readiness.json"));
    String id = mapper.readTree(TakeoffSchema.text("readiness.schema.json")).get("$id").asString();

    assertThat(id).matches("urn:lagwright:readiness:\\d+\\.\\d+");
    assertThat(mapper.readTree(json).get("schema").asString()).isEqualTo(id);
    assertThat(TakeoffSchema.errorsOfReadiness(json.replace(id, id + "1"))).hasSize(1);
  }

  @Test
  void idsFileNeedsNoModel() throws IOException {
    Path ids = folder.resolve("new/requirements.ids");
    RealRun run = RealRun.of("check", "--ids", ids.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo("written: " + ids + "\n");
    assertThat(Files.readString(ids)).contains("<simpleValue>IFCPIPESEGMENT</simpleValue>");
    assertThat(folder.resolve("readiness.json")).doesNotExist();
  }

  @Test
  void withNeitherModelNorIdsItSaysWhatItNeeds() {
    RealRun run = RealRun.of("check");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("lagwright: Give a MODEL, or --ids FILE.");
  }

  @Test
  void idsFileThatCannotBeWrittenIsToldInOneLine() throws IOException {
    Path taken = Files.createDirectories(folder.resolve("taken.ids"));
    RealRun run = RealRun.of("check", "--ids", taken.toString());

    assertThat(run.code()).isEqualTo(5);
    assertThat(run.err().lines()).hasSize(1);
  }
}
