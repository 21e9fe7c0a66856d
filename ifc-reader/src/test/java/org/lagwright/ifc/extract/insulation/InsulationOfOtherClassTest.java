package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.join;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.BODY_ONLY;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;

/** Insulation that comes as pipe, fitting or proxy is counted as none of these. */
class InsulationOfOtherClassTest {

  /** Part #200 of the pipe #1. */
  private static final String PART = "#9=IFCRELAGGREGATES('9',$,$,$,#1,(#200));\n";

  private static String as(String keyword, String name, double fromMm, double longMm) {
    return covering(2, name, ring(120.3, 30), fromMm, longMm)
        .replace("IFCCOVERING", keyword)
        .replace(".INSULATION.", "$");
  }

  @ParameterizedTest
  @CsvSource({
    "IFCPIPEFITTING,''",
    "IFCPIPESEGMENT,''",
    "IFCBUILDINGELEMENTPROXY,''",
    "IFCPIPEFITTING,part",
    "IFCPIPESEGMENT,part",
    "IFCBUILDINGELEMENTPROXY,part"
  })
  void isCoveringOfWhatItLiesAround(String keyword, String part) {
    MepModel model = read(PIPE + as(keyword, "Insulation", 0, 2500) + (part.isEmpty() ? "" : PART));

    assertThat(element(model, 1).kind()).isEqualTo(Kind.PIPE_SEGMENT);
    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(element(model, 200).kind()).isEqualTo(Kind.COVERING);
    assertThat(codes(model)).isEmpty();
  }

  @Test
  void isCoveringOfWhatAnotherFileHolds() {
    List<MepModel> models = join(PIPE, BODY_ONLY + as("IFCPIPEFITTING", "Insulation", 0, 2500));

    assertThat(mm(of(models.get(0), 1))).isCloseTo(30, within(0.01));
    assertThat(element(models.get(1), 200).kind()).isEqualTo(Kind.COVERING);
    assertThat(codes(models.get(1))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFCPIPEFITTING", "IFCPIPESEGMENT", "IFCBUILDINGELEMENTPROXY"})
  void isCoveringOfItsWholeWhereItIsNotDrawn(String keyword) {
    String undrawn = "#200=%s('200',$,'Insulation',$,$,$,$,$,$);\n".formatted(keyword);
    String states =
        properties(500, 200, "Set", "Insulation Thickness", "IFCPOSITIVELENGTHMEASURE(30.)");
    MepModel model = read(PIPE + undrawn + states + PART);

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(element(model, 200).kind()).isEqualTo(Kind.COVERING);
    assertThat(codes(model)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Insulating flange: Isolierflansch DN50", "Isolierkupplung DN50"})
  void insulatingFlangeOrCouplingAroundThePipeIsNone(String name) {
    MepModel model = read(PIPE + as("IFCPIPEFITTING", name, 1000, 40));

    assertThat(element(model, 200).kind()).isEqualTo(Kind.PIPE_FITTING);
    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  /** A pipe once more as its part, which is called insulated. */
  @Test
  void insulatedPipeIsCountedInsteadOfItsWhole() {
    String part =
        as("IFCPIPESEGMENT", "Isolierte Leitung", 0, 2500)
            .replace(ring(120.3, 30), "IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)");
    MepModel model = read(PIPE + part + PART);

    assertThat(element(model, 1).kind()).isEqualTo(Kind.OTHER);
    assertThat(element(model, 200).kind()).isEqualTo(Kind.PIPE_SEGMENT);
    assertThat(codes(model)).contains("COUNTED_BY_PARTS");
  }

  /** 500 x 300 mm, and 400 mm of 30 mm insulation on it as faces, wider than long. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void shortBoxLiesAlongItsDuctThoughItIsWiderThanLong(boolean related) {
    String box =
        """
        #2=IFCCOVERING('2',$,'Wool',$,$,#50,#60,$,.INSULATION.);
        #60=IFCPRODUCTDEFINITIONSHAPE($,$,(#61));
        #61=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#62));
        #62=IFCTRIANGULATEDFACESET(#63,$,.T.,((1,3,2),(1,4,3),(5,6,7),(5,7,8),(1,2,6),(1,6,5),
        (2,3,7),(2,7,6),(3,4,8),(3,8,7),(4,1,5),(4,5,8)),$);
        #63=IFCCARTESIANPOINTLIST3D(((-280.,-180.,0.),(280.,-180.,0.),(280.,180.,0.),
        (-280.,180.,0.),(-280.,-180.,400.),(280.,-180.,400.),(280.,180.,400.),(-280.,180.,400.)));
        """;
    MepModel model =
        read(
            "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
                + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,500.,300.)")
                + box
                + placed(50, 0, 0, 1000)
                + (related ? "#9=IFCRELCOVERSBLDGELEMENTS('9',$,$,$,#1,(#2));\n" : ""));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(0.16, within(0.001));
    assertThat(codes(model)).isEmpty();
  }
}
