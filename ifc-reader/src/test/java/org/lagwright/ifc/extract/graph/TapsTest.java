package org.lagwright.ifc.extract.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;

/** Branches that are drawn onto the side of a main are joined to it, and only those. */
class TapsTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  /** A main of 114.3 mm and 2 m along x, and a branch that starts beside it. */
  private static MepModel mainAnd(double[] start, double[] along, double diameterMm) {
    return new Network()
        .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
        .pipe(2, start, along, 500, diameterMm)
        .read();
  }

  @ParameterizedTest
  @CsvSource({
    "57.15,33.7,true", // on the surface
    "59.1,33.7,true",
    "59.2,33.7,false", // 2.05 mm off
    "0,33.7,true", // drawn to the axis
    "-10,33.7,false", // through it
    "57.15,114.3,true",
    "57.15,139.7,false" // wider than the main
  })
  void endAtTheSideOfAMainIsJoined(double yMm, double diameterMm, boolean joined) {
    MepModel model = mainAnd(at(700, yMm, 0), NORTH, diameterMm);

    assertThat(taps(element(model, 1000))).hasSize(joined ? 1 : 0);
    assertThat(taps(element(model, 2000))).hasSize(joined ? 1 : 0);
    assertThat(codes(model).contains("ENDS_JOINED")).isEqualTo(joined);
  }

  @ParameterizedTest
  @CsvSource({
    "0,57.15,0,false", // at the corner: no branch, and no joint of two ends
    "1,57.15,0,false",
    "3,57.15,0,true",
    "1997,57.15,0,true",
    "1999,57.15,0,false",
    "700,40.5,40,true", // within the width of the main
    "700,39.5,42,false"
  })
  void branchMustMeetTheMainBetweenItsEndsAndWithinItsWidth(
      double xMm, double yMm, double zMm, boolean joined) {
    assertThat(taps(element(mainAnd(at(xMm, yMm, zMm), NORTH, 33.7), 1000)))
        .hasSize(joined ? 1 : 0);
  }

  @ParameterizedTest
  @CsvSource({"90,true", "45,true", "31,true", "29,false", "0,false", "270,false"})
  void branchMustLeaveTheMainAtAnAngle(double degrees, boolean joined) {
    double[] along = at(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)), 0);

    assertThat(taps(element(mainAnd(at(700, 57.15, 0), along, 33.7), 1000)))
        .hasSize(joined ? 1 : 0);
  }

  @Test
  void pipeIsNotJoinedToTheSideOfADuct() {
    MepElement pipe =
        new Network()
            .straight(1, "IFCDUCTSEGMENT", at(0, 0, 0), EAST, 2000, 114.3)
            .pipe(2, at(700, 57.15, 0), NORTH, 500, 33.7)
            .element(2);

    assertThat(taps(pipe)).isEmpty();
  }

  @Test
  void runOfTheMainGoesThroughAndThatOfTheBranchIsItsOwn() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
            .pipe(2, at(2000, 0, 0), EAST, 1000, 114.3)
            .pipe(3, at(700, 57.15, 0), NORTH, 500, 33.7)
            .pipe(4, at(900, 57.15, 0), NORTH, 500, 33.7)
            .read();

    assertThat(Run.of(model.elements()))
        .extracting(run -> Math.round(run.lengthM() * 1000))
        .containsExactlyInAnyOrder(3000L, 500L, 500L);
    assertThat(element(model, 1000).openEnds()).hasSize(1);
    assertThat(element(model, 2000).openEnds()).hasSize(1);
    assertThat(element(model, 3000).openEnds()).hasSize(1);
  }

  /** Its own port there takes the joint, and says that the file does not connect it. */
  @Test
  void portOfTheBranchThatIsConnectedToNothingTakesTheJoint() {
    MepElement branch =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
            .pipe(2, at(700, 57.15, 0), NORTH, 500, 33.7)
            .port(2, 1, at(700, 57.15, 0), at(0, -1, 0))
            .port(2, 2, at(700, 557.15, 0), NORTH)
            .element(2);

    assertThat(branch.ports()).hasSize(2);
    assertThat(branch.ports().get(0).isInFile()).isTrue();
    assertThat(branch.ports().get(0).tap()).isTrue();
    assertThat(branch.ports().get(0).touching()).isTrue();
    assertThat(branch.ports().get(1).connectedTo()).isNull();
  }

  @Test
  void saddleFittingHasTheSizeOfTheBranchAndNotOfTheMain() {
    MepElement saddle =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
            .drum(2, "Saddle", "$", at(700, 57.15, 0), NORTH, 30, 50)
            .pipe(3, at(700, 87.15, 0), NORTH, 500, 33.7)
            .element(2);

    assertThat(taps(saddle)).hasSize(1);
    assertThat(InlineModel.diameterMm(saddle)).isEqualTo(33.7);
    assertThat(Objects.requireNonNull(saddle.section()).how()).isEqualTo(How.NEIGHBOUR);
  }

  /**
   * Flanges that end flush with their pipes, face to face or with a gasket. Of those below 20 mm
   * both ends lie near each joint.
   */
  @ParameterizedTest
  @CsvSource({"0,20", "2,20", "0,18", "2,12"})
  void flangesSlippedOntoTwoPipesAreJoinedEachToItsOwn(double gasketMm, double thickMm) {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .drum(2, "Flange", "$", at(1000 - thickMm, 0, 0), EAST, thickMm, 165)
            .drum(3, "Flange", "$", at(1000 + gasketMm, 0, 0), EAST, thickMm, 165)
            .pipe(4, at(1000 + gasketMm, 0, 0), EAST, 1500, 60.3)
            .read();

    assertThat(partners(element(model, 1000))).containsExactly(4000L, 2000L);
    assertThat(partners(element(model, 2000))).containsExactly(3000L, 1000L);
    assertThat(partners(element(model, 3000))).containsExactly(2000L, 4000L);
    assertThat(InlineModel.diameterMm(element(model, 2000))).isEqualTo(60.3);
    assertThat(InlineModel.diameterMm(element(model, 3000))).isEqualTo(60.3);
    assertThat(Run.of(model.elements()))
        .extracting(run -> Math.round(run.lengthM() * 1000))
        .containsExactlyInAnyOrder(2500L, Math.round(2 * thickMm));
  }

  /** EN 1092-1, PN 6: flanges of DN 50 are 16 mm thick. The pipes may end within them. */
  @ParameterizedTest
  @CsvSource({"16,0", "14,0", "16,4", "20,10"})
  void thinFlangesSlippedOntoTwoPipesAreJoinedEachToItsOwn(double thickMm, double setBackMm) {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000 - setBackMm, 60.3)
            .drum(2, "Flange", "$", at(1000 - thickMm, 0, 0), EAST, thickMm, 140)
            .drum(3, "Flange", "$", at(1000, 0, 0), EAST, thickMm, 140)
            .pipe(4, at(1000 + setBackMm, 0, 0), EAST, 1500, 60.3)
            .read();

    assertThat(partners(element(model, 2000))).containsExactly(3000L, 1000L);
    assertThat(partners(element(model, 3000))).containsExactly(2000L, 4000L);
    assertThat(InlineModel.diameterMm(element(model, 2000))).isEqualTo(60.3);
    assertThat(InlineModel.diameterMm(element(model, 3000))).isEqualTo(60.3);
  }

  @ParameterizedTest
  @CsvSource({
    "0,110,true",
    "1.9,110,true",
    "2.1,110,false", // beside the axis
    "0,60,false", // within the pipe
    "0,250,false" // more than four times as wide
  })
  void valveDrawnAroundAnUncutPipeHasItsSize(double offMm, double diameterMm, boolean joined) {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 60.3)
            .body(2, "IFCVALVE", "Valve", "$", at(800, offMm, 0), EAST, 160, diameterMm)
            .read();
    MepElement valve = element(model, 2000);

    assertThat(taps(valve)).hasSize(joined ? 2 : 0);
    assertThat(taps(element(model, 1000))).hasSize(joined ? 2 : 0);
    assertThat(InlineModel.diameterMm(valve)).isEqualTo(joined ? 60.3 : diameterMm);
    assertThat(InlineModel.value(element(model, 1000).lengthM())).isCloseTo(2, within(1e-9));
  }

  @Test
  void insulationDrawnAsAFittingAroundAPipeIsNoCoupling() {
    MepElement insulation =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 60.3)
            .drum(2, "Insulation", "$", at(800, 0, 0), EAST, 160, 110)
            .element(2);

    assertThat(taps(insulation)).isEmpty();
  }

  /** A pipe goes through a wider one; neither is a valve. */
  @Test
  void pipeInACasingIsNotJoinedToIt() {
    MepElement casing =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 60.3)
            .pipe(2, at(800, 0, 0), EAST, 160, 110)
            .element(2);

    assertThat(taps(casing)).isEmpty();
    assertThat(InlineModel.diameterMm(casing)).isEqualTo(110);
  }

  @Test
  void nearestOfTwoMainsIsTaken() {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 2000, 114.3)
            .pipe(2, at(0, 0, 1), EAST, 2000, 110)
            .pipe(3, at(700, 57.15, 0), NORTH, 500, 33.7)
            .read();

    assertThat(taps(element(model, 3000)))
        .extracting(p -> Objects.requireNonNull(p.connectedTo()).step())
        .containsExactly(1000L);
  }

  /** Mains of 30 m in any direction, each with one branch on its surface and one 5 mm off it. */
  @Test
  void branchesAreFoundOnMainsInEveryDirection() {
    long seed = 20261125;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 40; i++) {
      double[] start = at(random.nextInt(90_000), random.nextInt(90_000), random.nextInt(9000));
      double[] along = direction(random);
      double[] out = across(along, direction(random));
      double onM = 1000 + random.nextInt(28_000);
      MepModel model =
          new Network()
              .pipe(1, start, along, 30_000, 114.3)
              .pipe(2, beside(start, along, out, onM, 57.15), out, 500, 33.7)
              .pipe(3, beside(start, along, out, onM + 200, 62.15), out, 500, 33.7)
              .read();

      List<Port> taps = taps(element(model, 1000));
      assertThat(taps).extracting(Port::connectedTo).containsExactly(new ElementKey(0, 2000));
      Point foot = Objects.requireNonNull(taps.get(0).positionM());
      double[] expected = beside(start, along, out, onM, 0);
      assertThat(foot.distanceM(new Point(expected[0] / 1e3, expected[1] / 1e3, expected[2] / 1e3)))
          .isCloseTo(0, within(1e-4));
    }
  }

  /** What the benchmark of joining measures is right: runs of ten, each with two branches. */
  @Test
  void manyRunsWithBranchesAreJoinedEachByItself() {
    assertThat(new TouchingEndsBenchmark(1200).join())
        .isEqualTo(new TouchingEndsBenchmark.Joined(100 * 9, 100 * 2));
  }

  private static double[] beside(
      double[] start, double[] along, double[] out, double onMm, double offMm) {
    return at(
        start[0] + onMm * along[0] + offMm * out[0],
        start[1] + onMm * along[1] + offMm * out[1],
        start[2] + onMm * along[2] + offMm * out[2]);
  }

  private static double[] direction(Random random) {
    return unit(at(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()));
  }

  @Test
  void longMainHasAllOfItsBranchesInTheirOrder() {
    int branches = 1500;
    Network network = new Network().pipe(1, at(0, 0, 0), EAST, 100.0 * (branches + 1), 114.3);
    for (int i = 1; i <= branches; i++) {
      network.pipe(i + 1, at(100.0 * i, 57.15, 0), NORTH, 500, 33.7);
    }
    MepModel model = network.read();

    List<Port> sides = taps(element(model, 1000));
    assertThat(sides).hasSize(branches);
    for (int i = 1; i <= branches; i++) {
      long branch = 1000L * (i + 1);
      assertThat(sides.get(i - 1).connectedTo()).isEqualTo(new ElementKey(0, branch));
      assertThat(taps(element(model, branch))).hasSize(1);
    }
  }

  @ParameterizedTest
  @CsvSource({"10,true", "64,true", "65,false", "100,false"})
  void pipesThatAllBeginAtOnePlaceAreNoMainsOfEachOther(int pipes, boolean joined) {
    Network network = new Network().pipe(1, at(500, 21.3, 0), NORTH, 500, 21.3);
    for (int i = 0; i < pipes; i++) {
      network.pipe(i + 2, at(0, 0, 0), EAST, 1000 + 100 * i, 42.4);
    }
    MepModel model = network.read();

    assertThat(taps(element(model, 1000))).hasSize(joined ? 1 : 0);
  }

  private static double[] across(double[] a, double[] b) {
    double dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    return unit(at(b[0] - dot * a[0], b[1] - dot * a[1], b[2] - dot * a[2]));
  }

  private static double[] unit(double[] v) {
    double norm = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    return at(v[0] / norm, v[1] / norm, v[2] / norm);
  }

  private static List<Long> partners(MepElement element) {
    return element.ports().stream()
        .map(port -> Objects.requireNonNull(port.connectedTo()).step())
        .toList();
  }

  private static List<Port> taps(MepElement element) {
    return element.ports().stream().filter(Port::tap).toList();
  }
}
