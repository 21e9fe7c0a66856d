package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** What exporters write about sizes, and which of several contradicting figures is taken. */
class SizePatternTest {

  private static final String PIPE = "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n";
  private static final String BARE = "#1=IFCPIPESEGMENT('1',$,'%s',$,$,$,$,$,$);\n";

  private static String mm(double value) {
    return "IFCPOSITIVELENGTHMEASURE(" + value + ")";
  }

  @ParameterizedTest
  @CsvSource({"10.,22.", "6.,15."})
  void statedDiameterWinsOverABodyDrawnWithTheNominalSize(double radiusMm, double statedMm) {
    MepModel model =
        read(
            PIPE
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + radiusMm + ")")
                + properties("OuterDiameter", mm(statedMm)));

    assertThat(diameterMm(element(model, 1))).isEqualTo(statedMm);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  @Test
  void statedDiameterWithImpossibleBoreAndWallLosesAgainstTheBody() {
    MepElement pipe =
        first(
            PIPE
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,50.8)")
                + properties(
                    "OuterDiameter",
                    mm(125.0),
                    "InnerDiameter",
                    mm(10.0),
                    "WallThickness",
                    mm(20.0)));

    assertThat(diameterMm(pipe)).isEqualTo(101.6);
  }

  /** The bore of a free profile is a curve, and it has no wall by name. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,200.,60.)",
        "IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#50,(#51))"
      })
  void hollowProfileDrawnWithTheBoreHasTheOutsideOfBoreAndWalls(String profile) {
    MepModel model = read(PIPE + body(profile) + CIRCLES + properties("InnerDiameter", mm(400.0)));

    assertThat(diameterMm(element(model, 1))).isEqualTo(520);
    // both figures are drawn; the property only tells that the drawn diameter is the bore
    assertThat(Objects.requireNonNull(element(model, 1).section()).how()).isEqualTo(How.SOLID);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  /** 300 mm with a wall of 60 mm, as a disk moved along a line. */
  @Test
  void hollowDiskDrawnWithTheBoreHasTheOutsideOfBoreAndWalls() {
    MepModel model =
        read(
            PIPE
                + body("IFCPOLYLINE((#16,#21))")
                    .replace(
                        "IFCEXTRUDEDAREASOLID(#20,$,#13,2500.)",
                        "IFCSWEPTDISKSOLID(#20,150.,90.,$,$)")
                + "#21=IFCCARTESIANPOINT((0.,0.,2500.));\n"
                + properties("InnerDiameter", mm(300.0)));

    assertThat(diameterMm(element(model, 1))).isEqualTo(420);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  /** 76.1 + 2 x 2.9 mm; a material profile of another size does not tell the wall. */
  @ParameterizedTest
  @CsvSource({"76.1,81.9", "60.3,60.3"})
  void bodyDrawnWithTheBoreHasTheWallOfTheProfileOfItsMaterial(double drawnMm, double outsideMm) {
    MepElement pipe =
        first(
            PIPE
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + drawnMm / 2 + ")")
                + properties("InnerDiameter", mm(drawnMm))
                + MATERIAL_PROFILE);

    assertThat(diameterMm(pipe)).isEqualTo(outsideMm);
  }

  /** Plastic pipes of 50 and 250 mm are called by their outside; no pipe is 80 mm wide. */
  @ParameterizedTest
  @CsvSource({"80.,true", "50.,false", "250.,false"})
  void bodyDrawnWithItsNominalSizeIsAFindingUnlessThereAreSuchPipes(
      double nominalMm, boolean asked) {
    MepModel stated =
        read(
            PIPE
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + nominalMm / 2 + ")")
                + properties("NominalDiameter", mm(nominalMm)));
    MepModel named =
        read(
            PIPE.replace("'Pipe'", "'Pipe DN" + (int) nominalMm + "'")
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + nominalMm / 2 + ")"));

    assertThat(diameterMm(element(stated, 1))).isEqualTo(nominalMm);
    assertThat(codes(stated).contains("SECTION_CONFLICT")).isEqualTo(asked);
    assertThat(codes(named).contains("SECTION_CONFLICT")).isEqualTo(asked);
  }

  /** 16.1 mm is near enough to a copper tube of 16 mm to be an outside diameter by itself. */
  @Test
  void statedDiameterWinsOverABodyDrawnWithTheStatedBore() {
    MepModel model =
        read(
            PIPE
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,8.05)")
                + properties("OuterDiameter", mm(21.3), "InnerDiameter", mm(16.1)));

    assertThat(diameterMm(element(model, 1))).isEqualTo(21.3);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  @Test
  void statedDiameterNarrowerThanTheBoreLosesAgainstBoreAndWall() {
    MepModel model =
        read(
            BARE.formatted("Pipe")
                + properties(
                    "OuterDiameter",
                    mm(50.0),
                    "InnerDiameter",
                    mm(54.5),
                    "WallThickness",
                    mm(2.9)));

    assertThat(diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT", "NO_GEOMETRY");
  }

  /** No table has 500 + 2 x 2.9 mm, so the bore is what is wrong. */
  @Test
  void boreThatMakesNoKnownPipeLosesAgainstTheStatedDiameter() {
    MepElement pipe =
        first(
            BARE.formatted("Pipe")
                + properties(
                    "OuterDiameter",
                    mm(60.3),
                    "InnerDiameter",
                    mm(500.0),
                    "WallThickness",
                    mm(2.9)));

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
  }

  /** 60.3 + 2 x 30; a DN 100 may well be 120.3 mm wide. */
  @ParameterizedTest
  @CsvSource({"50.,60.3", "100.,120.3"})
  void statedDiameterThatHoldsTheInsulationOfANominalSizeIsTakenWithoutIt(
      double nominalMm, double bareMm) {
    MepElement pipe =
        first(
            BARE.formatted("Pipe")
                + properties(
                    "OuterDiameter",
                    mm(120.3),
                    "NominalDiameter",
                    mm(nominalMm),
                    "Insulation Thickness",
                    mm(30.0)));

    assertThat(diameterMm(pipe)).isEqualTo(bareMm);
    assertThat(Objects.requireNonNull(pipe.existingInsulation()).thicknessM()).isEqualTo(0.03);
  }

  @Test
  void boreAndWallGiveTheOutsideOfAPipeWithoutBody() {
    MepElement pipe =
        first(
            BARE.formatted("Pipe")
                + properties("Innendurchmesser", mm(54.5), "Wandstaerke", "IFCTEXT('2.9')"));

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"a 5 m, 22 x 1 mm|22", "Rohr DN50|60.3", "Copper 54x1.5|54", "22 x 22|"})
  void nameOfAPipeGivesItsDiameter(String name, Double diameterMm) {
    MepElement pipe = first(BARE.formatted(name));

    assertThat(pipe.section() == null ? null : diameterMm(pipe)).isEqualTo(diameterMm);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "305 mm x305 mm|305.0 x 305.0 mm",
        "305 mm x305 mm|305.0 x 305.0 mm",
        "400x1000|400.0 x 1000.0 mm",
        "305 \u043c\u043cx305 \u043c\u043c|305.0 x 305.0 mm",
        "12\"x10\"|304.8 x 254.0 mm",
        "350 mm\u00F8|350.0 mm",
        "\u00D8250|250.0 mm",
        "d=300 mm|300.0 mm"
      })
  void sizePropertyOfADuctGivesItsSection(String size, String inWords) {
    MepElement duct =
        first(
            "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,$,$,$,$);\n"
                + properties("Size", "IFCLABEL('" + size + "')"));

    assertThat(InWords.section(value(duct.section()))).isEqualTo(inWords);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IFCDUCTFITTING|315/315/250|315.0 mm, 315.0 mm, 250.0 mm",
        "IFCDUCTFITTING|315 mmx450 mm-350 mm\u00D8|315.0 x 450.0 mm, 350.0 mm",
        "IFCPIPEFITTING|T-Stueck DN80/80/25|88.9 mm, 88.9 mm, 33.7 mm",
        "IFCPIPEFITTING|Reduzierung 80/50|88.9 mm, 60.3 mm",
        "IFCPIPEFITTING|Export 05/11/2024|",
        "IFCPIPEFITTING|Bogen 45|"
      })
  void sizeTextOfAFittingGivesItsEnds(String keyword, String size, String ends) {
    MepElement fitting =
        first(
            "#1=%s('1',$,'Fitting',$,$,$,$,$,$);\n".formatted(keyword)
                + properties("Size", "IFCLABEL('" + size + "')"));

    assertThat(fitting.ends().stream().map(InWords::section).collect(Collectors.joining(", ")))
        .isEqualTo(ends == null ? "" : ends);
  }

  @ParameterizedTest
  @CsvSource({
    "DN80/80/25,TEE",
    "DN80/50,REDUCER",
    "DN50/50,UNKNOWN",
    "DN80,UNKNOWN",
    "Bogen DN80/50,BEND"
  })
  void sizesOfTheEndsTellTheFormOfAFittingThatIsNeitherDrawnNorNamed(String size, Form form) {
    MepElement fitting = first("#1=IFCPIPEFITTING('1',$,'%s',$,$,$,$,$,$);\n".formatted(size));

    assertThat(fitting.form()).isEqualTo(form);
  }

  @ParameterizedTest
  @CsvSource({"Bend-90,BEND", "T-branch-90,TEE", "S-part,OFFSET", "Pump,UNKNOWN"})
  void productTypeNamesTheFormOfAFittingThatHasNoTellingName(String productType, Form form) {
    MepElement fitting =
        first(
            "#1=IFCDUCTFITTING('1',$,'F1-017',$,$,$,$,$,$);\n"
                + properties("ProductType", "IFCLABEL('" + productType + "')"));

    assertThat(fitting.form()).isEqualTo(form);
  }

  /** Pset_PipeFittingTypeCommon and Pset_DuctFittingTypeCommon of IFC2X3. */
  @Test
  void subTypeNamesTheFormOfAFittingToo() {
    MepElement fitting =
        first(
            "#1=IFCPIPEFITTING('1',$,'F1-017',$,$,$,$,$,$);\n"
                + properties("SubType", "IFCLABEL('Reducer')"));

    assertThat(fitting.form()).isEqualTo(Form.REDUCER);
  }

  /** Pset_DuctSegmentTypeCommon: one name for diameter and width, and a height of 0 for round. */
  @ParameterizedTest
  @CsvSource({"0.,300.0 mm", "200.,300.0 x 200.0 mm"})
  void ductOfNominalHeightZeroIsRound(String height, String inWords) {
    MepElement duct =
        first(
            "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,$,$,$,$);\n"
                + properties(
                    "NominalDiameterOrWidth",
                    mm(300.0),
                    "NominalHeight",
                    "IFCPOSITIVELENGTHMEASURE(" + height + ")"));

    assertThat(InWords.section(value(duct.section()))).isEqualTo(inWords);
  }

  @Test
  void materialProfileIsTheSectionOfAPipeWithoutBody() {
    MepElement pipe = first(BARE.formatted("Pipe") + MATERIAL_PROFILE);

    assertThat(diameterMm(pipe)).isEqualTo(76.1);
    Measured<Section> section = Objects.requireNonNull(pipe.section());
    assertThat(section.how()).isEqualTo(How.PROPERTY);
    assertThat(section.evidence().path()).startsWith("material profile ");
  }

  @Test
  void bodyWinsOverTheMaterialProfileAndTheDifferenceIsShown() {
    MepModel model = read(PIPE + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)") + MATERIAL_PROFILE);

    assertThat(diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(codes(model)).isEqualTo(List.of("SECTION_CONFLICT"));
  }

  /** Outer and inner curve of a ring of 400 mm with a wall of 60 mm. */
  private static final String CIRCLES =
      """
      #50=IFCCIRCLE(#52,200.);
      #51=IFCCIRCLE(#52,140.);
      #52=IFCAXIS2PLACEMENT2D(#53,$);
      #53=IFCCARTESIANPOINT((0.,0.));
      """;

  /** With a profile of insulation beside that of the pipe. */
  private static final String MATERIAL_PROFILE =
      """
      #30=IFCRELASSOCIATESMATERIAL('30',$,$,$,(#1),#31);
      #31=IFCMATERIALPROFILESETUSAGE(#32,5,$);
      #32=IFCMATERIALPROFILESET('Pipe',$,(#33,#36),$);
      #33=IFCMATERIALPROFILE('Casing',$,#34,#35,$,$);
      #34=IFCMATERIAL('Steel',$,$);
      #35=IFCCIRCLEHOLLOWPROFILEDEF(.CURVE.,'76.1',$,38.05,2.9);
      #36=IFCMATERIALPROFILE('Insulation',$,#34,#37,$,$);
      #37=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,88.05,50.);
      """;
}
