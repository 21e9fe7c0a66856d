package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.settings.DemandSettings;
import org.lagwright.takeoff.settings.OrderSettings;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;
import org.lagwright.takeoff.thickness.ThicknessPacks;

class TakeoffTest {

  private static final Settings DEFAULTS = SettingsReader.defaults();

  @Test
  void pipeInAPlantRoomByItsNameIsReckonedInPlantRoomAir() {
    TestElement pipe = TestElement.pipe(1, 60.3, 2).inSystem("CHW flow").at("Plant room", null);

    TakenElement taken = Takeoff.of(List.of(TestElement.model(pipe)), DEFAULTS).elements().get(0);

    assertThat(taken.trace().steps())
        .filteredOn(step -> step.what().equals("location"))
        .singleElement()
        .isInstanceOf(Trace.Decided.class)
        .extracting(Trace.Step::value)
        .isEqualTo("plant-room");
  }

  @Test
  void buriedPipeIsAskedFor() {
    TestElement pipe =
        TestElement.pipe(1, 60.3, 2).inSystem("District heating flow").at("Buried services", null);

    TakenElement taken = Takeoff.of(List.of(TestElement.model(pipe)), DEFAULTS).elements().get(0);

    assertThat(taken.scope().scope()).isEqualTo(Scope.ASK);
    assertThat(taken.scope().reason()).contains("in the ground");
  }

  @Test
  void chilledPipeIsOnALineWithMetresAreaAndVolume() {
    Takeoff takeoff = takeoff(chilled(1, 5).at("Level 1", false));

    TakeoffLine line = takeoff.lines().get(0);
    double outsideM = 0.0603 + 2 * line.thicknessM();
    assertThat(line.id()).isEqualTo("L001");
    assertThat(line.serviceId()).isEqualTo("chilled-water-flow");
    assertThat(line.unit()).isEqualTo("m");
    assertThat(line.quantity()).isEqualTo(5);
    assertThat(line.thicknessM()).isGreaterThan(0.006);
    assertThat(line.outerAreaM2()).isCloseTo(Math.PI * outsideM * 5, within(1e-9));
    assertThat(line.volumeM3())
        .isCloseTo(Math.PI / 4 * (outsideM * outsideM - 0.0603 * 0.0603) * 5, within(1e-9));
    assertThat(line.rule()).isNotBlank();
    assertThat(takeoff.findings()).isEmpty();
  }

  @Test
  void pipeWithoutSectionIsLeftOutAndReported() {
    TestElement pipe =
        TestElement.of(1, Kind.PIPE_SEGMENT, Form.STRAIGHT).length(3).inSystem("CHWS");

    assertLeftOut(takeoff(pipe), TakeoffFinding.SIZE_UNKNOWN);
  }

  @Test
  void pipeWithoutLengthIsLeftOutAndReported() {
    TestElement pipe =
        TestElement.of(1, Kind.PIPE_SEGMENT, Form.STRAIGHT).round(60.3).inSystem("CHWS");

    assertLeftOut(takeoff(pipe), TakeoffFinding.LENGTH_UNKNOWN);
  }

  @Test
  void pipeOfUnknownServiceIsAskedNotGuessed() {
    Takeoff takeoff = takeoff(TestElement.pipe(1, 60.3, 7).inSystem("?"));

    assertLeftOut(takeoff, TakeoffFinding.SERVICE_UNKNOWN);
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
        with(
            Map.of("chilled-water-flow", "out", "fire-sprinkler", "in"),
            Map.of("fire-sprinkler", 0.025));
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
  void coolDuctWhoseDemandsAreMetBareIsOutWithTheFiguresInItsTrace() {
    Settings dry = withIndoorAir(Settings.Air.still(24, 20, "test"));
    TestElement duct = TestElement.duct(1, 300, 200, 3).inSystem("Supply air");

    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(duct)), dry);

