package org.lagwright.takeoff.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.takeoff.settings.SettingsReader;

class LocationWordsTest {

  private final LocationWords words = new LocationWords();

  /** Names as they stand in models. common practice, no source. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Plant Room 01, plant-room",
    "B-102 Boiler room, plant-room",
    "Technikzentrale UG, plant-room",
    "Heizungskeller, plant-room",
    "Local technique CTA, plant-room",
    "Centrale termica, plant-room",
    "Teknikrum 3, plant-room",
    "ИТП, plant-room",
    "Riser 2, shaft",
    "Installationsschacht 4, shaft",
    "Gaine technique, shaft",
    "Ceiling void level 2, ceiling-void",
    "Deckenhohlraum, ceiling-void",
    "Faux plafond R+1, ceiling-void",
    "Tiefgarage, unheated",
    "Basement, unheated",
    "1. Untergeschoss, unheated",
    "Sous-sol, unheated",
    "Sótano -1, unheated",
    "Parkkihalli pysäköintihalli, unheated",
    "Outdoor, outdoor",
    "Außenanlagen, outdoor",
    "Buried services, buried",
    "Leitungen erdverlegt, buried"
  })
  void nameTellsItsAir(String name, String location) {
    assertThat(words.find(name))
        .get()
        .extracting(LocationWords.Found::location)
        .isEqualTo(location);
  }

  @ParameterizedTest
  @CsvSource({
    "Level 01",
    "EG",
    "Office 3.14",
    "Lift shaft",
    "Kitchen",
    "Erdgeschoss",
    "Roof",
    "00"
  })
  void otherNamesTellNothing(String name) {
    assertThat(words.find(name)).isEmpty();
  }

  @Test
  void everyLocationOfThePackHasAirInTheDefaults() {
    assertThat(LocationPack.bundled().locations())
        .allSatisfy(
            meaning -> assertThat(SettingsReader.defaults().air()).containsKey(meaning.location()));
  }
}
