package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** What was measured of a body in part, or not at all, is told. */
class BodyFindingTest {

  private static final String PARTLY = "GEOMETRY_ONLY_PARTLY_MEASURED";

  private static final List<String> DOUBTS =
      List.of(PARTLY, "SECTION_CONFLICT", "SIZE_FROM_NOMINAL");

  /** A pipe with a swept disk along some points. */
  private static MepModel pipe(String points) {
    return InlineModel.read(records(points));
  }

  private static String records(String points) {
    return """
        #1=IFCPIPESEGMENT('g',$,'Pipe',$,$,#14,#10,$,$);
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#12));
        #12=IFCSWEPTDISKSOLID(#13,30.15,$,$,$);
        #13=IFCPOLYLINE((%s));
        #14=IFCLOCALPLACEMENT($,#15);
        #15=IFCAXIS2PLACEMENT3D(#20,$,$);
        #20=IFCCARTESIANPOINT((0.,0.,0.));
        #21=IFCCARTESIANPOINT((1000.,0.,0.));
        #22=IFCCARTESIANPOINT((1000.,1000.,0.));
        #23=IFCCARTESIANPOINT((2000.,1000.,0.));
        """
        .formatted(points);
  }

  /** A port of the pipe with its records from id on. */
  private static String port(int id, double xMm, double yMm) {
    return "#%d=IFCDISTRIBUTIONPORT('%d',$,$,$,$,#%d,$,.SOURCE.,.PIPE.,$);\n"
            .formatted(id, id, id + 2)
        + "#%d=IFCRELNESTS('n%d',$,$,$,#1,(#%d));\n".formatted(id + 1, id, id)
        + InlineModel.placed(id + 2, xMm, yMm, 0);
  }

  /** From end to end it is 2.24 m as the crow flies, along three legs of 1 m it is more. */
  @Test
  void straightWayBetweenThePortsOfAPipeThatTurnsIsNoOtherLength() {
    MepModel model =
        InlineModel.read(records("#20,#21,#22,#23") + port(100, 0, 0) + port(200, 2000, 1000));
    Measured<Double> lengthM = Objects.requireNonNull(element(model, 1).lengthM());

    assertThat(lengthM.value()).isGreaterThan(Math.hypot(2, 1));
    assertThat(lengthM.lost())
        .extracting(Candidate::why)
        .containsExactly("straight across a curved piece");
    assertThat(codes(model)).doesNotContain("LENGTH_CONFLICT");
  }

  /** Ports that are elsewhere than the ends of the body tell of something else. */
  @Test
  void otherDistanceOfPortsIsAConflict() {
    MepModel model =
        InlineModel.read(records("#20,#21,#22,#23") + port(100, 0, 0) + port(200, 1000, 1000));

    assertThat(codes(model)).contains("LENGTH_CONFLICT");
  }

  @Test
  void pipeWithSeveralBendsIsTold() {
    assertThat(codes(pipe("#20,#21,#22,#23"))).contains(PARTLY);
  }

  @Test
  void plainPipeIsNot() {
    assertThat(codes(pipe("#20,#21"))).doesNotContain(PARTLY);
  }

  @Test
  void pipeWhoseBodyGivesNothingIsTold() {
    assertThat(codes(pipe("#20"))).contains(PARTLY);
  }

  @Test
  void pipeWithoutAnyBodyIsNot() {
    assertThat(codes(InlineModel.read("#1=IFCPIPESEGMENT('g',$,'Pipe',$,$,$,$,$,$);\n")))
        .doesNotContain(PARTLY);
  }

  @Test
  void pipeOfWhichOnlyABoxIsDrawnIsTold() {
    String boxed =
        """
        #1=IFCPIPESEGMENT('g',$,'Pipe',$,$,$,#2,$,$);
        #2=IFCPRODUCTDEFINITIONSHAPE($,$,(#3));
        #3=IFCSHAPEREPRESENTATION($,'Box','BoundingBox',(#4));
        #4=IFCBOUNDINGBOX(#5,60.3,60.3,1000.);
        #5=IFCCARTESIANPOINT((0.,0.,0.));
        """;

    assertThat(codes(InlineModel.read(boxed))).contains(PARTLY);
  }

  @ParameterizedTest
  @CsvSource({
    "IFCPIPESEGMENT,Part,true",
    "IFCPIPEFITTING,Part,true",
    "IFCPIPEFITTING,Elbow,true",
    "IFCDUCTSEGMENT,Part,false",
    "IFCDUCTFITTING,Elbow,false"
  })
  void pipeDrawnWithFlatSidesIsTold(String keyword, String name, boolean told) {
    String box =
        """
        #1=%s('g',$,'%s',$,$,$,#2,$,$);
        #2=IFCPRODUCTDEFINITIONSHAPE($,$,(#3));
        #3=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#4));
        #4=IFCEXTRUDEDAREASOLID(#5,$,#6,3000.);
        #5=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,100.);
        #6=IFCDIRECTION((0.,0.,1.));
        """
            .formatted(keyword, name);

    MepModel model = InlineModel.read(box);
    assertThat(
            model.findings().stream()
                .anyMatch(each -> each.message().contains("flat sides or oval")))
        .isEqualTo(told);
  }

