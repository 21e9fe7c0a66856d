package org.lagwright.ifc.extract.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.threads.Workers;

/** Ends that touch are joined where the file connects nothing, and only then. */
class TouchingEndsTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  @ParameterizedTest
  @CsvSource({"0,60.3,true", "1.9,60.3,true", "2.1,60.3,false", "0,48.3,false", "0,60.8,true"})
  void endsOfOneSizeWithinTwoMillimetresAreJoined(double gapMm, double diameterMm, boolean joined) {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .pipe(2, at(1000 + gapMm, 0, 0), EAST, 1000, diameterMm)
            .read();

    assertThat(neighbours(element(model, 1000))).hasSize(joined ? 1 : 0);
    assertThat(neighbours(element(model, 2000))).hasSize(joined ? 1 : 0);
    assertThat(codes(model).contains("ENDS_JOINED")).isEqualTo(joined);
  }

  @Test
  void pipesSideBySideAreNotJoined() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .pipe(2, at(0, 0, 0), NORTH, 1000, 60.3)
            .pipe(3, at(1000, 1, 0), WEST, 1000, 60.3)
            .read();

    assertThat(model.elements()).allSatisfy(pipe -> assertThat(neighbours(pipe)).isEmpty());
  }

  @Test
  void pipeAndDuctThatTouchAreNotJoined() {
    MepElement pipe =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 100)
            .straight(2, "IFCDUCTSEGMENT", at(1000, 0, 0), EAST, 1000, 100)
            .element(1);

    assertThat(neighbours(pipe)).isEmpty();
  }

  @Test
  void portsThatAreNotConnectedAreJoinedAndSayThatTheyTouch() {
    MepElement pipe =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .element(1);

    assertThat(pipe.ports()).hasSize(2);
    assertThat(pipe.ports().get(0).connectedTo()).isNull();
    assertThat(pipe.ports().get(1).touching()).isTrue();
    assertThat(pipe.ports().get(1).isInFile()).isTrue();
  }

  @Test
  void connectedPortsStayAsTheFileHasThem() {
    Network network =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .port(2, 1, at(1000, 0, 0), WEST)
            .port(2, 2, at(2000, 0, 0), EAST)
            .connect(1, 2, 2, 1)
            // another pipe lies on the joint
            .pipe(3, at(1000, 0, 0), EAST, 500, 60.3);

    assertThat(network.element(1).ports()).extracting(Port::touching).containsExactly(false, false);
    assertThat(neighbours(network.element(3))).isEmpty();
  }

  /** Public files connect ports that have no placement; the place of the body completes them. */
  @Test
  void connectedPortWithoutPlaceIsTheEndThatTouches() {
    MepElement pipe =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .unplacedPort(1, 1)
            .unplacedPort(1, 2)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .unplacedPort(2, 1)
            .unplacedPort(2, 2)
            .connect(1, 2, 2, 1)
            .element(1);

    assertThat(pipe.ports()).hasSize(2);
    assertThat(neighbours(pipe)).hasSize(1);
    assertThat(pipe.ports().get(1).touching()).isFalse();
    assertThat(Objects.requireNonNull(pipe.ports().get(1).positionM()).x())
        .isCloseTo(1, within(1e-9));
  }

  /** What the file connects rests on no touching ends, even where only those tell the places. */
  @Test
  void jointsOfTheFileAreNotCountedAsFoundByTouch() {
    Network network =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .unplacedPort(1, 1)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .unplacedPort(2, 1)
            .connect(1, 1, 2, 1);

    assertThat(codes(network.read())).doesNotContain("ENDS_JOINED");
    network.pipe(3, at(2000, 0, 0), EAST, 1000, 60.3);
    assertThat(codes(network.read())).contains("ENDS_JOINED");
  }

  @Test
  void portsThatAreAllAtTheOriginOfTheirElementHaveNoPlace() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(0, 0, 0), NORTH)
            .port(1, 2, at(0, 0, 0), NORTH)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .port(2, 1, at(1000, 0, 0), NORTH)
            .port(2, 2, at(1000, 0, 0), NORTH)
            .connect(1, 2, 2, 1)
            .read();
    MepElement pipe = element(model, 1000);

    assertThat(pipe.ports()).hasSize(2);
    assertThat(pipe.ports().get(0).positionM()).isNull();
    Point jointM = Objects.requireNonNull(pipe.ports().get(1).positionM());
    assertThat(jointM.distanceM(new Point(1, 0, 0))).isCloseTo(0, within(1e-9));
    assertThat(neighbours(element(model, 2000))).containsExactly(1000L);
    assertThat(codes(model)).doesNotContain("ENDS_JOINED");
  }

  /** Two ends of a thin gasket lie at one place and look apart. */
  @Test
  void portsAtOnePlaceThatLookApartKeepIt() {
    MepElement gasket =
        new Network()
            .fitting(1, "IFCPIPEFITTING", "Gasket", "$")
            .port(1, 1, at(500, 0, 0), WEST)
            .port(1, 2, at(500, 0, 0), EAST)
            .element(1);

    assertThat(gasket.ports()).extracting(Port::positionM).doesNotContainNull();
  }

  @Test
  void portThatIsConnectedToOneOfItsOwnElementTooLeadsToTheOtherElement() {
    MepElement pipe =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST)
            .pipe(2, at(1010, 0, 0), EAST, 1000, 60.3)
            .port(2, 1, at(1010, 0, 0), WEST)
            .connect(1, 2, 1, 1)
            .connect(1, 2, 2, 1)
            .element(1);

    assertThat(neighbours(pipe)).containsExactly(2000L);
  }

  @Test
  void flangeWiderThanItsPipeTakesTheSizeOfThePipeThatTouchesIt() {
    MepElement flange =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .drum(2, "Flange", "$", at(1000, 0, 0), EAST, 40, 165)
            .element(2);

    assertThat(flange.form()).isEqualTo(Form.FLANGE);
    assertThat(diameterMm(flange)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(flange.section()).how()).isEqualTo(How.NEIGHBOUR);
    assertThat(flange.ends()).containsExactly(new Section.Round(0.0603), new Section.Round(0.0603));
    assertThat(value(flange.lengthM())).isCloseTo(0.04, within(1e-9));
  }

  /** A gasket of 2 mm lies between the faces, and the valve is drawn as wide as its flanges. */
  @Test
  void valveBetweenFlangesHasTheSizeOfTheLineAndSoHaveTheFlanges() {
    Network line =
        new Network()
            .pipe(1, at(0.1, 0, 0), EAST, 1000, 88.9)
            .drum(2, "Flange", "$", at(1000.1, 0, 0), EAST, 50, 138)
            .drum(3, "Valve", "$", at(1052.1, 0, 0), EAST, 180, 200)
            .drum(4, "Flange", "$", at(1234.1, 0, 0), EAST, 50, 138)
            .pipe(5, at(1284.1, 0, 0), EAST, 1000, 88.9);

    for (int n = 2; n <= 4; n++) {
      MepElement item = line.element(n);
      assertThat(diameterMm(item)).isEqualTo(88.9);
      assertThat(item.ends()).containsExactly(new Section.Round(0.0889), new Section.Round(0.0889));
      assertThat(neighbours(item)).hasSize(2);
    }
  }

  /** Beyond the valve nothing is drawn: its wide end is no size of the flange. */
  @Test
  void flangeAtTheEndOfALineHasTheSizeOfItsPipeAndNotOfTheValve() {
    MepElement flange =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 88.9)
            .drum(2, "Flange", "$", at(1000, 0, 0), EAST, 50, 105)
            .drum(3, "Valve", "$", at(1052, 0, 0), EAST, 180, 138)
            .element(2);

    assertThat(diameterMm(flange)).isEqualTo(88.9);
    assertThat(flange.ends()).containsExactly(new Section.Round(0.0889), new Section.Round(0.0889));
  }

  /** Words say tee; that only two of its ends touch something does not make a bend of it. */
  @Test
  void teeThatIsTouchedAtTwoEndsOnlyStaysATee() {
    MepElement tee =
        new Network()
            .fitting(1, "IFCPIPEFITTING", "Tee", "$")
            .unplacedPort(1, 1)
            .unplacedPort(1, 2)
            .pipe(2, at(0, 0, 0), EAST, 1000, 60.3)
            .unplacedPort(2, 1)
            .pipe(3, at(1050, 50, 0), NORTH, 1000, 60.3)
            .unplacedPort(3, 1)
            .connect(1, 1, 2, 1)
            .connect(1, 2, 3, 1)
            .element(1);

    assertThat(tee.form()).isEqualTo(Form.TEE);
  }

  /** Linked ports lie up to 15 mm apart in public files; what the file connects is connected. */
  @Test
  void connectedPortsFifteenMillimetresApartStillTellTheSize() {
    MepElement bend =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .port(1, 1, at(1000, 0, 0), EAST)
            .fitting(2, "IFCPIPEFITTING", "Bend", "$")
            .port(2, 1, at(1015, 0, 0), WEST)
            .port(2, 2, at(1115, 100, 0), NORTH)
            .connect(1, 1, 2, 1)
            .element(2);

    assertThat(diameterMm(bend)).isEqualTo(60.3);
    assertThat(value(bend.angleDeg())).isCloseTo(90, within(1e-6));
    assertThat(value(bend.bendRadiusM())).isCloseTo(0.1, within(1e-9));
  }

  /** Coordinates whose squares are no numbers any more, and some farther than any building. */
  @ParameterizedTest
  @ValueSource(doubles = {1e300, 1e25, 1e12})
  void portsFartherApartThanAnyBuildingGiveNoLength(double xMm) {
    MepElement pipe =
        new Network()
            .fitting(1, "IFCPIPESEGMENT", "Pipe", "$")
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(xMm, 0, 0), EAST)
            .element(1);

    assertThat(pipe.lengthM()).isNull();
  }

  @Test
  void pipeWithoutSizeHasThatOfItsNeighbours() {
    MepElement unsized =
        new Network()
            .fitting(1, "IFCPIPESEGMENT", "Pipe", "$")
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .element(1);

    assertThat(diameterMm(unsized)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(unsized.section()).how()).isEqualTo(How.NEIGHBOUR);
    assertThat(value(unsized.lengthM())).isCloseTo(1, within(1e-9));
  }

  @Test
  void runGoesFromBranchToBranch() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .drum(2, "Flange", "$", at(1000, 0, 0), EAST, 40, 165)
            .pipe(3, at(1040, 0, 0), EAST, 500, 60.3)
            .fitting(4, "IFCPIPEFITTING", "Tee", "$")
            .port(4, 1, at(1540, 0, 0), WEST)
            .port(4, 2, at(1740, 0, 0), EAST)
            .port(4, 3, at(1640, 100, 0), NORTH)
            .pipe(5, at(1740, 0, 0), EAST, 700, 60.3)
            .pipe(6, at(1640, 100, 0), NORTH, 300, 33.7)
            .read();
    List<Run> runs = Run.of(model.elements());

    assertThat(runs).hasSize(3);
    List<Long> steps = runs.get(0).pieces().stream().map(ElementKey::step).toList();
    assertThat(steps).isIn(List.of(1000L, 2000L, 3000L), List.of(3000L, 2000L, 1000L));
    assertThat(runs.get(0).lengthM()).isCloseTo(1.54, within(1e-9));
  }

  @Test
  void everyEndIsJoinedOnce() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .pipe(2, at(1000, 0, 0), EAST, 1000, 60.3)
            .pipe(3, at(1001, 0, 0), EAST, 1000, 60.3)
            .read();

    assertThat(neighbours(element(model, 1000))).containsExactly(2000L);
    assertThat(neighbours(element(model, 3000))).isEmpty();
  }

  @Test
  void noToleranceJoinsNothing() {
    assertThat(new ReadOptions(0).joinToleranceM()).isZero();
    try (Workers workers = new Workers(1)) {
      assertThat(TouchingEnds.join(List.of(), 0, workers)).isZero();
    }
  }

  /** The grid against looking at every pair. */
  @Test
  void gridFindsWhatLooksAtEveryPointFinds() {
    long seed = 20261125;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    List<Point> points =
        random
            .doubles(900, -0.05, 0.05)
            .boxed()
            .map(x -> new Point(x, random.nextDouble() * 0.05, random.nextGaussian() * 0.02))
            .toList();
    PointGrid grid = new PointGrid(points, 0.002);
    for (Point p : points) {
      boolean[] found = new boolean[points.size()];
      grid.near(p, i -> found[i] = true);
      for (int i = 0; i < points.size(); i++) {
        assertThat(found[i] || p.distanceM(points.get(i)) > 0.002).isTrue();
      }
    }
  }

  /** A hundred thousand ends at one place would take minutes if each were held against each. */
  @Test
  void crowdAtOnePlaceIsNotLookedAt() {
    List<Point> points = Collections.nCopies(100_000, new Point(1, 2, 3));
    PointGrid grid = new PointGrid(points, 0.002);
    int[] seen = {0};
    points.forEach(p -> grid.near(p, i -> seen[0]++));

    assertThat(seen[0]).isZero();
  }

  private static List<Long> neighbours(MepElement element) {
    return element.ports().stream()
        .map(Port::connectedTo)
        .filter(Objects::nonNull)
        .map(key -> key.step())
        .toList();
  }
}
