package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepModel;

/** Insulation that properties and names state in unusual ways, and what is no insulation. */
class StatedInsulationTest {

  private static final String FEET =
      """
      #900=IFCPROJECT('p',$,$,$,$,$,$,$,#901);
      #901=IFCUNITASSIGNMENT((#902));
      #902=IFCCONVERSIONBASEDUNIT(#903,.LENGTHUNIT.,'FOOT',#904);
      #903=IFCDIMENSIONALEXPONENTS(1,0,0,0,0,0,0);
      #904=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(0.3048),#905);
      #905=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
      """;

  private static final String CONFLICT = "INSULATION_CONFLICT";

  @ParameterizedTest
  @ValueSource(strings = {"Insulation", "D\\X\\E4mmung"})
  void lengthThatIsCalledInsulationIsItsThickness(String name) {
    MepModel model = read(PIPE + properties(name, "IFCLENGTHMEASURE(30.)"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "AQ_Dammdicke",
        "AQ: Insulation thickness",
        "[IDK] Dammdicke",
        "Epaisseur d''isolant"
      })
  void thicknessBehindACodeOrAnArticleIsRead(String name) {
    MepModel model = read(PIPE + properties(name, "IFCLENGTHMEASURE(30.)"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFCREAL(30.)", "IFCTEXT('30')"})
  void bareFigureThatIsCalledInsulationIsAskedFor(String value) {
    MepModel model = read(PIPE + properties("Insulation", value));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce(CONFLICT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Insulation",
        "Insulated",
        "IsInsulated",
        "HasInsulation",
        "HasExteriorInsulation"
      })
  void yesShowsThatInsulationIsThere(String name) {
    assertThat(of(read(PIPE + properties(name, "IFCBOOLEAN(.T.)")), 1).thicknessM()).isNull();
    assertThat(element(read(PIPE + properties(name, "IFCBOOLEAN(.F.)")), 1).existingInsulation())
        .isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "Insulation,Thickness,true",
    "D\\X\\E4mmung,Dicke,true",
    "Insulation,Width,false",
    "Lining insulation,Thickness,false",
    "Pipe,Thickness,false"
  })
  void thicknessInASetThatIsCalledInsulationIsThatOfTheInsulation(
      String set, String name, boolean insulated) {
    MepModel model = read(PIPE + properties(500, 1, set, name, "IFCPOSITIVELENGTHMEASURE(30.)"));

    assertThat(element(model, 1).existingInsulation() != null).isEqualTo(insulated);
  }

  @ParameterizedTest
  @CsvSource({
    "Stahlrohr ged\\X\\E4mmt 30 mm,30",
    "Flexible duct insulated 25 mm,25",
    "Steel pipe DN50 - 25 mm insulated,25",
    "Pipe 25 mm insulated,",
    "Pipe insulated,",
    "Pipe insulated; wall 5 mm,",
    "Pipe not insulated 30 mm,",
    "Pipe insulation 30 mm,"
  })
  void nameWithTheThicknessBesideInsulatedTellsIt(String name, Double expectedMm) {
    MepModel model = read(PIPE.replace("'Pipe'", "'" + name + "'"));

    if (expectedMm == null) {
      assertThat(element(model, 1).existingInsulation()).isNull();
    } else {
      assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
    }
  }

  /** An inch is 25.4 mm. */
  @ParameterizedTest
  @CsvSource({
    "Fiberglass 1\",25.4",
    "Mineral wool 1 1/2\",38.1",
    "Fiberglass,",
    "Insulation for pipe 2\",",
    "Fiberglass 1\" 2\","
  })
  void inchesInATextAreRead(String text, Double expectedMm) {
    MepModel model = read(PIPE + properties("Insulation Type", "IFCLABEL('" + text + "')"));

    if (expectedMm == null) {
      assertThat(of(model, 1).thicknessM()).isNull();
    } else {
      assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFCTEXT('-1')", "IFCTEXT('-1 mm')", "IFCLENGTHMEASURE(1.E-10)"})
  void figureBelowZeroOrNextToItStandsForNothing(String value) {
    MepModel model = read(PIPE + properties("Insulation Thickness", value));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).doesNotContain(CONFLICT);
  }

  /** One half as one sign. */
  @Test
  void fractionThatIsNotReadIsAFinding() {
    MepModel model =
        read(PIPE + properties("Insulation Thickness", "IFCTEXT('about \\X2\\00BD\\X0\\')"));

    assertThat(codes(model)).containsOnlyOnce(CONFLICT);
  }

  /** 1.5 may be inches, 30 is millimetres, and a typed length is what it says. */
  @ParameterizedTest
  @CsvSource({
    "IFCREAL(1.5),",
    "IFCREAL(30.),30",
    "IFCREAL(0.1),30.48",
    "IFCTEXT('6\"'),152.4",
    "IFCLENGTHMEASURE(0.5),152.4"
  })
  void bareFigureInFeetThatMayBeInchesIsAFinding(String value, Double expectedMm) {
    MepModel model = read("IFC4", FEET + PIPE + properties("Insulation Thickness", value));

    if (expectedMm == null) {
      assertThat(element(model, 1).existingInsulation()).isNull();
      assertThat(codes(model)).containsOnlyOnce(CONFLICT);
    } else {
      assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
      assertThat(codes(model)).doesNotContain(CONFLICT);
    }
  }

  @Test
  void foilOrPaintAloneIsNoInsulation() {
    MepModel foil = read(PIPE + covering(2, "Foil", ring(61.3, 0.5), 0, 2500));
    MepModel paint =
        read(
            PIPE
                + "#200=IFCCOVERING('c',$,'Korrosionsschutzanstrich',$,$,$,$,$,.WRAPPING.);\n"
                + "#5=IFCRELCOVERSBLDGELEMENTS('5',$,$,$,#1,(#200));\n");

    assertThat(element(foil, 1).existingInsulation()).isNull();
    assertThat(element(paint, 1).existingInsulation()).isNull();
    assertThat(codes(paint)).doesNotContain("COVERING_WITHOUT_HOST");
  }

  /** A sheet of 1 mm that keeps 30 mm off the pipe lies around something. */
  @Test
  void jacketThatKeepsOffThePipeShowsInsulation() {
    MepModel model = read(PIPE + covering(2, "Jacket", ring(122.3, 1), 0, 2500));

    assertThat(element(model, 1).existingInsulation()).isNotNull();
  }

  @Test
  void wrappingWithAThicknessIsInsulationWhateverItsName() {
    MepModel model = read(PIPE + covering(2, "Anstrich", ring(120.3, 30), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Isolation", "[ISOLATION] Isolation", "Isolationsart"})
  void isolationWithAThicknessIsInsulation(String name) {
    MepModel model = read(PIPE + properties(name, "IFCTEXT('Glaswolle  25  mm')"));

    assertThat(mm(of(model, 1))).isCloseTo(25, within(1e-6));
    assertThat(of(model, 1).material()).isEqualTo("Glaswolle  25  mm");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"IFCTEXT('Ball valve')", "IFCBOOLEAN(.T.)", "IFCTEXT('DN 50')", "IFCTEXT('ohne')"})
  void isolationThatMayShutOffIsNone(String value) {
    MepModel model = read(PIPE + properties("Isolation", value));

    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "Concrete,false",
    "Betonauskleidung,false",
    "Zementm\\X\\F6rtel,false",
    "Mineral wool,true",
    "Type A,true"
  })
  void ductLinedWithConcreteHasNoLiningThatInsulates(String type, boolean lined) {
    String duct = "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,$,$,$,$);\n";
    String stating =
        InlineModel.properties(
            "LiningThickness",
            "IFCPOSITIVELENGTHMEASURE(50.)",
            "LiningType",
            "IFCTEXT('" + type + "')");

    assertThat(InlineModel.first(duct + stating).lining() != null).isEqualTo(lined);
  }
}
