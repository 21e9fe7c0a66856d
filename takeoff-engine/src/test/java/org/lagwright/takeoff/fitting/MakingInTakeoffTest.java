package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.settings.SettingsReader;

/** Every way of making is reached from a model, not only when it is asked for directly. */
class MakingInTakeoffTest {

  @TempDir Path folder;

  private Takeoff takeoff(String yaml, TestElement... elements) {
    try {
      Path file = Files.writeString(folder.resolve("settings.yaml"), yaml);
      return Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.read(file));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<LayerMaking> layers(String yaml, TestElement element) {
    Making making = takeoff(yaml, element).elements().get(0).making();
    return making == null ? List.of() : making.layers();
  }

  private static String system(MakingChooserTest.Case given) {
    boolean air =
        given.built().kind() == Kind.DUCT_SEGMENT
            || given.built().kind() == Kind.DUCT_FITTING
            || given.method() == Method.DUCT_PANELS
            || given.built().form() == Form.DAMPER
            || given.built().form() == Form.SILENCER;
    return air ? "Supply air" : "CHWS";
  }

  /** Cases whose thickness in a takeoff is another than there. */
  private static List<TestElement> furtherElements() {
    Section duct = new Section.Rectangular(0.6, 0.4);
    return List.of(
        TestElement.of(1, Kind.DUCT_FITTING, Form.BEND)
            .section(duct)
            .bend(90, 0.305)
            .inSystem("Supply air"),
        TestElement.fitting(1, Form.BEND, 60.3).bend(90, 0.045).inSystem("CHWS"),
        TestElement.pipe(1, 60.3, 3).inSystem("Heating flow 70"));
  }

  @Test
  void everyRuleIsReachedFromAModel() {
    Set<String> reached = new HashSet<>();
    List<TestElement> elements = new ArrayList<>(furtherElements());
    MakingChooserTest.cases().forEach(c -> elements.add(c.element().inSystem(system(c))));
    for (TestElement element : elements) {
      layers("{}", element).forEach(layer -> reached.add(layer.rule()));
    }
    List<String> rules = MakingPack.bundled().rules().stream().map(MakingPack.Rule::id).toList();

    assertThat(reached).containsAll(rules);
  }

  @ParameterizedTest(name = "{0} degrees: {1} pieces cut at {2}")
  @CsvSource({"90, 5, 11.25", "45, 3, 11.25", "37.5, 3, 9.375", "60, 4, 10", "22.5, 3, 5.625"})
  void bendsOfAnyAngleAreCutAtTheirShareOfIt(double angleDeg, int pieces, double cutDeg) {
    TestElement bend = TestElement.fitting(1, Form.BEND, 168.3).bend(angleDeg, 0.2286);
    LayerMaking layer = layers("{}", bend.inSystem("CHWS")).get(0);

    assertThat(layer.method()).isEqualTo(Method.MITRED_PIECES);
    assertThat(layer.cover().pieces().stream().mapToInt(Piece::count).sum()).isEqualTo(pieces);
    assertThat(layer.cover().pieces().get(0).cutAnglesDeg().get(1)).isCloseTo(cutDeg, within(1e-9));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "bend, notched-tube",
    "bend, smooth-cover",
    "bend, two-piece-mitre",
    "tee, three-piece-tee",
    "reducer, cone",
    "valve-body, rectangular-box",
    "valve-body, body-box",
    "valve-body, removable-valve-box",
    "strainer, removable-valve-box",
    "flange, removable-flange-box"
  })
  void methodOfTheSettingsIsUsed(String form, String method) {
    Section large = new Section.Round(0.0603);
    TestElement element =
        switch (form) {
          case "bend" -> TestElement.fitting(1, Form.BEND, 114.3).bend(90, 0.1524);
          case "tee" -> TestElement.fitting(1, Form.TEE, 60.3);
          case "reducer" ->
              TestElement.fitting(1, Form.REDUCER, 60.3)
                  .ends(large, new Section.Round(0.0424))
                  .length(0.1);
          case "flange" -> TestElement.fitting(1, Form.FLANGE, 114.3);
          case "strainer" -> TestElement.of(1, Kind.INLINE, Form.STRAINER).round(114.3).length(0.3);
          default -> TestElement.of(1, Kind.VALVE, Form.VALVE_BODY).round(114.3).length(0.2);
        };
    LayerMaking layer =
        layers("methods: {" + form + ": " + method + "}", element.inSystem("CHWS")).get(0);

    assertThat(layer.method().label()).isEqualTo(method);
    assertThat(layer.reason()).isEqualTo("chosen in the settings");
    assertThat(layer.cover().pieces()).isNotEmpty();
    assertThat(layer.bonding() == Making.Bonding.ITSELF).isEqualTo(method.startsWith("removable"));
  }

