package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.TestElement;

class ServiceClassifierTest {

  private static final ServicePack PACK = ServicePack.bundled();

  @Test
  void systemNameTells() {
    Classification found = classify(pipe().inSystem("Heizung_VL"));

    assertThat(found.serviceId()).isEqualTo("heating-flow");
    assertThat(found.votes())
        .containsExactlyInAnyOrder(
            new Vote("heating", "system name", "Heizung", 1.0),
            new Vote("flow", "system name", "VL", 1.0));
  }

  @Test
  void systemTypeTellsTheFamilyOnly() {
    Classification found = classify(pipe().inSystem("Kreis 7", "CHILLEDWATER"));

    assertThat(found.serviceId()).isEqualTo("chilled-water");
    assertThat(found.condensationC()).isEqualTo(6);
  }

  @Test
  void lightWordForColdWaterTellsMoreThanManyForDomesticWater() {
    MepElement element =
        pipe().inSystem("Domestic water", "WATERSUPPLY").layer("P-DOMESTIC COLD WATER").build();

    assertThat(classify(element).serviceId()).isEqualTo("domestic-cold-water");
  }

  @Test
  void mediumPropertyTells() {
    Classification found = classify(pipe().property("Medium", "Eau glacée retour"));

    assertThat(found.serviceId()).isEqualTo("chilled-water-return");
    assertThat(found.votes()).extracting(Vote::from).containsOnly("property Medium");
  }

  /** A boiler's list of the systems at all its connectors: its flue is one of them. */
  @ParameterizedTest
  @CsvSource({
    "EQUIPMENT, 'Heating flow 1,Gas 2,Exhaust air 3', unknown",
    "EQUIPMENT, Heating flow 1, heating-flow",
    "PIPE_SEGMENT, Heating flow 1, heating-flow",
  })
  void listOfSystemsTellsNoServiceOfAnApparatus(Kind kind, String systems, String service) {
    Form form = kind == Kind.EQUIPMENT ? Form.APPARATUS : Form.STRAIGHT;
    Classification found = classify(TestElement.of(1, kind, form).property("System Name", systems));

    assertThat(found.serviceId()).isEqualTo(service);
  }

  /** Some programs write the code of a property in brackets before its name. */
  @Test
  void codeInBracketsBeforeTheNameOfAPropertyTellsNothing() {
    Classification found = classify(pipe().property("[MED] Medium", "Heizung_VL"));

    assertThat(found.serviceId()).isEqualTo("heating-flow");
    assertThat(found.votes()).extracting(Vote::from).containsOnly("property [MED] Medium");
  }

