package org.lagwright.takeoff.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.settings.SettingsReader;

/** What is counted, by whom it was written, and what comes first. */
class ReadinessTest {

  @TempDir Path folder;

  private static MepModel model(String exporter, List<Finding> findings, TestElement... elements) {
    ModelFile file = new ModelFile(0, exporter + ".ifc", "0".repeat(64), "IFC4", exporter);
    List<MepElement> built = Arrays.stream(elements).map(TestElement::build).toList();
    return new MepModel(file, built, List.of(), findings, Map.of());
  }

  private static Readiness readiness(MepModel... models) {
    return Readiness.of(List.of(models), SettingsReader.defaults());
  }

  private static TestElement pipe(long step) {
    return TestElement.pipe(step, 60.3, 5).inSystem("Heating flow").middle(step, 0);
  }

  private static TestElement withoutService(long step) {
    return TestElement.pipe(step, 60.3, 5).middle(step, 0);
  }

  private static ReadinessRow row(Readiness readiness, String id) {
    return readiness.byRequirement().stream()
        .filter(r -> r.requirement().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anElementIsReadyWhereNothingNeededIsMissing() {
    Readiness readiness = readiness(model("A", List.of(), pipe(1), pipe(2), withoutService(3)));

    assertThat(readiness.elements()).isEqualTo(3);
    assertThat(readiness.models().get(0).ready()).isEqualTo(2);
    assertThat(readiness.readyPct()).isCloseTo(200.0 / 3, within(1e-9));
    assertThat(row(readiness, "service").missing()).isEqualTo(1);
    assertThat(row(readiness, "service").examples()).containsExactly("guid-3");
    assertThat(row(readiness, "temperature").missing()).as("helpful only").isEqualTo(3);
  }

  @Test
  void whatConcernsTheFileConcernsAllItsElements() {
    Finding unit = Finding.ofFile(0, ReadFinding.UNITS_ASSUMED, Effect.ASSUMED, "length", "metre");
    Finding angle =
        Finding.ofFile(0, ReadFinding.UNITS_ASSUMED, Effect.ASSUMED, "plane angle", "radian");

    assertThat(readiness(model("A", List.of(unit), pipe(1), pipe(2))).readyPct()).isZero();
    assertThat(readiness(model("A", List.of(angle), pipe(1), pipe(2))).readyPct()).isEqualTo(100);
  }

  @Test
  void whatAnEarlierFileHoldsAlreadyAndWhatIsNotLaggedIsNotCounted() {
    MepElement again = pipe(2).build().toBuilder().repeats(TestElement.key(1)).build();
    MepElement chiller = TestElement.of(3, Kind.EQUIPMENT, Form.UNKNOWN).build();
    MepModel model = TestElement.model(List.of(pipe(1).build(), again, chiller));

    assertThat(readiness(model).elements()).isEqualTo(1);
  }

  @Test
  void rowsAreKeptApartByProgramClassAndTypeAndTheWorstComesFirst() {
    Readiness readiness =
        readiness(
            model("Office A", List.of(), withoutService(1).typed(null, "Steel"), pipe(2)),
            model(
                "Office B",
                List.of(),
                withoutService(11).typed(null, "Copper"),
                withoutService(12).typed(null, "Copper")));
    List<ReadinessRow> worst = readiness.worst();

    assertThat(worst.get(0).requirement().need()).isEqualTo(Need.NEEDED);
    assertThat(worst.get(0).group())
        .isEqualTo(new ReadinessRow.Group("Office B", "IFCPIPESEGMENT", "Copper"));
    assertThat(worst.get(0).missing()).isEqualTo(2);
    assertThat(worst.get(1).group().exporter()).isEqualTo("Office A");
    assertThat(worst.stream().map(r -> r.requirement().need()).toList())
        .isSortedAccordingTo(Comparator.naturalOrder());
  }

  @Test
  void aNameThatTheSettingsMapToAServiceCounts() throws IOException {
    Path settings = folder.resolve("settings.yaml");
    Files.writeString(settings, "services:\n  - {contains: Kreis 7, service: heating-flow}\n");
    MepModel model = model("A", List.of(), withoutService(1).inSystem("Kreis 7"));

    assertThat(row(readiness(model), "service").missing()).isEqualTo(1);
    Readiness mapped = Readiness.of(List.of(model), SettingsReader.read(settings));
    assertThat(row(mapped, "service").missing()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "need: needed | need: wanted",
        "known: section | known: colour",
        "schemas: [IFC4, IFC4X3_ADD2] | schemas: [IFC5]",
        "kinds: [pipe-segment] | kinds: [pipe]",
        "attribute: {name: Representation} | attribute: {name: Tag, pattern: x}",
        "from: 0.003, to: 3 | from: 3, to: 0.003",
        "notInIds: IDS cannot tell what a name means. | ask: again"
      })
  void aPackThatMakesNoSenseIsRefused(String right, String wrong) throws IOException {
    Path pack = Path.of("src/main/resources/org/lagwright/takeoff/readiness/requirements.yaml");
    String text = Files.readString(pack);
    assertThat(text).contains(right);
    Path damaged = folder.resolve("requirements.yaml");
    Files.writeString(damaged, text.replaceFirst(Pattern.quote(right), wrong));

    assertThatThrownBy(() -> PackReader.readFile(damaged, RequirementPack.class))
        .isInstanceOf(PackException.class)
        .hasMessageStartingWith(damaged + ":");
  }
}
