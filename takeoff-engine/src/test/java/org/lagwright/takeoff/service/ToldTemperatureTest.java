package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.TestElement;

class ToldTemperatureTest {

  @ParameterizedTest(name = "{0}: {1} degC")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Heizung VL 70/55            | 70
          Heizung RL 70/55            | 55
          Heizung 70/55               | 70
          LTHW Flow 82/71 °C          | 82
          LTHW Flow 180/160 °F        | 82.222
          Heating flow 60°C           | 60
          Heating return 45 °C        | 45
          Fußbodenheizung VL 35-28 °C | 35
          CHW Flow 7/12               | 7
          CHW Return 7/12             | 12
          CHW Return 44°F             | 6.667
          Chilled water flow 14/18 °C | 14
          Brine flow -8/-4 °C         | -8
          Sole VL -12/-8              | -12
          Solekreis RL -6/-2          | -2
          Sole VL -5/0                | -5
          Kaltwasser 14/18            | 14
          Warmwasser 70/50            | 70
          Chilled water supply 7℃     | 7
          CHW Return 7/12℃            | 12
          Отопление подача 90 °С      | 90
          Heizung VL 90 Grad          | 90
          Heizung VL 55 Grad Celsius  | 55
          Heating flow 55 deg.C       | 55
          LTHW Flow 180/160 F         | 82.222
          CHW Flow 42/54F             | 5.556
          CHW Flow 6/12 F             | 6
          Kaltwasser VL 6 bis 12 °C   | 6
          Kaltwasser VL 20/26 °C      | 20
          Heizung VL 70 RL 50         | 70
          Heizung RL50/VL70           | 70
          Heizung RL 50°C VL 70°C     | 70
          Heizung max. 95°C VL 70°C   | 70
          Heizung VL 120 °C / 16 bar  | 120
          CHW Flow 14°C/6bar          | 14
          CHW Flow 44F/54F            | 6.667
          Kälte VL +6/+12             | 6
          Kälte VL –8/–4 °C           | -8
          CHW Flow 6 to 12 degC       | 6
          Chauffage aller 70 à 55 °C  | 70
          LTHW Flow 70 degrees C      | 70
          HHWS 180 DEG F              | 82.222
          HK 1/2 VL 70/55             | 70
          Kälte VL OG 5/11 6/12 °C    | 6
          LTHW Flow 80C               | 80
          Heating flow 180F           | 82.222
          Heizung VL 75/65/20         | 75
          Heizung RL 70/55/20 °C      | 55
          Fernwärme VL 150/70         | 150
          """)
  void temperaturesInTheNameOfASystemAreTaken(String system, double celsius) {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem(system), Map.of());

    assertThat(found.condensationC()).isCloseTo(celsius, within(0.001));
    assertThat(found.energyC()).isCloseTo(celsius, within(0.001));
    assertThat(told(found).from()).isEqualTo("system name");
    assertThat(told(found).text()).isEqualTo(system);
  }

  @ParameterizedTest
  @CsvSource({
    "Heating flow, Flow Temperature, 70",
    "Heating flow, Vorlauftemperatur [\u00B0C], 70",
    "Heating return, R\u00FCcklauftemperatur, 50",
    "Heating return, Fluid Temperature (\u00B0F), 50",
    "Heating return, Flow Temperature, ",
    "Heating flow, Flow Temperature, 0",
  })
  void systemStatesTheTemperatureOfAllThatBelongsToIt(
      String system, String name, @Nullable Double celsius) {
    double figure = celsius == null ? 70 : celsius;
    Property stated =
        new Property("Set", name, String.valueOf(figure), figure, "IFCREAL", false, false, 1);
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).inSystemStating(system, stated), Map.of());

    if (celsius == null || celsius == 0) {
      assertThat(found.told()).isNull();
    } else {
      assertThat(told(found).celsius()).isEqualTo(celsius);
      assertThat(told(found).from()).isEqualTo("property of its system " + name);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Heating flow 1/2",
    "Heating flow riser 4",
    "Heating flow DN 65/50",
    "CHW flow 1/4",
    "Brine flow -3/4",
    "CHW flow 2026/11/25",
    "Heating flow building 70-50",
    "Heating flow HK3",
    "Heizung VL Haus 25/27",
    "Heizung VL max. 95 °C",
    "Heizung VL max 90C",
    "Heizung VL DN70C",
    "Heizung VL EI90C",
    "Heizung VL Raum 26 °C",
    "Heizung VL 26 °C Raum",
    "Kälte VL außen -10 °C",
    "Kälte VL min -10 °C",
    "Heizung VL Haus 5C",
    "Heizung DN 80/65/25",
    "Heizung VL Tmax 110 °C",
    "Heizung VL max. Temp. 110 °C",
    "Heating flow maximum operating temperature 110 °C",
    "Heizung VL TS = 110 °C",
    "Heizung VL ≤ 90 °C",
    "Kälte VL PN 16/10",
    "Heizung VL dT 30 °C"
  })
  void otherNumbersAreNoTemperatures(String system) {
    Classification found = classify(TestElement.pipe(1, 60.3, 1).inSystem(system), Map.of());

    assertThat(found.told()).isNull();
  }

  @ParameterizedTest(name = "{1}: {2}")
  @CsvSource({
    "Chauffage aller, Température de départ, '55,5 °C', 55.5",
    "Chauffage retour, Température de retour, 45 °C, 45",
    "Calefacción impulsión, Temperatura de impulsión, 50 ºC, 50",
    "Riscaldamento ritorno, Temperatura di ritorno, 40 °C, 40",
    "CV aanvoer, Temperatuur aanvoer, 45, 45",
    "Varme tur, Turtemperatur, 60 °C, 60",
    "Lämmitys meno, Menolämpötila, 45 °C, 45",
    "Отопление подача, Температура подачи, '90,0 °С', 90",
    "Fűtés előremenő, Előremenő hőmérséklet, 70 °C, 70",
    "Încălzire retur, Temperatură retur, 50 °C, 50",
    "Isıtma gidiş, Gidiş sıcaklığı, 75, 75",
    "Θέρμανση επιστροφή, Θερμοκρασία επιστροφής, 55 °C, 55",
    "Vykurovanie prívod, Teplota prívodu, 65 °C, 65",
    "Grijanje povrat, Temperatura povrata, 45 °C, 45"
  })
  void propertiesOfAllLanguagesTell(String system, String name, String value, double celsius) {
    TestElement pipe = TestElement.pipe(1, 60.3, 1).inSystem(system).property(name, value);

    assertThat(classify(pipe, Map.of()).energyC()).isEqualTo(celsius);
  }

  @Test
  void propertyOfTheElementTellsMoreThanTheSystem() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1)
                .inSystem("Heizung VL 70/55")
                .property("Vorlauftemperatur", "65 °C"),
            Map.of());

    assertThat(found.energyC()).isEqualTo(65);
    assertThat(told(found).otherwise()).isEqualTo("system name 'Heizung VL 70/55'");
  }

  @Test
  void codeInBracketsBeforeTheNameTellsNothing() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1)
                .inSystem("Heizung VL 70/55")
                .property("[TV] Vorlauftemperatur", "65 °C"),
            Map.of());

    assertThat(found.energyC()).isEqualTo(65);
  }

  @Test
  void returnTakesNoFlowTemperature() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1)
                .inSystem("Heizung RL")
                .property("Vorlauftemperatur", "65")
                .property("Rücklauftemperatur", "52"),
            Map.of());

    assertThat(found.energyC()).isEqualTo(52);
  }

  @ParameterizedTest
  @CsvSource({
    "Maximum Temperature, 110",
    "MaxOperatingTemperature, 95",
    "Temperature Range, 0-120",
    "Design Temperature, 130",
    "Test Temperature, 20"
  })
  void operatingLimitsAreNoServiceTemperatures(String property, String value) {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").property(property, value), Map.of());

    assertThat(found.energyC()).isEqualTo(80);
    assertThat(found.told()).isNull();
  }

  @Test
  void settingsOverruleTheModel() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("Heizung VL 70/55"),
            Map.of("heating-flow", 75.0));

    assertThat(found.energyC()).isEqualTo(75);
    assertThat(told(found).celsius()).isEqualTo(70);
  }

  @ParameterizedTest
  @CsvSource({"343.15 K, 70", "158 °F, 70", "20 K, 80"})
  void unitInTheTextOfAPropertyIsHeeded(String text, double celsius) {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").property("Flow Temperature", text),
            Map.of());

    assertThat(found.energyC()).isEqualTo(celsius, within(1e-9));
  }

  @Test
  void numberThatTheReaderCouldNotTurnIntoCelsiusTellsNothing() {
    Property unknownScale =
        new Property(
            "Set",
            "Flow Temperature",
            "158",
            null,
            "IFCTHERMODYNAMICTEMPERATUREMEASURE",
            false,
            false,
            2);
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("LTHW flow").property(unknownScale), Map.of());

    assertThat(found.told()).isNull();
    assertThat(found.energyC()).isEqualTo(80);
  }

  @Test
  void impossibleTemperatureIsShownAndNotUsed() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1)
                .inSystem("CHW flow")
                .property("Fluid Temperature", "279.15"),
            Map.of());

    assertThat(found.condensationC()).isEqualTo(6);
    assertThat(told(found).believed()).isFalse();
  }

  @Test
  void coldWaterStaysExemptFromEnergyRulesWhateverIsTold() {
    Classification found =
        classify(
            TestElement.pipe(1, 28, 1)
                .inSystem("Trinkwasser kalt")
                .property("Medientemperatur", "8"),
            Map.of());

    assertThat(found.condensationC()).isEqualTo(8);
    assertThat(found.energyC()).isNull();
  }

  @Test
  void portsTellMoreThanTheSystemAndLessThanTheElement() {
    TestElement pipe = TestElement.pipe(1, 60.3, 1).inSystem("Heizung VL 70/55").portsAt(65.0);
    Classification found = classify(pipe, Map.of());

    assertThat(found.energyC()).isEqualTo(65);
    assertThat(told(found).from()).isEqualTo("properties of its ports");
    assertThat(told(found).text()).isEqualTo("65.0 degC");
    assertThat(classify(pipe.property("Vorlauftemperatur", "60"), Map.of()).energyC())
        .isEqualTo(60);
  }

  /** Of figures that agree the more demanding one: warmer for a hot service, colder for a cold. */
  @ParameterizedTest(name = "{0}, {1} and {2}: {3}")
  @CsvSource({
    "Heizung VL 70/55, 65.0, 65.4, 65.4",
    "Heizung VL 70/55, 65.0, 66.0, 70",
    "CHW Flow 7/12, 8.4, 8.0, 8.0",
    "CHW Flow 7/12, 9.0, 8.0, 7",
    "Heizung VL 70/55, 65.0, , 65.0"
  })
  void portsTellWhereThoseThatStateATemperatureAgree(
      String system, Double one, @Nullable Double other, double celsius) {
    TestElement pipe = TestElement.pipe(1, 60.3, 1).inSystem(system).portsAt(one, other);

    assertThat(classify(pipe, Map.of()).condensationC()).isEqualTo(celsius);
  }

  /** A heat exchanger, or a vessel that is as warm all over. */
  @ParameterizedTest(name = "{0}, {1} and {2}: {3}")
  @CsvSource({"65.0, 65.0, 65.0, 65", "65.0, 65.0, 40.0, 70", "65.0, 65.0, , 70"})
  void allPortsOfApparatusMustTellTheSame(
      Double one, Double other, @Nullable Double third, double celsius) {
    TestElement apparatus =
        TestElement.of(1, Kind.EQUIPMENT, Form.APPARATUS)
            .inSystem("Heizung VL 70/55")
            .portsAt(one, other, third);

    assertThat(classify(apparatus, Map.of()).energyC()).isEqualTo(celsius);
  }

  /** Some write the same room temperature on all ports. */
  @Test
  void impossibleTemperatureOfPortsGivesWayToThatOfTheSystem() {
    TestElement pipe = TestElement.pipe(1, 60.3, 1).inSystem("Heizung VL 70/55").portsAt(20.0);

    assertThat(classify(pipe, Map.of()).energyC()).isEqualTo(70);
    TestElement steam = TestElement.pipe(1, 60.3, 1).inSystem("Dampf 6 bar").portsAt(20.0);
    assertThat(told(classify(steam, Map.of())).pressure()).isEqualTo("6 bar");
    TestElement untold = TestElement.pipe(1, 60.3, 1).inSystem("Heizung VL").portsAt(20.0);
    assertThat(told(classify(untold, Map.of())).believed()).isFalse();
  }

  /** Programs write 20 degC, 0 degC or 0 K where nobody gave a temperature. */
  @ParameterizedTest(name = "{0}, {1} degC: {2}")
  @CsvSource({
    "Kaltwasser VL 8/14, 20, 8",
    "Kaltwasser VL 8/14, 25, 8",
    "Kaltwasser VL 8/14, 0, 8",
    "Kaltwasser VL 8/14, -273.15, 8",
    "Kaltwasser VL, 20, 6",
    "Kaltwasser VL, 0, 6",
    "Kaltwasser VL 8/14, 19, 19",
    "Heizung VL 70/55, 20, 70",
    "Heizung VL 70/55, 0, 70",
    "Trinkwasser kalt, 0, 10",
    "Trinkwasser kalt, 20, 20",
    "Sole RL -10/-6, 0, -6",
    "Kältemittel Sauggas, 0, 0"
  })
  void temperatureOfARoomAndZeroAreNoneThatSomebodyGave(
      String system, String figure, double celsius) {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem(system).property("Fluid Temperature", figure),
            Map.of());

    assertThat(found.condensationC()).isEqualTo(celsius);
  }

  @Test
  void temperatureOfARoomIsToldBesideTheOneThatIsUsed() {
    TestElement pipe = TestElement.pipe(1, 60.3, 1).inSystem("Kaltwasser VL 6/12").portsAt(20.0);
    TestElement alone = TestElement.pipe(1, 60.3, 1).inSystem("Kaltwasser VL").portsAt(20.0);

    assertThat(told(classify(pipe, Map.of())).otherwise())
        .isEqualTo("properties of its ports '20.0 degC'");
    assertThat(told(classify(alone, Map.of())).believed()).isFalse();
  }

  /** Whichever stands first. */
  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource({
    "Heizung VL 70/55, Heizung VL 55/45, 70",
    "Heizung VL 55/45, Heizung VL 70/55, 70",
    "CHW Flow 14/18, CHW Flow 6/12, 6"
  })
  void ofSystemsThatDifferTheMoreDemandingIsUsedAndTheOtherTold(
      String one, String other, double celsius) {
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).inSystem(one).inSystem(other), Map.of());

    assertThat(found.condensationC()).isEqualTo(celsius);
    assertThat(told(found).otherwise()).startsWith("system name '");
  }

  /** Whichever stands first; that the services differ is told as such. */
  @Test
  void systemOfAnotherServiceTellsNothingBesideItsOwn() {
    for (boolean first : new boolean[] {true, false}) {
      TestElement pipe = TestElement.pipe(1, 60.3, 1);
      pipe = first ? pipe.inSystem("Trinkwasser warm 60 °C") : pipe.inSystem("Heizung VL 55/45");
      pipe = first ? pipe.inSystem("Heizung VL 55/45") : pipe.inSystem("Trinkwasser warm 60 °C");
      Classification found = classify(pipe.named("Heizung VL"), Map.of());

      assertThat(found.serviceId()).isEqualTo("heating-flow");
      assertThat(found.energyC()).isEqualTo(55);
      assertThat(told(found).otherwise()).isNull();
    }
  }

  @Test
  void hotPairInASystemThatCoolsIsShownAndNotUsed() {
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).inSystem("Kühlwasser VL 27/32"), Map.of());

    assertThat(found.condensationC()).isEqualTo(6);
    assertThat(told(found).believed()).isFalse();
  }

  /** A mixing valve is in the flow and in the return. */
  @Test
  void systemsOfFlowAndReturnDoNotContradictEachOther() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).inSystem("Heizung RL 55 °C").inSystem("Heizung VL 70 °C"),
            Map.of());

    assertThat(found.energyC()).isEqualTo(70);
    assertThat(told(found).otherwise()).isNull();
  }

  @Test
  void temperatureInThePropertyThatNamesTheSystemIsTaken() {
    Classification found =
        classify(
            TestElement.pipe(1, 60.3, 1).property("System Name", "Heizung VL 65/50"), Map.of());

    assertThat(found.energyC()).isEqualTo(65);
  }

  @Test
  void pairWithoutUnitThatPlainHeatingIsTooColdForIsShownAndNotUsed() {
    Classification found =
        classify(TestElement.pipe(1, 60.3, 1).inSystem("LTHW Flow 180/160"), Map.of());

    assertThat(found.energyC()).isEqualTo(80);
    assertThat(told(found).believed()).isFalse();
  }

  private static ToldTemperature told(Classification found) {
    return Objects.requireNonNull(found.told());
  }

  private static Classification classify(TestElement element, Map<String, Double> given) {
    ServiceClassifier classifier = new ServiceClassifier(ServicePack.bundled(), List.of(), given);
    return classifier.classify(List.of(element.build())).values().iterator().next();
  }
}
