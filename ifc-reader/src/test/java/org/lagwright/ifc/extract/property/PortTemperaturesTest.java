package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.Network.at;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Port;

/**
 * Temperatures among the properties of ports, as in Pset_DistributionPortTypePipe: 343.15 K and 158
 * degF are 70 degC.
 */
class PortTemperaturesTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final int SET = 700_000;

  /** The first port of the pipe of {@link #pipe()}. */
  private static final long PORT = 1120;

  private static final String KELVIN =
      "#904=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.KELVIN.);";

  private static final String FAHRENHEIT =
      """
      #904=IFCCONVERSIONBASEDUNIT($,.THERMODYNAMICTEMPERATUREUNIT.,'degree Fahrenheit',#905);
      #905=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(0.5555555555555556),#906);
      #906=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.KELVIN.);
      """;

  private static Network pipe() {
    return new Network()
        .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
        .port(1, 1, at(0, 0, 0), WEST)
        .port(1, 2, at(1000, 0, 0), EAST);
  }

  private static String measure(String value) {
    return "IFCTHERMODYNAMICTEMPERATUREMEASURE(" + value + ")";
  }

  private static String single(String name, String value) {
    return InlineModel.properties(SET, PORT, "Pset_DistributionPortTypePipe", name, value);
  }

  /** A bounded value: upper bound, lower bound, unit, set point. */
  private static String bounded(String upper, String lower, String setPoint) {
    return single("Temperature", "$")
        .replace("IFCPROPERTYSINGLEVALUE", "IFCPROPERTYBOUNDEDVALUE")
        .replace(",$,$,$)", ",$," + upper + "," + lower + ",$," + setPoint + ")");
  }

  private static List<@Nullable Double> ofPorts(MepElement element) {
    List<@Nullable Double> celsius = new ArrayList<>();
    for (Port port : element.ports()) {
      celsius.add(port.temperatureC());
    }
    return celsius;
  }

  /** What the first port states in a file with this unit #904 of temperature. */
  private static @Nullable Double inUnitOfFile(String unit, String properties) {
    String text =
        InlineModel.MILLIMETRES.replace("(#902,#903)", "(#902,#903,#904)")
            + unit
            + pipe().record(properties).text();
    return ofPorts(InlineModel.element(InlineModel.read("IFC4", text), 1000)).get(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Temperature", "Temperatur", "Température", "Medium Temperature"})
  void portHasTheTemperatureThatItsPropertiesState(String name) {
    MepElement pipe = pipe().record(single(name, measure("70."))).element(1);

    assertThat(ofPorts(pipe)).isEqualTo(Arrays.asList(70.0, null));
  }

  @Test
  void setPointOfABoundedValueIsTheTemperature() {
    String setPoint = bounded(measure("80."), measure("60."), measure("70."));

    assertThat(ofPorts(pipe().record(setPoint).element(1)).get(0)).isEqualTo(70);
  }

  @Test
  void rangeIsNoTemperature() {
    String range = bounded(measure("80."), measure("60."), "$");

    assertThat(ofPorts(pipe().record(range).element(1))).containsOnlyNulls();
  }

  @Test
  void temperatureIsInTheUnitOfTheFile() {
    assertThat(inUnitOfFile(KELVIN, single("Temperature", measure("343.15"))))
        .isEqualTo(70, within(1e-9));
    assertThat(inUnitOfFile(FAHRENHEIT, single("Temperature", measure("158."))))
        .isEqualTo(70, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.", "-273.15", "-0."})
  void zeroAndAbsoluteZeroAreNoTemperatures(String value) {
    MepElement pipe = pipe().record(single("Temperature", measure(value))).element(1);

    assertThat(ofPorts(pipe)).containsOnlyNulls();
  }

  @Test
  void zeroIsNoTemperatureInAnyUnit() {
    assertThat(inUnitOfFile(KELVIN, single("Temperature", measure("0.")))).isNull();
    assertThat(inUnitOfFile(KELVIN, single("Temperature", measure("273.15")))).isNull();
    assertThat(inUnitOfFile(FAHRENHEIT, single("Temperature", measure("0.")))).isNull();
    assertThat(inUnitOfFile(FAHRENHEIT, single("Temperature", measure("-459.67")))).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"WetBulbTemperature", "Maximum Temperature", "Temperature Range"})
  void otherTemperaturesOfAPortAreNotThatOfItsMedium(String name) {
    MepElement pipe = pipe().record(single(name, measure("70."))).element(1);

    assertThat(ofPorts(pipe)).containsOnlyNulls();
  }

  @Test
  void portsThatAreJoinedByTouchKeepTheirTemperature() {
    Network network =
        pipe().record(single("Temperature", measure("70."))).pipe(2, at(0, 0, 0), WEST, 500, 60.3);
    Port joined = network.element(1).ports().get(0);

    assertThat(joined.touching()).isTrue();
    assertThat(joined.temperatureC()).isEqualTo(70);
  }

  @Test
  void temperatureOfAnElementIsNotThatOfItsPorts() {
    String own = single("Temperature", measure("70.")).replace("#" + PORT, "#1000");

    assertThat(ofPorts(pipe().record(own).element(1))).containsOnlyNulls();
  }
}
