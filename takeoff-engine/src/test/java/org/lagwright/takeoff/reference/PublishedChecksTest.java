package org.lagwright.takeoff.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.ReferenceRows.Row;

/** Every published worked example that the program is held against. */
class PublishedChecksTest {

  /** By name of the quantity: how the program computes it. */
  private static final Map<String, ToDoubleFunction<Inputs>> COMPUTED = new HashMap<>();

  static {
    COMPUTED.putAll(HeatChecks.computed());
    COMPUTED.putAll(MoneyChecks.computed());
    COMPUTED.putAll(RuleChecks.computed());
    COMPUTED.putAll(EstimateChecks.computed());
  }

  static List<Row> checks() {
    return ReferenceRows.read(PublishedChecksTest.class, "checks.csv");
  }

  static List<Row> index() {
    List<Row> both = new ArrayList<>(index("index.csv"));
    both.addAll(index("trade-index.csv"));
    return both;
  }

  private static List<Row> index(String name) {
    return ReferenceRows.read(PublishedChecksTest.class, name);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void workedExampleComesOutAsPublished(Row row) {
    ToDoubleFunction<Inputs> quantity =
        Objects.requireNonNull(COMPUTED.get(row.text("quantity")), row.text("quantity"));
    double published = row.number("published");

    assertThat(quantity.applyAsDouble(Inputs.of(row.text("inputs"))))
        .isCloseTo(published, within(row.tolerance(published)));
  }

  /** Each check of the index has its row in the table the index names. */
  @ParameterizedTest
  @MethodSource("index")
  void checkOfTheIndexIsInItsTable(Row row) {
    List<Row> table = ReferenceRows.read(PublishedChecksTest.class, "../" + row.text("table"));

    assertThat(table)
        .anyMatch(r -> r.line().replace(';', ' ').startsWith(row.text("row_begins") + " "));
  }

  @ParameterizedTest
  @CsvSource({"index.csv, 116", "trade-index.csv, 148"})
  void theIndexHoldsAllChecksOnce(String name, int checks) {
    assertThat(index(name)).extracting(r -> r.text("id")).doesNotHaveDuplicates().hasSize(checks);
  }
}
