package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.json.TakeoffSchema;
import tools.jackson.databind.JsonNode;

/**
 * Public models of many exporters through the whole program. They are not part of the repository:
 * the folder is named by the system property {@code lagwright.models}, else by the environment
 * variable {@code LAGWRIGHT_MODELS}, else looked for beside the checkout.
 */
class PublicModelsTest {

  @TempDir Path folder;

  @Test
  void eachModelGivesBothOutputsOrIsRefusedInOneLine() throws IOException {
    Path models = models();
    assumeTrue(
        Files.isDirectory(models),
        "skipped: no folder of public models; name one with -Dlagwright.models=FOLDER");
    List<Path> files;
    try (Stream<Path> all = Files.walk(models)) {
      files = all.filter(PublicModelsTest::isModel).sorted().toList();
    }
    assertThat(files).isNotEmpty();
    assertAll(files.stream().map(file -> () -> check(file)));
  }

  private void check(Path file) throws IOException {
    Path out = folder.resolve(String.valueOf(file.getFileName()));
    RealRun run = RealRun.takeoff(file, out);
    assertThat(run.code()).as(file + ": " + run.err()).isIn(0, 3);
    if (run.code() == 3) {
      assertThat(run.err()).startsWith("lagwright: " + file);
      assertThat(run.err().lines()).hasSize(1);
      assertThat(out).doesNotExist();
      return;
    }
    assertThat(run.err()).isEmpty();
    assertThat(TakeoffSchema.errors(RealRun.json(out))).isEmpty();
    JsonNode document = RealRun.document(out);
    JsonNode totals = document.get("totals");
    assertThat(totals.get("read").asInt())
        .isPositive()
        .isEqualTo(document.get("elements").size())
        .isEqualTo(
            totals.get("onLines").asInt()
                + totals.get("leftOut").asInt()
                + totals.get("outOfScope").asInt());
    assertThat(RealRun.named(out, "Elements_read")).isEqualTo(totals.get("read").asString());
    assertThat(RealRun.named(out, "Account_check")).isEqualTo("OK");
  }

  private static boolean isModel(Path file) {
    String name = file.toString();
    return name.endsWith(".ifc") || name.endsWith(".ifczip") || name.endsWith(".ifcxml");
  }

  private static Path models() {
    String named =
        System.getProperty(
            "lagwright.models", System.getenv().getOrDefault("LAGWRIGHT_MODELS", ""));
    return named.isEmpty() ? Path.of("../../shared/models") : Path.of(named);
  }
}
