package org.lagwright.ifc.extract.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.join.ModelJoiner;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Run;
import org.lagwright.ifc.model.Section;

/** Boxes without ports run from neighbour to neighbour, also where they are wider than long. */
class BoxAxesTest {

  private static final String DUCT = "IFCDUCTSEGMENT";
  private static final double[] EAST = at(1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);
  private static final double[] UP = at(0, 0, 1);
  private static final Section WIDE = new Section.Rectangular(0.8, 0.4);

  private static Network duct(double atMm, int n, double lengthMm, Network in) {
    return in.box(n, DUCT, at(atMm, 0, 0), EAST, lengthMm, 400, 800);
  }

  @Test
  void shortPieceOfAWideDuctRunsFromNeighbourToNeighbour() {
    Network run = duct(0, 1, 2000, new Network());
    duct(2000, 2, 300, run);
    duct(2300, 3, 2000, run);
    MepModel model = run.read();
    MepElement piece = element(model, 2000);

    assertLies(piece, 0.3);
    assertThat(Objects.requireNonNull(piece.section()).lost().get(0).why())
        .contains("neighbours touch the other sides");
    assertThat(Run.of(model.elements()))
        .extracting(r -> Math.round(r.lengthM() * 1000))
        .containsExactly(4300L);
  }

  /** Each is known by the one before it, wherever they stand in the file. */
  @Test
  void severalShortPiecesInARowAreTurnedOneByTheOther() {
    Network run = duct(2600, 1, 200, new Network());
    duct(2300, 2, 300, run);
    duct(2000, 3, 300, run);
    duct(0, 4, 2000, run);
    MepModel model = run.read();

    assertLies(element(model, 1000), 0.2);
    assertLies(element(model, 2000), 0.3);
    assertLies(element(model, 3000), 0.3);
    assertLies(element(model, 4000), 2);
  }

  /** None of them lies right at first, and none is longer than wide. */
  @Test
  void runOfShortPiecesOnlyIsTurnedAsAWhole() {
    Network run = duct(0, 1, 300, new Network());
    duct(300, 2, 300, run);
    duct(600, 3, 300, run);
    MepModel model = run.read();

    for (long step : List.of(1000L, 2000L, 3000L)) {
      assertLies(element(model, step), 0.3);
    }
    assertThat(Run.of(model.elements()))
        .extracting(r -> Math.round(r.lengthM() * 1000))
        .containsExactly(900L);
  }

  /** Drawn by pushing its plan upwards, which is not the way of the air. */
  @Test
  void damperDrawnAlongItsHeightHasTheSizeOfTheDuct() {
    Network run = duct(0, 1, 2000, new Network());
    run.box(2, "IFCDAMPER", at(2075, 0, -200), UP, 400, 150, 800);
    duct(2150, 3, 2000, run);
    MepElement damper = run.element(2);

    assertLies(damper, 0.15);
    assertThat(damper.ends()).containsExactly(WIDE, WIDE);
    assertThat(damper.openEnds()).isEmpty();
  }

  @Test
  void boxWhoseEndsTouchANeighbourStaysAsItIs() {
    Network run = duct(0, 1, 1000, new Network());
    // as wide as the first one is long, and at its side
    run.box(2, DUCT, at(500, 400, 0), NORTH, 600, 400, 1000);
    duct(1000, 3, 1000, run);

    assertLies(run.element(1), 1);
  }

  @Test
  void boxThatTouchesNothingStaysAsItIs() {
    Network run = duct(0, 1, 300, new Network());
    duct(2000, 2, 300, run);

    assertThat(value(run.element(1).lengthM())).isCloseTo(0.8, within(1e-9));
  }

  /** Ducts side by side touch with walls of equal size, which are no ends. */
  @Test
  void ductsSideBySideStayAsTheyAre() {
    Network run = duct(0, 1, 1200, new Network());
    run.box(2, DUCT, at(0, 800, 0), EAST, 1200, 400, 800);
    MepModel model = run.read();

    for (long step : List.of(1000L, 2000L)) {
      assertLies(element(model, step), 1.2);
      assertThat(element(model, step).ports()).isEmpty();
    }
  }

