package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.model.Finding;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.settings.SettingsReader;

/** What the adhesive stands, held against the temperature of the service. */
class AdhesiveLimitTest {

  private static final String FOAM =
      "materials: {hot: fef_epdm}\nenergyRule: none\nthicknessesMm: {heating-flow: 25}\n";

  @TempDir Path folder;

  @Test
  void gluedInsulationOnAHotterServiceIsAFinding() throws IOException {
    List<Finding> found = findings(FOAM + "temperaturesC: {heating-flow: 115}\n");

    assertThat(found)
        .singleElement()
        .extracting(Finding::message)
        .asString()
        .contains("115 degC of heating flow", "110 degC, unverified");
  }

  @Test
  void atTheLimitThereIsNone() throws IOException {
    assertThat(findings(FOAM + "temperaturesC: {heating-flow: 110}\n")).isEmpty();
  }

  @Test
  void theLimitOfTheUsersAdhesiveCounts() throws IOException {
    String hotter = FOAM + "temperaturesC: {heating-flow: 115}\n";

    assertThat(findings(hotter + "making: {adhesiveLimitC: 150}\n")).isEmpty();
  }

  @Test
  void sectionsHeldByWireNeedNoAdhesive() throws IOException {
    assertThat(findings("temperaturesC: {heating-flow: 115}\n")).isEmpty();
  }

  private List<Finding> findings(String settings) throws IOException {
    Path file = Files.writeString(folder.resolve("settings.yaml"), settings);
    TestElement pipe = TestElement.pipe(1, 60.3, 4).inSystem("Heating flow");
    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(pipe)), SettingsReader.read(file));
    assertThat(takeoff.lines()).hasSize(1);
    return takeoff.findings().stream()
        .filter(finding -> finding.code() == TakeoffFinding.ADHESIVE_LIMIT)
        .toList();
  }
}
