package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Temperatures in the unit of the file and in their own; 158 degF, 343.15 K are 70 degC. */
class TemperatureUnitTest {

  /** A unit #905, like all others here. */
  private static final String KELVIN =
      "#905=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.KELVIN.);\n";

  private static final String CELSIUS =
      "#905=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.DEGREE_CELSIUS.);\n";

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "FAHRENHEIT|158",
        "DEGREE_FAHRENHEIT|158",
        "degree Fahrenheit|158",
        "\u00B0F|158",
        "\u00BAF|158",
        "deg F|158",
        "F|158",
        "\u00B0R|617.67",
        "Rankine|617.67",
        "K|343.15",
        "\u00B0C|70",
        "degrees C|70",
      })
  void nameOfAConvertedUnitTellsItsScale(String name, double value) {
    assertThat(inUnitOfFile(value, converted(name, "1.8", "$"))).isEqualTo(70, within(1e-9));
  }

  @ParameterizedTest(name = "{0} K, offset {1}: {2}")
  @CsvSource({
    "0.5555555555555556, -459.67, 158",
    "0.55556, 459.67, 158",
    "0.5555555555555556, $, 158",
    "1., -273.15, 70",
    "1., 273.15, 70",
    "1., $, 343.15",
  })
  void factorTellsWhereTheNameDoesNot(String factor, String offset, double value) {
    assertThat(inUnitOfFile(value, converted("Temperature", factor, offset)))
        .isEqualTo(70, within(1e-9));
  }

  @Test
  void fractionOfDegreesCelsiusIsFahrenheitToo() {
    assertThat(inUnitOfFile(158, converted("Temperature", "0.5555555555555556", "32.", CELSIUS)))
        .isEqualTo(70, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.8", "1.8", "$"})
  void temperatureOnAnUnknownScaleIsNoNumber(String factor) {
    assertThat(inUnitOfFile(158, converted("Temperature", factor, "$"))).isNull();
  }

  @ParameterizedTest
  @CsvSource({"IFCTHERMODYNAMICTEMPERATUREMEASURE", "IFCREAL", "IFCRATIOMEASURE"})
  void ownUnitHoldsWhateverTheMeasureOfANumber(String measure) {
    assertThat(inOwnUnit(measure, 343.15, KELVIN)).isEqualTo(70, within(1e-9));
    assertThat(inOwnUnit(measure, 70, CELSIUS)).isEqualTo(70);
    assertThat(inOwnUnit(measure, 158, converted("\u00B0F", "0.5555555555555556", "-459.67")))
        .isEqualTo(70, within(1e-9));
  }

  /** What has no type is on the scale that its name says, else on that of the file. */
  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Vorlauftemperatur|IFCREAL(158.)|FAHRENHEIT|70",
        "Vorlauftemperatur|IFCTEXT('158')|FAHRENHEIT|70",
        "Vorlauftemperatur|IFCREAL(343.15)|KELVIN|70",
        "Vorlauftemperatur|IFCREAL(70.)|KELVIN|70",
        "Supply Temp (°F)|IFCREAL(158.)|KELVIN|70",
        "Supply Temp (°F)|IFCTEXT('158')||70",
        "Supply Temp [K]|IFCREAL(343.15)||70",
        "Temperatur in °C|IFCREAL(70.)|FAHRENHEIT|70",
        "Supply Temp (°F)|IFCTHERMODYNAMICTEMPERATUREMEASURE(158.)||70",
        "Supply Temp (°C)|IFCTHERMODYNAMICTEMPERATUREMEASURE(343.15)|KELVIN|70",
        "Supply Temp (°F)|IFCTHERMODYNAMICTEMPERATUREMEASURE(158.)|KELVIN|",
        "Leistung|IFCREAL(158.)|FAHRENHEIT|158",
        "Vorlauftemperatur|IFCTEXT('warm')|FAHRENHEIT|",
      })
  void nameSaysThatAFigureIsATemperatureAndOnWhichScale(
      String name, String value, @Nullable String unit, @Nullable Double celsius) {
    String ofFile = unit == null ? "#902,#903" : "#902,#903,#905";
    String own = "#2=IFCPROPERTYSINGLEVALUE('%s',$,%s,$);\n".formatted(name, value);
    String units = unit == null ? "" : converted(unit, "1.8", "$");

    assertThat(number(name, own, ofFile, units))
        .satisfies(
            number -> {
              if (celsius == null) {
                assertThat(number).isNull();
              } else {
                assertThat(number).isCloseTo(celsius, within(1e-9));
              }
            });
  }

  @ParameterizedTest
  @CsvSource({"70.,70.", "70.,"})
  void listOfOneTemperatureIsThatTemperature(String first, @Nullable String second) {
    assertThat(ofList(first, second)).isEqualTo(70);
  }

  @Test
  void listOfSeveralTemperaturesTellsNone() {
    assertThat(ofList("70.", "55.")).isNull();
  }

  private static @Nullable Double ofList(String first, @Nullable String second) {
    String measure = "IFCTHERMODYNAMICTEMPERATUREMEASURE(%s)";
    String values =
        measure.formatted(first) + (second == null ? "" : "," + measure.formatted(second));
    String list = "#2=IFCPROPERTYLISTVALUE('Temperature',$,(%s),$);\n".formatted(values);
    return number("Temperature", list, "#902,#903", "");
  }

  private static String converted(String name, String factor, String offset) {
    return converted(name, factor, offset, KELVIN);
  }

  /** A unit #905 that is a fraction of another one. */
  private static String converted(String name, String factor, String offset, String of) {
    return "#905=IFCCONVERSIONBASEDUNITWITHOFFSET($,.THERMODYNAMICTEMPERATUREUNIT.,'%s',#906,%s);\n"
            .formatted(name, offset)
        + "#906=IFCMEASUREWITHUNIT(%s,#907);\n"
            .formatted(factor.equals("$") ? "$" : "IFCRATIOMEASURE(" + factor + ")")
        + of.replace("#905", "#907");
  }

  private static @Nullable Double inUnitOfFile(double value, String unit) {
    return number("IFCTHERMODYNAMICTEMPERATUREMEASURE", value, "$", "#902,#903,#905", unit);
  }

  private static @Nullable Double inOwnUnit(String measure, double value, String unit) {
    return number(measure, value, "#905", "#902,#903", unit);
  }

  private static @Nullable Double number(
      String measure, double value, String own, String ofFile, String units) {
    String name = "Vorlauftemperatur";
    return number(
        name,
        "#2=IFCPROPERTYSINGLEVALUE('%s',$,%s(%s),%s);\n".formatted(name, measure, value, own),
        ofFile,
        units);
  }

  /** The number of a property #2 of a pipe. */
  private static @Nullable Double number(
      String name, String property, String ofFile, String units) {
    String records =
        """
        #900=IFCPROJECT('p',$,$,$,$,$,$,$,#901);
        #901=IFCUNITASSIGNMENT((%s));
        #902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
        #903=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
        #1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,$,$,$);
        #4=IFCPROPERTYSET('4',$,'Set',$,(#2));
        #5=IFCRELDEFINESBYPROPERTIES('5',$,$,$,(#1),#4);
        """
            .formatted(ofFile);
    return element(read("IFC4", records + property + units), 1)
        .findProperty(name)
        .orElseThrow()
        .number();
  }
}
