package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;

class OutlineFitTest {

  private static Vec at(double x, double y) {
    return new Vec(x, y, 0);
  }

  @Test
  void aBroadTeeThatNearlyFillsItsBoxIsNoRectangle() {
    List<Vec> tee =
        List.of(
            at(0, 0),
            at(0.8, 0),
            at(0.8, 0.1),
            at(0.9, 0.1),
            at(0.9, 0.7),
            at(0.8, 0.7),
            at(0.8, 0.8),
            at(0, 0.8));
    assertThat(OutlineFit.fit(tee)).isNull();
  }

  @Test
  void aRectangleWithCutCornersIsOne() {
    List<Vec> cut =
        List.of(
            at(0.05, 0),
            at(0.75, 0),
            at(0.8, 0.05),
            at(0.8, 0.35),
            at(0.75, 0.4),
            at(0.05, 0.4),
            at(0, 0.35),
            at(0, 0.05));
    assertThat(Objects.requireNonNull(OutlineFit.fit(cut)).kind())
        .isEqualTo(Outline.Kind.RECTANGULAR);
  }

  /** It fills 98 % of its box. */
  @Test
  void aTrapezoidIsNoRectangleAndOneOfRoundedCoordinatesIs() {
    assertThat(OutlineFit.fit(List.of(at(0, 0), at(1.15, 0), at(1.125, 0.6), at(0.025, 0.6))))
        .isNull();
    assertThat(OutlineFit.fit(List.of(at(0, 0), at(0.08, 0), at(0.079, 0.03), at(0, 0.03))))
        .isNotNull();
  }

  /** It fills 0.44 of 0.56 square metres, as an oval of this size does: pi / 4. */
  @Test
  void aCrossOfTwoDuctsIsNoOval() {
    List<Vec> cross =
        List.of(
            at(-0.4, -0.15),
            at(-0.25, -0.15),
            at(-0.25, -0.35),
            at(0.25, -0.35),
            at(0.25, -0.15),
            at(0.4, -0.15),
            at(0.4, 0.15),
            at(0.25, 0.15),
            at(0.25, 0.35),
            at(-0.25, 0.35),
            at(-0.25, 0.15),
            at(-0.4, 0.15));
    assertThat(OutlineFit.fit(cross)).isNull();
  }

  @Test
  void coarseEllipsesAndFlatOvalsAreOvals() {
    List<Vec> ellipse = new ArrayList<>();
    List<Vec> flatOval = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      double x = Math.cos(2 * Math.PI * (i + 0.5) / 16);
      double y = Math.sin(2 * Math.PI * (i + 0.5) / 16);
      ellipse.add(at(0.3 * x, 0.2 * y));
      flatOval.add(at(0.2 * x + Math.copySign(0.1, x), 0.2 * y));
    }
    assertThat(Objects.requireNonNull(OutlineFit.fit(ellipse)).kind()).isEqualTo(Outline.Kind.OVAL);
    assertThat(Objects.requireNonNull(OutlineFit.fit(flatOval)).kind())
        .isEqualTo(Outline.Kind.OVAL);
  }

  /** Corners on a circle of radius 57.15 mm, with what lies in the middle of its edges between. */
  private static List<Vec> withMiddles(int corners, double stepM) {
    List<Vec> loop = new ArrayList<>();
    for (int i = 0; i < 2 * corners; i++) {
      double turn = Math.PI * i / corners;
      double outM = 0.05715 * (i % 2 == 0 ? 1 : Math.cos(Math.PI / corners));
      loop.add(at(rounded(outM * Math.cos(turn), stepM), rounded(outM * Math.sin(turn), stepM)));
    }
    return loop;
  }

  private static double rounded(double figure, double stepM) {
    return stepM == 0 ? figure : Math.rint(figure / stepM) * stepM;
  }

  @Test
  void whatLiesInTheMiddleOfItsEdgesDoesNotMakeACircleSmaller() {
    for (int corners : List.of(8, 12, 16, 24, 36)) {
      List<Vec> loop = withMiddles(corners, 0);
      assertThat(OutlineFit.turning(loop)).hasSize(corners);
      assertThat(radiusM(loop)).isCloseTo(0.05715, within(1e-9));
    }
    for (int corners : List.of(8, 12, 16)) {
      List<Vec> loop = withMiddles(corners, 1e-4);
      assertThat(OutlineFit.turning(loop)).hasSize(corners);
      assertThat(radiusM(loop)).isCloseTo(0.05715, within(5e-5));
    }
  }

  private static double radiusM(List<Vec> loop) {
    Outline outline = Objects.requireNonNull(OutlineFit.fit(loop));
    assertThat(outline.kind()).isEqualTo(Outline.Kind.ROUND);
    return outline.radiusM();
  }

  /** A corner may lie near the next one, as where a circle is closed or two arcs meet. */
  @Test
  void everyCornerOnACircleIsOneHoweverNearTheNext() {
    Random random = new Random(20_261_127);
    for (int tries = 0; tries < 100; tries++) {
      List<Vec> loop = new ArrayList<>();
      for (double turn = 0.1; turn < 2 * Math.PI; turn += 0.01 + 0.9 * random.nextDouble()) {
        loop.add(at(Math.cos(turn), Math.sin(turn)));
      }
      assertThat(OutlineFit.turning(loop)).isSameAs(loop);
    }
  }

  /** The edges of its round ends, 65 mm, are longer than its flat sides of 50 mm. */
  @Test
  void aCoarseShortOvalLiesAlongItsFlatSides() {
    List<Vec> oval = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      boolean right = i < 7;
      double angle = Math.PI * ((right ? i : i - 1) / 6.0 - 0.5);
      double flatM = right ? 0.025 : -0.025;
      oval.add(at(flatM + 0.125 * Math.cos(angle), 0.125 * Math.sin(angle)));
    }
    Outline found = Objects.requireNonNull(OutlineFit.fit(oval));

    assertThat(found.kind()).isEqualTo(Outline.Kind.OVAL);
    assertThat(found.section().largestSideM()).isCloseTo(0.3, within(1e-9));
    assertThat(found.section().smallestSideM()).isCloseTo(0.25, within(1e-9));
  }
}
