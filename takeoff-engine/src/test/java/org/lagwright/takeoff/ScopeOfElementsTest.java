package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.lagwright.takeoff.TakeoffAssertions.assertLeftOut;
import static org.lagwright.takeoff.TakeoffAssertions.assertOut;
import static org.lagwright.takeoff.TakeoffAssertions.chilled;
import static org.lagwright.takeoff.TakeoffAssertions.takeoff;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** What is in, out or asked. */
class ScopeOfElementsTest {

  private static final Settings DEFAULTS = SettingsReader.defaults();

  @Test
  void buriedPipeIsAskedFor() {
    TestElement pipe =
        TestElement.pipe(1, 60.3, 2).inSystem("District heating flow").at("Buried services", null);

    TakenElement taken = Takeoff.of(List.of(TestElement.model(pipe)), DEFAULTS).elements().get(0);

    assertThat(taken.scope().scope()).isEqualTo(Scope.ASK);
    assertThat(taken.scope().reason()).contains("in the ground");
  }

  @Test
  void pipeOfUnknownServiceIsAskedNotGuessed() {
    Takeoff takeoff = takeoff(TestElement.pipe(1, 60.3, 7).inSystem("?"));

    assertLeftOut(takeoff, TakeoffFinding.SERVICE_UNKNOWN);
    assertThat(takeoff.findings().get(0).message())
        .isEqualTo(
            "Its system '?' tells no known service. Name that system by what flows in it, or map it"
                + " under 'services' in the settings.");
    Question question = takeoff.questions().get(0);
    assertThat(question.question()).isEqualTo("Which service flows in system '?'?");
    assertThat(question.what()).isEqualTo("pipe segments");
    assertThat(question.size()).isEqualTo("60.3 mm");
    assertThat(question.lengthM()).isEqualTo(7);
    assertThat(takeoff.elements().get(0).scope().scope()).isEqualTo(Scope.ASK);
  }

  @Test
  void questionSaysTheDirectionWhereThatIsAllThatIsTold() {
    Takeoff takeoff = takeoff(TestElement.pipe(1, 60.3, 7).named("Rohr - Vorlauf Strang 1"));

    assertThat(takeoff.questions())
        .extracting(Question::question)
        .containsExactly("Of which service is this the flow? No system is named.");
    assertThat(takeoff.findings().get(0).message())
        .isEqualTo(
            "Nothing tells which service this is. Name its system in the model, or map it under"
                + " 'services' in the settings.");
  }

  @Test
  void serviceThatSomeDesignsInsulateIsAsked() {
    assertLeftOut(
        takeoff(TestElement.pipe(1, 15, 7).inSystem("Refrigerant liquid")),
        TakeoffFinding.SCOPE_UNDECIDED);
  }

  @Test
  void apparatusOfAnInsulatedServiceIsTakenOffItsDrawing() {
    Takeoff takeoff =
        takeoff(
            TestElement.of(1, Kind.EQUIPMENT, Form.APPARATUS).joinedTo(2),
            TestElement.pipe(2, 60.3, 1).inSystem("CHWS"));

    assertThat(takeoff.elements().get(0).leftOutWith()).isEqualTo("EQUIPMENT_BY_DRAWING");
    assertThat(takeoff.totals()).extracting(Totals::onLines, Totals::leftOut).containsExactly(1, 1);
  }

  @Test
  void apparatusThatNoServiceReachesIsOutOfScope() {
    assertOut(
        takeoff(TestElement.of(1, Kind.EQUIPMENT, Form.APPARATUS)),
        "apparatus-without-service",
        "an apparatus that no insulated service is known to reach");
  }

  @Test
  void terminalIsOutOfScope() {
    assertOut(
        takeoff(TestElement.of(1, Kind.TERMINAL, Form.APPARATUS).inSystem("CHWS")),
        "terminal",
        "a terminal, where the service ends");
  }

