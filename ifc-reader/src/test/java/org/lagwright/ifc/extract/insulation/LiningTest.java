package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.DUCT;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ductDrawnAs;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** What lies inside of ducts and pipes, apart from insulation around them. */
class LiningTest {

  /** Cement mortar, for one. */
  @Test
  void liningOfAPipeIsNoneThatInsulates() {
    MepModel model = read(PIPE + properties("Lining Thickness", "IFCLENGTHMEASURE(5.)"));

    assertThat(element(model, 1).lining()).isNull();
  }

  @Test
  void liningIsKeptApartAndTheMetalStaysAsWideAsDrawn() {
    MepModel model = ductDrawnAs(500, 365, "Lining Thickness", 25);

    assertThat(InlineModel.value(element(model, 1).section()))
        .isEqualTo(new Section.Rectangular(0.5, 0.365));
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(mm(Objects.requireNonNull(element(model, 1).lining()))).isEqualTo(25);
  }

  /** By Pset_DuctSegmentOccurrence, in IFC2X3 Pset_FlowSegmentDuctSegment. */
  @ParameterizedTest
  @CsvSource({
    "IFCBOOLEAN(.T.), true",
    "IFCLABEL('TRUE'), true",
    "IFCLABEL('Yes'), true",
    "IFCLABEL('No'), false",
    "IFCBOOLEAN(.F.), false",
    "IFCLOGICAL(.U.), false"
  })
  void ductThatSaysItHasALinerIsLinedWithWhoKnowsHowMuch(String value, boolean lined) {
    ExistingInsulation lining = element(read(DUCT + properties("HasLiner", value)), 1).lining();

    assertThat(lining != null).isEqualTo(lined);
    assertThat(lining == null ? null : lining.thicknessM()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "Innend\\X\\E4mmung,IFCTEXT('25 mm'),25",
    "Duct Liner,IFCTEXT('Mineral wool 25 mm'),25",
    "Lining,IFCLENGTHMEASURE(25.),25",
    "InsulationInternalThickness,IFCLENGTHMEASURE(25.),25",
    "Insulation Type,IFCTEXT('Internal lining 25 mm'),25",
    "Isolation,IFCTEXT('Isolation int\\X\\E9rieure 25 mm'),25",
    "Lining,IFCTEXT('Mineral wool'),",
    "Insulation Type,IFCTEXT('Internal lining'),"
  })
  void whatIsCalledLiningIsKeptApartFromInsulation(String name, String value, Double liningMm) {
    MepModel model = read(DUCT + properties(name, value));
    ExistingInsulation lining = Objects.requireNonNull(element(model, 1).lining());

    assertThat(element(model, 1).existingInsulation()).isNull();
    if (liningMm == null) {
      assertThat(lining.thicknessM()).isNull();
    } else {
      assertThat(mm(lining)).isCloseTo(liningMm, within(1e-6));
    }
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void thicknessOfInsulationThatIsALiningIsThatOfTheLining() {
    MepModel model =
        read(
            DUCT
                + properties(
                    "Insulation Type", "IFCTEXT('Duct liner')",
                    "Insulation Thickness", "IFCLENGTHMEASURE(25.)"));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(mm(Objects.requireNonNull(element(model, 1).lining()))).isCloseTo(25, within(1e-6));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @ValueSource(strings = {"none", "ohne", "no mineral wool", "-", "0", "", "Concrete"})
  void textThatNamesNoLiningThatInsulatesShowsNone(String text) {
    MepModel model = read(DUCT + properties("Lining", "IFCTEXT('" + text + "')"));

    assertThat(element(model, 1).lining()).isNull();
  }

  @Test
  void ductDrawnWiderThanItsFreeSizeForItsLinerIsAsWideAsDrawn() {
    MepModel model =
        read(
            DUCT
                + properties(
                    "Width", "IFCLENGTHMEASURE(400.)",
                    "Height", "IFCLENGTHMEASURE(265.)",
                    "HasLiner", "IFCBOOLEAN(.T.)"));

    assertThat(InlineModel.value(element(model, 1).section()))
        .isEqualTo(new Section.Rectangular(0.45, 0.315));
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(Objects.requireNonNull(element(model, 1).lining()).thicknessM()).isNull();
  }

  @ParameterizedTest(name = "{0} x {1} in a duct of 450 x 315")
  @CsvSource({"440, 305", "450, 315", "450.0001, 315.0001"})
  void coveringDrawnInsideADuctIsALiningWhateverItsName(double widthMm, double heightMm) {
    String board = "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s)".formatted(widthMm, heightMm);
    MepModel model = read(DUCT + covering(2, "Board", board, 0, 2500));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(element(model, 1).lining()).isNotNull();
  }
}
