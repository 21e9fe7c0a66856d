package org.lagwright.takeoff.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Heating pipes of 60.3 mm, of which each gets 40 mm; drains get nothing. */
class ClearanceTest {

  private static final double OUTSIDE_M = 0.0603;
  private static final double THICKNESS_M = 0.04;
  private static final double ACCURACY_M = 2e-5;

  @TempDir Path folder;

  private static Clearance clearance(TestElement... elements) {
    return clearance(SettingsReader.defaults(), elements);
  }

  private static Clearance clearance(Settings settings, TestElement... elements) {
    return Clearance.of(Takeoff.of(List.of(TestElement.model(elements)), settings));
  }

  private static TestElement heating(long step, double y) {
    return TestElement.pipe(step, 60.3, 4).inSystem("Heating flow").along(0, y, 4);
  }

  private static TestElement drain(long step, double y) {
    return TestElement.pipe(step, 60.3, 4).inSystem("Soil drain").along(0, y, 4);
  }

  @ParameterizedTest
  @CsvSource({
    "0.02, TOO_CLOSE",
    "0.001, TOO_CLOSE",
    "-0.02, INSULATION_CLASH",
    "-0.079, INSULATION_CLASH",
    "-0.081, BARE_CLASH"
  })
  void theCauseTellsWhetherInsulationIsWhatDoesNotFit(double gapM, Cause cause) {
    Clearance clearance = clearance(heating(1, 0), heating(2, OUTSIDE_M + 2 * THICKNESS_M + gapM));

    assertThat(clearance.clashes())
        .singleElement()
        .satisfies(
            clash -> {
              assertThat(clash.cause()).isEqualTo(cause);
              assertThat(clash.gapM()).isCloseTo(gapM, within(ACCURACY_M));
              assertThat(clash.bareGapM()).isCloseTo(gapM + 2 * THICKNESS_M, within(ACCURACY_M));
              assertThat(clash.wantedM()).isEqualTo(0.025);
              assertThat(clash.shortfallM()).isCloseTo(0.025 - gapM, within(ACCURACY_M));
            });
  }

  @ParameterizedTest
  @CsvSource({"0.0248, 1", "0.0251, 0"})
  void pipesNeedTwentyFiveMillimetresBetweenThem(double gapM, int clashes) {
    assertThat(clearance(heating(1, 0), heating(2, OUTSIDE_M + 2 * THICKNESS_M + gapM)).clashes())
        .hasSize(clashes);
  }

  @Test
  void aBareNeighbourCountsWithItsOwnSurface() {
    Clearance clearance = clearance(heating(1, 0), drain(2, OUTSIDE_M + THICKNESS_M + 0.01));

    assertThat(clearance.clashes())
        .singleElement()
        .satisfies(clash -> assertThat(clash.gapM()).isCloseTo(0.01, within(ACCURACY_M)));
  }

  /** A riser of 400 x 200 beside an upright pipe: broad or narrow side, as it was drawn. */
  @ParameterizedTest
  @CsvSource({"0, 1, 1", "1, 0, 0"})
  void anUprightDuctIsTurnedAsItWasDrawn(double x, double y, int clashes) {
    double awayM = 0.2 + OUTSIDE_M / 2 + THICKNESS_M + 0.01;
    Point down = new Point(0, 0, -1);
    Point up = new Point(0, 0, 1);
    TestElement riser =
        TestElement.duct(1, 400, 200, 3)
            .width(new Point(x, y, 0))
            .inSystem("Extract air")
            .end(new Point(0, 0, 0), down)
            .end(new Point(0, 0, 3), up);
    TestElement pipe =
        TestElement.pipe(2, 60.3, 3)
            .inSystem("Heating flow")
            .end(new Point(0, awayM, 0), down)
            .end(new Point(0, awayM, 3), up);

    assertThat(clearance(riser, pipe).clashes())
        .hasSize(clashes)
        .allSatisfy(clash -> assertThat(clash.gapM()).isCloseTo(0.01, within(ACCURACY_M)));
  }

  @Test
  void twoBareElementsAreNoMatterOfInsulation() {
    assertThat(clearance(drain(1, 0), drain(2, 0.02)).clashes()).isEmpty();
  }

  @Test
  void theSettingsChangeTheGapWanted() throws IOException {
    Path settings = Files.writeString(folder.resolve("s.yaml"), "clearance: {pipe-pipe: 40}\n");
    double apartM = OUTSIDE_M + 2 * THICKNESS_M + 0.03;

    assertThat(clearance(heating(1, 0), heating(2, apartM)).clashes()).isEmpty();
    assertThat(
            clearance(SettingsReader.read(settings), heating(1, 0), heating(2, apartM)).clashes())
        .singleElement()
        .satisfies(clash -> assertThat(clash.wantedM()).isEqualTo(0.04));
  }

