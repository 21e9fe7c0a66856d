package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.curve.PlanRectangle;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.UprightBox;

class PlanRectangleTest {

  /** Corners of turned boxes with points inside them, far from the origin. */
  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44})
  void theBoxAroundATurnedBoxIsThatBox(long seed) {
    Random random = new Random(seed);
    for (int round = 0; round < 50; round++) {
      double turn = 2 * Math.PI * random.nextDouble();
      Vec along = new Vec(Math.cos(turn), Math.sin(turn), 0);
      Vec across = new Vec(-along.y(), along.x(), 0);
      Vec centre = new Vec(3.5e5 * random.nextDouble(), 5.6e6 * random.nextDouble(), 40);
      double l = 0.5 + 10 * random.nextDouble();
      double w = 0.1 + random.nextDouble();
      double h = 0.1 + 3 * random.nextDouble();
      List<Vec> points = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        double u = i < 8 ? (i & 1) - 0.5 : random.nextDouble() - 0.5;
        double v = i < 8 ? (i >> 1 & 1) - 0.5 : random.nextDouble() - 0.5;
        double z = i < 8 ? (i >> 2 & 1) - 0.5 : random.nextDouble() - 0.5;
        points.add(
            centre.plus(along.times(u * l)).plus(across.times(v * w)).plus(Vec.Z.times(z * h)));
      }
      Collections.shuffle(points, random);
      UprightBox box = PlanRectangle.boxAround(points);

      assertThat(Math.max(box.lengthM(), box.widthM()))
          .as("seed %d round %d", seed, round)
          .isCloseTo(Math.max(l, w), within(1e-5));
      assertThat(Math.min(box.lengthM(), box.widthM())).isCloseTo(Math.min(l, w), within(1e-5));
      assertThat(box.heightM()).isCloseTo(h, within(1e-9));
      assertThat(Vec.of(box.centre()).distanceTo(centre)).isLessThan(1e-5);
    }
  }

  @Test
  void pointsOnALineOrInOnePlaceHaveAFlatBox() {
    Vec a = new Vec(1, 2, 3);
    Vec b = new Vec(4, 6, 3);

    assertThat(PlanRectangle.boxAround(List.of(a)).lengthM()).isZero();
    UprightBox flat = PlanRectangle.boxAround(List.of(a, b, a));
    assertThat(flat.lengthM()).isCloseTo(5, within(1e-9));
    assertThat(flat.widthM()).isCloseTo(0, within(1e-9));
  }
}
