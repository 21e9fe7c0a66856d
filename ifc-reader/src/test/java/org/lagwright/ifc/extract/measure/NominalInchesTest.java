package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.value;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/**
 * Nominal sizes as bare numbers, which may be inches. By EN 10255 and EN 10220 DN 15 has 21.3 mm
 * outside, DN 20 26.9, DN 100 114.3, DN 250 273, DN 500 508.
 */
class NominalInchesTest {

  /** The sign of a diameter. */
  private static final String ROUND = "\\X\\F8";

  private static final String FEET =
      InlineModel.MILLIMETRES.replace(
              "#902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);",
              "#902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#904);")
          + "#904=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(0.3048),#905);\n"
          + "#905=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";

  private static MepElement pipe(boolean feet, String name, String namesAndValues) {
    String units = feet ? FEET : InlineModel.MILLIMETRES;
    String pipe = "#1=IFCPIPESEGMENT('1',$,'%s',$,$,$,$,$,$);\n".formatted(name);
    String stating = properties(namesAndValues.split(";", -1));
    return element(InlineModel.read("IFC4", units + pipe + stating), 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NominalDiameter;IFCLABEL('4')|DN100|114.3",
        "NominalDiameter;IFCREAL(0.5)|DN15|21.3",
        "NominalDiameter;IFCINTEGER(10)|DN250|273",
        "NominalDiameter;IFCLABEL('4');Size;IFCLABEL('4\"')|DN100|114.3",
        "NominalDiameter;IFCPOSITIVELENGTHMEASURE(0.333333333)|DN100|114.3",
        // no nominal size in inches
        "NominalDiameter;IFCLABEL('100')|DN100|114.3",
        "NominalDiameter;IFCINTEGER(15)|DN15|21.3",
        "NominalDiameter;IFCLABEL('15 mm')|DN15|21.3",
        "DN;IFCLABEL('20')|DN20|26.9"
      })
  void bareNominalSizeOfAFileInFeetIsInInches(String stating, String nominal, double outsideMm) {
    MepElement pipe = pipe(true, "Pipe", stating);

    assertThat(pipe.nominalSize()).isEqualTo(nominal);
    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(outsideMm);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NominalDiameter;IFCLABEL('4');NominalUnit;IFCLABEL('Inch')|DN100|114.3",
        "NominalDiameter;IFCLABEL('20');NominalUnit;IFCLABEL('in')|DN500|508",
        "NominalDiameter;IFCLABEL('20');Size;IFCLABEL('20\"')|DN500|508",
        "NominalDiameter;IFCLABEL('20');NominalUnit;IFCLABEL('mm')|DN20|26.9",
        "NominalDiameter;IFCLABEL('20')|DN20|26.9",
        "NominalDiameter;IFCLABEL('100');NominalUnit;IFCLABEL('mm')|DN100|114.3",
        // none at all, beside one
        "NominalDiameter;IFCLABEL('3');Size;IFCLABEL('4\"')|DN100|114.3",
        "NominalDiameter;IFCINTEGER(77);Size;IFCLABEL('DN 20')|DN20|26.9",
        "NominalDiameter;IFCLABEL('4')||"
      })
  void bareNominalSizeIsInInchesIfSomethingBesideItSaysSo(
      String stating, @Nullable String nominal, @Nullable Double outsideMm) {
    MepElement pipe = pipe(false, "Pipe", stating);

    assertThat(pipe.nominalSize()).isEqualTo(nominal);
    assertThat(pipe.section() == null ? null : value(pipe.section()).largestSideM() * 1000)
        .isEqualTo(outsideMm);
  }

  @ParameterizedTest
  @CsvSource({"Pipe DN20, 20, DN20, 26.9", "Pipe DN 10, 10, DN10, 17.2"})
  void whatANameCallsDnIsInMillimetres(
      String name, String figure, String nominal, double outsideMm) {
    MepElement pipe = pipe(true, name, "NominalDiameter;IFCLABEL('" + figure + "')");

    assertThat(pipe.nominalSize()).isEqualTo(nominal);
    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(outsideMm);
  }

  /** A diameter behind which no unit stands is a nominal size of a file in feet. */
  @ParameterizedTest
  @CsvSource({
    "true, 4o, DN100, 114.3",
    "true, 10o, DN250, 273",
    "true, 22 mm o, , 22",
    "false, 22o, , 22"
  })
  void bareDiameterInATextOfAFileInFeetIsANominalSize(
      boolean feet, String text, @Nullable String nominal, double outsideMm) {
    MepElement pipe = pipe(feet, "Pipe", "Size;IFCLABEL('" + text.replace("o", ROUND) + "')");

    assertThat(pipe.nominalSize()).isEqualTo(nominal);
    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(outsideMm);
  }

  /** 22 mm of copper, or 22 inches of steel. */
  @ParameterizedTest
  @ValueSource(strings = {"22o", "28o"})
  void bareDiameterInAFileInFeetThatMayBeInMillimetresIsNotToldWithoutABody(String text) {
    MepElement pipe = pipe(true, "Pipe", "Size;IFCLABEL('" + text.replace("o", ROUND) + "')");

    assertThat(pipe.nominalSize()).isNull();
    assertThat(pipe.section()).isNull();
  }

  @ParameterizedTest
  @CsvSource({"273, 10o, DN250", "22, 22o,", "323.9, 12o, DN300"})
  void bareDiameterOfADrawnPipeIsWhatThePipeMayBe(
      double outsideMm, String text, @Nullable String nominal) {
    String drawn =
        "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
            + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + outsideMm / 2 / 304.8 + ")");
    String stating = properties("Size", "IFCLABEL('" + text.replace("o", ROUND) + "')");
    MepModel model = InlineModel.read("IFC4", FEET + drawn + stating);

    assertThat(element(model, 1).nominalSize()).isEqualTo(nominal);
    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(outsideMm);
    assertThat(codes(model)).isEmpty();
  }
}
