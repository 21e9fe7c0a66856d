package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.takeoff.TakeoffAssertions.assertLeftOut;
import static org.lagwright.takeoff.TakeoffAssertions.chilled;
import static org.lagwright.takeoff.TakeoffAssertions.takeoff;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
import org.lagwright.takeoff.settings.DemandSettings;
import org.lagwright.takeoff.settings.OrderSettings;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;
import org.lagwright.takeoff.settings.UnitSystem;
import org.lagwright.takeoff.thickness.ThicknessPacks;

/** What becomes of an element on its way from the model to the line. */
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

  /** Metres read as millimetres, millimetres as metres. */
  @ParameterizedTest
  @CsvSource({"60300,3", "0.0603,3", "5001,3", "60.3,2001"})
  void sizeBeyondWhatIsBuiltIsLeftOutAndReported(double diameterMm, double lengthM) {
    TestElement pipe =
        TestElement.of(1, Kind.PIPE_SEGMENT, Form.STRAIGHT)
            .round(diameterMm)
            .length(lengthM)
            .inSystem("CHWS");

    assertLeftOut(takeoff(pipe), TakeoffFinding.SIZE_IMPLAUSIBLE);
  }

  @Test
  void locationComesFromTheModelThenFromPlacesElseIndoor() {
    Settings settings = TestSettings.of("places: [{contains: PLANT, location: plant-room}]\n");
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
    Settings straw =
        new Settings(
            "test",
            DEFAULTS.air(),
            List.of(),
            DEFAULTS.energyRule(),
            DEFAULTS.condensationMarginK(),
            DEFAULTS.surfaceEmissivity(),
            DEFAULTS.surfaceCoefficients(),
            DEFAULTS.ground(),
            DEFAULTS.joinToleranceM(),
            Map.of("cold", "fef_nbr", "hot", "straw", "air", "fef_nbr"),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            DemandSettings.NONE,
            List.of(),
            Map.of(),
            Map.of(),
            List.of(),
            OrderSettings.NONE,
            Map.of(),
            UnitSystem.METRIC,
            ThicknessPacks.bundled(),
            LabourNorms.bundled(),
            null);

    assertThatThrownBy(() -> Takeoff.of(List.of(), straw))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("straw");
  }

  @Test
  void twoElementsWithOneKeyAreRefused() {
    assertThatThrownBy(() -> takeoff(chilled(1, 1), chilled(1, 1)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
