package org.lagwright.testmodels.large;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.testmodels.NaiveStep;
import org.lagwright.testmodels.ifc.Schema;

class LargeModelTest {

  private static final long BYTES = 1_000_000;

  private static String text(Schema schema, long bytes) {
    StringBuilder text = new StringBuilder();
    LargeModel.write(schema, bytes, text);
    return text.toString();
  }

  private static KnownQuantity quantity(List<KnownQuantity> all, String what, String of) {
    return all.stream()
        .filter(q -> q.what().equals(what) && q.of().equals(of))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void theFileIsAboutAsLargeAsAskedFor(Schema schema) {
    assertThat((double) text(schema, BYTES).length()).isCloseTo(BYTES, within(0.1 * BYTES));
  }

  @Test
  void theSameCallGivesTheSameBytes() {
    assertThat(text(Schema.IFC4, BYTES)).isEqualTo(text(Schema.IFC4, BYTES));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void recordsAreCountedAsTheyStandInTheFile(Schema schema) {
    StringBuilder text = new StringBuilder();
    List<KnownQuantity> known = LargeModel.write(schema, BYTES, text);
    Map<String, Long> standing = new TreeMap<>();
    for (NaiveStep.Line line : new NaiveStep(text.toString()).lines()) {
      standing.merge(line.entity(), 1L, Long::sum);
    }
    Map<String, Long> told = new TreeMap<>();
    known.stream().filter(q -> q.what().equals("record")).forEach(q -> told.put(q.of(), q.count()));
    assertThat(told).isEqualTo(standing);
  }

  @Test
  void whatIsKnownOfElementsAgreesWithTheRecordsOfTheFile() {
    List<KnownQuantity> known = LargeModel.write(Schema.IFC4, BYTES, new StringBuilder());
    assertThat(sum(known, "segment", "pipe-segment")).isEqualTo(records(known, "IFCPIPESEGMENT"));
    assertThat(sum(known, "segment", "duct-segment")).isEqualTo(records(known, "IFCDUCTSEGMENT"));
    assertThat(sum(known, "bend", "pipe-fitting") + sum(known, "item", "pipe-fitting"))
        .isEqualTo(records(known, "IFCPIPEFITTING"));
    assertThat(sum(known, "item", "valve")).isEqualTo(records(known, "IFCVALVE"));
    assertThat(quantity(known, "port", "all").count())
        .isEqualTo(records(known, "IFCDISTRIBUTIONPORT"));
    assertThat(quantity(known, "property", "all").count())
        .isEqualTo(records(known, "IFCPROPERTYSINGLEVALUE"));
    assertThat(sum(known, "system", "")).isEqualTo(records(known, "IFCDISTRIBUTIONSYSTEM"));
    assertThat(quantity(known, "connected port", "all").count())
        .isEqualTo(2 * records(known, "IFCRELCONNECTSPORTS"));
  }

  private static long sum(List<KnownQuantity> known, String what, String of) {
    return known.stream()
        .filter(q -> q.what().equals(what) && q.of().startsWith(of))
        .mapToLong(KnownQuantity::count)
        .sum();
  }

  private static long records(List<KnownQuantity> known, String entity) {
    return quantity(known, "record", entity).count();
  }

  @Test
  void numbersDoNotAscendAndLeaveNoneTwice() {
    List<NaiveStep.Line> lines = new NaiveStep(text(Schema.IFC2X3, BYTES)).lines();
    long steps = 0;
    for (int i = 1; i < lines.size(); i++) {
      steps += lines.get(i).id() < lines.get(i - 1).id() ? 1 : 0;
    }
    assertThat(steps).isGreaterThan(5);
  }

  @Test
  void aRecordTakesAboutSixtyBytesInASmallFile() {
    String text = text(Schema.IFC2X3, BYTES);
    long records = Pattern.compile("^#", Pattern.MULTILINE).matcher(text).results().count();
    assertThat(text.length() / (double) records).isBetween(50.0, 70.0);
  }

  /**
   * As the class says of small files: ten elements in 100 kB, and somewhat less than half passed
   * over.
   */
  @ParameterizedTest
  @EnumSource(Schema.class)
  void proportionsAreThoseOfARealExport(Schema schema) {
    StringBuilder text = new StringBuilder();
    List<KnownQuantity> known = LargeModel.write(schema, BYTES, text);
    long elements = sum(known, "segment", "") + sum(known, "bend", "") + sum(known, "item", "");
    assertThat(elements * 100_000.0 / text.length()).isCloseTo(10, within(0.5));
    long surroundings =
        Pattern.compile(
                "^#[0-9]+=IFC(CARTESIANPOINT|POLYLOOP|FACE|FACEOUTERBOUND)\\(.*\n",
                Pattern.MULTILINE)
            .matcher(text)
            .results()
            .mapToLong(r -> r.end() - r.start())
            .sum();
    assertThat(surroundings / (double) text.length()).isCloseTo(0.45, within(0.05));
  }

  @Test
  void quantitiesCanBeWrittenAndReadAgain() {
    List<KnownQuantity> known = LargeModel.write(Schema.IFC4, 1, new StringBuilder());
    assertThat(KnownQuantity.parse(KnownQuantity.csv(known))).isEqualTo(known);
  }
}
