package org.lagwright.takeoff.moistair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.ReferenceRows.Row;

class MoistAirTest {

  static List<Row> saturationPressures() {
    return ReferenceRows.read(MoistAirTest.class, "saturation-pressure.csv");
  }

  static List<Row> dewPoints() {
    return ReferenceRows.read(MoistAirTest.class, "dew-point.csv");
  }

  @ParameterizedTest
  @MethodSource("saturationPressures")
  void saturationPressureIsThePublishedOne(Row row) {
    assertThat(MoistAir.saturationPressurePa(row.number("temperature_C")))
        .isCloseTo(row.number("published_Pa"), withinPercentage(row.number("tolerance_pct")));
  }

  @ParameterizedTest
  @MethodSource("dewPoints")
  void dewPointIsTheRecomputedAndWhereNotMisprintedThePrintedOne(Row row) {
    double dryBulbC = row.number("dry_bulb_C");
    double dewPointC = MoistAir.dewPointC(dryBulbC, row.number("humidity_pct"));

    assertThat(dewPointC).isCloseTo(row.number("recomputed_C"), within(0.01));
    if (row.number("misprint") == 0) {
      assertThat(dewPointC).isCloseTo(row.number("printed_C"), within(dryBulbC >= 10 ? 0.4 : 0.8));
    } else {
      assertThat(Math.abs(dewPointC - row.number("printed_C"))).isGreaterThan(0.35);
    }
  }

  @Test
  void theWholeTableIsChecked() {
    assertThat(dewPoints()).hasSize(270);
    assertThat(dewPoints()).filteredOn(r -> r.number("misprint") == 1).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, -0.02, 0.0, 0.005, 0.02, 20, 60})
  void saturatedAirIsAtItsDewPoint(double dryBulbC) {
    assertThat(MoistAir.dewPointC(dryBulbC, 100)).isEqualTo(dryBulbC);
    assertThat(MoistAir.dewPointC(dryBulbC, 99.9999)).isCloseTo(dryBulbC, within(1e-4));
  }

  @Test
  void airDrierThanTheEquationsReachIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> MoistAir.dewPointC(-60, 0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> MoistAir.dewPointC(20, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> MoistAir.dewPointC(20, 100.1));
    assertThatIllegalArgumentException().isThrownBy(() -> MoistAir.dewPointC(201, 50));
    assertThatIllegalArgumentException().isThrownBy(() -> MoistAir.dewPointC(Double.NaN, 50));
  }
}
