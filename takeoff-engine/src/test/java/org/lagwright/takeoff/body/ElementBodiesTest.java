package org.lagwright.takeoff.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.body.Body.Facets;
import org.lagwright.takeoff.body.Body.Prism;
import org.lagwright.takeoff.body.Body.Taper;
import org.lagwright.takeoff.body.Body.Turn;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.fitting.Direction;
import org.lagwright.takeoff.settings.SettingsReader;

class ElementBodiesTest {

  private static final long SEED = 20_261_126;
  private static final Lie LEVEL = new Lie(null);

  private static ElementBodies.Made made(TestElement element) {
    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(element)), SettingsReader.defaults());
    TakenElement taken = takeoff.elements().get(0);
    return ElementBodies.of(taken, new Joints(takeoff.elements()));
  }

  private static TestElement heating(Form form) {
    return TestElement.fitting(1, form, 60.3).inSystem("Heating flow");
  }

  private static double ringM2(double outsideM, double thicknessM) {
    return Math.PI * thicknessM * (outsideM + thicknessM);
  }

  /** 60.3 mm pipes get 40 mm of the default material. */
  @Test
  void aStraightPieceIsAHollowPrism() {
    ElementBodies.Made made =
        made(TestElement.pipe(1, 60.3, 4).inSystem("Heating flow").along(0, 0, 4));

    assertThat(made.missing()).isEmpty();
    assertThat(made.layers())
        .singleElement()
        .satisfies(
            layer -> {
              assertThat(layer.bodies()).singleElement().isInstanceOf(Prism.class);
              assertThat(layer.volumeM3())
                  .isCloseTo(4 * ringM2(0.0603, layer.layer().thicknessM()), within(1e-9));
            });
  }

  /** In a riser both sides lie level: only the drawing tells which way the width points. */
  @Test
  void coveringOfAnUprightDuctIsTurnedLikeTheDuct() {
    Point width = new Point(0.6, 0.8, 0);
    ElementBodies.Made made =
        made(
            TestElement.duct(1, 400, 200, 3)
                .width(width)
                .inSystem("Supply air")
                .end(new Point(0, 0, 0), new Point(0, 0, -1))
                .end(new Point(0, 0, 3), new Point(0, 0, 1)));

    assertThat(made.layers().get(0).bodies())
        .singleElement()
        .isInstanceOfSatisfying(
            Prism.class,
            prism -> {
              assertThat(Math.abs(Direction.dot(prism.pose().frame().u(), width)))
                  .isCloseTo(1, within(1e-9));
              assertThat(prism.ring().inner()).isEqualTo(new Section.Rectangular(0.4, 0.2));
            });
  }

  @Test
  void aBendIsTurnedAboutItsAxisByPappus() {
    ElementBodies.Made made =
        made(heating(Form.BEND).bend(90, 0.3).end(0, 0, -1, 0).end(0.3, 0.3, 0, 1));

    assertThat(made.layers().get(0).bodies())
        .singleElement()
        .isInstanceOfSatisfying(
            Turn.class,
            turn -> {
              assertThat(turn.radiusM()).isCloseTo(0.3, within(1e-9));
              assertThat(turn.toCentre()).isEqualTo(new Point(0, 1, 0));
              assertThat(turn.volumeM3())
                  .isCloseTo(ringM2(0.0603, 0.04) * 0.3 * Math.PI / 2, within(1e-9));
            });
  }

  @Test
  void legsBetweenArcAndEndsAreStraight() {
    ElementBodies.Made made =
        made(heating(Form.BEND).bend(90, 0.3).end(0, 0, -1, 0).end(0.5, 0.4, 0, 1));

    assertThat(made.layers().get(0).bodies())
        .extracting(body -> body.getClass().getSimpleName())
        .containsExactly("Prism", "Turn", "Prism");
    assertThat(made.layers().get(0).volumeM3())
        .isCloseTo(ringM2(0.0603, 0.04) * (0.2 + 0.1 + 0.3 * Math.PI / 2), within(1e-9));
  }

  /**
   * On a radius of 50 mm a ring up to 70.15 mm is cut off at the axis of the bend. Pappus for what
   * is left: angle x (area x radius - first moment of what is cut off, which is added back).
   */
  @Test
  void insulationBeyondTheAxisOfABendIsCutOffThere() {
    double radiusM = 0.05;
    double outerM = 0.07015;
    ElementBodies.Made made =
        made(heating(Form.BEND).bend(90, radiusM).end(0, 0, -1, 0).end(radiusM, radiusM, 0, 1));
    // integral of (distance beyond the axis) over the segment of the outer disc beyond it
    double h = radiusM;
    double root = Math.sqrt(outerM * outerM - h * h);
    double segmentM2 = outerM * outerM * Math.acos(h / outerM) - h * root;
    double momentM3 = 2.0 / 3 * Math.pow(root, 3) - h * segmentM2;
    double expectedM3 = Math.PI / 2 * (ringM2(0.0603, 0.04) * radiusM + momentM3);

    assertThat(made.layers().get(0).bodies()).singleElement().isInstanceOf(Facets.class);
    assertThat(made.layers().get(0).volumeM3()).isCloseTo(expectedM3, within(0.01 * expectedM3));
    made.layers().get(0).bodies().forEach(ElementBodiesTest::isClosed);
  }

  @Test
  void aBendWithoutDirectionsHasNoBodyAndSaysSo() {
    ElementBodies.Made made =
        made(heating(Form.BEND).bend(90, 0.3).end(0, 0, 0, 1).end(0.3, 0.3, 0, 1));

    assertThat(made.missing()).isEqualTo("its form is not known");
    assertThat(made.layers()).hasSize(1).allMatch(layer -> layer.bodies().isEmpty());
  }

  @Test
  void whatIsNotStraightBetweenItsEndsHasNoBodyAndSaysSo() {
    ElementBodies.Made made =
        made(TestElement.pipe(1, 60.3, 4).inSystem("Heating flow").along(0, 0, 3));

    assertThat(made.missing()).isEqualTo("not straight between its ends");
  }

  /** Equal legs cut half way: ring x legs less what the legs share, 2/3 (R^3 - r^3) x 4. */
  @Test
  void anEqualTeeIsCutHalfWay() {
    Section pipe = new Section.Round(0.1);
    List<Body> bodies =
        branch(end(0.3, 0, 0, pipe), end(-0.3, 0, 0, pipe), end(0, 0.3, 0, pipe), 0, 0.03);
    double outer = 0.08;
    double inner = 0.05;
    double cubes = outer * outer * outer - inner * inner * inner;
    double expectedM3 = 0.9 * ringM2(0.1, 0.03) - 8.0 / 3 * cubes;

    assertThat(bodies).hasSize(3);
    assertThat(volumeM3(bodies)).isCloseTo(expectedM3, within(0.01 * expectedM3));
  }

  /** A small branch on a wide flat side: the hole is a prism of the bare branch. */
  @Test
  void aRoundBranchOnADuctTakesItsHoleOutOfTheWall() {
    Section duct = new Section.Rectangular(0.4, 0.4);
    Section spigot = new Section.Round(0.1);
    List<Body> bodies =
        branch(end(0.5, 0, 0, duct), end(-0.5, 0, 0, duct), end(0, 0.5, 0, spigot), 0, 0.03);
    double run = 1.0 * (0.46 * 0.46 - 0.4 * 0.4);
    double hole = Math.PI * 0.05 * 0.05 * 0.03;
    double neck = (0.5 - 0.23) * ringM2(0.1, 0.03);

    assertThat(volumeM3(bodies)).isCloseTo(run - hole + neck, within(0.003 * run));
  }

  @Test
  void aRectangularBranchOnADuctIsExact() {
    Section duct = new Section.Rectangular(0.4, 0.4);
    Section branch = new Section.Rectangular(0.2, 0.2);
    List<Body> bodies =
        branch(end(0.5, 0, 0, duct), end(-0.5, 0, 0, duct), end(0, 0.5, 0, branch), 0, 0.03);
    double run = 1.0 * (0.46 * 0.46 - 0.4 * 0.4);
    double neck = (0.5 - 0.23) * (0.26 * 0.26 - 0.2 * 0.2);

    assertThat(volumeM3(bodies)).isCloseTo(run - 0.2 * 0.2 * 0.03 + neck, within(2e-5));
  }

  @Test
  void facetedBodiesOfRandomBranchesAndBendsAreClosed() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    int bodies = 0;
    for (int i = 0; i < 200; i++) {
      double branchM = 0.02 + 0.08 * random.nextDouble();
      double runM = branchM + 0.1 * random.nextDouble();
      double angle = Math.toRadians(40 + 100 * random.nextDouble());
      List<Body> made =
          branch(
              end(0.6, 0, 0, new Section.Round(runM)),
              end(-0.6, 0, 0, new Section.Round(runM)),
              end(0.7 * Math.cos(angle), 0, 0.7 * Math.sin(angle), new Section.Round(branchM)),
              0.01 * random.nextInt(2),
              0.02 + 0.04 * random.nextDouble());
      made.forEach(ElementBodiesTest::isClosed);
      assertThat(volumeM3(made)).isPositive();
      bodies += made.size();
    }
    assertThat(bodies).isEqualTo(600);
  }

  @ParameterizedTest
  @CsvSource({"0, true", "0.02, false"})
  void reducersTaperAndFacetsOfThemHaveTheSameVolume(double offsetM, boolean concentric) {
    Ring large = Ring.around(new Section.Round(0.1143), 0, 0.032);
    Ring small = Ring.around(new Section.Round(0.0761), 0, 0.032);
    Frame frame = Frame.across(new Point(1, 0, 0));
    Taper taper = new Taper(large, small, new Pose(new Point(1, 2, 3), frame), 0.1, offsetM, 0);
    double mean = Math.PI * 0.032 * ((0.1143 + 0.0761) / 2 + 0.032);

    assertThat(taper.volumeM3()).isCloseTo(0.1 * mean, within(1e-12));
    assertThat(taper.isConcentric()).isEqualTo(concentric);
    assertThat(taper.faceted().volumeM3())
        .isCloseTo(taper.volumeM3(), within(0.003 * taper.volumeM3()));
    isClosed(taper.faceted());
  }

  private static End end(double x, double y, double z, Section section) {
    double length = Math.sqrt(x * x + y * y + z * z);
    return new End(new Point(x, y, z), new Point(x / length, y / length, z / length), section);
  }

  private static List<Body> branch(End one, End other, End branch, double belowM, double totalM) {
    BranchBody body = new BranchBody(new Point(0, 0, 0), List.of(one, other, branch), LEVEL);
    assertThat(body.isPossible()).isTrue();
    return body.bodies(belowM, totalM + belowM);
  }

  private static double volumeM3(List<Body> bodies) {
    return bodies.stream().mapToDouble(Body::volumeM3).sum();
  }

  /** Every edge is there twice, once each way. */
  private static void isClosed(Body body) {
    Map<List<Integer>, Integer> edges = new HashMap<>();
    for (List<Integer> face : ((Facets) body).faces()) {
      for (int i = 0; i < face.size(); i++) {
        edges.merge(List.of(face.get(i), face.get((i + 1) % face.size())), 1, Integer::sum);
      }
    }
    List<List<Integer>> open = new ArrayList<>();
    edges.forEach(
        (edge, times) -> {
          if (times != 1 || !edges.containsKey(List.of(edge.get(1), edge.get(0)))) {
            open.add(edge);
          }
        });
    assertThat(open).isEmpty();
  }
}
