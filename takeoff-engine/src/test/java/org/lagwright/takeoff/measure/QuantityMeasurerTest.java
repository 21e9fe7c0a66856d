package org.lagwright.takeoff.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.TestElement;

class QuantityMeasurerTest {

  private static final double EXACT = 1e-12;
  private static final Section.Round PIPE = new Section.Round(0.060);

  @Test
  void straightCountsMetresAndNoPieces() {
    Quantities found = measure(TestElement.pipe(1, 60, 2.5), PIPE);

    assertThat(found.lengthM()).isEqualTo(2.5);
    assertThat(found.pieces()).isZero();
    assertThat(found.outerAreaM2()).isCloseTo(Math.PI * 0.100 * 2.5, within(EXACT));
    assertThat(found.volumeM3()).isCloseTo(Math.PI * 0.080 * 0.020 * 2.5, within(EXACT));
  }

  @Test
  void fourRightAngledBendsMakeATorus() {
    Quantities found = measure(TestElement.fitting(1, Form.BEND, 60).bend(90, 0.150), PIPE);

    double torusAreaM2 = 4 * Math.PI * Math.PI * 0.150 * 0.050;
    double torusVolumeM3 = 2 * Math.PI * Math.PI * 0.150 * (0.050 * 0.050 - 0.030 * 0.030);
    assertThat(found.pieces()).isEqualTo(1);
    assertThat(found.lengthM()).isZero();
    assertThat(4 * found.outerAreaM2()).isCloseTo(torusAreaM2, within(EXACT));
    assertThat(4 * found.volumeM3()).isCloseTo(torusVolumeM3, within(EXACT));
  }

  @Test
  void bendWithoutRadiusUsesTheLengthRead() {
    Quantities found = measure(TestElement.fitting(1, Form.BEND, 60).length(0.2), PIPE);

    assertThat(found.outerAreaM2()).isCloseTo(Math.PI * 0.100 * 0.2, within(EXACT));
  }

  @Test
  void teeIsAPieceWithoutAreaEvenWithALength() {
    assertThat(measure(TestElement.fitting(1, Form.TEE, 60).length(0.2), PIPE))
        .isEqualTo(new Quantities(0, 1, 0, 0));
  }

  @Test
  void reducerTakesTheMeanOfItsEnds() {
    TestElement reducer =
        TestElement.fitting(1, Form.REDUCER, 60)
            .ends(new Section.Round(0.060), new Section.Round(0.020))
            .length(0.1);

    assertThat(measure(reducer, PIPE).outerAreaM2())
        .isCloseTo(Math.PI * (0.100 + 0.060) / 2 * 0.1, within(EXACT));
  }

  @Test
  void valveWithoutLengthIsAPieceWithoutArea() {
    assertThat(measure(TestElement.of(1, Kind.VALVE, Form.VALVE_BODY).round(60), PIPE))
        .isEqualTo(new Quantities(0, 1, 0, 0));
  }

  @Test
  void segmentWithoutLengthIsRefused() {
    MepElement element = TestElement.of(1, Kind.PIPE_SEGMENT, Form.STRAIGHT).round(60).build();

    assertThatThrownBy(() -> QuantityMeasurer.measure(element, PIPE, 0.02))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Quantities measure(TestElement element, Section section) {
    return QuantityMeasurer.measure(element.build(), section, 0.020);
  }
}
