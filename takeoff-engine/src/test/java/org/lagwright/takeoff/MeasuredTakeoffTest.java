package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;
import org.lagwright.takeoff.measure.Reconciliation;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Methods of measurement and choices of the order, from settings to takeoff. */
class MeasuredTakeoffTest {

  @TempDir Path folder;

  @Test
  void withoutSettingsTheNetMethodGivesTheTotalsOfTheTakeoff() {
    Takeoff takeoff = takeoff(SettingsReader.defaults());

    assertThat(takeoff.measurements()).hasSize(1);
    Measurement net = takeoff.measurements().get(0);
    assertThat(net.method().id()).isEqualTo("net");
    assertThat(net.total(Quantity.LENGTH))
        .isCloseTo(takeoff.totals().insulatedLengthM(), within(1e-9));
    assertThat(net.total(Quantity.PIECES)).isEqualTo(takeoff.totals().insulatedPieces());
    assertThat(net.total(Quantity.AREA)).isCloseTo(takeoff.totals().outerAreaM2(), within(1e-9));
    assertThat(net.total(Quantity.VOLUME)).isCloseTo(takeoff.totals().volumeM3(), within(1e-9));
  }

  @Test
  void twoMethodsOnOneModelDifferByItsFittings() throws IOException {
    Takeoff takeoff = takeoff(settings("measurement: [net, over-measured]\n"));

    Measurement net = takeoff.measurements().get(0);
    Measurement over = takeoff.measurements().get(1);
    // the bend by its arc, the valve by its length
    double fittingsM = Math.PI / 2 * 0.1524 + 0.19;
    assertThat(over.total(Quantity.LENGTH) - net.total(Quantity.LENGTH))
        .isCloseTo(fittingsM, within(1e-9));
    assertThat(
            Reconciliation.of(net, over).rows().stream()
                .filter(row -> row.quantity() == Quantity.LENGTH)
                .mapToDouble(Reconciliation.Row::difference)
                .sum())
        .isCloseTo(fittingsM, within(1e-9));
  }

  @Test
  void bareValveBetweenInsulatedPipesIsAnInterruption() throws IOException {
    Settings settings = settings("measurement: [de-metre-and-pieces]\n");
    Takeoff takeoff =
        Takeoff.of(
            List.of(
                TestElement.model(
                    pipe(1, 4).joinedTo(2),
                    TestElement.of(2, Kind.VALVE, Form.VALVE_BODY)
                        .round(114.3)
                        .length(0.19)
                        .inSystem("Compressed air")
                        .joinedTo(1, 3),
                    pipe(3, 2).joinedTo(2))),
            settings);

    assertThat(takeoff.elements().get(1).lineId()).isNull();
    Measurement measured = takeoff.measurements().get(0);
    assertThat(measured.total(Quantity.LENGTH)).isCloseTo(6.19, within(1e-9));
    assertThat(measured.total(Quantity.PIECES)).isZero();
  }

  @Test
  void ownMethodStandsInAFileBesideTheSettings() throws IOException {
    Files.writeString(
        folder.resolve("own.yaml"),
        """
        id: own
        version: "1"
        source: contract
        status: given by the user, not checked
        methods:
          - id: contract
            name: metres times two
            source: contract, clause 4
            status: given by the user, not checked
            rules:
              - {id: twice, when: [segment], of: LENGTH, along: NET, factor: 2, text: twice the net length}
        """);
    Takeoff takeoff = takeoff(settings("measurement: [own.yaml]\n"));

    assertThat(takeoff.measurements().get(0).total(Quantity.LENGTH)).isCloseTo(12, within(1e-9));
  }

  @Test
  void wrongChoicesAreRefusedWithFileLineAndColumn() {
    assertRefused(
        "project: x\nmeasurement: [net, feet]\n", ":2:20: 'feet' is no method of measurement");
    assertRefused("order:\n  hangers: steel\n", ":2:12: 'steel' is no table of hangers");
    assertRefused("order:\n  jackets:\n    - {jacket: gold}\n", ":3:16: 'gold' is no jacket");
    assertRefused(
        "order:\n  jackets:\n    - {jacket: metal, location: moon}\n",
        ":3:33: 'moon' is no location class");
    assertRefused(
        "order:\n  figures: {tubeAllowance: 3}\n",
        ":2:13: 'tubeAllowance' is no figure of the order");
    assertRefused("order:\n  figures: {adhesiveTinL: 0}\n", ":2:13: figures of adhesiveTinL");
    assertRefused("order:\n  colour: red\n", ":2:3: unknown key 'colour'");
  }

  @Test
  void wrongMethodOfTheUserIsRefusedWithFileLineAndColumn() throws IOException {
    Path own =
        Files.writeString(
            folder.resolve("own.yaml"),
            """
            id: own
            version: "1"
            source: contract
            status: given by the user, not checked
            methods:
              - id: contract
                name: x
                source: y
                status: given by the user, not checked
                rules:
                  - {id: a, when: [blue], of: LENGTH, along: NET, text: x}
            """);

    assertThatThrownBy(() -> settings("measurement: [own.yaml]\n"))
        .isInstanceOf(PackException.class)
        .hasMessageStartingWith(own + ":11:")
        .hasMessageContaining("fact 'blue' is not known");
  }

  private void assertRefused(String text, String message) {
    assertThatThrownBy(() -> settings(text))
        .isInstanceOf(PackException.class)
        .hasMessageStartingWith(folder.resolve("settings.yaml") + message);
  }

  private static TestElement pipe(long step, double lengthM) {
    return TestElement.pipe(step, 114.3, lengthM).inSystem("CHWS");
  }

  private static Takeoff takeoff(Settings settings) {
    return Takeoff.of(
        List.of(
            TestElement.model(
                pipe(1, 4.2).joinedTo(2),
                TestElement.fitting(2, Form.BEND, 114.3)
                    .inSystem("CHWS")
                    .bend(90, 0.1524)
                    .joinedTo(1, 3),
                pipe(3, 1.8).joinedTo(2, 4),
                TestElement.of(4, Kind.VALVE, Form.VALVE_BODY)
                    .round(114.3)
                    .length(0.19)
                    .inSystem("CHWS")
                    .joinedTo(3))),
        settings);
  }

  private Settings settings(String text) throws IOException {
    return SettingsReader.read(Files.writeString(folder.resolve("settings.yaml"), text));
  }
}
