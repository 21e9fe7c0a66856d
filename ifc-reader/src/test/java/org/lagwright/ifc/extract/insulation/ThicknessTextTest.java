package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepModel;

/** Thicknesses of insulation as people write them, and words for none. */
class ThicknessTextTest {

  private static final String INCHES =
      InlineModel.MILLIMETRES.replace(
              "#902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);",
              "#902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'INCH',#904);")
          + "#904=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(0.0254),#905);\n"
          + "#905=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";

  private static final String CONFLICT = "INSULATION_CONFLICT";

  @ParameterizedTest
  @CsvSource({
    "Insulation Thickness,30 mm (100% of rule)",
    "Insulation Thickness,'30 mm, 0.035 W/mK'",
    "INSUL_THK,30 mm"
  })
  void figureInMillimetresIsReadBesideOthersOfOtherThings(String name, String text) {
    MepModel model = read(PIPE + properties(name, "IFCTEXT('" + text + "')"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(codes(model)).doesNotContain(CONFLICT);
  }

  @ParameterizedTest
  @CsvSource({
    "2 x 25 mm,50",
    "Mineral wool 2x25 mm,50",
    "13 mm + 19 mm,32",
    "25 + 25 mm,50",
    "1 x 30 mm,",
    "22 x 25 mm,",
    "DN50 2 x 25 mm,"
  })
  void layersThatATextTellsCountTogether(String text, Double expectedMm) {
    MepModel model = read(PIPE + properties("Insulation Thickness", "IFCTEXT('" + text + "')"));

    if (expectedMm == null) {
      assertThat(element(model, 1).existingInsulation()).isNull();
      assertThat(codes(model)).containsOnlyOnce(CONFLICT);
    } else {
      assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "20-30 mm",
        "30/60",
        "20 mm or 30 mm",
        "100 %",
        "20 mm, 2-lagig",
        "double layer 25 mm"
      })
  void textThatMayMeanSeveralThicknessesIsAsked(String text) {
    MepModel model = read(PIPE + properties("Insulation Thickness", "IFCTEXT('" + text + "')"));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce(CONFLICT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "nincs",
        "brak",
        "entf\\X\\E4llt",
        "entfaellt",
        "yok",
        "puuttuu",
        "f\\X2\\0103\\X0\\r\\X2\\0103\\X0\\",
        "\\X2\\03C703C903C103AF03C2\\X0\\"
      })
  void wordForNoneIsNoInsulation(String word) {
    MepModel model = read(PIPE + properties("Insulation", "IFCTEXT('" + word + "')"));

    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  /** Nineteen inches of insulation are unlikely, 19 mm are usual; so many are typed on purpose. */
  @ParameterizedTest
  @CsvSource({
    "IFCTEXT('19'),",
    "IFCREAL(19.),",
    "IFCREAL(2.),50.8",
    "IFCTEXT('19 mm'),19",
    "IFCLENGTHMEASURE(19.),482.6"
  })
  void bareFigureInInchesThatMayBeMillimetresIsAsked(String value, Double expectedMm) {
    MepModel model = read("IFC4", INCHES + PIPE + properties("Insulation Thickness", value));

    if (expectedMm == null) {
      assertThat(element(model, 1).existingInsulation()).isNull();
      assertThat(codes(model)).containsOnlyOnce(CONFLICT);
    } else {
      assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
    }
  }
}
