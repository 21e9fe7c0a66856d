package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.json.TakeoffSchema;
import org.lagwright.testmodels.golden.Golden;
import tools.jackson.databind.JsonNode;

/** The order of the demo building, as takeoff.json holds it. */
class DemoOrderTest {

  private static final Path DEMO = Path.of("../test-models/demo");

  @TempDir static Path folder;

  private static JsonNode document;

  @BeforeAll
  static void takeOffTheDemo() throws IOException {
    RealRun run =
        RealRun.takeoff(
            DEMO.resolve("alder-quay-ifc4.ifc"),
            folder,
            "--settings",
            DEMO.resolve("settings.yaml").toString());
    assertThat(run.err()).isEmpty();
    document = RealRun.document(folder);
  }

  @Test
  void theOrderStaysAsItIs() throws IOException {
    StringBuilder text = new StringBuilder();
    for (JsonNode item : items()) {
      text.append(
          String.format(
              Locale.ROOT,
              "%s %3d x %s | %s | net %.2f waste %.2f allowance %.2f left over %.2f %s%s | %s | %s%n",
              item.get("id").asString(),
              item.get("packs").asInt(),
              item.get("pack").asString(),
              item.get("description").asString(),
              item.get("net").asDouble(),
              item.get("waste").asDouble(),
              item.get("allowance").asDouble(),
              item.get("spare").asDouble(),
              item.get("unit").asString(),
              gap(item),
              item.get("rule").asString(),
              item.get("status").asString()));
    }
    text.append("not ordered: ").append(document.get("orderWithoutPieces").size()).append('\n');
    Golden.check(DemoOrderTest.class, "alder-quay-order.txt", text.toString().replace("\r", ""));
  }

  private static String gap(JsonNode item) {
    JsonNode cutting = item.path("cutting");
    return cutting.isMissingNode()
        ? ""
        : ", " + cutting.get("bought").asInt() + " by plan, gap " + cutting.get("gap").asInt();
  }

  @Test
  void everyElementOnALineIsInTheOrderOrSaidNotToBe() {
    Set<String> named = new HashSet<>();
    document.get("orderWithoutPieces").forEach(id -> named.add(id.asString()));
    for (JsonNode item : items()) {
      if (List.of("tube", "section", "sheet").contains(item.get("goods").asString())) {
        item.get("elements").forEach(id -> named.add(id.asString()));
      }
    }
    Set<String> onLines = new HashSet<>();
    RealRun.items(document, "lines")
        .forEach(line -> line.get("elements").forEach(id -> onLines.add(id.asString())));

    assertThat(named).isEqualTo(onLines);
  }

  @Test
  void quantitiesOfEachItemAddUpAndItsCutsAreNoLongerThanItsStock() {
    for (JsonNode item : items()) {
      double gross =
          item.get("net").asDouble()
              + item.get("waste").asDouble()
              + item.get("allowance").asDouble();
      assertThat(item.get("gross").asDouble()).isCloseTo(gross, within(1e-9));
      assertThat(item.get("bought").asDouble()).isGreaterThanOrEqualTo(gross - 1e-6);
      for (JsonNode piece : item.path("cutting").path("pieces")) {
        assertFits(item.get("cutting"), piece);
      }
    }
  }

  private static void assertFits(JsonNode cutting, JsonNode piece) {
    double lengthM = cutting.get("lengthM").asDouble();
    double usedM = 0;
    for (JsonNode cut : piece.get("cuts")) {
      usedM =
          cut.has("alongM")
              ? Math.max(usedM, cut.get("alongM").asDouble() + cut.get("lengthM").asDouble())
              : usedM + cut.get("lengthM").asDouble();
    }
    assertThat(usedM).isLessThanOrEqualTo(lengthM + 1e-9);
  }

  @Test
  void whatNobodyReadIsShownAsUnverified() {
    List<String> statuses = new ArrayList<>();
    items().forEach(item -> statuses.add(item.get("status").asString()));

    assertThat(statuses).isNotEmpty();
    assertThat(statuses)
        .filteredOn(status -> status.contains("memory") || status.contains("common practice"))
        .isNotEmpty()
        .allMatch(status -> status.startsWith("unverified"));
  }

  @Test
  void theDocumentFitsTheSchema() throws IOException {
    assertThat(TakeoffSchema.errors(RealRun.json(folder))).isEmpty();
  }

  private static List<JsonNode> items() {
    return StreamSupport.stream(document.get("order").spliterator(), false).toList();
  }
}
