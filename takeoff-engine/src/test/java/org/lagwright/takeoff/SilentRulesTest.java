package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Section;

class SilentRulesTest {

  private static final TestElement DUCT =
      TestElement.duct(1, 400, 200, 3).inSystem("Supply air").at("Level 1", false);

  @Test
  void ductsThatNoEnergyRuleCoversAreReportedOnceForEachService() {
    TestElement other = TestElement.duct(2, 300, 200, 3).inSystem("Supply air");

    assertThat(silent("project: x\n", DUCT, other))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .startsWith(
                        "The energy rule us-ashrae-90.1-pipe says nothing on ducts with supply air; the"
                            + " other demands decide (elements: 2)."));
  }

  /** A damper is neither segment nor fitting, and sits in a duct all the same. */
  @Test
  void whatSitsInADuctCountsAsDuct() {
    TestElement damper =
        TestElement.of(2, Kind.INLINE, Form.DAMPER)
            .section(new Section.Rectangular(0.4, 0.2))
            .length(0.2)
            .inSystem("Supply air");

    assertThat(silent("project: x\n", DUCT, damper))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("on ducts with", "(elements: 2)"));
  }

  @Test
  void pipesOfAServiceThatTheRuleDoesNotNameAreReported() {
    TestElement pipe = TestElement.pipe(1, 60.3, 3).inSystem("Chilled water flow");

    assertThat(silent("energyRule: no-en-12828\n", pipe)).hasSize(1);
    assertThat(silent("energyRule: us-ashrae-90.1-pipe\n", pipe)).isEmpty();
  }

  @Test
  void norwayCoversDucts() {
    assertThat(silent("energyRule: no-en-12828\n", DUCT)).isEmpty();
  }

  @Test
  void whatTheProjectOrTheUserSaysIsNoSilence() {
    assertThat(silent("thicknessesMm: {supply-air: 30}\n", DUCT)).isEmpty();
    assertThat(silent("demands: {specification: [{thicknessMm: 30}]}\n", DUCT)).isEmpty();
    assertThat(silent("energyRule: none\n", DUCT)).isEmpty();
  }

  @Test
  void coldWaterIsExemptAndNoSilence() {
    assertThat(silent("project: x\n", TestElement.pipe(1, 28, 3).inSystem("Cold water"))).isEmpty();
  }

  private static List<Finding> silent(String settings, TestElement... elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), TestSettings.of(settings))
        .findings()
        .stream()
        .filter(f -> f.code() == TakeoffFinding.ENERGY_RULE_SILENT)
        .toList();
  }
}
