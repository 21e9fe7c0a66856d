package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Finding;

class StockAndSteamFindingsTest {

  @Test
  void pipeThatNoBoreFitsGetsSheetAndIsReported() {
    Takeoff takeoff = takeoff("project: x\n", TestElement.pipe(1, 141.3, 2).inSystem("CHW flow"));

    assertThat(takeoff.lines())
        .singleElement()
        .satisfies(l -> assertThat(l.layers()).contains("sheet"));
    assertThat(of(takeoff, TakeoffFinding.NO_STOCK_BORE))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("141.3 mm"));
  }

  @Test
  void pipeWiderThanEveryBoreGetsSheetAsUsual() {
    Takeoff takeoff = takeoff("project: x\n", TestElement.pipe(1, 273, 2).inSystem("CHW flow"));

    assertThat(of(takeoff, TakeoffFinding.NO_STOCK_BORE)).isEmpty();
  }

  @Test
  void steamPressureReadAsGaugeIsReportedAndExplained() {
    Takeoff takeoff = takeoff("project: x\n", TestElement.pipe(1, 60.3, 2).inSystem("Dampf 6 bar"));

    assertThat(of(takeoff, TakeoffFinding.STEAM_PRESSURE_ASSUMED))
        .singleElement()
        .satisfies(
            f -> assertThat(f.message()).contains("6 bar in 'Dampf 6 bar'").contains("165 degC"));
    assertThat(takeoff.elements().get(0).trace().steps())
        .filteredOn(step -> step.what().equals("medium for energy"))
        .singleElement()
        .satisfies(step -> assertThat(step.toString()).contains("6 bar, read as gauge,"));
  }

  @Test
  void steamPressureThatSaysGaugeOrIsOverruledNeedsNoFinding() {
    assertThat(
            of(
                takeoff("project: x\n", TestElement.pipe(1, 60.3, 2).inSystem("Steam 6 barg")),
                TakeoffFinding.STEAM_PRESSURE_ASSUMED))
        .isEmpty();
  }

  @Test
  void temperatureThatTheServiceCannotHaveIsReported() {
    TestElement drain =
        TestElement.pipe(1, 60.3, 2).inSystem("Kondensat").property("Medientemperatur", "90");

    assertThat(of(takeoff("project: x\n", drain), TakeoffFinding.TEMPERATURE_NOT_USED))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .contains("90 degC by property Medientemperatur '90'")
                    .contains("no condensate drain is that warm"));
    assertThat(
            of(
                takeoff("temperaturesC: {condensate-drain: 12}\n", drain),
                TakeoffFinding.TEMPERATURE_NOT_USED))
        .isEmpty();
  }

  @Test
  void secondTemperatureOfOneNameIsReportedUnlessTheUserGivesAnother() {
    TestElement pipe =
        TestElement.pipe(1, 60.3, 2)
            .inSystem("Heating flow")
            .property("Flow Temperature", "70 °C")
            .property("Flow Temperature", "55 °C");
    TestElement rounded =
        TestElement.pipe(1, 60.3, 2)
            .inSystem("Heating flow")
            .property("Flow Temperature", "70 °C")
            .property("Flow Temperature", "70.4 °C");

    assertThat(of(takeoff("project: x\n", pipe), TakeoffFinding.TEMPERATURE_CONFLICT))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .contains("70 degC is used (property Flow Temperature '70 °C')")
                    .contains("also says property Flow Temperature '55 °C'."));
    assertThat(of(takeoff("project: x\n", rounded), TakeoffFinding.TEMPERATURE_CONFLICT)).isEmpty();
    assertThat(
            of(
                takeoff("temperaturesC: {heating-flow: 60}\n", pipe),
                TakeoffFinding.TEMPERATURE_CONFLICT))
        .isEmpty();
  }

  @Test
  void sweepShowsTheServicesThatTheSettingsChoose() {
    TestElement flow = TestElement.pipe(1, 60.3, 2).inSystem("CHW flow");
    TestElement cold = TestElement.pipe(2, 28, 2).inSystem("Cold water");

    assertThat(HumiditySweep.of(takeoff("project: x\n", flow, cold)))
        .extracting(sweep -> sweep.group().serviceId())
        .containsExactlyInAnyOrder("chilled-water-flow", "domestic-cold-water");
    assertThat(HumiditySweep.of(takeoff("humiditySweep: [domestic-cold-water]\n", flow, cold)))
        .extracting(sweep -> sweep.group().serviceId())
        .containsExactly("domestic-cold-water");
  }

  private static List<Finding> of(Takeoff takeoff, TakeoffFinding code) {
    return takeoff.findings().stream().filter(f -> f.code() == code).toList();
  }

  private static Takeoff takeoff(String settings, TestElement... elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), TestSettings.of(settings));
  }
}
