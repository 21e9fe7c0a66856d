package org.lagwright.takeoff.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Section;

class EnvelopeTest {

  private static final double EXACT = 1e-12;

  @Test
  void roundIsTheRingBetweenTwoCircles() {
    Envelope envelope = Envelope.around(new Section.Round(0.060), 0.020);

    assertThat(envelope.outerPerimeterM()).isCloseTo(Math.PI * 0.100, within(EXACT));
    assertThat(envelope.ringAreaM2())
        .isCloseTo(Math.PI / 4 * (0.100 * 0.100 - 0.060 * 0.060), within(EXACT));
  }

  @Test
  void rectangleHasSquareCorners() {
    Envelope envelope = Envelope.around(new Section.Rectangular(0.300, 0.200), 0.025);

    assertThat(envelope.outerPerimeterM()).isCloseTo(2 * (0.350 + 0.250), within(EXACT));
    assertThat(envelope.ringAreaM2()).isCloseTo(0.350 * 0.250 - 0.300 * 0.200, within(EXACT));
  }

  @Test
  void ovalAsRoundAsLongIsTheCircle() {
    Envelope oval = Envelope.around(new Section.Oval(0.2, 0.2), 0.03);
    Envelope round = Envelope.around(new Section.Round(0.2), 0.03);

    assertThat(oval.outerPerimeterM()).isCloseTo(round.outerPerimeterM(), within(EXACT));
    assertThat(oval.ringAreaM2()).isCloseTo(round.ringAreaM2(), within(EXACT));
  }

  /**
   * 315 x 450 mm, 10 mm, 0.730756 m: 1.176518 m2 outside. Area quantity of an insulation covering
   * in a public model, read from its file.
   */
  @Test
  void outerAreaOfACoveringInARealFile() {
    Envelope envelope = Envelope.around(new Section.Rectangular(0.315, 0.450), 0.010);

    assertThat(envelope.outerPerimeterM() * 0.730756).isCloseTo(1.176518, within(1e-6));
  }

  @Test
  void negativeThicknessIsRefused() {
    assertThatThrownBy(() -> Envelope.around(new Section.Round(0.1), -0.01))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
