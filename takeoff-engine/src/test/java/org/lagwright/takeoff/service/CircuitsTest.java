package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.takeoff.TestElement;

/** Abbreviations of which one model makes drinking water and another chilled water. */
class CircuitsTest {

  @Test
  void flowWhoseReturnTheModelNamesIsNoDrinkingWaterAndIsAsked() {
    assertThat(
            services(
                TestElement.pipe(1, 60.3, 1).inSystem("CWS"),
                TestElement.pipe(2, 60.3, 1).inSystem("CWR 1")))
        .containsExactly(Classification.UNKNOWN, Classification.UNKNOWN);
  }

  @Test
  void whatElseNamesTheColdWaterStillDoesBesideAReturn() {
    assertThat(
            services(
                TestElement.pipe(1, 60.3, 1).inSystem("CWS Cold Water").named("Riser CWR"),
                TestElement.pipe(2, 60.3, 1).inSystem("CWS", "CHILLEDWATER"),
                TestElement.pipe(3, 60.3, 1).inSystem("CWS Condenser Water Supply")))
        .containsExactly("domestic-cold-water", "chilled-water", "condenser-water-flow");
  }

  @ParameterizedTest(name = "{0} of {1} degC: {2}")
  @CsvSource({
    "CWR, 12, chilled-water-return",
    "CWR, 35, condenser-water-return",
    "CWR, 22, unknown",
    "CWR, 70, unknown",
    "CWS, 6, domestic-cold-water"
  })
  void temperatureTellsWhichCircuitAReturnBelongsTo(String system, String celsius, String service) {
    assertThat(
            services(
                TestElement.pipe(1, 60.3, 1)
                    .inSystem(system)
                    .property("Fluid Temperature", celsius)))
        .containsExactly(service);
  }

  @Test
  void temperatureTellsWhichCircuitBothHalvesBelongTo() {
    assertThat(
            services(
                TestElement.pipe(1, 60.3, 1).inSystem("CWS").property("Fluid Temperature", "6"),
                TestElement.pipe(2, 60.3, 1).inSystem("CWS 85 °F"),
                TestElement.pipe(3, 60.3, 1).inSystem("CWR 95 °F"),
                TestElement.pipe(4, 60.3, 1).inSystem("CWR 54 °F")))
        .containsExactly(
            "chilled-water-flow",
            "condenser-water-flow",
            "condenser-water-return",
            "chilled-water-return");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "HWS 180/160 °F, heating",
    "HWR 180/160 °F, heating",
    "HWS 60/55 °C, domestic-hot-water",
    "HWR 60/55 °C, hot-water-circulation",
    "Cold Water Supply 6/12 °C, chilled-water"
  })
  void pairOfTemperaturesTellsACircuit(String system, String service) {
    assertThat(services(TestElement.pipe(1, 60.3, 1).inSystem(system))).containsExactly(service);
  }

  private static List<String> services(TestElement... elements) {
    return new ServiceClassifier(ServicePack.bundled(), List.of(), Map.of())
        .classify(Arrays.stream(elements).map(TestElement::build).toList()).values().stream()
            .map(Classification::serviceId)
            .toList();
  }
}
