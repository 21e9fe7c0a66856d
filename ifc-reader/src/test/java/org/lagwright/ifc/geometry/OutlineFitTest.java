package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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
}
