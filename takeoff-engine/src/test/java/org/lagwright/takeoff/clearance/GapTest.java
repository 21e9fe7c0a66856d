package org.lagwright.takeoff.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Frame;
import org.lagwright.takeoff.fitting.Direction;

/** Distances against closed forms of elementary geometry and against a slow search. */
class GapTest {

  private static final double ACCURACY_M = 2e-5;
  private static final double FAR_M = 1e9;

  private static Solid solid(Section section, double thicknessM, Point from, Point to) {
    Frame frame = Frame.across(Direction.between(from, to));
    return new Solid(
        Face.around(section, thicknessM, from, frame.u(), frame.v()),
        Face.around(section, thicknessM, to, frame.u(), frame.v()));
  }

  private static Solid pipe(double diameterM, double thicknessM, Point from, Point to) {
    return solid(new Section.Round(diameterM), thicknessM, from, to);
  }

  private static Solid duct(double widthM, double heightM, Point from, Point to) {
    return solid(new Section.Rectangular(widthM, heightM), 0, from, to);
  }

  private static Point at(double x, double y, double z) {
    return new Point(x, y, z);
  }

  private static void assertGap(Solid a, Solid b, double gapM) {
    assertThat(Gap.betweenM(a, b, FAR_M)).isCloseTo(gapM, within(ACCURACY_M));
    assertThat(Gap.betweenM(b, a, FAR_M)).isCloseTo(gapM, within(ACCURACY_M));
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0.2", "0.125, 0.025", "0.1, 0", "0.06, -0.04"})
  void parallelPipesAreApartByTheirAxesLessBothRadii(double axesM, double gapM) {
    Solid a = pipe(0.06, 0.02, at(0, 0, 0), at(5, 0, 0));
    Solid b = pipe(0.06, 0.02, at(1, axesM, 0), at(3, axesM, 0));

    assertGap(a, b, gapM);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.4", "0.1001, 0.0001", "0.05, -0.05"})
  void crossingPipesAreApartByTheirCommonPerpendicularLessBothRadii(double axesM, double gapM) {
    Solid a = pipe(0.08, 0.01, at(-3, 0, 0), at(2, 0, 0));
    Solid b = pipe(0.06, 0.02, at(0.3, -1, axesM), at(0.3, 4, axesM));

    assertGap(a, b, gapM);
  }

  @Test
  void skewPipesAreApartByTheirCommonPerpendicularLessBothRadii() {
    Point d = Direction.unit(at(1, 0.2, 0.1));
    Point e = Direction.unit(at(0.3, 1, -0.4));
    Point normal = Direction.unit(Direction.cross(d, e));
    Point q = Direction.plus(at(7, 8, 9), normal, 0.37);
    Solid a = pipe(0.1, 0, Direction.plus(at(7, 8, 9), d, -2), Direction.plus(at(7, 8, 9), d, 3));
    Solid b = pipe(0.2, 0, Direction.plus(q, e, -1), Direction.plus(q, e, 4));

    assertGap(a, b, 0.37 - 0.15);
  }

  @Test
  void pipesEndToEndAreApartByTheSpaceBetweenTheirEnds() {
    Solid a = pipe(0.1, 0.03, at(0, 0, 0), at(2, 0, 0));

    assertGap(a, pipe(0.3, 0.03, at(2.07, 0.02, 0), at(5, 0.02, 0)), 0.07);
    assertGap(a, pipe(0.1, 0.03, at(1.93, 0, 0), at(5, 0, 0)), -0.07);
  }

  @Test
  void aPipeBesideAnEndIsApartFromItsRim() {
    Solid a = pipe(0.2, 0, at(0, 0, 0), at(1, 0, 0));
    Solid b = pipe(0.02, 0, at(1.3, 0.5, -1), at(1.3, 0.5, 1));

    assertGap(a, b, Math.hypot(0.3, 0.4) - 0.01);
  }

  @Test
  void ductsAreApartByTheirSidesEdgesAndCorners() {
    Solid a = duct(0.6, 0.3, at(0, 0, 0), at(4, 0, 0));

    assertGap(a, duct(0.4, 0.2, at(1, 0.8, 0.1), at(3, 0.8, 0.1)), 0.8 - 0.3 - 0.2);
    assertGap(a, duct(0.4, 0.2, at(1, 0.8, 0.65), at(3, 0.8, 0.65)), Math.hypot(0.3, 0.4));
    assertGap(a, duct(0.4, 0.2, at(5.2, 0.8, 0.65), at(7, 0.8, 0.65)), Math.hypot(1.2, 0.5));
    assertGap(a, duct(0.4, 0.2, at(1, 0, 0.2), at(3, 0, 0.2)), -0.05);
  }

  @Test
  void aPipeIsApartFromTheEdgeOfADuctByItsAxisLessItsRadius() {
    Solid duct = duct(0.6, 0.3, at(0, 0, 0), at(4, 0, 0));

    assertGap(duct, pipe(0.1, 0.02, at(1, 0.6, 0.55), at(3, 0.6, 0.55)), 0.5 - 0.07);
  }

  @Test
  void aFlatOvalDuctHasRoundSides() {
    Solid oval = solid(new Section.Oval(0.5, 0.2), 0.03, at(0, 0, 0), at(4, 0, 0));

    assertGap(oval, pipe(0.1, 0, at(1, 0.45, 0.4), at(3, 0.45, 0.4)), 0.5 - 0.13 - 0.05);
  }

  @Test
  void whatIsFartherThanEnoughIsOnlyKnownToBeFarther() {
    Solid a = pipe(0.1, 0, at(0, 0, 0), at(2, 0, 0));

    assertThat(Gap.betweenM(a, pipe(0.1, 0, at(0, 3, 0), at(2, 3, 0)), 0.025)).isGreaterThan(0.025);
  }

  /** A point of a body: share of its length, of both sides, and a place in the disc of corners. */
  private static Point point(Solid solid, double[] shares) {
    double radius = Math.max(1, Math.hypot(shares[3], shares[4]));
    Face f = solid.from();
    double onU = shares[1] * f.halfWidthM() + shares[3] / radius * f.cornerM();
    double onV = shares[2] * f.halfHeightM() + shares[4] / radius * f.cornerM();
    Point axis = Direction.between(f.centre(), solid.to().centre());
    Point along = Direction.plus(f.centre(), axis, (shares[0] + 1) / 2);
    return Direction.plus(Direction.plus(along, f.u(), onU), f.v(), onV);
  }

  /** The distance by steps at random that are kept where they lead nearer: slow, from above. */
  private static double slowM(Solid a, Solid b, Random random) {
    double[] onA = new double[5];
    double[] onB = new double[5];
    double leastM = point(a, onA).distanceM(point(b, onB));
    for (int i = 0; i < 8_000; i++) {
      double[] nextA = moved(onA, i, random);
      double[] nextB = moved(onB, i, random);
      double nextM = point(a, nextA).distanceM(point(b, nextB));
      if (nextM < leastM) {
        leastM = nextM;
        onA = nextA;
        onB = nextB;
      }
    }
    return leastM;
  }

  private static double[] moved(double[] shares, int step, Random random) {
    double[] moved = shares.clone();
    double size = Math.pow(10, -4 * random.nextDouble()) * (step % 2 == 0 ? 1 : 0.1);
    for (int i = 0; i < moved.length; i++) {
      moved[i] = Math.max(-1, Math.min(1, moved[i] + size * random.nextGaussian()));
    }
    return moved;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noPairOfPointsIsNearerThanTheGapAndSomeAreHardlyFarther(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 12; i++) {
      Solid a = any(random, 0);
      Solid b = any(random, 1.2);
      double slowM = slowM(a, b, random);

      assertThat(Math.max(0, Gap.betweenM(a, b, FAR_M)))
          .as("seed %d, pair %d", seed, i)
          .isBetween(slowM - 0.003, slowM + ACCURACY_M);
    }
  }

  /** Moving both alike, or swapping them, changes no gap. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void theGapDoesNotDependOnWhereInTheWorldBothLie(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      Solid a = any(random, 0);
      Solid b = any(random, 0.8);
      double gapM = Gap.betweenM(a, b, FAR_M);

      assertThat(Gap.betweenM(moved(b, 30_000), moved(a, 30_000), FAR_M))
          .as("seed %d", seed)
          .isCloseTo(gapM, within(ACCURACY_M));
    }
  }

  private static Solid any(Random random, double awayM) {
    Point from = at(random.nextDouble() + awayM, random.nextDouble(), random.nextDouble());
    Point to = at(random.nextDouble() + awayM, random.nextDouble(), random.nextDouble());
    double sideM = 0.02 + 0.2 * random.nextDouble();
    return switch (random.nextInt(3)) {
      case 0 -> pipe(sideM, 0.02, from, to);
      case 1 -> duct(2 * sideM, sideM, from, to);
      default -> solid(new Section.Oval(2 * sideM, sideM), 0.01, from, to);
    };
  }

  private static Solid moved(Solid solid, double x) {
    return new Solid(moved(solid.from(), x), moved(solid.to(), x));
  }

  private static Face moved(Face f, double x) {
    Point to = at(f.centre().x() + x, f.centre().y(), f.centre().z());
    return new Face(to, f.u(), f.v(), f.halfWidthM(), f.halfHeightM(), f.cornerM());
  }
}
