package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.fitting.pattern.Outline;

class MitreFeasibilityTest {

  static List<ReferenceRows.Row> rows() {
    return ReferenceRows.read(MitreFeasibilityTest.class, "mitre-feasibility.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void numberOfPiecesFollowsFromHeelGapAndThroat(ReferenceRows.Row row) {
    double radiusM = row.number("outside") / 2000;
    BendCover bend =
        new BendCover(row.number("radius") / 1000, Math.PI / 2, new Outline.Circle(radiusM));
    double totalM = row.number("wall") / 1000;

    assertThat(bend.throatM(3, totalM) > 0).isEqualTo(row.text("possible").equals("true"));
    assertThat(bend.piecesForGap(0.010, 0)).isEqualTo((int) row.number("piecesFor10"));
    assertThat(bend.piecesForGap(0.005, 0)).isEqualTo((int) row.number("piecesFor5"));
  }
}
