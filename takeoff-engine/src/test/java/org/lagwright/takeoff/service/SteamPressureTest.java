package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.TestElement;

/**
 * Steam is as hot as its pressure says. Temperatures: IAPWS-IF97, region 4, as tabulated for gauge
 * pressures over 1.01325 bar; 10 bar absolute is 453.035632 K, IF97, table 36.
 */
class SteamPressureTest {

  @ParameterizedTest(name = "{0}: {1} degC")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Dampf 6 bar            | 165.04 | true
          Dampf 1,5 bar(ü)       | 127.59 | false
          LP steam 1.5 bar g     | 127.59 | false
          Steam 10 barg          | 184.12 | false
          HPS 10bar(g)           | 184.12 | false
          Steam 10 bar abs       | 179.89 | false
          Steam 10 bara          | 179.89 | false
          Steam 1 MPa(a)         | 179.89 | false
          Vapeur 3.5 bar         | 148.02 | true
          Dampf 250 kPa          | 138.99 | true
          Steam 100 psig         | 169.98 | false
          """)
  void pressureInTheNameOfTheSystemTellsTheTemperature(
      String system, double celsius, boolean gaugeAssumed) {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem(system));
    ToldTemperature told = Objects.requireNonNull(found.told());

    assertThat(found.energyC()).isCloseTo(celsius, within(0.05));
    assertThat(told.gaugeAssumed()).isEqualTo(gaugeAssumed);
    assertThat(told.pressure()).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Steam PN 16 bar",
        "Steam max 10 bar",
        "Steam, design pressure 12 bar",
        "Dampf, Prüfdruck 15 bar",
        "Steam safety valve 8 bar",
        "Steam 6/4 bar",
        "Steam 10 bar to 3 bar",
        "Steam barrier 6",
        "Steam 9999 bar",
        "Steam riser 6"
      })
  void limitsAndRangesAndOtherNumbersAreNoPressureOfTheService(String system) {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem(system));

    assertThat(found.told()).isNull();
    assertThat(found.serviceId()).startsWith("steam");
  }

  @Test
  void temperatureThatStandsThereGoesBeforeThePressure() {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem("Steam 10 barg 190 °C"));

    assertThat(found.energyC()).isEqualTo(190);
    assertThat(Objects.requireNonNull(found.told()).pressure()).isNull();
  }

  /** Without gauge or absolute told, 6 bar is 165 or 159 degC; what is hotter is superheated. */
  @ParameterizedTest
  @CsvSource({
    "Steam 6 bar 100 °C,true",
    "Steam 6 barg 159 °C,true",
    "Steam 6 bar 159 °C,false",
    "Steam 6 bar 165 °C,false",
    "Steam 6 bar 250 °C,false"
  })
  void steamColderThanSaturatedAtItsPressureIsAContradiction(String system, boolean found) {
    Classification steam = classify(TestElement.pipe(1, 60.3, 1).inSystem(system));

    String pressure = system.substring("Steam ".length(), system.lastIndexOf("bar") + 3);
    String otherwise = Objects.requireNonNull(steam.told()).otherwise();
    if (found) {
      assertThat(otherwise).startsWith("system name '" + system + "' by its " + pressure);
    } else {
      assertThat(otherwise).isNull();
    }
  }

  @Test
  void mediumAndNameOfAPipeTellItTooButNotTheNameOfAValve() {
    TestElement medium = TestElement.pipe(1, 60.3, 1).property("Medium", "Dampf 3 bar ü");
    TestElement named = TestElement.pipe(1, 60.3, 1).named("Steam 3 barg:4711");
    TestElement valve =
        TestElement.of(1, Kind.VALVE, Form.UNKNOWN).round(60.3).named("Steam valve 16 barg");

    assertThat(classify(medium).energyC()).isCloseTo(143.73, within(0.05));
    assertThat(classify(named).energyC()).isCloseTo(143.73, within(0.05));
    assertThat(classify(valve).told()).isNull();
  }

  @Test
  void pressureOfOtherServicesTellsNoTemperature() {
    assertThat(classify(TestElement.pipe(1, 60.3, 1).inSystem("Heating flow 6 bar")).told())
        .isNull();
  }

  private static Classification classify(TestElement element) {
    ServiceClassifier classifier =
        new ServiceClassifier(ServicePack.bundled(), List.of(), Map.of());
    return classifier.classify(List.of(element.build())).values().iterator().next();
  }
}