  /** Programs without a reducer write it as a pipe; what tapers by nothing is one. */
  @ParameterizedTest
  @CsvSource({
    "IFCPIPESEGMENT,60.,true",
    "IFCDUCTSEGMENT,60.,true",
    "IFCPIPESEGMENT,100.,false",
    "IFCPIPEFITTING,60.,false"
  })
  void straightPieceThatTapersIsTold(String keyword, String endRadius, boolean told) {
    String cone =
        """
        #1=%s('g',$,'Part',$,$,$,#2,$,$);
        #2=IFCPRODUCTDEFINITIONSHAPE($,$,(#3));
        #3=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#4));
        #4=IFCEXTRUDEDAREASOLIDTAPERED(#5,$,#6,300.,#7);
        #5=IFCCIRCLEPROFILEDEF(.AREA.,$,$,100.);
        #6=IFCDIRECTION((0.,0.,1.));
        #7=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        """
            .formatted(keyword, endRadius);

    assertThat(
            InlineModel.read(cone).findings().stream()
                .anyMatch(each -> each.message().contains("ends of different sizes")))
        .isEqualTo(told);
  }

  /**
   * A square stands for a pipe where its size is stated; DN 50 is drawn as wide as it is called.
   */
  @ParameterizedTest
  @CsvSource({
    "OuterDiameter,60.3,60.3,60.3,",
    "NominalDiameter,50.,60.3,60.3,",
    "NominalDiameter,50.,50.,60.3,SIZE_FROM_NOMINAL",
    "NominalDiameter,1234.,1234.,1234.0,",
    "OuterDiameter,114.3,60.3,60.3,SECTION_CONFLICT",
    "Width,100.,100.,100.0 x 100.0,GEOMETRY_ONLY_PARTLY_MEASURED"
  })
  void squareOfPipeIsItsDiameter(String name, String value, String side, String size, String code) {
    MepModel model =
        InlineModel.read(
            """
            #1=IFCPIPESEGMENT('g',$,'Part',$,$,#11,#2,$,$);
            #2=IFCPRODUCTDEFINITIONSHAPE($,$,(#3));
            #3=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#4));
            #4=IFCEXTRUDEDAREASOLID(#5,$,#6,3000.);
            #5=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s);
            #6=IFCDIRECTION((0.,0.,1.));
            #7=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#8);
            #8=IFCPROPERTYSET('p',$,'Sizes',$,(#9,#10));
            #9=IFCPROPERTYSINGLEVALUE('%s',$,IFCPOSITIVELENGTHMEASURE(%s),$);
            #10=IFCPROPERTYSINGLEVALUE('Height',$,IFCPOSITIVELENGTHMEASURE(%s),$);
            #11=IFCLOCALPLACEMENT($,#12);
            #12=IFCAXIS2PLACEMENT3D(#13,$,$);
            #13=IFCCARTESIANPOINT((0.,0.,0.));
            """
                .formatted(side, side, name, value, side));

    assertThat(InWords.section(Objects.requireNonNull(model.elements().get(0).section()).value()))
        .isEqualTo(size + " mm");
    assertThat(codes(model))
        .filteredOn(DOUBTS::contains)
        .isEqualTo(Stream.ofNullable(code).toList());
  }

  /** A pyramid on a square: nothing calls it a cap but that it has one end. */
  @ParameterizedTest
  @CsvSource({"Part,true", "End cap,false"})
  void capThatOnlyTheBodyMakesIsTold(String name, boolean told) {
    MepModel model =
        InlineModel.read(
            """
            #1=IFCDUCTFITTING('g',$,'%s',$,$,$,#2,$,$);
            #2=IFCPRODUCTDEFINITIONSHAPE($,$,(#3));
            #3=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#4));
            #4=IFCTRIANGULATEDFACESET(#5,$,.T.,((1,2,3),(1,3,4),(1,2,5),(2,3,5),(3,4,5),(4,1,5)),$);
            #5=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(400.,0.,0.),(400.,400.,0.),(0.,400.,0.),(200.,200.,300.)));
            """
                .formatted(name));
    assertThat(model.findings().stream().anyMatch(each -> each.message().contains("open end")))
        .isEqualTo(told);
  }

  /** Width and height are written of flat ovals as of rectangles, and so is 500x200. */
  @Test
  void widthAndHeightOfAFlatOvalAreNoContradiction() {
    MepModel model =
        InlineModel.read(
            "#1=IFCDUCTSEGMENT('g',$,'Duct 500x200',$,$,#14,#10,$,$);\n"
                + InlineModel.body("IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#30)")
                + """
                #30=IFCINDEXEDPOLYCURVE(#31,(IFCARCINDEX((1,2,3)),IFCLINEINDEX((3,4)),IFCARCINDEX((4,5,6)),IFCLINEINDEX((6,1))),.F.);
                #31=IFCCARTESIANPOINTLIST2D(((150.,-100.),(250.,0.),(150.,100.),(-150.,100.),(-250.,0.),(-150.,-100.)));
                """
                + InlineModel.properties(
                    "Width",
                    "IFCPOSITIVELENGTHMEASURE(500.)",
                    "Height",
                    "IFCPOSITIVELENGTHMEASURE(200.)"));

    assertThat(InlineModel.value(InlineModel.element(model, 1).section()))
        .isInstanceOf(Section.Oval.class);
    assertThat(InlineModel.codes(model)).doesNotContain("SECTION_CONFLICT");
  }
}
