package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.takeoff.settings.SettingsReader;

/** What tests of whole takeoffs share. */
final class TakeoffAssertions {

  private TakeoffAssertions() {}

  static TestElement chilled(long step, double lengthM) {
    return TestElement.pipe(step, 60.3, lengthM).inSystem("CHWS");
  }

  static Takeoff takeoff(TestElement... elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.defaults());
  }

  static void assertLeftOut(Takeoff takeoff, TakeoffFinding code) {
    assertThat(takeoff.lines()).isEmpty();
    assertThat(takeoff.totals().leftOut()).isEqualTo(1);
    assertThat(takeoff.elements().get(0).leftOutWith()).isEqualTo(code.name());
    assertThat(takeoff.findings())
        .filteredOn(f -> f.effect() == Effect.LEFT_OUT)
        .extracting(Finding::code)
        .containsExactly(code);
    assertThat(takeoff.questions()).extracting(Question::code).containsExactly(code.name());
  }

  static void assertOut(Takeoff takeoff, String rule, String reason) {
    assertThat(takeoff.totals().outOfScope()).isEqualTo(1);
    assertThat(takeoff.elements().get(0).scope().rule()).isEqualTo(rule);
    assertThat(takeoff.elements().get(0).scope().reason()).isEqualTo(reason);
    assertThat(takeoff.findings()).noneMatch(f -> f.effect() != Effect.NONE);
  }
}
