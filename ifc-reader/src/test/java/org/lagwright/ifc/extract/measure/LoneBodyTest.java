package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** What sits in a pipe, where no pipe is drawn beside it. */
class LoneBodyTest {

  private static final double[] EAST = {1, 0, 0};

  /** The threaded ends of valves and couplings are some 20 per cent wider than their pipe. */
  @ParameterizedTest(name = "{0} ''{1}'' drawn {2} mm wide sits in a pipe of {3} mm")
  @CsvSource({
    "IFCVALVE, Ball valve DN 80, 111.1, 88.9",
    "IFCVALVE, Valve 2\", 75, 60.3",
    "IFCFLOWMETER, Meter DN25, 40.4, 33.7",
    "IFCPIPEFITTING, Coupling DN50, 75.4, 60.3",
  })
  void nominalSizeInTheNameGoesBeforeAWiderBody(
      String keyword, String name, double drawnMm, double pipeMm) {
    MepModel model = lone(keyword, name, drawnMm).read();
    MepElement body = InlineModel.element(model, 1000);

    assertThat(diameterMm(body)).isEqualTo(pipeMm);
    assertThat(body.ends()).containsOnly(new Section.Round(pipeMm / 1000));
    assertThat(Objects.requireNonNull(body.section()).lost())
        .extracting(Candidate::value)
        .contains(new Section.Round(drawnMm / 1000));
    assertThat(InlineModel.codes(model)).containsOnlyOnce("SIZE_FROM_NOMINAL");
  }

  /** Plastic pipe of DN 50 is 63 mm wide, cast iron of DN 100 is 110 mm. */
  @ParameterizedTest
  @CsvSource({"Valve DN50, 63", "Valve DN50, 60.3", "Valve DN100, 110", "Valve DN32, 35"})
  void bodyAsWideAsAPipeOfItsNominalSizeStands(String name, double drawnMm) {
    MepModel model = lone("IFCVALVE", name, drawnMm).read();

    assertThat(diameterMm(InlineModel.element(model, 1000))).isEqualTo(drawnMm);
    assertThat(InlineModel.codes(model)).isEmpty();
  }

  @ParameterizedTest(name = "{0} ''{1}'' drawn {2} mm wide: told {3}")
  @CsvSource({
    "IFCVALVE, V 17, 75.4, true",
    "IFCPUMP, P 1, 46, true",
    "IFCPIPEFITTING, Union, 51, true",
    "IFCPIPEFITTING, Flange, 165.1, true",
    "IFCVALVE, V 17, 60.3, true",
    "IFCPUMP, P 1, 165.1, true",
    "IFCPIPEFITTING, Coupling, 42.4, false",
    "IFCDAMPER, Damper, 205, false",
  })
  void bodyThatNeedNotBeThePipeIsToldIfNothingTellsOfThePipe(
      String keyword, String name, double drawnMm, boolean told) {
    MepModel model = lone(keyword, name, drawnMm).read();

    assertThat(diameterMm(InlineModel.element(model, 1000))).isEqualTo(drawnMm);
    assertThat(InlineModel.codes(model).contains("GEOMETRY_ONLY_PARTLY_MEASURED")).isEqualTo(told);
  }

  /** A disc that closes a pipe may be a flange, a cap is longer. */
  @ParameterizedTest
  @CsvSource({"20, true", "80, false"})
  void discThatClosesAPipeIsToldAsWideAsItIs(double lengthMm, boolean told) {
    MepModel model =
        new Network()
            .body(1, "IFCPIPEFITTING", "Blind flange", "$", at(0, 0, 0), EAST, lengthMm, 165.1)
            .read();

    assertThat(InlineModel.codes(model).contains("GEOMETRY_ONLY_PARTLY_MEASURED")).isEqualTo(told);
  }

  private static Network lone(String keyword, String name, double drawnMm) {
    return new Network().body(1, keyword, name, "$", at(0, 0, 0), EAST, 150, drawnMm);
  }
}
