package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.settings.SettingsReader;

/** Flange diameters and bonnets: what is drawn is used, what is assumed has a finding. */
class FlangeSizeTest {

  private static final Evidence DRAWN = new Evidence(9, "IfcCircleProfileDef.Radius", "0.12");

  @Test
  void aDrawnFlangeGivesItsDiameterToTheBox() {
    double outerM = boxM(takeoff(flange(0.240)));

    assertThat(outerM).isCloseTo(0.240 + 2 * 0.032, within(1e-4));
  }

  @Test
  void anUndrawnFlangeIsAssumedAndSaysSo() {
    Takeoff takeoff = takeoff(TestElement.fitting(1, Form.FLANGE, 114.3).inSystem("CHWS").build());

    assertThat(boxM(takeoff)).isCloseTo(1.25 * 0.1143 + 0.080 + 2 * 0.032, within(1e-4));
    assertThat(assumptions(takeoff)).contains("flange diameter 223 mm (flangeFactor");
  }

  @Test
  void aDrawnFlangeIsNotCalledAssumed() {
    assertThat(assumptions(takeoff(flange(0.240))))
        .doesNotContain("flange diameter")
        .contains("thickness of the pair of flanges");
  }

  @ParameterizedTest
  @EnumSource(names = {"VALVE_BODY", "STRAINER"})
  void anAssumedBonnetHasAFinding(Form form) {
    Kind kind = form == Form.VALVE_BODY ? Kind.VALVE : Kind.INLINE;
    MepElement body =
        TestElement.of(1, kind, form).round(114.3).length(0.23).inSystem("CHWS").build();

    assertThat(assumptions(takeoff(body))).contains("bonnet", "flange diameter 223 mm");
  }

  /** On a pipe of 114.3 mm, drawn wider. */
  private static MepElement flange(double drawnM) {
    Measured<Section> section =
        new Measured<>(
            new Section.Round(0.1143),
            How.NEIGHBOUR,
            DRAWN,
            List.of(
                new Candidate<>(
                    new Section.Round(drawnM), How.SOLID, DRAWN, "is wider than its pipe")));
    return TestElement.fitting(1, Form.FLANGE, 114.3).inSystem("CHWS").build().toBuilder()
        .section(section)
        .build();
  }

  private static Takeoff takeoff(MepElement element) {
    return Takeoff.of(List.of(TestElement.model(List.of(element))), SettingsReader.defaults());
  }

  /** Outside diameter of the box; the wall is 32 mm. */
  private static double boxM(Takeoff takeoff) {
    TakenElement taken = takeoff.elements().get(0);
    return Objects.requireNonNull(taken.making()).pieces().stream()
        .mapToDouble(Piece::outsideDiameterM)
        .max()
        .orElseThrow();
  }

  private static String assumptions(Takeoff takeoff) {
    return takeoff.findings().stream()
        .filter(finding -> finding.code() == TakeoffFinding.FITTING_SIZE_ASSUMED)
        .map(Finding::message)
        .findFirst()
        .orElse("");
  }
}
