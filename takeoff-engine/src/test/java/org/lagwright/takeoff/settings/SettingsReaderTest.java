package org.lagwright.takeoff.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.pack.PackException;

class SettingsReaderTest {

  @TempDir Path folder;

  @Test
  void defaultsAreComplete() {
    Settings settings = SettingsReader.defaults();

    assertThat(settings.air())
        .containsKeys("indoor", "plant-room", "unheated", "outdoor", "ceiling-void", "shaft");
    assertThat(settings.air().get("indoor"))
        .isEqualTo(
            new Settings.Air(24, 55, 20, 0, null, "common practice, no source: conditioned space"));
    assertThat(settings.materials()).containsOnlyKeys("cold", "hot", "air");
    assertThat(settings.materials().values())
        .allSatisfy(id -> assertThat(MaterialPack.bundled().findFamily(id)).isPresent());
  }

  @Test
  void fileIsLaidOverTheDefaultsKeyByKey() throws IOException {
    Settings settings =
        read(
            """
            project: Alder Quay ferry terminal
            air:
              indoor: {relativeHumidityPct: 65}
              kitchen: {temperatureC: 32, relativeHumidityPct: 80, source: client}
            places:
              - {contains: Galley, location: kitchen}
            services:
              - {contains: Kreis 7, in: system, service: chilled-water-flow}
            temperaturesC: {chilled-water-flow: 7.5}
            scope: {return-air: in, unknown: out}
            thicknessesMm: {chilled-water-flow: 25}
            """);

    assertThat(settings.project()).isEqualTo("Alder Quay ferry terminal");
    assertThat(settings.air().get("indoor"))
        .isEqualTo(new Settings.Air(24, 65, 20, 0, null, "settings"));
    assertThat(settings.air().get("kitchen")).isEqualTo(Settings.Air.still(32, 80, "client"));
    assertThat(settings.air()).containsKey("outdoor");
    assertThat(settings.places()).containsExactly(new Settings.PlaceRule("Galley", "kitchen"));
    assertThat(settings.thicknessesM()).isEqualTo(Map.of("chilled-water-flow", 0.025));
    assertThat(settings.condensationMarginK())
        .isEqualTo(SettingsReader.defaults().condensationMarginK());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | air: {indoor: {relativeHumidityPct: 130}} | relativeHumidityPct must lie between",
        "2 | air: {attic: {temperatureC: 30}} | a new location class needs",
        "2 | places: [{contains: Roof, location: balcony}] | 'balcony' is no location class",
        "2 | places: [{location: outdoor}] | contains is missing",
        "2 | services: [{contains: X, service: lemonade}] | 'lemonade' is no service",
        "2 | services: [{contains: X, in: layer, service: gas}] | is none of system, name, type",
        "2 | temperaturesC: {lemonade: 4} | 'lemonade' is no service",
        "2 | temperaturesC: {steam: 7000} | is impossible",
        "2 | temperaturesC: {steam: } | 'steam' has no value",
        "2 | temperaturesC: {steam: warm} | a number is expected here",
        "2 | temperaturesC: {steam: .nan} | is impossible: NaN",
        "2 | condensationMarginK: .inf | is impossible: Infinity",
        "2 | surfaceEmissivity: true | a number is expected here",
        "2 | thicknessesMm: [25] | a key with a value is expected here",
        "2 | services: {contains: X} | a list is expected here",
        "2 | energyRule: [none] | a text is expected here",
        "2 | project: again | Duplicate",
        "3 | air:\\n\tindoor: 3 | TAB",
        "3 | ---\\nproject: x | a second document begins here",
        "2 | scope: {steam: maybe} | 'maybe' is no decision",
        "2 | scope: {unknown: in} | 'in' is no decision on unknown services",
        "2 | thicknessesMm: {steam: 0} | is impossible",
        "2 | thicknessesMm: {steam: -25} | is impossible",
        "2 | materials: {lukewarm: fef_nbr} | 'lukewarm' is no kind of material",
        "3 | materials:\\n  hot: straw | unknown material 'straw'",
        "2 | energyRule: lunar | unknown energy rule 'lunar'",
        "2 | surfaceEmissivity: 90 | surfaceEmissivity is impossible: 90.0 is not between",
        "2 | condensationMarginK: -1 | condensationMarginK is impossible",
        "2 | places:\\n  - | an entry is empty",
        "2 | ground: {depthM: 0, soilWPerMK: 1} | depthM must lie between",
        "2 | air: {indoor: {windMPerS: -1}} | windMPerS must lie between",
        "2 | air: {indoor: {surfaceEmissivity: 2}} | surfaceEmissivity must lie between",
        "2 | surfaceCoefficients: mine | 'mine' is no set of surface coefficients",
        "2 | humiditySweep: [lemonade] | 'lemonade' is no service",
        "3 | demands:\\n  specification: [{service: steam}] | thicknessMm",
        "3 | demands:\\n  frost: {airC: -5, waterC: 4, hours: 8, iceShare: 0.2} | 'locations' is missing",
        "2 | colour: red | unknown key 'colour'"
      })
  void impossibleValueIsRefusedWithFileAndLine(int line, String yaml, String message)
      throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("job.yaml"), "project: Alder Quay\n" + yaml.replace("\\n", "\n") + "\n");

    assertThatThrownBy(() -> SettingsReader.read(file))
        .isInstanceOf(PackException.class)
        .hasMessageStartingWith(file + ":" + line + ":")
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# nothing chosen yet\n", "---\n"})
  void fileWithoutKeysIsRefused(String yaml) {
    assertThatThrownBy(() -> read(yaml))
        .isInstanceOf(PackException.class)
        .hasMessageEndingWith(":1:1: the file is empty. Write at least one key.");
  }

  @Test
  void textOfAnotherEncodingIsRefusedWithItsLine() throws IOException {
    byte[] latin1 = "project: x\nenergyRule: Kälte\n".getBytes(StandardCharsets.ISO_8859_1);
    Path file = Files.write(folder.resolve("job.yaml"), latin1);

    assertThatThrownBy(() -> SettingsReader.read(file))
        .isInstanceOf(PackException.class)
        .hasMessage(file + ":2: this is no UTF-8 text. Save it as UTF-8.");
  }

  private Settings read(String yaml) throws IOException {
    return SettingsReader.read(Files.writeString(folder.resolve("job.yaml"), yaml));
  }
}
