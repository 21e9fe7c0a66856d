package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Form;

/** Names as exporters write them, in nine languages. Common practice, no source. */
class WordsTest {

  /** As folding would leave it, so that nothing needs to be folded at start. */
  @Test
  void everyWordOfTheTableIsWrittenFolded() {
    List<String> lines = Resource.lines("words.txt");
    assertThat(lines).isNotEmpty().allSatisfy(WordsTest::isFolded);
  }

  private static void isFolded(String line) {
    String words = line.substring(line.indexOf(':') + 1);
    assertThat(words).isEqualTo(Words.fold(words));
  }

  /** So that the number behind a name can be left aside. */
  @Test
  void noWordOfTheTableEndsInADigit() {
    for (String line : Resource.lines("words.txt")) {
      for (String word : line.substring(line.indexOf(':') + 1).split(",")) {
        assertThat(word.strip()).doesNotMatch(".*[0-9]");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Elbow 90:4711", "Elbow", "Elbow:1", "45 Elbow 8"})
  void numberBehindANameTellsNothing(String name) {
    assertThat(Words.form(name)).contains(Form.BEND);
    assertThat(Words.form("Pipe 22:" + name.length())).isEmpty();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "type-names.csv", numLinesToSkip = 2)
  void typeNameTellsTheForm(String language, String name, Form form) {
    assertThat(Words.form(name).orElse(null)).as(language + " " + name).isEqualTo(form);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Kabelrinne 200",
        "Cable tray",
        "Kabelleiter",
        "Conduit EMT",
        "Leerrohr M25",
        "Chemin de câbles",
        "Bandeja portacables",
        "Passerella portacavi",
        "Kabelgoot",
        "Kabelstege",
        "Kaapelihylly",
        "Лоток кабельный",
        "Electrical trunking",
        "Kabelschutzrohr DN110",
        "Elektroinstallationsrohr M25",
        "Brüstungskanal 70x110",
        "Gaine ICTA 20",
        "Goulotte 100x50",
        "Tubo eléctrico corrugado",
        "Schacht DN1000",
        "Inspection chamber",
        "Regard 1000",
        "Futterrohr DN150",
        "Schutzrohr DN100",
        "Mauerhülse",
        "Pipe sleeve"
      })
  void cablesAndTheirCarriersAreNeitherPipeNorDuct(String name) {
    assertThat(Words.isNeitherPipeNorDuct(name)).isTrue();
    assertThat(Words.line(name)).isEqualTo(Words.Line.NEITHER);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Leerrohre",
        "Leerrohre ohne Formteile:Standard:12",
        "Leerrohrleitung",
        "Elektroleerrohre",
        "Elektrorohre",
        "Installationsrohre",
        "Kabelrinnen",
        "Ladders",
        "Trays",
        "Gaines électriques",
        "Tubos eléctricos",
        "Tubo conduit",
        "Tubo sin uniones:PVC 25:171383",
        "Tubo con uniones:Conduit:171383",
        "Tube : Conduits : 12",
        "Tubi elettrici",
        "Canaline",
        "Loze leidingen",
        "Elektrabuizen",
        "Tomrör",
        "Tomrør",
        "Elrør 20",
        "Trekkerør 20 mm",
        "Tubo corrugado eléctrico",
        "Eletroduto rígido",
        "Rura osłonowa kablowa",
        "Sähköputki",
        "Ladderbaan",
        "Короб электротехнический",
        "Лотки кабельные",
        "Schächte"
      })
  void manyOfThemAreNeitherPipeNorDuctToo(String name) {
    assertThat(Words.isNeitherPipeNorDuct(name)).isTrue();
    assertThat(Words.line(name)).isEqualTo(Words.Line.NEITHER);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Conduite acier DN50",
        "Edelstahlrohr DN50 mit Heizkabel",
        "Steel pipe, electrical heat traced",
        "Pipe: ladder rack level",
        "not applicable"
      })
  void partOfAWordOrAWordBehindThePipeMakesNoCableOfIt(String name) {
    assertThat(Words.isNeitherPipeNorDuct(name)).isFalse();
    assertThat(Words.line(name)).isNotEqualTo(Words.Line.NEITHER);
  }

  @Test
  void strokesOfLettersDoNotMatterAndTheSignOfADiameterStays() {
    assertThat(Words.fold("Stålrør Ø60, 160xØ125, Wełna"))
        .isEqualTo("stalror ø60, 160xø125, welna");
    assertThat(Words.line("Kobberrør")).isEqualTo(Words.Line.PIPE);
    assertThat(Words.fold("YALITIM Kalınlığı, Hlađenje")).isEqualTo("yalitim kalinligi, hladenje");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Round Duct",
        "Luftkanal eckig",
        "Lüftungskanal",
        "Gaine rectangulaire",
        "Conduit circulaire galva",
        "Gaine ronde:Conduit:12",
        "Wickelfalzrohr DN160",
        "Lüftungsrohr",
        "Lüftungsrohre",
        "Wickelfalzrohre DN160",
        "Tube spiralé galva",
        "Conducto rectangular",
        "Condotta circolare",
        "Luchtkanaal",
        "Ventilationskanal",
        "Ilmanvaihtokanava",
        "Воздуховод прямоугольный",
        "Légcsatorna",
        "Tubulatură ventilație",
        "Αεραγωγός",
        "Vzduchovod",
        "Повітропровід"
      })
  void ductsAreToldFromPipes(String name) {
    assertThat(Words.isDuct(name)).isTrue();
    assertThat(Words.isPipe(name)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Steel pipe",
        "Stahlrohr",
        "Stahlrohre in Leerrohren",
        "Rohre 25",
        "Heizungsleitung",
        "Tube cuivre",
        "Tubería de acero",
        "Tubazione",
        "Tubo con uniones roscadas DN50",
        "Pipe Types:Steel, beside conduit:12",
        "Leiding koper",
        "Kopparrör",
        "Kanalgrundrohr KG DN110",
        "Kanalisationsrohr",
        "Abwasserkanal",
        "Rohr - Vorlauf Lüftung",
        "Spiral welded steel pipe",
        "Pipe: chilled water to duct coil",
        "Kupariputki",
        "Труба стальная"
      })
  void pipesAreToldFromDucts(String name) {
    assertThat(Words.isPipe(name)).isTrue();
    assertThat(Words.isDuct(name)).isFalse();
  }
}