    assertOut(takeoff, "no-demand", "supply air: no demand needs insulation here");
    assertThat(takeoff.findings())
        .extracting(Finding::code)
        .containsExactly(TakeoffFinding.NO_INSULATION_NEEDED);
    assertThat(takeoff.elements().get(0).trace().steps())
        .anyMatch(s -> s.what().equals("condensation demand") && s.value().equals("0.0 mm"));
  }

  @Test
  void hotPipeWithoutAnyRuleIsLeftOutNotSilentlyBare() {
    TestElement pipe = TestElement.pipe(1, 60.3, 3).inSystem("LTHW flow");

    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(pipe)), withRule("none"));

    assertLeftOut(takeoff, TakeoffFinding.NO_DEMAND);
    assertThat(takeoff.findings().get(0).message())
        .startsWith("No demand applies to heating flow (80 degC).");
  }

  @Test
  void materialThatDoesNotStandTheMediumIsRefused() {
    Settings settings = withMaterial("hot", "fef_nbr");

    Takeoff takeoff =
        Takeoff.of(
            List.of(TestElement.model(TestElement.pipe(1, 60.3, 3).inSystem("Steam"))), settings);

    assertLeftOut(takeoff, TakeoffFinding.MATERIAL_LIMIT);
  }

  @Test
  void thicknessThatNoStockReachesIsReported() {
    Settings thick = with(Map.of(), Map.of("chilled-water-flow", 0.5));

    assertLeftOut(
        Takeoff.of(List.of(TestElement.model(chilled(1, 2))), thick),
        TakeoffFinding.NO_STOCK_THICKNESS);
  }

  @Test
  void airInWhichNothingStaysDryIsReportedAsThat() {
    Settings wet = withIndoorAir(Settings.Air.still(35, 99, "test"));

    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(chilled(1, 2))), wet);

    assertLeftOut(takeoff, TakeoffFinding.CONDENSATION_OUT_OF_REACH);
    assertThat(takeoff.findings().get(0).message()).contains("35 degC, 99 % relative humidity");
  }

  @Test
  void outdoorAirDuctOutdoorsIsBareUnlessTheSettingsTakeItIn() {
    TestElement duct = TestElement.duct(1, 300, 200, 3).inSystem("Outdoor air").at("Roof", true);
    Takeoff bare = Takeoff.of(List.of(TestElement.model(duct)), DEFAULTS);
    Takeoff taken =
        Takeoff.of(List.of(TestElement.model(duct)), with(Map.of("outdoor-air", "in"), Map.of()));

    assertOut(
        bare, "outdoor-air-outdoors", "outdoor air: outdoors the duct carries the air around it");
    assertThat(bare.findings()).isEmpty();
    assertThat(taken.elements().get(0).scope().rule()).isEqualTo("in-by-settings");
  }

  @Test
  void contradictionIsReportedAndTakesTheMaterialOfTheColderService() {
    Takeoff takeoff =
        takeoff(
            TestElement.pipe(1, 60.3, 4)
                .inSystem("Heating flow")
                .named("Kälte VL")
                .at("Level 1", false));

    assertThat(takeoff.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(TakeoffFinding.SERVICE_CONTRADICTION);
              assertThat(f.effect()).isEqualTo(Effect.ASSUMED);
              assertThat(f.message())
                  .contains("heating flow by system name 'Heating'")
                  .contains("chilled water flow by element name 'Kälte'");
            });
    assertThat(takeoff.lines().get(0).materialId()).isEqualTo(DEFAULTS.materials().get("cold"));
    assertThat(takeoff.lines().get(0).serviceId()).isEqualTo("heating-flow");
  }

  @Test
  void locationComesFromTheModelThenFromPlacesElseIndoor() {
    Settings settings = withPlaces(List.of(new Settings.PlaceRule("PLANT", "plant-room")));
    Takeoff takeoff =
        Takeoff.of(
            List.of(
                TestElement.model(
                    chilled(1, 1).at("Plant level", true),
                    chilled(2, 1).at("Plant level", false),
                    chilled(3, 1).at("Level 1", null))),
            settings);

    assertThat(takeoff.lines())
        .extracting(TakeoffLine::location)
        .containsExactlyInAnyOrder("outdoor", "plant-room", "indoor");
    assertThat(takeoff.elements().get(1).trace().steps())
        .contains(new Trace.Given("location", "plant-room", "places: 'PLANT' in 'Plant level'"));
    assertThat(takeoff.elements().get(2).trace().steps())
        .anyMatch(s -> s instanceof Trace.Assumed && s.what().equals("location"));
  }

  @Test
  void traceFollowsANumberFromTheModelToTheLine() {
    Evidence evidence = new Evidence(7, "Pset.Length", "30000");
    Measured<Double> lengthM =
        new Measured<>(
            5.0,
            How.PORTS,
            new Evidence(6, "ports", "distance"),
            List.of(new Candidate<>(30.0, How.QUANTITY_SET, evidence, "equal on all elements")));
    MepElement pipe =
        MepElement.builder(TestElement.key(1), "guid", "IFCPIPESEGMENT")
            .is(Kind.PIPE_SEGMENT, Form.STRAIGHT)
            .section(
                Measured.of(new Section.Round(0.0603), How.SOLID, new Evidence(5, "Radius", "30")))
            .lengthM(lengthM)
            .systems(chilled(1, 1).build().systems())
            .build();

    List<Trace.Step> steps =
        Takeoff.of(List.of(TestElement.model(List.of(pipe))), DEFAULTS)
            .elements()
            .get(0)
            .trace()
            .steps();

    assertThat(steps)
        .contains(
            new Trace.Lost(
                "length", "30.000 m", How.QUANTITY_SET, evidence, "equal on all elements"));
    assertThat(steps)
        .extracting(Trace.Step::what)
        .containsSubsequence(
            "section",
            "length",
            "location",
            "service",
            "medium for condensation",
            "medium for energy",
            "scope",
            "condensation demand",
            "build-up",
            "quantity",
            "outer area",
            "volume");
  }

  @Test
  void unknownDirectionIsAssumedAndSaid() {
    Takeoff takeoff = takeoff(TestElement.pipe(1, 60.3, 4).inSystem("CHW"));

    assertThat(takeoff.lines().get(0).serviceName())
        .isEqualTo("chilled water (flow or return not told)");
    assertThat(takeoff.elements().get(0).trace().steps())
        .anyMatch(s -> s instanceof Trace.Assumed && s.value().equals("chilled water flow"));
  }

  @Test
  void findingsOfTheReaderStandBeforeThoseOfTheEngineInFileOrder() {
    Finding ofFile = Finding.ofFile(0, TakeoffFinding.NO_DEMAND, Effect.NONE, "a", "b", "c");
    Finding second =
        Finding.about(TestElement.key(2), TakeoffFinding.NO_STOCK_THICKNESS, Effect.NONE, "a");
    MepModel model =
        new MepModel(
            new ModelFile(0, "m.ifc", "0", "IFC4"),
            List.of(TestElement.pipe(1, 60, 1).build(), TestElement.pipe(2, 60, 1).build()),
            List.of(),
            List.of(second, ofFile),
            Map.of());

    List<Finding> findings = Takeoff.of(List.of(model), DEFAULTS).findings();

    assertThat(findings).hasSize(4).startsWith(ofFile).element(2).isEqualTo(second);
  }

  @Test
  void unknownMaterialIsRefusedBeforeTheFirstElement() {
    assertThatThrownBy(() -> Takeoff.of(List.of(), withMaterial("hot", "straw")))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("straw");
  }

  @Test
  void twoElementsWithOneKeyAreRefused() {
    assertThatThrownBy(() -> takeoff(chilled(1, 1), chilled(1, 1)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static TestElement chilled(long step, double lengthM) {
    return TestElement.pipe(step, 60.3, lengthM).inSystem("CHWS");
  }

  private static Takeoff takeoff(TestElement... elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), DEFAULTS);
  }

  private static void assertLeftOut(Takeoff takeoff, TakeoffFinding code) {
    assertThat(takeoff.lines()).isEmpty();
    assertThat(takeoff.totals().leftOut()).isEqualTo(1);
    assertThat(takeoff.elements().get(0).leftOutWith()).isEqualTo(code.name());
    assertThat(takeoff.findings())
        .filteredOn(f -> f.effect() == Effect.LEFT_OUT)
        .extracting(Finding::code)
        .containsExactly(code);
    assertThat(takeoff.questions()).extracting(Question::code).containsExactly(code.name());
  }

  private static void assertOut(Takeoff takeoff, String rule, String reason) {
    assertThat(takeoff.totals().outOfScope()).isEqualTo(1);
    assertThat(takeoff.elements().get(0).scope().rule()).isEqualTo(rule);
    assertThat(takeoff.elements().get(0).scope().reason()).isEqualTo(reason);
    assertThat(takeoff.findings()).noneMatch(f -> f.effect() != Effect.NONE);
  }

  private static Settings with(Map<String, String> scope, Map<String, Double> thicknessesM) {
    return settings(
        DEFAULTS.air(),
        List.of(),
        DEFAULTS.energyRule(),
        DEFAULTS.materials(),
        scope,
        thicknessesM);
  }

  private static Settings withIndoorAir(Settings.Air air) {
    return settings(
        Map.of("indoor", air),
        List.of(),
        DEFAULTS.energyRule(),
        DEFAULTS.materials(),
        Map.of(),
        Map.of());
  }

  private static Settings withRule(String rule) {
    return settings(DEFAULTS.air(), List.of(), rule, DEFAULTS.materials(), Map.of(), Map.of());
  }

  private static Settings withPlaces(List<Settings.PlaceRule> places) {
    return settings(
        DEFAULTS.air(), places, DEFAULTS.energyRule(), DEFAULTS.materials(), Map.of(), Map.of());
  }

  private static Settings withMaterial(String kind, String material) {
    Map<String, String> materials = new java.util.HashMap<>(DEFAULTS.materials());
    materials.put(kind, material);
    return settings(
        DEFAULTS.air(), List.of(), DEFAULTS.energyRule(), materials, Map.of(), Map.of());
  }

  private static Settings settings(
      Map<String, Settings.Air> air,
      List<Settings.PlaceRule> places,
      String rule,
      Map<String, String> materials,
      Map<String, String> scope,
      Map<String, Double> thicknessesM) {
    return new Settings(
        "test",
        air,
        places,
        rule,
        DEFAULTS.condensationMarginK(),
        DEFAULTS.surfaceEmissivity(),
        DEFAULTS.ground(),
        DEFAULTS.joinToleranceM(),
        materials,
        List.of(),
        Map.of(),
        scope,
        thicknessesM,
        DemandSettings.NONE,
        List.of(),
        Map.of(),
        Map.of(),
        OrderSettings.NONE,
        ThicknessPacks.bundled(),
        LabourNorms.bundled());
  }
}
