package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.takeoff.TakeoffAssertions.assertLeftOut;
import static org.lagwright.takeoff.TakeoffAssertions.assertOut;
import static org.lagwright.takeoff.TakeoffAssertions.chilled;
import static org.lagwright.takeoff.TakeoffAssertions.takeoff;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Elements whose thickness cannot or need not be found. */
class DemandsOnElementsTest {

  private static final Settings DEFAULTS = SettingsReader.defaults();

  @Test
  void coolDuctWhoseDemandsAreMetBareIsOutWithTheFiguresInItsTrace() {
    Settings dry = TestSettings.of("air: {indoor: {relativeHumidityPct: 20}}\n");
    TestElement duct = TestElement.duct(1, 300, 200, 3).inSystem("Supply air");

    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(duct)), dry);

    assertOut(takeoff, "no-demand", "supply air: no demand needs insulation here");
    assertThat(takeoff.findings())
        .extracting(Finding::code)
        .containsExactly(TakeoffFinding.ENERGY_RULE_SILENT, TakeoffFinding.NO_INSULATION_NEEDED);
    assertThat(takeoff.elements().get(0).trace().steps())
        .anyMatch(s -> s.what().equals("condensation demand") && s.value().equals("0.0 mm"));
  }

  @Test
  void hotPipeWithoutAnyRuleIsLeftOutNotSilentlyBare() {
    TestElement pipe = TestElement.pipe(1, 60.3, 3).inSystem("LTHW flow");

    Takeoff takeoff =
        Takeoff.of(List.of(TestElement.model(pipe)), TestSettings.of("energyRule: none\n"));

    assertLeftOut(takeoff, TakeoffFinding.NO_DEMAND);
    assertThat(takeoff.findings().get(0).message())
        .startsWith("No demand applies to heating flow (80 degC).");
  }

  @Test
  void materialThatDoesNotStandTheMediumIsRefused() {
    Settings settings = TestSettings.of("materials: {hot: fef_nbr}\n");

    Takeoff takeoff =
        Takeoff.of(
            List.of(TestElement.model(TestElement.pipe(1, 60.3, 3).inSystem("Steam"))), settings);

    assertLeftOut(takeoff, TakeoffFinding.MATERIAL_LIMIT);
  }

  @Test
  void thicknessThatNoStockReachesIsReported() {
    Settings thick = TestSettings.of("thicknessesMm: {chilled-water-flow: 500}\n");

    assertLeftOut(
        Takeoff.of(List.of(TestElement.model(chilled(1, 2))), thick),
        TakeoffFinding.NO_STOCK_THICKNESS);
  }

  @Test
  void airInWhichNothingStaysDryIsReportedAsThat() {
    Settings wet = TestSettings.of("air: {indoor: {temperatureC: 35, relativeHumidityPct: 99}}\n");

    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(chilled(1, 2))), wet);

    assertLeftOut(takeoff, TakeoffFinding.CONDENSATION_OUT_OF_REACH);
    assertThat(takeoff.findings().get(0).message()).contains("35 degC, 99 % relative humidity");
  }

  @Test
  void contradictionIsReportedAndTakesTheMaterialOfTheColderService() {
    Takeoff takeoff =
        takeoff(
            TestElement.pipe(1, 60.3, 4)
                .inSystem("Heating flow")
                .named("Kälte VL")
                .at("Level 1", false));

    assertThat(takeoff.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(TakeoffFinding.SERVICE_CONTRADICTION);
              assertThat(f.effect()).isEqualTo(Effect.ASSUMED);
              assertThat(f.message())
                  .contains("heating flow by system name 'Heating'")
                  .contains("chilled water flow by element name 'Kälte'");
            });
    assertThat(takeoff.lines().get(0).materialId()).isEqualTo(DEFAULTS.materials().get("cold"));
    assertThat(takeoff.lines().get(0).serviceId()).isEqualTo("heating-flow");
  }
}