  @Test
  void whatIsJoinedIsNeverReported() {
    TestElement pipe =
        TestElement.pipe(1, 60.3, 2).inSystem("Heating flow").along(0, 0, 2).joinedTo(2);
    TestElement bend =
        TestElement.fitting(2, Form.BEND, 60.3)
            .inSystem("Heating flow")
            .bend(90, 0.076)
            .end(2, 0, -1, 0)
            .end(2.076, 0.076, 0, 1)
            .joinedTo(1, 3);
    TestElement next =
        TestElement.pipe(3, 60.3, 2)
            .inSystem("Heating flow")
            .end(2.076, 0.076, 0, -1)
            .end(2.076, 2.076, 0, 1)
            .joinedTo(2);

    Clearance clearance = clearance(pipe, bend, next);

    assertThat(clearance.lookedAt()).isEqualTo(3);
    assertThat(clearance.clashes()).isEmpty();
  }

  @Test
  void anEndOnAPieceOfItsOwnServiceWasMeantToJoin() {
    TestElement main = heating(1, 0);
    TestElement branch =
        TestElement.pipe(2, 60.3, 1)
            .inSystem("Heating flow")
            .end(2, 0.03, 0, -1)
            .end(2, 1.03, 0, 1);
    TestElement other =
        TestElement.pipe(3, 60.3, 1)
            .inSystem("Heating return")
            .end(3, 0.03, 0, -1)
            .end(3, 1.03, 0, 1);

    assertThat(clearance(main, branch, other).clashes())
        .singleElement()
        .satisfies(c -> assertThat(c.second().key()).isEqualTo(TestElement.key(3)));
  }

  @Test
  void aBendIsReckonedAlongItsArc() {
    TestElement bend =
        TestElement.fitting(1, Form.BEND, 60.3)
            .inSystem("Heating flow")
            .bend(90, 1.0)
            .end(0, 0, -1, 0)
            .end(1, 1, 0, 1);
    double middle = Math.sqrt(0.5);
    // the drain is a short piece on the outside of the bend, square to its radius at 45 degrees
    double x = middle + middle * (OUTSIDE_M + THICKNESS_M + 0.01);
    double y = 1 - x;
    TestElement drain =
        TestElement.pipe(2, 60.3, Math.sqrt(0.0002))
            .inSystem("Soil drain")
            .end(x - 0.005, y - 0.005, -middle, -middle)
            .end(x + 0.005, y + 0.005, middle, middle);

    assertThat(clearance(bend, drain).clashes())
        .singleElement()
        .satisfies(c -> assertThat(c.gapM()).isBetween(0.01 - ACCURACY_M, 0.01 + 0.01 * 1.07));
  }

  @Test
  void anInsulatedElementWithoutPlaceIsListedWithTheReason() {
    Clearance clearance =
        clearance(TestElement.pipe(1, 60.3, 4).inSystem("Heating flow"), heating(2, 0));

    assertThat(clearance.lookedAt()).isEqualTo(1);
    assertThat(clearance.unplaced())
        .singleElement()
        .satisfies(
            u -> {
              assertThat(u.element().element().key()).isEqualTo(TestElement.key(1));
              assertThat(u.reason()).isEqualTo("the places of its ends are not known");
            });
  }

  @Test
  void anUprightDuctIsReckonedByItsSmallerSideAndSaysSo() {
    TestElement riser =
        TestElement.duct(1, 600, 300, 2).inSystem("Supply air").endAtHeight(0).endAtHeight(2);
    TestElement drain =
        TestElement.pipe(2, 60.3, 1)
            .inSystem("Soil drain")
            .end(-0.5, 0.21, -1, 0)
            .end(0.5, 0.21, 1, 0);

    assertThat(clearance(riser, drain).clashes())
        .singleElement()
        .satisfies(c -> assertThat(c.note()).startsWith("A: its sides may point any way"));
  }

  @Test
  void theRackOfTheBenchmarkGivesWhatItsDesignSays() {
    ClearanceBenchmark rack = new ClearanceBenchmark(1);

    Clearance clearance = Clearance.of(rack.takeoff());

    assertThat(ClearanceBenchmark.proved(clearance)).isEqualTo(rack.designed());
    assertThat(clearance.passages()).hasSize(rack.passages());
  }

