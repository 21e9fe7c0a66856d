package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ductDrawnAs;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Bodies that are drawn with their insulation, and those that are not. */
class InsulationInBodyTest {

  @ParameterizedTest
  @CsvSource({
    // stated thickness, pipe by table
    "Insulation Thickness;IFCLENGTHMEASURE(30.);Tag;IFCTEXT('x'),NONE",
    // stated outside diameter only
    "OuterDiameter;IFCLENGTHMEASURE(60.3),ESTIMATED",
    // nominal size only
    "NominalDiameter;IFCLENGTHMEASURE(50.),ESTIMATED",
    "Insulation Thickness;IFCLENGTHMEASURE(30.);NominalDiameter;IFCLENGTHMEASURE(50.),NONE"
  })
  void bodyDrawnWithItsInsulationGivesThePipeAndTheInsulation(String known, String effect) {
    String drawn =
        "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
            + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,60.15)");
    MepModel model = read(drawn + properties(known.split(";")));

    assertThat(diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(model.findings())
        .filteredOn(f -> f.code().name().equals("INSULATION_IN_BODY"))
        .singleElement()
        .satisfies(f -> assertThat(f.effect()).hasToString(effect));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT", "SECTION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({
    // a tabulated size that fits all that is stated
    "30.15,Insulation Thickness;IFCLENGTHMEASURE(10.);NominalDiameter;IFCLENGTHMEASURE(50.),60.3",
    // drawn as its nominal size: no rest of insulation
    "20,Insulation Thickness;IFCLENGTHMEASURE(9.);Tag;IFCTEXT('x'),40",
    // a wall or a coat of paint
    "32.15,OuterDiameter;IFCLENGTHMEASURE(60.3),60.3"
  })
  void bodyThatMayBeTheBarePipeIsNotTakenApart(double radiusMm, String known, double expectedMm) {
    String drawn =
        "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
            + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s)".formatted(radiusMm));
    MepModel model = read(drawn + properties(known.split(";")));

    assertThat(diameterMm(element(model, 1))).isEqualTo(expectedMm);
    assertThat(codes(model)).doesNotContain("INSULATION_IN_BODY");
  }

  /** 160 mm less twice 40 mm would be the radius. */
  @ParameterizedTest
  @CsvSource({"125,62.5", "160,80", "250,125", "315,157.5"})
  void halfTheDrawnDiameterIsARadiusAndNoSizeUnderInsulation(double drawnMm, double statedMm) {
    MepModel model =
        read(
            "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s)".formatted(drawnMm / 2))
                + properties("Diameter", "IFCLENGTHMEASURE(" + statedMm + ")"));

    assertThat(diameterMm(element(model, 1))).isEqualTo(drawnMm);
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce("SECTION_CONFLICT");
  }

  /** A tabulated pipe DN 250 of 274 mm would leave 113 mm around it. */
  @Test
  void diameterDrawnAsRadiusLeavesNoInsulationUnderATabulatedSize() {
    MepModel model =
        read(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
                + body("IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,250.,3.)")
                + properties(
                    "NominalDiameter", "IFCLENGTHMEASURE(250.)",
                    "OuterDiameter", "IFCLENGTHMEASURE(250.)"));

    assertThat(diameterMm(element(model, 1))).isEqualTo(500);
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).contains("SECTION_CONFLICT").doesNotContain("INSULATION_IN_BODY");
  }

  /** The size, thickness and outer figures of a public sample: 315 x 450 with 10 mm around. */
  @Test
  void ductDrawnWithItsInsulationHasTheStatedSize() {
    MepModel model = ductDrawnAs(470, 335, "Insulation Thickness", 10);

    assertThat(InlineModel.value(element(model, 1).section()))
        .isEqualTo(new Section.Rectangular(0.45, 0.315));
    assertThat(mm(of(model, 1))).isCloseTo(10, within(0.01));
  }

  @Test
  void pipeCalledInsulatedByItselfStaysAPipe() {
    MepModel model = read(PIPE.replace("'Pipe'", "'Pipe with insulation'"));

    assertThat(element(model, 1).kind()).isEqualTo(Kind.PIPE_SEGMENT);
  }
}
