package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Point;

class FarthestPointsTest {

  private static final long SEED = 20261126;

  @Test
  void farthestTwoAreFoundWhereverThePointsLie() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (int run = 0; run < 200; run++) {
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < 2 + random.nextInt(20); i++) {
        points.add(
            new Point(random.nextDouble(), random.nextDouble() * 3, random.nextDouble() * 0.1));
      }
      double most = 0;
      for (Point a : points) {
        for (Point b : points) {
          most = Math.max(most, a.distanceM(b));
        }
      }
      assertThat(new FarthestPoints(points).apartM()).isCloseTo(most, within(1e-12));
    }
  }

  @Test
  void pointsAlongAPipeNeedFewLooks() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 10_000; i++) {
      points.add(new Point(0.01 * i, 0, 0.025));
    }
    FarthestPoints farthest = new FarthestPoints(points);

    assertThat(farthest.apartM()).isCloseTo(100, within(1e-9));
    assertThat(farthest.compared()).isLessThan(100);
  }

  @Test
  void onePointAndNoneLieNoDistanceApart() {
    assertThat(new FarthestPoints(List.of()).apartM()).isZero();
    assertThat(new FarthestPoints(List.of(new Point(1, 2, 3))).apartM()).isZero();
  }
}