  /** Every pair against every other, without a spatial index. */
  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24})
  void theIndexFindsWhatLookingAtEveryPairFinds(long seed) {
    Random random = new Random(seed);
    List<TestElement> pipes = new ArrayList<>();
    List<double[]> axes = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      boolean alongX = random.nextBoolean();
      double x = 8 * random.nextDouble();
      double y = 8 * random.nextDouble();
      double lengthM = 0.5 + 2 * random.nextDouble();
      double endX = alongX ? x + lengthM : x;
      double endY = alongX ? y : y + lengthM;
      axes.add(new double[] {x, y, endX, endY});
      pipes.add(
          TestElement.of(i + 1, Kind.PIPE_SEGMENT, Form.STRAIGHT)
              .round(60.3)
              .length(lengthM)
              .inSystem(i % 3 == 0 ? "Soil drain" : i % 3 == 1 ? "Heating flow" : "Heating return")
              .end(x, y, alongX ? -1 : 0, alongX ? 0 : -1)
              .end(endX, endY, alongX ? 1 : 0, alongX ? 0 : 1));
    }
    Takeoff takeoff =
        Takeoff.of(
            List.of(TestElement.model(pipes.toArray(TestElement[]::new))),
            SettingsReader.defaults());
    Map<String, Double> expected = new TreeMap<>();
    for (int i = 0; i < axes.size(); i++) {
      for (int j = i + 1; j < axes.size(); j++) {
        // in one plane all bodies are rectangles on the grid
        double gapM = rectanglesM(axes.get(i), i % 3 > 0, axes.get(j), j % 3 > 0);
        boolean insulated = i % 3 > 0 || j % 3 > 0;
        boolean meantToJoin =
            i % 3 == j % 3
                && Math.min(ends(axes.get(i), axes.get(j)), ends(axes.get(j), axes.get(i))) <= 0.01;
        if (insulated && gapM < 0.0249 && !meantToJoin) {
          expected.put((i + 1) + "-" + (j + 1), gapM);
        }
      }
    }
    Map<String, Double> found = new TreeMap<>();
    for (Clash clash : Clearance.of(takeoff).clashes()) {
      found.put(
          clash.first().element().key().step() + "-" + clash.second().key().step(),
          Math.max(0, clash.gapM()));
    }

    assertThat(expected).as("seed %d", seed).hasSizeGreaterThan(50);
    assertThat(found.keySet()).as("seed %d", seed).isEqualTo(expected.keySet());
    expected.forEach(
        (pair, gapM) -> assertThat(found.get(pair)).as(pair).isCloseTo(gapM, within(ACCURACY_M)));
    assertThat(Collections.max(found.values())).isLessThan(0.025);
  }

  private static double rectanglesM(
      double[] a, boolean aInsulated, double[] b, boolean bInsulated) {
    double[] p = grown(a, aInsulated);
    double[] q = grown(b, bInsulated);
    double dx = Math.max(0, Math.max(q[0] - p[2], p[0] - q[2]));
    double dy = Math.max(0, Math.max(q[1] - p[3], p[1] - q[3]));
    return Math.hypot(dx, dy);
  }

  private static double[] grown(double[] axis, boolean insulated) {
    double radiusM = OUTSIDE_M / 2 + (insulated ? THICKNESS_M : 0);
    double acrossX = axis[0] == axis[2] ? radiusM : 0;
    double acrossY = axis[1] == axis[3] ? radiusM : 0;
    return new double[] {
      axis[0] - acrossX, axis[1] - acrossY, axis[2] + acrossX, axis[3] + acrossY
    };
  }

  /** Distance of the nearer end of one to the bare body of the other. */
  private static double ends(double[] axis, double[] other) {
    double first = rectanglesM(new double[] {axis[0], axis[1], axis[0], axis[1]}, other);
    return Math.min(first, rectanglesM(new double[] {axis[2], axis[3], axis[2], axis[3]}, other));
  }

  private static double rectanglesM(double[] point, double[] other) {
    double[] q = grown(other, false);
    double dx = Math.max(0, Math.max(q[0] - point[0], point[0] - q[2]));
    double dy = Math.max(0, Math.max(q[1] - point[1], point[1] - q[3]));
    return Math.hypot(dx, dy);
  }

  /** Where a file has lost their places each would meet each other one. */
  @ParameterizedTest
  @CsvSource({"20, 0, 20", "21, 21, 0"})
  void aCrowdAtOnePlaceIsNotLookedAt(int pipes, int unplaced, int lookedAt) {
    TestElement[] crowd = new TestElement[pipes];
    for (int i = 0; i < pipes; i++) {
      crowd[i] = heating(i + 1, 0);
    }

    Clearance clearance = clearance(crowd);

    assertThat(clearance.unplaced()).hasSize(unplaced);
    assertThat(clearance.lookedAt()).isEqualTo(lookedAt);
  }
}
