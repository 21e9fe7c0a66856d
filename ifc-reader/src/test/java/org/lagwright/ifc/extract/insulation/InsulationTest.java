package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepModel;

/** Insulation as exporters draw and state it. */
class InsulationTest {

  static final String PIPE =
      "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
          + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)");

  /** What the pipe is drawn with, without the pipe; a covering of another file needs some of it. */
  static final String BODY_ONLY = PIPE.substring(PIPE.indexOf('\n') + 1);

  static final String DUCT =
      "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
          + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,450.,315.)");

  /**
   * A duct of 450 x 315 by its properties that is drawn otherwise, with a thickness of something.
   */
  static MepModel ductDrawnAs(double widthMm, double heightMm, String thickness, double mm) {
    return read(
        "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
            + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s)".formatted(widthMm, heightMm))
            + properties(
                "Width",
                "IFCLENGTHMEASURE(450.)",
                "Height",
                "IFCLENGTHMEASURE(315.)",
                thickness,
                "IFCLENGTHMEASURE(" + mm + ")"));
  }

  /** A covering of a profile, from a height on; related to nothing. */
  static String covering(int id, String name, String profile, double fromMm, double longMm) {
    return """
           #%1$d00=IFCCOVERING('c%1$d',$,'%2$s',$,$,#%1$d01,#%1$d10,$,.INSULATION.);
           #%1$d10=IFCPRODUCTDEFINITIONSHAPE($,$,(#%1$d11));
           #%1$d11=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%1$d12));
           #%1$d12=IFCEXTRUDEDAREASOLID(#%1$d20,$,#13,%3$s);
           #%1$d20=%4$s;
           """
            .formatted(id, name, longMm, profile)
        + placed(id * 100 + 1, 0, 0, fromMm);
  }

  static String ring(double diameterMm, double wallMm) {
    return "IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,%s,%s)".formatted(diameterMm / 2, wallMm);
  }

  static String thickness(int id, double mm) {
    return properties(
        id * 100 + 50,
        id * 100L,
        "Pset_CoveringCommon",
        "TotalThickness",
        "IFCPOSITIVELENGTHMEASURE(" + mm + ")");
  }

  static ExistingInsulation of(MepModel model, long step) {
    return Objects.requireNonNull(element(model, step).existingInsulation());
  }

  static double mm(ExistingInsulation insulation) {
    return Objects.requireNonNull(insulation.thicknessM()) * 1000;
  }

  @Test
  void orphanIsHostedByThePipeOnItsAxisAndItsThicknessIsWhatItIsWider() {
    MepModel model = read(PIPE + covering(2, "Wool", ring(120.3, 30), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).coverings()).hasSize(1);
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"Foil,false", "Insulation,true"})
  void membraneIsInsulationOnlyIfItIsCalledSo(String name, boolean insulates) {
    String membrane =
        covering(2, name, ring(70.3, 5), 0, 2500).replace(".INSULATION.", ".MEMBRANE.");

    assertThat(element(read(PIPE + membrane), 1).existingInsulation() != null).isEqualTo(insulates);
  }

  @Test
  void orphanBesideEveryPipeHasNoHost() {
    String beside =
        covering(2, "Wool", ring(120.3, 30), 0, 2500).replace("((0.0,0.0,0.0))", "((80.,0.,0.))");
    MepModel model = read(PIPE + beside);

    assertThat(beside).contains("((80.");
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }

  /** Wherever the building stands: coordinates round up as well as down. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1000, 20000.1, 30000.3, 70000.7})
  void orphanFiveMillimetresOffTheAxisIsHosted(double xMm) {
    String pipe = PIPE.replace("((0.,0.,0.))", "((%s,0.,0.))".formatted(xMm));
    String covering =
        covering(2, "Wool", ring(120.3, 30), 0, 2500)
            .replace("((0.0,0.0,0.0))", "((%s,0.,0.))".formatted(xMm + 5));
    MepModel model = read(pipe + covering);

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
  }

  @ParameterizedTest
  @CsvSource({"2,true", "20,true", "21,false", "40,false"})
  void coveringAroundACrowdOfPipesAtOnePlaceTellsOfNoneOfThem(int pipes, boolean told) {
    StringBuilder crowd = new StringBuilder(PIPE);
    for (int i = 1; i < pipes; i++) {
      crowd.append("#%d=IFCPIPESEGMENT('p%d',$,'Pipe',$,$,#14,#10,$,$);\n".formatted(5000 + i, i));
    }
    MepModel model = read(crowd + covering(2, "Wool", ring(120.3, 30), 0, 2500));

    assertThat(element(model, 1).existingInsulation() != null).isEqualTo(told);
    assertThat(codes(model).stream().filter("COVERING_WITHOUT_HOST"::equals)).hasSize(told ? 0 : 1);
  }

  @Test
  void oneCoveringOverTwoPipesInALineCoversBoth() {
    String second = "#8=IFCPIPESEGMENT('8',$,'Pipe 2',$,$,#30,#10,$,$);\n" + placed(30, 0, 0, 2500);
    MepModel model = read(PIPE + second + covering(2, "Wool", ring(120.3, 30), 0, 5000));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(mm(of(model, 8))).isCloseTo(30, within(0.01));
  }

  @Test
  void coveringsAroundEachOtherAreLayersAndPiecesAfterEachOtherAreNot() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool 1", ring(100.3, 20), 0, 1250)
                + covering(3, "Wool 1", ring(100.3, 20), 1250, 1250)
                + covering(4, "Wool 2", ring(140.3, 20), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(of(model, 1).coverings()).hasSize(3);
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void statedLayersAddUpToWhatIsDrawn() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool 1", ring(100.3, 20), 0, 2500)
                + thickness(2, 20)
                + covering(3, "Wool 2", ring(140.3, 20), 0, 2500)
                + thickness(3, 20));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void sameCoveringDrawnTwiceIsOneLayer() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 2500)
                + thickness(2, 30)
                + covering(3, "Wool", ring(120.3, 30), 0, 2500)
                + thickness(3, 30));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
  }

  @Test
  void coveringThatEndsHalfWayCoversAPartOnly() {
    MepModel model = read(PIPE + covering(2, "Wool", ring(120.3, 30), 0, 1000));

    assertThat(of(model, 1).share()).isCloseTo(0.4, within(1e-6));
  }

  @Test
  void thicknessDrawnIsTakenWhereThePropertySaysAnother() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(100.3, 20), 0, 2500)
                + thickness(2, 30)
                + "#5=IFCRELCOVERSBLDGELEMENTS('5',$,$,$,#1,(#200));\n");

    assertThat(mm(of(model, 1))).isCloseTo(20, within(0.01));
    assertThat(codes(model)).containsOnlyOnce("INSULATION_CONFLICT");
  }

  @Test
  void propertyOfThePipeThatDiffersFromItsCoveringIsAFinding() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 2500)
                + properties("Insulation Thickness", "IFCLENGTHMEASURE(50.)"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model)).containsOnlyOnce("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "IFCLENGTHMEASURE(0.)",
        "IFCLENGTHMEASURE(-1.)",
        "IFCREAL(1.E+30)",
        "IFCLENGTHMEASURE(1.E+30)",
        "IFCLENGTHMEASURE(9999.)",
        "IFCTHERMALTRANSMITTANCEMEASURE(30.)",
        "IFCTEXT('none')",
        "IFCTEXT('')",
        "$"
      })
  void figureThatStandsForNothingIsNeitherInsulationNorAFinding(String value) {
    MepModel model = read(PIPE + properties("Insulation Thickness", value));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  /** 40 m, 40 000 mm, is a thickness in the wrong unit; and texts hold more than one figure. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "IFCLENGTHMEASURE(40000.)",
        "IFCTEXT('22 x 19 mm')",
        "IFCTEXT('20-30 mm')",
        "IFCTEXT('20 - 30 mm')",
        "IFCTEXT('100 %')"
      })
  void thicknessThatCannotBeUsedIsAFinding(String value) {
    MepModel model = read(PIPE + properties("Insulation Thickness", value));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"20.,true", "30.,false"})
  void ofSeveralThicknessesNoneIsTaken(String second, boolean differ) {
    String list =
        properties("Insulation Thickness", "$")
            .replace(
                "IFCPROPERTYSINGLEVALUE('Insulation Thickness',$,$,$)",
                "IFCPROPERTYLISTVALUE('Insulation Thickness',$,"
                    + "(IFCLENGTHMEASURE(30.),IFCLENGTHMEASURE(%s)),$)".formatted(second));
    MepModel model = read(PIPE + list);

    assertThat(element(model, 1).existingInsulation() == null).isEqualTo(differ);
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(differ);
  }

  /** 1.5 in are 38.1 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"30 mm, elastomer|30", "1-1/2\"|38.1", "1 1/2\"|38.1", "Class B 19 mm|19"})
  void thicknessInATextIsRead(String text, double mm) {
    MepModel model = read(PIPE + properties("Insulation Thickness", "IFCTEXT('" + text + "')"));

    assertThat(mm(of(model, 1))).isCloseTo(mm, within(0.001));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void ductCoveringIsAsThickAsItIsWiderAllRound() {
    MepModel model =
        read(DUCT + covering(2, "Mat", "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,335.,470.)", 0, 2500));

    // turned by a quarter: the long side of the duct still lies in the long side of the mat
    assertThat(mm(of(model, 1))).isCloseTo(10, within(0.01));
  }

  /** The same pipe and covering far from zero, in millimetres. */
  @Test
  void hostIsFoundAtAFalseOrigin() {
    String far = "((24525622890.,6675431120.,0.))";
    String text =
        (PIPE + covering(2, "Wool", ring(120.3, 30), 0, 2500))
            .replace("((0.,0.,0.))", far)
            .replace("((0.0,0.0,0.0))", far);

    assertThat(mm(of(read(text), 1))).isCloseTo(30, within(0.01));
  }

  @Test
  void coveringsThatCoverEachOtherEnd() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 2500)
                + covering(3, "Jacket", ring(122.3, 1), 0, 2500)
                + "#5=IFCRELAGGREGATES('5',$,$,$,#200,(#300));\n"
                + "#6=IFCRELAGGREGATES('6',$,$,$,#300,(#200));\n");

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
  }
}
