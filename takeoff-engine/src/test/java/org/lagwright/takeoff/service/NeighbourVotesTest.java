package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.TestElement;

class NeighbourVotesTest {

  @Test
  void serviceIsCarriedThroughFittingsValvesAndPumps() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.fitting(2, Form.BEND, 60.3).joinedTo(1, 3),
            TestElement.of(3, Kind.VALVE, Form.VALVE_BODY).joinedTo(2, 4),
            TestElement.of(4, Kind.INLINE, Form.PUMP).joinedTo(3, 5),
            TestElement.pipe(5, 60.3, 1).joinedTo(4));

    assertThat(service(found, 5)).isEqualTo("heating-flow");
    assertThat(votes(found, 5)).singleElement().extracting(Vote::from).isEqualTo("neighbour");
    assertThat(votes(found, 5).get(0).weight()).isLessThan(votes(found, 2).get(0).weight());
  }

  @Test
  void oneSidedConnectionsCarryBothWays() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1),
            TestElement.pipe(2, 60.3, 1).inSystem("CHWS").joinedTo(1));

    assertThat(service(found, 1)).isEqualTo("chilled-water-flow");
  }

  @Test
  void serviceIsCarriedFromAMainToTheBranchOnItsSide() {
    var found =
        classify(
            TestElement.pipe(1, 114.3, 2).inSystem("CHWS"),
            TestElement.pipe(2, 33.7, 1).onTheSideOf(1).joinedTo(3),
            TestElement.pipe(3, 33.7, 1));

    assertThat(service(found, 2)).isEqualTo("chilled-water-flow");
    assertThat(service(found, 3)).isEqualTo("chilled-water-flow");
  }

  @Test
  void radiatorTellsThePipesThatReachIt() {
    var found =
        classify(
            TestElement.of(1, Kind.TERMINAL, Form.APPARATUS).named("Heizkörper 22").joinedTo(2),
            TestElement.pipe(2, 18, 1).joinedTo(3),
            TestElement.pipe(3, 18, 1));

    assertThat(service(found, 2)).isEqualTo("heating");
    assertThat(votes(found, 2)).extracting(Vote::from).containsExactly("appliance");
    assertThat(service(found, 3)).isEqualTo("heating");
  }

  @Test
  void classOfTheApplianceTellsWhereItsNameDoesNot() {
    var found =
        classify(
            TestElement.ofClass(1, "IfcSpaceHeater", Kind.TERMINAL, Form.APPARATUS).joinedTo(2),
            TestElement.pipe(2, 18, 1));

    assertThat(service(found, 2)).isEqualTo("heating");
  }

  @ParameterizedTest
  @CsvSource({
    "IfcEnergyConversionDevice,IfcSpaceHeaterType,heating",
    "IfcEnergyConversionDevice,IfcCooledBeamType,chilled-water",
    "IfcFlowTerminal,IfcFireSuppressionTerminalType,fire-sprinkler",
    "IfcFlowTerminal,IfcWasteTerminalType,waste-water",
    "IfcFlowTerminal,IfcAirTerminalType,unknown"
  })
  void classOfItsTypeTellsWhereThatOfTheApplianceIsAFamily(
      String ifcClass, String typeClass, String service) {
    var found =
        classify(
            TestElement.ofClass(1, ifcClass, Kind.TERMINAL, Form.APPARATUS)
                .typeClass(typeClass)
                .joinedTo(2),
            TestElement.pipe(2, 18, 1));

    assertThat(service(found, 2)).isEqualTo(service);
  }

  @Test
  void applianceNeverOutweighsWhatThePipeSaysItself() {
    var found =
        classify(
            TestElement.ofClass(1, "IfcCooledBeam", Kind.TERMINAL, Form.APPARATUS).joinedTo(2),
            TestElement.pipe(2, 18, 1).inSystem("LTHW flow"));

    assertThat(service(found, 2)).isEqualTo("heating-flow");
    assertThat(found.get(TestElement.key(2))).extracting(Classification::contradiction).isNull();
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"EQUIPMENT", "TERMINAL"})
  void apparatusStopsIt(Kind kind) {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.of(2, kind, Form.APPARATUS).joinedTo(1, 3),
            TestElement.pipe(3, 60.3, 1).joinedTo(2));

    assertThat(service(found, 2)).isEqualTo("heating-flow");
    assertThat(service(found, 3)).isEqualTo(Classification.UNKNOWN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Mischventil", "Mixing valve DN25", "Vanne 3 voies", "Dreiwegeventil"})
  void mixingValveStopsIt(String name) {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.of(2, Kind.VALVE, Form.VALVE_BODY).named(name).joinedTo(1, 3),
            TestElement.pipe(3, 60.3, 1).joinedTo(2));

    assertThat(service(found, 3)).isEqualTo(Classification.UNKNOWN);
  }

  @Test
  void valveWithThreePortsStopsIt() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.of(2, Kind.VALVE, Form.VALVE_BODY).joinedTo(1, 3).freePort(),
            TestElement.pipe(3, 60.3, 1).joinedTo(2));

    assertThat(service(found, 3)).isEqualTo(Classification.UNKNOWN);
  }

  @Test
  void exchangerModelledAsFittingStopsIt() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.fitting(2, Form.UNKNOWN, 60.3)
                .named("Plattenwärmetauscher")
                .joinedTo(1, 3)
                .freePort()
                .freePort(),
            TestElement.pipe(3, 60.3, 1).joinedTo(2));

    assertThat(service(found, 3)).isEqualTo(Classification.UNKNOWN);
  }

  @Test
  void airIsNotCarriedIntoPipes() {
    var found =
        classify(
            TestElement.duct(1, 300, 200, 1).inSystem("Supply air").joinedTo(2),
            TestElement.pipe(2, 22, 1).joinedTo(1));

    assertThat(service(found, 2)).isEqualTo(Classification.UNKNOWN);
  }

  @Test
  void missingDirectionComesFromTheNeighbourOfTheSameFamily() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).named("Heizung RL").joinedTo(2),
            TestElement.pipe(2, 60.3, 1).inSystem("Kreis", "HEATING").joinedTo(1, 3),
            TestElement.pipe(3, 60.3, 1).inSystem("Kreis", "HEATING").joinedTo(2));

    assertThat(service(found, 2)).isEqualTo("heating-return");
    assertThat(service(found, 3)).isEqualTo("heating-return");
  }

  @Test
  void hotWaterGoesOnWhereTheSystemTellsDomesticWaterOnly() {
    var found =
        classify(
            TestElement.pipe(1, 22, 1)
                .inSystem("Water", "WATERSUPPLY")
                .port("DOMESTICHOTWATER", 9)
                .joinedTo(2),
            TestElement.pipe(2, 22, 1).inSystem("Water", "WATERSUPPLY").joinedTo(3),
            TestElement.fitting(3, Form.TEE, 22).joinedTo(4),
            TestElement.pipe(4, 22, 1).inSystem("Domestic water").joinedTo(5),
            TestElement.pipe(5, 22, 1).inSystem("Heating"));

    assertThat(List.of(service(found, 2), service(found, 3), service(found, 4)))
        .containsOnly("domestic-hot-water");
    assertThat(service(found, 5)).isEqualTo("heating");
  }

  @Test
  void anotherFamilyDoesNotGoOnIntoDomesticWater() {
    var found =
        classify(
            TestElement.pipe(1, 22, 1).inSystem("CHWS").joinedTo(2),
            TestElement.pipe(2, 22, 1).inSystem("Water", "WATERSUPPLY"));

    assertThat(service(found, 2)).isEqualTo("domestic-water");
  }

  @Test
  void extractAirGoesOnWhereTheSystemTellsVentilationOnly() {
    var found =
        classify(
            TestElement.of(1, Kind.TERMINAL, Form.APPARATUS).named("Extract grille").joinedTo(2),
            TestElement.duct(2, 300, 200, 1).inSystem("Ventilation", "VENTILATION").joinedTo(3),
            TestElement.duct(3, 300, 200, 1).inSystem("Ventilation", "VENTILATION"));

    assertThat(service(found, 2)).isEqualTo("extract-air");
    assertThat(service(found, 3)).isEqualTo("extract-air");
  }

  @Test
  void heatingIsNoOpenFamilyAndKeepsSteamOut() {
    var found =
        classify(
            TestElement.pipe(1, 22, 1).inSystem("Steam").joinedTo(2),
            TestElement.pipe(2, 22, 1).inSystem("Kreis", "HEATING"));

    assertThat(service(found, 2)).isEqualTo("heating");
  }

  @Test
  void hotAndColdMeetingInDomesticWaterContradict() {
    var found =
        classify(
            TestElement.pipe(1, 22, 1).inSystem("DHW").joinedTo(2),
            TestElement.pipe(2, 22, 1).inSystem("Water", "WATERSUPPLY").joinedTo(1, 3),
            TestElement.pipe(3, 22, 1).inSystem("DCW").joinedTo(2));

    assertThat(service(found, 2)).isEqualTo("domestic-hot-water");
    assertThat(found.get(TestElement.key(2)))
        .isNotNull()
        .extracting(Classification::contradiction)
        .isEqualTo("domestic-cold-water");
  }

  @Test
  void basinOfHotAndColdWaterTellsNeither() {
    var found =
        classify(
            TestElement.of(1, Kind.TERMINAL, Form.APPARATUS)
                .port("DOMESTICHOTWATER", 2)
                .port("DOMESTICCOLDWATER", 3),
            TestElement.pipe(2, 15, 1).joinedTo(1),
            TestElement.pipe(3, 15, 1).joinedTo(1),
            TestElement.pipe(4, 15, 1).joinedTo(1));

    assertThat(service(found, 2)).isEqualTo("domestic-hot-water");
    assertThat(service(found, 3)).isEqualTo("domestic-cold-water");
    assertThat(found.get(TestElement.key(3)))
        .isNotNull()
        .extracting(Classification::contradiction)
        .isNull();
    assertThat(service(found, 4)).isEqualTo(Classification.UNKNOWN);
  }

  @Test
  void bypassBetweenFlowAndReturnKeepsItsDirectionOpen() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.pipe(2, 60.3, 1).joinedTo(1, 3),
            TestElement.pipe(3, 60.3, 1).inSystem("LTHW return").joinedTo(2));

    assertThat(service(found, 2)).isEqualTo("heating");
  }

  @Test
  void twoServicesMeetingInAnUnknownPipeContradict() {
    var found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2),
            TestElement.pipe(2, 60.3, 1).joinedTo(1, 3),
            TestElement.pipe(3, 60.3, 1).inSystem("CHWS").joinedTo(2));

    assertThat(found.get(TestElement.key(2)))
        .isNotNull()
        .extracting(Classification::contradiction)
        .isEqualTo("heating-flow");
  }

  @Test
  void orderOfTheElementsDoesNotMatter() {
    List<MepElement> elements = new ArrayList<>();
    elements.add(TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").joinedTo(2).build());
    for (int i = 2; i < 20; i++) {
      elements.add(TestElement.pipe(i, 60.3, 1).joinedTo(i + 1).build());
    }
    elements.add(TestElement.pipe(20, 60.3, 1).inSystem("CHWS").build());
    var forwards = classifier().classify(elements);
    Collections.reverse(elements);

    assertThat(classifier().classify(elements)).containsExactlyInAnyOrderEntriesOf(forwards);
  }

  private static ServiceClassifier classifier() {
    return new ServiceClassifier(ServicePack.bundled(), List.of(), Map.of());
  }

  private static Map<ElementKey, Classification> classify(TestElement... elements) {
    return classifier().classify(List.of(elements).stream().map(TestElement::build).toList());
  }

  private static String service(Map<ElementKey, Classification> found, long step) {
    return Objects.requireNonNull(found.get(TestElement.key(step))).serviceId();
  }

  private static List<Vote> votes(Map<ElementKey, Classification> found, long step) {
    return Objects.requireNonNull(found.get(TestElement.key(step))).votes();
  }
}
