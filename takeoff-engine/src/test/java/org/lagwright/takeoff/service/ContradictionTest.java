package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.TestElement;

/** Names that tell two services at once, and what turns one reading into another. */
class ContradictionTest {

  @ParameterizedTest(name = "{0} {1}: {2} against {3}")
  @CsvSource({
    "duct, Zu- und Abluft, supply-air, extract-air",
    "duct, Ab-/Zuluft, supply-air, extract-air",
    "duct, 'Zu-, Ab- und Fortluft', exhaust-air, supply-air",
    "duct, Till- och frånluft, supply-air, extract-air",
    "duct, Außen- und Fortluft, exhaust-air, outdoor-air",
    "duct, Zu-/Außenluft, supply-air, outdoor-air",
    "pipe, Warm- und Kaltwasser, domestic-hot-water, domestic-cold-water",
    "pipe, Warm-/Kaltwasser, domestic-hot-water, domestic-cold-water",
    "pipe, Trinkwasser kalt/warm, domestic-hot-water, domestic-cold-water",
    "pipe, Eau froide/chaude, domestic-hot-water, domestic-cold-water",
    "pipe, Agua fría y caliente, domestic-hot-water, domestic-cold-water",
    "pipe, Warm en koud water, domestic-hot-water, domestic-cold-water",
    "pipe, Heiz- und Kühlwasser, chilled-water, heating",
    "pipe, Heiz-/Kühlwasser Vorlauf, chilled-water-flow, heating-flow"
  })
  void bothServicesOfAJointNameAreHeard(
      String carrier, String system, String service, String rival) {
    TestElement element =
        carrier.equals("pipe") ? TestElement.pipe(1, 60.3, 1) : TestElement.duct(1, 300, 200, 1);

    Classification found = classify(element.inSystem(system));

    assertThat(found.serviceId()).isEqualTo(service);
    assertThat(found.contradiction()).isEqualTo(rival);
  }

  @ParameterizedTest(name = "{0} + {1}: {2}")
  @CsvSource({
    "Kaltwasser, CHILLEDWATER, chilled-water",
    "Cold water, CHILLEDWATER, chilled-water",
    "CWS, CHILLEDWATER, chilled-water",
    "KV, CHILLEDWATER, chilled-water",
    "Warmwasser, HEATING, heating",
    "Kaltwasser, DOMESTICCOLDWATER, domestic-cold-water",
    "CWS, NOTDEFINED, domestic-cold-water"
  })
  void typeOfTheSystemTellsWhichColdOrHotWaterIsMeant(String system, String type, String service) {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem(system, type));

    assertThat(found.serviceId()).isEqualTo(service);
    assertThat(found.contradiction()).isNull();
  }

  @Test
  void rivalThatIsALittleColderContradicts() {
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).inSystem("Trinkwasser kalt", "CHILLEDWATER"));

    assertThat(found.serviceId()).isEqualTo("domestic-cold-water");
    assertThat(found.contradiction()).isEqualTo("chilled-water");
    assertThat(found.condensationC()).isEqualTo(6);
  }

  @Test
  void glycolInAChilledServiceStaysTheColderReading() {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem("Chilled Glycol Supply"));

    assertThat(found.contradiction()).isEqualTo("brine-flow");
    assertThat(found.condensationC()).isEqualTo(-5);
  }

  @Test
  void glycolAsTheMediumOfAHeatingSystemContradictsNothing() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1)
                .inSystem("Heating Supply")
                .property("Fluid Type", "Propylene Glycol"));

    assertThat(found.serviceId()).isEqualTo("heating-flow");
    assertThat(found.contradiction()).isNull();
    assertThat(found.votes()).contains(new Vote("brine", "property Fluid Type", "Glycol", 0));
  }

  @Test
  void heatInTheNameOfATypeIsWhatItIsFitFor() {
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).inSystem("Kondensat").named("Kondensat 95 °C"));

    assertThat(found.serviceId()).isEqualTo("condensate-drain");
  }

  /** A later file holds the same pipe. */
  @Test
  void whatAnotherFileSaysOfTheElementIsHeardWhereItCounts() {
    TestElement heating = TestElement.pipe(1, 60.3, 1).inSystem("Heating flow");
    TestElement silent = TestElement.pipe(1, 60.3, 1);

    Classification contradicted = classify(heating, again().inSystem("Chilled water flow"));
    Classification confirmed = classify(heating, again().inSystem("Heating flow"));
    Classification told = classify(silent, again().property("Medium", "Chilled water"));

    assertThat(contradicted.contradiction()).isNotNull();
    assertThat(contradicted.condensationC()).isEqualTo(6);
    assertThat(confirmed.contradiction()).isNull();
    assertThat(confirmed.votes()).hasSameSizeAs(classify(heating).votes());
    assertThat(told.serviceId()).isEqualTo("chilled-water");
  }

  @Test
  void temperatureThatOnlyTheLaterFileTellsIsTaken() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("Heating flow"),
            again().property("Flow Temperature", "48 °C"));

    assertThat(found.condensationC()).isEqualTo(48);
  }

  private static TestElement again() {
    return TestElement.pipe(2, 60.3, 1);
  }

  private static Classification classify(TestElement element, TestElement repetition) {
    MepElement first = element.build();
    MepElement later = repetition.build().toBuilder().repeats(first.key()).build();
    ServiceClassifier classifier =
        new ServiceClassifier(ServicePack.bundled(), List.of(), Map.of());
    return Objects.requireNonNull(classifier.classify(List.of(first, later)).get(first.key()));
  }

  private static Classification classify(TestElement element) {
    ServiceClassifier classifier =
        new ServiceClassifier(ServicePack.bundled(), List.of(), Map.of());
    return classifier.classify(List.of(element.build())).values().iterator().next();
  }
}