  /** One neighbour at a side of each pair says nothing. */
  @Test
  void boxBetweenNeighboursAtRightAnglesStaysAsItIs() {
    Network run = new Network().box(1, DUCT, at(0, 0, 0), EAST, 2000, 600, 600);
    run.box(2, "IFCDUCTFITTING", at(2300, 0, -300), UP, 600, 600, 600);
    run.box(3, DUCT, at(2300, 300, 0), NORTH, 2000, 600, 600);

    assertThat(run.element(2).ports()).isEmpty();
  }

  /** Ports tell how it lies, whatever touches its sides. */
  @Test
  void boxWithPortsAtItsEndsStaysAsItIs() {
    Network run = duct(0, 1, 2000, new Network());
    run.box(2, DUCT, at(2200, -400, 0), NORTH, 800, 400, 400)
        .port(2, 1, at(2200, -400, 0), at(0, -1, 0))
        .port(2, 2, at(2200, 400, 0), NORTH);

    assertThat(value(run.element(2).lengthM())).isCloseTo(0.8, within(1e-9));
  }

  /**
   * A damper drawn along its height, and two short pieces one behind the other, dealt out to two
   * files; by which of the five stand in the second.
   */
  @ParameterizedTest
  @ValueSource(ints = {0b01010, 0b10101, 0b00010, 0b01100, 0b01110, 0b10001})
  void boxesAreTurnedByNeighboursOfAnotherFileToo(int digits) {
    Network[] files = {new Network(), new Network()};
    duct(0, 1, 2000, files[digits & 1]);
    files[digits >> 1 & 1].box(2, "IFCDAMPER", at(2075, 0, -200), UP, 400, 150, 800);
    duct(2150, 3, 300, files[digits >> 2 & 1]);
    duct(2450, 4, 200, files[digits >> 3 & 1]);
    duct(2650, 5, 2000, files[digits >> 4 & 1]);
    List<MepModel> models = ModelJoiner.join(List.of(files[0].read(0), files[1].read(1)), 0.002);

    double[] lengthsM = {2, 0.15, 0.3, 0.2, 2};
    for (int n = 1; n <= 5; n++) {
      MepElement element = element(models.get(digits >> (n - 1) & 1), n * 1000L);
      assertLies(element, lengthsM[n - 1]);
      assertThat(element.ports()).hasSize(n == 1 || n == 5 ? 1 : 2);
    }
  }

  /** Side by side in two files they are as they are in one. */
  @Test
  void boxesBesideEachOtherInTwoFilesStayAsTheyAre() {
    MepModel one = duct(0, 1, 1200, new Network()).read(0);
    MepModel other = new Network().box(2, DUCT, at(0, 800, 0), EAST, 1200, 400, 800).read(1);

    for (MepModel model : ModelJoiner.join(List.of(one, other), 0.002)) {
      assertLies(model.elements().get(0), 1.2);
      assertThat(model.elements().get(0).ports()).isEmpty();
    }
  }

  private static void assertLies(MepElement duct, double lengthM) {
    assertThat(value(duct.section())).isEqualTo(WIDE);
    assertThat(value(duct.lengthM())).isCloseTo(lengthM, within(1e-9));
  }

  /** Some exporters write only those ports at which something is joined. */
  @Test
  void onlyPortTellsAlongWhichEdgeAShortPieceRuns() {
    Network run = duct(0, 1, 300, new Network()).port(1, 0, at(0, 0, 0), at(-1, 0, 0));

    assertLies(run.element(1), 0.3);
  }

  @Test
  void onlyPortInTheMiddleOfALongSideIsATap() {
    Network run = duct(0, 1, 2500, new Network()).port(1, 0, at(1250, 400, 0), NORTH);

    assertLies(run.element(1), 2.5);
  }
}
