package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** What the user is told about the settings themselves, and about air that was assumed. */
class SettingsFindingsTest {

  @TempDir Path folder;

  private static MepElement pipe(long step, String name, String system) {
    return TestElement.pipe(step, 60.3, 2).named(name).inSystem(system).build();
  }

  private Settings settings(String yaml) {
    try {
      return SettingsReader.read(Files.writeString(folder.resolve("settings.yaml"), yaml));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<String> messages(String yaml, String code, MepElement... elements) {
    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(List.of(elements))), settings(yaml));
    return takeoff.findings().stream()
        .filter(finding -> finding.code().name().equals(code))
        .map(Finding::message)
        .toList();
  }

  @Test
  void mappingThatMatchesNothingIsAFinding() {
    String yaml = "services: [{contains: Vorluaf, service: heating-flow}]";

    assertThat(messages(yaml, "MAPPING_WITHOUT_EFFECT", pipe(1, "Vorlauf 1", "x")))
        .singleElement()
        .asString()
        .contains("Vorluaf", "no name");
  }

  @Test
  void mappingBehindAnotherOneThatTakesAllItsElementsIsAFinding() {
    String yaml =
        "services: [{contains: Vorlauf, service: heating-flow},"
            + " {contains: Vorlauf 1, service: brine-flow}]";

    assertThat(messages(yaml, "MAPPING_WITHOUT_EFFECT", pipe(1, "Vorlauf 1", "x")))
        .singleElement()
        .asString()
        .contains("'Vorlauf 1'", "earlier");
  }

  @Test
  void placeThatMatchesNothingIsAFinding() {
    String yaml = "places: [{contains: Plant, location: plant-room}]";

    assertThat(messages(yaml, "MAPPING_WITHOUT_EFFECT", pipe(1, "Pipe", "Heating flow")))
        .singleElement()
        .asString()
        .contains("'Plant'", "'places'");
  }

  @Test
  void mappingThatOverrulesTheModelNamesHowManyAndOne() {
    String yaml = "services: [{contains: Pipe, service: heating-flow}]";

    assertThat(
            messages(
                yaml,
                "MAPPING_OVERRULES",
                pipe(1, "Pipe 1", "Chilled water flow"),
                pipe(2, "Pipe 2", "Chilled water flow"),
                pipe(3, "Pipe 3", "Heating flow")))
        .singleElement()
        .asString()
        .contains("2 elements", "'Pipe 1'", "Chilled water");
  }

  @Test
  void matchedMappingStandsInTheTrace() {
    Takeoff takeoff =
        Takeoff.of(
            List.of(TestElement.model(List.of(pipe(1, "HK1 Vorlauf", "x")))),
            settings("services: [{contains: vorlauf, service: heating-flow}]"));

    assertThat(takeoff.elements().get(0).trace().steps())
        .filteredOn(step -> step instanceof Trace.Given)
        .extracting(step -> ((Trace.Given) step).setting())
        .contains("services: 'vorlauf' in 'HK1 Vorlauf'");
  }

  @Test
  void airThatWasAssumedIsOneFindingForAllElements() {
    assertThat(
            messages(
                "project: x",
                "LOCATION_ASSUMED",
                pipe(1, "Pipe 1", "Chilled water flow"),
                pipe(2, "Pipe 2", "Chilled water flow")))
        .singleElement()
        .asString()
        .contains("2 elements", "indoor");
  }

  @Test
  void questionNamesAnExample() {
    Takeoff takeoff =
        Takeoff.of(
            List.of(TestElement.model(List.of(pipe(1, "Pipe 1", "x")))), settings("project: x"));

    assertThat(takeoff.questions().get(0).inFull()).contains("'Pipe 1'");
  }
}
