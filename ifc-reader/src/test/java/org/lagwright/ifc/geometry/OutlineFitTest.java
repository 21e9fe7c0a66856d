package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

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
}
