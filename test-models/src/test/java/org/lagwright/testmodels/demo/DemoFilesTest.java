package org.lagwright.testmodels.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.testmodels.NaiveStep;
import org.lagwright.testmodels.ifc.Schema;

class DemoFilesTest {

  private static final Map<String, String> FILES = WriteDemo.files();

  /** Tests run in the folder of their module. */
  private static final Path FOLDER = Path.of("demo");

  static Stream<String> names() {
    return FILES.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void committedFileIsWhatTheCodeWrites(String name) throws IOException {
    assertThat(Files.readString(FOLDER.resolve(name)))
        .as(
            "%s differs from the code. If that is meant, run the main class %s with the folder"
                + " test-models/demo and say in the commit why numbers moved",
            name, WriteDemo.class.getName())
        .isEqualTo(FILES.get(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void filesStayBelowOneMegabyte(String name) {
    assertThat(Objects.requireNonNull(FILES.get(name)).length()).isLessThan(1_000_000);
  }

  @Test
  void quantitiesHoldEveryPieceOnce() {
    int counted = AlderQuay.quantities().stream().mapToInt(DemoQuantity::pieces).sum();
    assertThat(counted).isEqualTo(AlderQuay.pieces().size());
  }

  @Test
  void quantitiesHoldEveryMetre() {
    double lengthM = AlderQuay.quantities().stream().mapToDouble(DemoQuantity::lengthM).sum();
    double designM = AlderQuay.pieces().stream().mapToDouble(p -> p.measure().lengthMm()).sum();
    assertThat(lengthM).isCloseTo(designM / 1000, within(1e-9));
  }

  /** By hand: 2.5 m + 1.8 m, one bend DN 40 with 1.5 x 40 mm. */
  @Test
  void theNamelessRunIsAsLaid() {
    assertThat(AlderQuay.quantities())
        .contains(
            new DemoQuantity("?", "pipe-segment", "straight", "48.3", 0, 0, 2, 4.3),
            new DemoQuantity("?", "pipe-fitting", "bend", "48.3", 90, 0.06, 1, 0));
  }

  /**
   * By hand: risers 8.6 - 0.15 to 8 to 4 to 3 + 0.15 m make 0.45 + 4 + 0.85; level on the roof 0.9
   * and 7.6 - 4 - 0.04 - 0.9 - 0.052 - 0.15 = 2.458; in the plant room from 7.75 to 8.7 - 0.115 m.
   */
  @Test
  void theLargePipesOfTheChilledReturnAddUp() {
    double expectedM = 0.45 + 4 + (4 - 2.6 - 0.15) + 0.9 + 2.458 + (8.585 - 7.75);
    assertThat(AlderQuay.quantities())
        .filteredOn(q -> q.system().equals("Chilled water return") && q.size().equals("114.3"))
        .filteredOn(q -> q.form().equals("straight"))
        .singleElement()
        .satisfies(q -> assertThat(q.lengthM()).isCloseTo(expectedM, within(1e-9)))
        .satisfies(q -> assertThat(q.pieces()).isEqualTo(6));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void everyPieceIsInTheFileUnderItsGlobalId(Schema schema) {
    Set<String> ids = new HashSet<>();
    for (NaiveStep.Line line : new NaiveStep(AlderQuay.write(schema)).lines()) {
      ids.add(line.arguments().get(0));
    }
    assertThat(AlderQuay.pieces())
        .allMatch(piece -> ids.contains("'" + AlderQuay.globalId(piece) + "'"));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void everyElementIsInExactlyOneRoom(Schema schema) {
    NaiveStep file = new NaiveStep(AlderQuay.write(schema));
    List<Long> contained =
        file.lines("IFCRELCONTAINEDINSPATIALSTRUCTURE").stream()
            .flatMap(line -> line.references(4).stream())
            .toList();
    assertThat(contained).doesNotHaveDuplicates();
    Set<String> ids = new HashSet<>();
    contained.forEach(id -> ids.add(file.line(id).arguments().get(0)));
    assertThat(AlderQuay.pieces())
        .allMatch(piece -> ids.contains("'" + AlderQuay.globalId(piece) + "'"));
  }

  @Test
  void portsBelongToElementsTheWayOfTheirSchema() {
    NaiveStep old = new NaiveStep(AlderQuay.write(Schema.IFC2X3));
    int ports = AlderQuay.plan().ports().size();
    assertThat(old.lines("IFCRELCONNECTSPORTTOELEMENT")).hasSize(ports);
    NaiveStep now = new NaiveStep(AlderQuay.write(Schema.IFC4));
    assertThat(now.lines("IFCRELCONNECTSPORTTOELEMENT")).isEmpty();
    assertThat(now.lines("IFCRELNESTS").stream().mapToInt(l -> l.references(5).size()).sum())
        .isEqualTo(ports);
  }
}
