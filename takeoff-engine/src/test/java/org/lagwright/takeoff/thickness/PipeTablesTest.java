package org.lagwright.takeoff.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.ReferenceRows.Row;

/** Nominal sizes and bores of the program against the published tables of pipes. */
class PipeTablesTest {

  private static final NominalPipeSizes SIZES = NominalPipeSizes.bundled();
  private static final PipeBores BORES = PipeBores.bundled();

  /** Copper with the outside diameter of a steel pipe, whose wall is taken. */
  private static final Set<String> AS_STEEL = Set.of("76.1", "88.9", "219");

  static List<Row> all() {
    return ReferenceRows.read(
        PipeTablesTest.class, "/org/lagwright/testmodels/reference/pipe-sizes.csv");
  }

  static List<Row> named() {
    return all().stream()
        .filter(row -> !row.text("nps").isEmpty() || !row.text("dn").isEmpty())
        .filter(row -> !row.text("standard").equals("EN 877"))
        .toList();
  }

  static List<Row> withUsualWall() {
    return all().stream()
        .filter(row -> Set.of("EN 10255 / EN 10220", "EN 1057").contains(row.text("standard")))
        .filter(row -> !row.text("wall_mm").isEmpty())
        .filter(row -> row.text("standard").startsWith("EN 102") || !isAsSteel(row))
        .toList();
  }

  /** Drains of EN 877 are named by their bore and get no insulation rule by nominal size. */
  @ParameterizedTest
  @MethodSource("named")
  void nominalSizeIsThatOfTheTable(Row row) {
    NominalPipeSizes.Size size = SIZES.nearest(row.number("outside_mm") / 1000);

    if (!row.text("nps").isEmpty()) {
      assertThat(size.nps()).isEqualTo(row.number("nps"));
    }
    if (!row.text("dn").isEmpty()) {
      assertThat(size.dn()).isEqualTo((int) row.number("dn"));
    }
  }

  @ParameterizedTest
  @MethodSource("withUsualWall")
  void boreIsThatOfTheUsualWall(Row row) {
    double outsideMm = row.number("outside_mm");

    assertThat(BORES.boreM(outsideMm / 1000) * 1000)
        .isCloseTo(outsideMm - 2 * row.number("wall_mm"), within(0.01));
  }

  @Test
  void allElevenTablesAreThere() {
    assertThat(all()).hasSize(242);
    assertThat(all().stream().map(row -> row.text("standard")).distinct()).hasSize(14);
  }

  private static boolean isAsSteel(Row row) {
    return AS_STEEL.contains(row.text("outside_mm"));
  }
}