  @Test
  void branchBesideTheAxisOfItsMainGetsAnObliqueSaddle() {
    Section main = new Section.Round(0.1143);
    TestElement tee =
        TestElement.fitting(1, Form.TEE, 114.3)
            .ends(main, main, new Section.Round(0.0424))
            .end(-0.2, 0, -1, 0)
            .end(0.2, 0, 1, 0)
            .end(new Point(0, 0.2, 0.02), new Point(0, 1, 0));
    LayerMaking layer = layers("{}", tee.inSystem("CHWS")).get(0);

    assertThat(layer.rule()).isEqualTo("tee-reducing");
    TubePiece branch = (TubePiece) layer.cover().pieces().get(1).shape();
    assertThat(((EndCut.Saddle) branch.end()).offsetM()).isCloseTo(0.02, within(1e-9));
  }

  /** As where another file joined first the one end of the run, then the branch. */
  @Test
  void portsInAnyOrderLeaveTheBranchOfATeeItsSize() {
    Section main = new Section.Round(0.0889);
    TestElement tee =
        TestElement.fitting(1, Form.TEE, 88.9)
            .ends(main, main, new Section.Round(0.0603))
            .end(-0.1, 0, -1, 0)
            .end(0, 0.1, 0, 1)
            .end(0.1, 0, 1, 0);
    LayerMaking layer = layers("{}", tee.inSystem("CHWS")).get(0);

    assertThat(layer.rule()).isEqualTo("tee-reducing");
    TubePiece branch = (TubePiece) layer.cover().pieces().get(1).shape();
    double boreM = branch.outer().widthM() - 2 * branch.wallM();
    assertThat(boreM).isCloseTo(0.0603, within(1e-9));
  }

  @Test
  void aSecondLayerIsSheetMeasuredOverTheFirst() {
    TestElement pipe = TestElement.pipe(1, 114.3, 2).inSystem("CHWS");
    List<LayerMaking> layers = layers("thicknessesMm: {chilled-water-flow: 60}", pipe);

    assertThat(layers).hasSize(2);
    Piece second = layers.get(1).cover().pieces().get(0);
    assertThat(second.isSheet()).isTrue();
    double totalM = layers.get(0).cover().pieces().get(0).layer().thicknessM();
    totalM += second.layer().thicknessM();
    assertThat(second.sheetAreaM2()).isCloseTo(2 * Math.PI * (0.1143 + 2 * totalM), within(1e-9));
  }

  @Test
  void widthsThatNoModelTellsAreNamedOnceForAllElements() {
    Section duct = new Section.Rectangular(0.6, 0.4);
    Section round = new Section.Round(0.0603);
    Takeoff takeoff =
        takeoff(
            "making: {bodyPlusMm: 26}",
            TestElement.fitting(1, Form.UNION, 33.7).inSystem("CHWS"),
            TestElement.fitting(2, Form.COUPLING, 33.7).inSystem("CHWS"),
            TestElement.fitting(3, Form.COUPLING, 42.4).inSystem("CHWS"),
            TestElement.of(4, Kind.INLINE, Form.METER).section(round).length(0.3).inSystem("CHWS"),
            threadedElbow(5),
            TestElement.of(6, Kind.DUCT_FITTING, Form.FLANGE).section(duct).inSystem("Supply air"),
            TestElement.of(7, Kind.DUCT_FITTING, Form.COUPLING)
                .section(duct)
                .inSystem("Supply air"));

    assertThat(
            takeoff.findings().stream()
                .filter(f -> f.code() == TakeoffFinding.WIDTH_ASSUMED)
                .peek(f -> assertThat(f.effect()).isEqualTo(Effect.ASSUMED))
                .map(Finding::message))
        .satisfiesExactlyInAnyOrder(
            m -> assertThat(m).contains("1 elements", "26 mm, both sides", "(bodyPlusMm)"),
            m -> assertThat(m).contains("1 elements", "meters", "26 mm wider"),
            m -> assertThat(m).contains("3 elements", "unions and couplings", "26 mm long"),
            m -> assertThat(m).contains("1 elements", "duct flanges are 30 mm high"),
            m -> assertThat(m).contains("1 elements", "joints of ducts stand out 30 mm"));
    assertThat(takeoff.elements().get(4).trace().steps())
        .anySatisfy(step -> assertThat(step.what()).isEqualTo("width"));
  }

  private static TestElement threadedElbow(long step) {
    return TestElement.fitting(step, Form.BEND, 33.7)
        .bend(90, 0.038)
        .named("Malleable elbow, threaded")
        .inSystem("CHWS");
  }
}