  @Test
  void abbreviationOfTheSystemTells() {
    Classification found = classify(pipe().property("System Abbreviation", "CHWS"));

    assertThat(found.serviceId()).isEqualTo("chilled-water-flow");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Systemabkürzung",
        "Systemkürzel",
        "Abréviation du système",
        "Abreviatura de sistema",
        "Classificazione sistema",
        "Systeemafkorting",
        "Systemförkortning",
        "Systemnavn",
        "Järjestelmän nimi",
        "Nome do sistema",
        "Nazwa systemu",
        "Классификация системы",
        "Rendszer neve",
        "Sistem adı",
        "Όνομα συστήματος",
        "Názov systému",
        "Naziv sustava",
        "Назва системи"
      })
  void propertyOfTheSystemTellsInItsLanguage(String name) {
    assertThat(classify(pipe().property(name, "CHWS").build()).serviceId())
        .isEqualTo("chilled-water-flow");
  }

  @Test
  void operatingLimitIsNoMedium() {
    MepElement limited =
        pipe().property("Max. Operating temperature", "70 heating").inSystem("?").build();

    assertThat(classify(limited).isKnown()).isFalse();
  }

  @Test
  void elementNameTypeNameAndObjectTypeTell() {
    assertThat(classify(pipe().named("Rohr - Vorlauf HK1")).serviceId()).isEqualTo("heating-flow");
    assertThat(classify(pipe().typed("CHWS pipe", null)).serviceId())
        .isEqualTo("chilled-water-flow");
    assertThat(classify(pipe().typed(null, "DHW copper")).serviceId())
        .isEqualTo("domestic-hot-water");
  }

  @Test
  void layerTells() {
    assertThat(classify(pipe().layer("M-PIPE-LTHW-R-HEATING_RETURN")).serviceId())
        .isEqualTo("heating-return");
  }

  @Test
  void ownPortAndPortOfAnApplianceTell() {
    MepElement own = TestElement.pipe(1, 22, 1).port("DOMESTICHOTWATER", 99).build();
    MepElement tap =
        TestElement.of(2, Kind.TERMINAL, Form.APPARATUS).port("DOMESTICCOLDWATER", 3).build();
    MepElement fed = TestElement.pipe(3, 22, 1).build();

    assertThat(classify(own).serviceId()).isEqualTo("domestic-hot-water");
    assertThat(classify(fed, tap).serviceId()).isEqualTo("domestic-cold-water");
  }

  @Test
  void familyAndDirectionFromDifferentPlacesCombine() {
    assertThat(classify(pipe().inSystem("Kreis", "HEATING").named("Rücklauf")).serviceId())
        .isEqualTo("heating-return");
  }

  @Test
  void coldWaterWithDirectionElsewhereIsChilledWater() {
    assertThat(classify(pipe().inSystem("Kaltwasser").named("Rohr VL")).serviceId())
        .isEqualTo("chilled-water-flow");
  }

  @Test
  void abbreviationOfTwoMeaningsIsTheCircuitThatTheSystemNames() {
    TestElement supply = pipe().inSystem("HWS 1").property("System Abbreviation", "HWS");
    supply.property("System Type", "Heating Hot Water Supply");
    TestElement condenser = pipe().inSystem("CWS 1").property("System Abbreviation", "CWS");
    condenser.property("System Type", "Condenser Water Supply");

    assertThat(classify(supply.build()).serviceId()).isEqualTo("heating-flow");
    assertThat(classify(supply.build()).contradiction()).isNull();
    assertThat(classify(condenser.build()).serviceId()).isEqualTo("condenser-water-flow");
    assertThat(classify(condenser.build()).contradiction()).isNull();
  }

  @Test
  void hotWaterOfAHydronicSystemIsHeatingAndOfADomesticOneIsNot() {
    String classification = "System Classification";
    TestElement hydronic = pipe().inSystem("HWS 1").property(classification, "Hydronic Supply");
    TestElement back = pipe().inSystem("HWR 1").property(classification, "Hydronic Return");
    TestElement cold =
        pipe().inSystem("Cold Water Supply").property(classification, "Hydronic Supply");
    TestElement domestic = pipe().inSystem("HWS 1").property(classification, "Domestic Hot Water");

    assertThat(classify(hydronic.build()).serviceId()).isEqualTo("heating-flow");
    assertThat(classify(back.build()).serviceId()).isEqualTo("heating-return");
    assertThat(classify(cold.build()).serviceId()).isEqualTo("chilled-water-flow");
    assertThat(classify(domestic.build()).serviceId()).isEqualTo("domestic-hot-water");
  }

  @Test
  void settingsWinOverEverything() {
    UserMapping mapping = new UserMapping("kreis 7", "system", "brine-flow");
    MepElement element = pipe().inSystem("KREIS 7", "HEATING").property("Medium", "LTHW").build();

    Classification found = classify(List.of(mapping), Map.of(), element);

    assertThat(found.serviceId()).isEqualTo("brine-flow");
    assertThat(found.contradiction()).isNull();
    assertThat(found.votes()).extracting(Vote::from).contains("settings");
  }

  @Test
  void settingsLookOnlyWhereTheyAreTold() {
    UserMapping mapping = new UserMapping("kreis 7", "type", "brine-flow");

    assertThat(classify(List.of(mapping), Map.of(), pipe().inSystem("Kreis 7").build()).isKnown())
        .isFalse();
  }

  @Test
  void temperatureOfTheSettingsReachesTheUndirectedServiceToo() {
    Map<String, Double> temperaturesC = Map.of("chilled-water-flow", 9.0);

    assertThat(classify(List.of(), temperaturesC, pipe().inSystem("CHW").build()).energyC())
        .isEqualTo(9);
  }

  @Test
  void narrowerWordIsNoContradictionToItsFamily() {
    Classification found =
        classify(pipe().inSystem("Bauteilaktivierung_VL", "HEATING").named("Heizung"));

    assertThat(found.serviceId()).isEqualTo("low-temperature-heating-flow");
    assertThat(found.contradiction()).isNull();
  }

  @Test
  void nameAgainstSystemIsAContradictionAndTheColderTemperatureIsKept() {
    Classification found = classify(pipe().inSystem("Heating flow").named("Kälte VL"));

    assertThat(found.serviceId()).isEqualTo("heating-flow");
    assertThat(found.contradiction()).isEqualTo("chilled-water-flow");
    assertThat(found.condensationC()).isEqualTo(6);
    assertThat(found.energyC()).isEqualTo(80);
  }

  @Test
  void ownMediumBeatsTheNameOfTheSystem() {
    Classification found =
        classify(pipe().inSystem("Heizung").property("Medium", "Kälte").named("Rohr VL"));

    assertThat(found.serviceId()).isEqualTo("chilled-water-flow");
    assertThat(found.contradiction()).isEqualTo("heating-flow");
  }

  @Test
  void aSystemTypeAloneDoesNotContradictTwoClearNames() {
    Classification found =
        classify(pipe().inSystem("Kälte VL", "HEATING").named("Chilled water flow"));

    assertThat(found.serviceId()).isEqualTo("chilled-water-flow");
    assertThat(found.contradiction()).isNull();
  }

  @Test
  void fiveSystemsOfOneNameWeighNoMoreThanOne() {
    TestElement element = pipe().property("Medium", "Chilled water");
    for (int i = 0; i < 5; i++) {
      element.inSystem("Heating " + i);
    }

    assertThat(classify(element).serviceId()).isEqualTo("chilled-water");
  }

  @Test
  void oneTextInNameTypeAndObjectTypeDoesNotOutweighTheSystem() {
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).namedThroughout("Waste PVC").inSystem("CHWS"));

    assertThat(found.serviceId()).isEqualTo("chilled-water-flow");
    assertThat(found.contradiction()).isEqualTo("waste-water");
  }

  @Test
  void flowAndReturnOfEqualWeightLeaveTheDirectionOpen() {
    assertThat(classify(pipe().inSystem("LTHW flow").inSystem("LTHW return")).serviceId())
        .isEqualTo("heating");
  }

  @Test
  void damperReadsWordsOfAirAndNotOfWater() {
    TestElement damper = TestElement.of(1, Kind.INLINE, Form.DAMPER).named("Supply 1 LTHW");

    assertThat(classify(damper).serviceId()).isEqualTo("supply-air");
  }

  /** The flow of which service is not told; litres per second are no steam, nor is the flow air. */
  @Test
  void pumpReadsWordsOfWaterAndNotOfAir() {
    TestElement pump =
        TestElement.of(1, Kind.INLINE, Form.PUMP)
            .namedThroughout("Inline pump 3.9 LPS - 0.8 m")
            .property("System Name", "Unit A Hydronic Supply In");

    assertThat(classify(pump).serviceId()).isEqualTo(Classification.UNKNOWN);
    assertThat(classify(pump).contradiction()).isNull();
  }

  @Test
  void boilerBetweenHydronicSupplyAndReturnIsOnNoAir() {
    TestElement boiler =
        TestElement.of(1, Kind.EQUIPMENT, Form.APPARATUS)
            .named("Hot Water Boiler 147 kW")
            .property("System Name", "Hydronic Supply,Hydronic Return");

    assertThat(classify(boiler).serviceId()).isEqualTo("heating");
  }

  @Test
  void coveringsAndOthersCarryNoService() {
    MepElement covering =
        TestElement.of(1, Kind.COVERING, Form.UNKNOWN).inSystem("Heating").build();

    assertThat(new ServiceClassifier(PACK, List.of(), Map.of()).classify(List.of(covering)))
        .isEmpty();
  }

  private static TestElement pipe() {
    return TestElement.pipe(1, 60.3, 2);
  }

  private static Classification classify(TestElement element) {
    return classify(element.build());
  }

  private static Classification classify(MepElement element, MepElement... others) {
    return classify(List.of(), Map.of(), element, others);
  }

  private static Classification classify(
      List<UserMapping> mappings,
      Map<String, Double> temperaturesC,
      MepElement element,
      MepElement... others) {
    List<MepElement> all = new java.util.ArrayList<>(List.of(others));
    all.add(element);
    return Objects.requireNonNull(
        new ServiceClassifier(PACK, mappings, temperaturesC).classify(all).get(element.key()));
  }
}
