package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.clearance.Clearance;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.settings.SettingsReader;

/** Flanges of DN100 that are drawn one by one: how many boxes a joint gets. */
class SharedBoxesTest {

  private static final double OUTSIDE_MM = 114.3;
  private static final double FLANGE_M = 0.052;
  private static final double VALVE_M = 0.052;

  @TempDir Path folder;

  private static TestElement flange(long step, long... joined) {
    return TestElement.fitting(step, Form.FLANGE, OUTSIDE_MM)
        .length(FLANGE_M)
        .inSystem("CHWS")
        .joinedTo(joined);
  }

  private static TestElement valve(long step, long... joined) {
    return body(step, Kind.VALVE, Form.VALVE_BODY, joined);
  }

  private static TestElement body(long step, Kind kind, Form form, long... joined) {
    return TestElement.of(step, kind, form)
        .round(OUTSIDE_MM)
        .length(VALVE_M)
        .inSystem("CHWS")
        .joinedTo(joined);
  }

  private static TestElement pipe(long step, long joined) {
    return TestElement.pipe(step, OUTSIDE_MM, 2).inSystem("CHWS").joinedTo(joined);
  }

  private static void assertSameWork(Takeoff takeoff, Takeoff as) {
    assertThat(takeoff.totals().insulatedPieces()).isEqualTo(as.totals().insulatedPieces());
    assertThat(takeoff.totals().outerAreaM2()).isCloseTo(as.totals().outerAreaM2(), within(1e-9));
    assertThat(takeoff.labour().hours()).isCloseTo(as.labour().hours(), within(1e-9));
    assertThat(takeoff.order().items()).isEqualTo(as.order().items());
  }

  private static List<String> rules(Takeoff takeoff) {
    return takeoff.elements().stream().map(taken -> taken.scope().rule()).toList();
  }

  @Test
  void twoFlangesOfAJointGetOneBox() {
    Takeoff pair = takeoff(flange(1, 2), flange(2, 1));
    TakenElement second = pair.elements().get(1);

    assertSameWork(pair, takeoff(flange(1)));
    assertThat(Clearance.thicknessM(second)).isEqualTo(0.032);
    assertThat(pair.totals()).extracting(Totals::onLines, Totals::outOfScope).containsExactly(1, 1);
    assertThat(second.scope().scope()).isEqualTo(Scope.OUT);
    assertThat(second.scope().reason()).isEqualTo("under the box of guid-1, which is counted");
    assertThat(pair.findings()).noneMatch(f -> second.element().key().equals(f.element()));
  }

  @ParameterizedTest
  @EnumSource(names = {"VALVE_BODY", "STRAINER"})
  void theBoxOfAFlangedBodyCoversTheFlangesOnBothItsSides(Form form) {
    Kind kind = form == Form.VALVE_BODY ? Kind.VALVE : Kind.INLINE;
    Takeoff joint =
        takeoff(
            pipe(1, 2), flange(2, 1, 3), body(3, kind, form, 2, 4), flange(4, 3, 5), pipe(5, 4));

    assertSameWork(joint, takeoff(pipe(1, 3), body(3, kind, form, 1, 5), pipe(5, 3)));
    assertThat(rules(joint).subList(1, 4))
        .containsExactly("shared-box", "insulated-service", "shared-box");
  }

  @Test
  void flangeThatMeetsTheFlangeOfAValveLiesUnderItsBoxToo() {
    assertSameWork(takeoff(flange(1, 2), flange(2, 1, 3), valve(3, 2)), takeoff(valve(3)));
    assertSameWork(takeoff(valve(1, 2), flange(2, 1, 3), flange(3, 2)), takeoff(valve(1)));
  }

  @Test
  void flangesBeyondAJointGetABoxOfTheirOwn() {
    Takeoff row = takeoff(flange(1, 2), flange(2, 1, 3), flange(3, 2, 4), flange(4, 3));

    assertThat(row.totals().insulatedPieces()).isEqualTo(2);
  }

  @Test
  void flangeBesidePipeOrPumpOrAValveThatIsLeftOutKeepsItsBox() {
    TestElement pump = body(3, Kind.INLINE, Form.PUMP, 2);
    TestElement unmeasured =
        TestElement.of(3, Kind.VALVE, Form.VALVE_BODY).inSystem("CHWS").joinedTo(2);

    assertThat(rules(takeoff(pipe(1, 2), flange(2, 1)))).doesNotContain("shared-box");
    assertThat(rules(takeoff(flange(2, 3), pump))).doesNotContain("shared-box");
    assertThat(rules(takeoff(flange(2, 3), unmeasured))).doesNotContain("shared-box");
  }

  @Test
  void flangeBesideABoxThatFitsTheValveOnlyKeepsItsOwn() throws IOException {
    Takeoff takeoff =
        takeoff("methods: {valve-body: body-box}", flange(1, 2), valve(2, 1, 3), flange(3, 2));

    assertThat(takeoff.totals().insulatedPieces()).isEqualTo(3);
  }

  @Test
  void whichFlangeCarriesTheBoxDoesNotDependOnTheOrderOfTheFile() {
    Takeoff turned = takeoff(flange(2, 1), flange(1, 2));

    assertThat(rules(turned)).containsExactly("shared-box", "insulated-service");
  }

  /** Length through everything, and no interruption where a flange is no piece of its own. */
  @Test
  void methodsThatMeasureThroughFittingsMeasureThroughFlangesUnderABox() throws IOException {
    Takeoff takeoff =
        takeoff(
            "measurement: [over-measured, de-metre-and-pieces]",
            pipe(1, 2),
            flange(2, 1, 3),
            valve(3, 2, 4),
            flange(4, 3, 5),
            pipe(5, 4));

    assertThat(takeoff.measurements())
        .allSatisfy(
            measured -> {
              assertThat(measured.total(Quantity.LENGTH))
                  .isCloseTo(2 + FLANGE_M + VALVE_M + FLANGE_M + 2, within(1e-9));
              assertThat(measured.total(Quantity.PIECES)).isEqualTo(1);
            });
  }

  private static Takeoff takeoff(TestElement... elements) {
    return TakeoffAssertions.takeoff(elements);
  }

  private Takeoff takeoff(String yaml, TestElement... elements) throws IOException {
    Path file = Files.writeString(folder.resolve("settings.yaml"), yaml);
    return Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.read(file));
  }
}
