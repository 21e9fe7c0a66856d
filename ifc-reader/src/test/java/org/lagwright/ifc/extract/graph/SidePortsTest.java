package org.lagwright.ifc.extract.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;
import org.lagwright.ifc.model.Section;

/** Ports of the file at the side of a main are taps, as ends are that are drawn there. */
class SidePortsTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);
  private static final double[] SOUTH = at(0, -1, 0);

  /**
   * A main of 114.3 mm with an olet of 70 mm and a branch of 48.3 mm, all connected by ports.
   *
   * @param yMm where the port of the main is, from its axis
   */
  private static MepModel mainWithOlet(double yMm) {
    return loose(yMm).connect(1, 3, 2, 1).connect(2, 2, 3, 1).connect(1, 2, 4, 1).read();
  }

  /** The same without any port connected. */
  private static Network loose(double yMm) {
    return new Network()
        .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
        .port(1, 1, at(0, 0, 0), WEST)
        .port(1, 2, at(2000, 0, 0), EAST)
        .port(1, 3, at(700, yMm, 0), NORTH)
        .drum(2, "Olet", "$", at(700, 57.15, 0), NORTH, 40, 70)
        .port(2, 1, at(700, 57.15, 0), SOUTH)
        .port(2, 2, at(700, 97.15, 0), NORTH)
        .pipe(3, at(700, 97.15, 0), NORTH, 500, 48.3)
        .port(3, 1, at(700, 97.15, 0), SOUTH)
        .port(3, 2, at(700, 597.15, 0), NORTH)
        .pipe(4, at(2000, 0, 0), EAST, 500, 114.3)
        .port(4, 1, at(2000, 0, 0), WEST)
        .port(4, 2, at(2500, 0, 0), EAST);
  }

  @ParameterizedTest
  @CsvSource({"57.15", "0", "50"})
  void oletAtAPortOfTheMainHasTheSizeOfTheBranch(double yMm) {
    MepModel model = mainWithOlet(yMm);
    MepElement olet = element(model, 2000);

    assertThat(diameterMm(olet)).isEqualTo(48.3);
    assertThat(olet.ends()).containsOnly(new Section.Round(0.0483));
    assertThat(olet.form()).isEqualTo(Form.COUPLING);
    assertThat(codes(model)).doesNotContain("FORM_CONFLICT");
    assertThat(taps(element(model, 1000))).containsExactly(false, false, true);
    assertThat(taps(olet)).containsExactly(true, false);
    assertThat(taps(element(model, 4000))).containsExactly(false, false);
    assertThat(olet.ports()).extracting(Port::touching).containsOnly(false);
  }

  /** As far as a reader of the drawing goes, both files hold the same pipes. */
  @Test
  void oletAtAPortThatIsNotConnectedHasTheSizeOfTheBranchToo() {
    MepModel model = loose(57.15).read();
    MepElement olet = element(model, 2000);

    assertThat(olet.ends()).containsOnly(new Section.Round(0.0483));
    assertThat(olet.form()).isEqualTo(Form.COUPLING);
    assertThat(taps(element(model, 1000))).containsExactly(false, false, true);
    assertThat(taps(olet)).containsExactly(true, false);
    assertThat(Run.of(model.elements()))
        .extracting(run -> Math.round(run.lengthM() * 1000))
        .containsExactlyInAnyOrder(2500L, 540L);
  }

  /** The file says what is connected, and the bodies where. */
  @Test
  void oletAtAPortWithoutPlaceHasTheSizeOfTheBranch() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
            .unplacedPort(1, 1)
            .unplacedPort(1, 2)
            .drum(2, "Olet", "$", at(700, 57.15, 0), NORTH, 40, 70)
            .unplacedPort(2, 1)
            .unplacedPort(2, 2)
            .pipe(3, at(700, 97.15, 0), NORTH, 500, 48.3)
            .unplacedPort(3, 1)
            .connect(1, 2, 2, 1)
            .connect(2, 2, 3, 1)
            .read();
    MepElement olet = element(model, 2000);

    assertThat(diameterMm(olet)).isEqualTo(48.3);
    assertThat(taps(olet)).containsExactly(true, false);
    assertThat(taps(element(model, 1000))).containsExactly(false, true);
    assertThat(codes(model)).doesNotContain("ENDS_JOINED");
  }

  @Test
  void runOfTheMainGoesThroughAsItDoesWithoutPorts() {
    assertThat(Run.of(mainWithOlet(57.15).elements()))
        .extracting(run -> Math.round(run.lengthM() * 1000))
        .containsExactlyInAnyOrder(2500L, 540L);
  }

  @Test
  void endsOfTheMainStayItsEnds() {
    MepModel model = mainWithOlet(57.15);

    assertThat(element(model, 1000).openEnds())
        .extracting(end -> end.positionM().x())
        .containsExactly(0.0);
  }

  /** A port lies where the pipe ends in its socket, not where the body does. */
  @Test
  void portOnTheAxisOfAPipeThatWasPutIntoASocketIsNoTap() {
    MepElement pipe =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(940, 0, 0), EAST)
            .pipe(2, at(940, 0, 0), EAST, 1000, 60.3)
            .port(2, 1, at(940, 0, 0), WEST)
            .connect(1, 2, 2, 1)
            .element(1);

    assertThat(taps(pipe)).containsExactly(false, false);
  }

  /** Where no port lies at an end, their places tell nothing. */
  @Test
  void portsThatLieAtNoEndAreNoTaps() {
    MepElement pipe =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(500, 30, 0), WEST)
            .port(1, 2, at(500, 30, 0), EAST)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .port(2, 1, at(500, 30, 0), WEST)
            .connect(1, 2, 2, 1)
            .element(1);

    assertThat(taps(pipe)).containsOnly(false);
  }

  private static List<Boolean> taps(MepElement element) {
    return element.ports().stream().map(Port::tap).toList();
  }
}
