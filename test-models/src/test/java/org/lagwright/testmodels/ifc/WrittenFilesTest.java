package org.lagwright.testmodels.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.testmodels.NaiveStep;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.large.LargeModel;
import org.lagwright.testmodels.tiny.TinyModels;

/** What every file we write must keep, whatever it is about. */
class WrittenFilesTest {

  private static final Pattern SCHEMA = Pattern.compile("FILE_SCHEMA\\(\\('(\\w+)'\\)\\)");
  private static final Pattern GLOBAL_ID = Pattern.compile("'[0-3][0-9A-Za-z_$]{21}'");

  /** These have numbers that do not ascend, on purpose. */
  private static final String LARGE = "large ";

  /** Its placement refers to itself, on purpose. */
  private static final String CIRCLE = "placements-in-a-circle-are-a-finding";

  private static final Map<String, String> FILES = files();

  private static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    for (Schema schema : Schema.values()) {
      files.put("Alder Quay " + schema.id(), AlderQuay.write(schema));
    }
    for (Schema schema : Schema.values()) {
      StringBuilder text = new StringBuilder();
      LargeModel.write(schema, 1, text);
      files.put(LARGE + schema.id(), text.toString());
    }
    for (String name : TinyModels.list()) {
      files.put(name, new String(TinyModels.read(name), StandardCharsets.US_ASCII));
    }
    return files;
  }

  static Stream<String> names() {
    return FILES.keySet().stream();
  }

  private static String text(String name) {
    return Objects.requireNonNull(FILES.get(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyReferenceResolvesToAnEarlierRecord(String name) {
    NaiveStep file = new NaiveStep(text(name));
    for (NaiveStep.Line line : file.lines()) {
      assertThat(line.references()).allSatisfy(id -> assertThat(file.has(id)).isTrue());
      if (!name.startsWith(LARGE) && !name.equals(CIRCLE)) {
        assertThat(line.references()).allMatch(id -> id < line.id());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyRecordHasTheArgumentsOfItsSchema(String name) throws IOException {
    Matcher schema = SCHEMA.matcher(text(name));
    assertThat(schema.find()).isTrue();
    Map<String, Integer> counts = argumentCounts(schema.group(1));
    for (NaiveStep.Line line : new NaiveStep(text(name)).lines()) {
      assertThat(line.arguments())
          .as("#%d %s", line.id(), line.entity())
          .hasSize(counts.getOrDefault(line.entity(), -1));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void globalIdsAreUnique(String name) {
    Set<String> seen = new HashSet<>();
    long twice =
        new NaiveStep(text(name))
            .lines().stream()
                .map(line -> line.arguments().get(0))
                .filter(first -> GLOBAL_ID.matcher(first).matches())
                .filter(id -> !seen.add(id))
                .count();
    assertThat(twice).isEqualTo(name.equals("duplicate-global-ids-stay-two-elements") ? 1 : 0);
    assertThat(seen).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rootedRecordsHaveGlobalIdsOf22Characters(String name) {
    List<NaiveStep.Line> lines = new NaiveStep(text(name)).lines();
    assertThat(lines)
        .filteredOn(line -> line.entity().startsWith("IFCREL") || isProduct(line))
        .allMatch(line -> GLOBAL_ID.matcher(line.arguments().get(0)).matches());
  }

  private static boolean isProduct(NaiveStep.Line line) {
    return Set.of("IFCPROJECT", "IFCPIPESEGMENT", "IFCFLOWSEGMENT", "IFCPROPERTYSET")
        .contains(line.entity());
  }

  @ParameterizedTest
  @MethodSource("names")
  void ownerHistoryIsThereInTheOldSchemaOnly(String name) {
    boolean old = text(name).contains("('IFC2X3')");
    NaiveStep.Line project = new NaiveStep(text(name)).lines("IFCPROJECT").get(0);
    assertThat(project.arguments().get(1).startsWith("#")).isEqualTo(old);
  }

  @ParameterizedTest
  @MethodSource("names")
  void filesAreAsciiWithLineFeeds(String name) {
    assertThat(text(name).chars().allMatch(c -> c == '\n' || (c >= 0x20 && c < 0x7f))).isTrue();
  }

  @Test
  void theSameCallGivesTheSameBytes() {
    assertThat(AlderQuay.write(Schema.IFC4)).isEqualTo(text("Alder Quay IFC4"));
  }

  private static Map<String, Integer> argumentCounts(String schemaId) throws IOException {
    int column = List.of("IFC2X3", "IFC4", "IFC4X3_ADD2").indexOf(schemaId) + 1;
    Map<String, Integer> counts = new HashMap<>();
    try (InputStream in =
        Objects.requireNonNull(WrittenFilesTest.class.getResourceAsStream("argument-counts.csv"))) {
      String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      table
          .lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("entity"))
          .map(line -> line.split(",", -1))
          .filter(cells -> !cells[column].isEmpty())
          .forEach(cells -> counts.put(cells[0], Integer.valueOf(cells[column])));
    }
    return counts;
  }
}
