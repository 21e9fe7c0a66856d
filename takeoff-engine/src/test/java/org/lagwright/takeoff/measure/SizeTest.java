package org.lagwright.takeoff.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TestElement;

class SizeTest {

  private static final Section D60 = new Section.Round(0.0603);
  private static final Section D34 = new Section.Round(0.0337);

  @Test
  void pipeShowsNominalAndOutsideDiameter() {
    assertThat(words(TestElement.pipe(1, 60.3, 1).nominal("DN50"))).isEqualTo("DN50 / 60.3 mm");
    assertThat(words(TestElement.pipe(1, 22, 1))).isEqualTo("22 mm");
  }

  @Test
  void ductsShowSidesOrDiameter() {
    assertThat(words(TestElement.duct(1, 300, 200, 1))).isEqualTo("300 x 200 mm");
    assertThat(words(TestElement.of(1, Kind.DUCT_SEGMENT, Form.STRAIGHT).round(315)))
        .isEqualTo("d 315 mm");
    assertThat(
            words(
                TestElement.of(1, Kind.DUCT_SEGMENT, Form.STRAIGHT)
                    .section(new Section.Oval(0.4, 0.2))))
        .isEqualTo("oval 400 x 200 mm");
  }

  @Test
  void reducerIsTheSameWhicheverWayItWasDrawn() {
    assertThat(words(TestElement.fitting(1, Form.REDUCER, 60.3).ends(D34, D60)))
        .isEqualTo("60.3 / 33.7 mm")
        .isEqualTo(words(TestElement.fitting(1, Form.REDUCER, 60.3).ends(D60, D34)));
  }

  @Test
  void branchOfATeeStaysLast() {
    assertThat(words(TestElement.fitting(1, Form.TEE, 33.7).ends(D34, D34, D60)))
        .isEqualTo("33.7 / 33.7 / 60.3 mm");
    assertThat(words(TestElement.fitting(1, Form.TEE, 60.3).ends(D60, D60, D34)))
        .isEqualTo("60.3 / 60.3 / 33.7 mm");
  }

  @Test
  void equalEndsAreOneSize() {
    assertThat(words(TestElement.fitting(1, Form.BEND, 60.3).nominal("DN50").ends(D60, D60)))
        .isEqualTo("DN50 / 60.3 mm");
  }

  @Test
  void endsStandInWhereNoSectionWasRead() {
    TestElement tee = TestElement.of(1, Kind.PIPE_FITTING, Form.TEE).ends(D34, D34, D60);

    assertThat(Size.findDecidingSection(tee.build())).contains(D60);
  }

  @Test
  void nothingKnownIsNoSize() {
    assertThat(Size.find(TestElement.of(1, Kind.VALVE, Form.VALVE_BODY).build())).isEmpty();
  }

  @Test
  void sizesSortByFigureAndNotByText() {
    List<String> sorted =
        List.of(100.0, 15.0, 60.3).stream()
            .map(mm -> Size.find(TestElement.pipe(1, mm, 1).build()).orElseThrow())
            .sorted()
            .map(Size::words)
            .toList();

    assertThat(sorted).containsExactly("15 mm", "60.3 mm", "100 mm");
  }

  @Test
  void noiseOfAnExportMakesNoNewSize() {
    assertThat(words(TestElement.pipe(1, 60.30004, 1))).isEqualTo("60.3 mm");
  }

  private static String words(TestElement element) {
    return Size.find(element.build()).orElseThrow().words();
  }
}