  @Test
  void coveringIsOutAsInsulationOfItsHost() {
    Takeoff takeoff =
        takeoff(
            chilled(1, 2).named("Pipe 7").at("Level 1", false).insulated(0.019, 2),
            TestElement.of(2, Kind.COVERING, Form.UNKNOWN));

    assertThat(takeoff.elements().get(1).scope().reason())
        .isEqualTo("existing insulation of 'Pipe 7'");
    assertThat(takeoff.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(TakeoffFinding.ALREADY_INSULATED);
              assertThat(f.effect()).isEqualTo(Effect.NONE);
              assertThat(f.message()).contains("19.0 mm foam");
            });
  }

  @Test
  void orphanCoveringIsOutToo() {
    assertOut(
        takeoff(TestElement.of(1, Kind.COVERING, Form.UNKNOWN)),
        "covering",
        "existing insulation of an element that is not in the files");
  }

  @Test
  void otherThingsAreOutByTheirClass() {
    assertOut(
        takeoff(TestElement.of(1, Kind.OTHER, Form.UNKNOWN)),
        "other",
        "IFCOTHER counts as neither pipe nor duct nor part of one");
  }

  @Test
  void wasteGasAndSprinklerPipesAreOut() {
    for (String system : List.of("Waste water", "Natural gas", "Sprinkler", "Drainage")) {
      Takeoff takeoff = takeoff(TestElement.pipe(1, 110, 3).inSystem(system));
      assertThat(takeoff.totals().outOfScope()).as(system).isEqualTo(1);
      assertThat(takeoff.elements().get(0).scope().rule()).isEqualTo("service-stays-bare");
    }
  }

  @Test
  void bareServiceThatAnInsulatedOneContradictsIsAskedNotDropped() {
    TestElement pipe = TestElement.pipe(1, 60.3, 3).inSystem("Waste water").named("CHWS pipe");

    Takeoff takeoff = takeoff(pipe);

    assertLeftOut(takeoff, TakeoffFinding.SCOPE_UNDECIDED);
    assertThat(takeoff.elements().get(0).scope().reason())
        .isEqualTo(
            "waste water stays bare, but other votes say chilled water flow, which is insulated");
    assertThat(takeoff.questions())
        .extracting(Question::question)
        .containsExactly("Is this waste water or chilled water flow?");
  }

  @Test
  void extractAirIsOutAndReturnAirIsInOnlyInColdRooms() {
    TestElement extract = TestElement.duct(1, 300, 200, 3).inSystem("Extract air");
    TestElement warm = TestElement.duct(2, 300, 200, 3).inSystem("Return air");
    TestElement cold = TestElement.duct(3, 300, 200, 3).inSystem("Return air").at("Roof", true);

    Takeoff takeoff = takeoff(extract, warm, cold);

    assertThat(takeoff.elements())
        .extracting(e -> e.scope().scope())
        .containsExactly(Scope.OUT, Scope.OUT, Scope.IN);
  }

  @Test
  void userLeavesAServiceOutAndTakesAnotherIn() {
    Settings settings =
        TestSettings.of(
            "scope: {chilled-water-flow: out, fire-sprinkler: in}\n"
                + "thicknessesMm: {fire-sprinkler: 25}\n");
    Takeoff takeoff =
        Takeoff.of(
            List.of(
                TestElement.model(
                    chilled(1, 2), TestElement.pipe(2, 60.3, 3).inSystem("Sprinkler"))),
            settings);

    assertThat(takeoff.elements().get(0).scope().rule()).isEqualTo("left-out-by-settings");
    assertThat(takeoff.elements().get(0).trace().steps())
        .anyMatch(s -> s instanceof Trace.Given && s.what().equals("scope"));
    assertThat(takeoff.lines())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.serviceId()).isEqualTo("fire-sprinkler");
              assertThat(line.thicknessM()).isGreaterThanOrEqualTo(0.025);
            });
  }

  @Test
  void outdoorAirDuctOutdoorsIsBareUnlessTheSettingsTakeItIn() {
    TestElement duct = TestElement.duct(1, 300, 200, 3).inSystem("Outdoor air").at("Roof", true);
    Takeoff bare = Takeoff.of(List.of(TestElement.model(duct)), DEFAULTS);
    Takeoff taken =
        Takeoff.of(List.of(TestElement.model(duct)), TestSettings.of("scope: {outdoor-air: in}\n"));

    assertOut(
        bare, "outdoor-air-outdoors", "outdoor air: outdoors the duct carries the air around it");
    assertThat(bare.findings()).isEmpty();
    assertThat(taken.elements().get(0).scope().rule()).isEqualTo("in-by-settings");
  }

  private static TestElement ofStatus(String set, String text) {
    return chilled(1, 2).property(status(set, text));
  }

  private static Property status(String set, String text) {
    return new Property(set, "Status", text, null, null, false, false, 9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"DEMOLISH", "Abbruch"})
  void whatIsToBeDemolishedIsOutAlsoWhereTheSettingsTakeItsServiceIn(String status) {
    TestElement pipe = ofStatus("Pset_PipeSegmentTypeCommon", status);
    Settings taken = TestSettings.of("scope: {chilled-water-flow: in}\n");
    String reason = "is to be demolished: its status is '" + status + "'";

    assertOut(takeoff(pipe), "demolished", reason);
    assertOut(Takeoff.of(List.of(TestElement.model(pipe)), taken), "demolished", reason);
  }

  /** The architect's copy of a pipe stands first and says nothing of it. */
  @ParameterizedTest
  @CsvSource({
    ",demolished,false",
    "NEW,insulated-service,true",
    "EXISTING,existing,true",
    "Abbruch,demolished,false"
  })
  void whatAnotherFileSaysOfTheStatusIsHeardWhereItsOwnSaysNothingAndToldWhereItSaysOtherwise(
      @Nullable String own, String rule, boolean told) {
    String set = "Pset_PipeSegmentTypeCommon";
    MepElement first = (own == null ? chilled(1, 2) : ofStatus(set, own)).build();
    MepElement again = TestElement.pipe(2, 60.3, 2).property(status(set, "DEMOLISH")).build();
    MepModel model =
        TestElement.model(List.of(first, again.toBuilder().repeats(first.key()).build()));

    Takeoff taken = Takeoff.of(List.of(model), DEFAULTS);

    assertThat(taken.elements().get(0).scope().rule()).isEqualTo(rule);
    assertThat(taken.findings().stream().anyMatch(f -> f.code() == TakeoffFinding.STATUS_CONFLICT))
        .isEqualTo(told);
  }

  /** What is no status may be the name of a phase, and a Status of any set that of anything. */
  @ParameterizedTest
  @CsvSource({
    "Renovation Status, To be demolished, OUT",
    "Umbaustatus, Bestand, ASK",
    "Phase Created, Existing, ASK",
    "Phase Created, New Construction, IN",
    "Phase Created, Demolition, IN",
    "Umbau-Status, Bestand, ASK",
    "Renovierungsstatus, Neu, IN",
    "Renovierungsstatus, rückzubauen, OUT",
    "Estado de Renovação, Existente, ASK",
    "Phase de création, Existant, ASK",
    "Phase, Existing, ASK",
    "Phase, 2, IN",
    "Construction Status, TEMPORARY, ASK",
    "Phase Demolished, None, IN",
    "Phase Demolished, -1, IN",
    "Phase Demolished, Phase 2, ASK",
    "Status, Existing, IN"
  })
  void furtherPropertiesTellWhatIsThereAlready(String name, String text, Scope scope) {
    Property status = new Property("Other", name, text, null, null, false, false, 9);

    assertThat(takeoff(chilled(1, 2).property(status)).elements().get(0).scope().scope())
        .isEqualTo(scope);
  }

  @Test
  void whatIsThereAlreadyAndGoesInAPhaseIsToBeDemolished() {
    Property created =
        new Property("Phasing", "Phase Created", "Existing", null, null, false, false, 8);
    Property gone =
        new Property("Phasing", "Phase Demolished", "New Works", null, null, false, false, 9);

    assertOut(
        takeoff(chilled(1, 2).property(gone).property(created)),
        "demolished",
        "is to be demolished: its status is 'Phase Demolished New Works'");
  }

  @Test
  void whatIsThereForATimeOnlyIsAskedFor() {
    Takeoff asked = takeoff(ofStatus("Pset_PipeSegmentTypeCommon", "TEMPORARY"));

    assertLeftOut(asked, TakeoffFinding.SCOPE_UNDECIDED);
    assertThat(asked.questions())
        .extracting(Question::question)
        .containsExactly("Does the temporary chilled water flow get insulation?");
  }

  @Test
  void whatIsThereAlreadyIsAskedForUnlessTheSettingsTakeItsServiceIn() {
    TestElement pipe = ofStatus("Pset_PipeSegmentTypeCommon", "EXISTING");
    Settings taken = TestSettings.of("scope: {chilled-water-flow: in}\n");

    Takeoff asked = takeoff(pipe);

    assertLeftOut(asked, TakeoffFinding.SCOPE_UNDECIDED);
    assertThat(asked.questions())
        .extracting(Question::question, Question::lengthM)
        .containsExactly(tuple("Does the existing chilled water flow get new insulation?", 2.0));
    assertThat(Takeoff.of(List.of(TestElement.model(pipe)), taken).lines()).hasSize(1);
  }

  /** New, one of another kind, and that of a drawing's approval. */
  @Test
  void otherStatusesDecideNothing() {
    assertThat(takeoff(ofStatus("Pset_PipeSegmentTypeCommon", "NEW")).lines()).hasSize(1);
    assertThat(takeoff(ofStatus("Pset_PipeSegmentTypeCommon", "NOTKNOWN")).lines()).hasSize(1);
    assertThat(takeoff(ofStatus("Approval", "Existing")).lines()).hasSize(1);
  }
}
