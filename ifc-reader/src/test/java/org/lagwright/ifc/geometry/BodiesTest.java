package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.METRES;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Section;

class BodiesTest {

  /** A pipe #100 of 3 m and a clearance box #110 round it. */
  private static final String ITEMS =
      """
      #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,3.);
      #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,0.05);
      #110=IFCEXTRUDEDAREASOLID(#111,#14,#13,4.);
      #111=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,1.,1.);
      """;

  private static Shape measure(String representations) {
    return TinyModel.measure(
        TinyModel.withCommon(
            TinyModel.AT_ORIGIN
                + representations
                + ITEMS
                + "#120=IFCPOLYLINE((#10,#121));\n#121=IFCCARTESIANPOINT((0.,0.,9.));\n"),
        METRES,
        ShapeHints.NONE);
  }

  private static void isPipe(Shape shape) {
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1));
    assertThat(lengthM(shape).value()).isCloseTo(3, within(1e-12));
  }

  @Test
  void bodyIsMeasuredWhereverItStandsAmongTheRepresentations() {
    for (String order : new String[] {"#5,#6,#4", "#4,#5,#6", "#6,#4,#5"}) {
      isPipe(
          measure(
              """
              #3=IFCPRODUCTDEFINITIONSHAPE($,$,(%s));
              #4=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#100));
              #5=IFCSHAPEREPRESENTATION($,'Axis','Curve3D',(#120));
              #6=IFCSHAPEREPRESENTATION($,'Clearance','SweptSolid',(#110));
              """
                  .formatted(order)));
    }
  }

  @Test
  void solidWithoutAnIdentifierStandsInForTheBodyButClearanceDoesNot() {
    isPipe(
        measure(
            """
            #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#6,#5,#4));
            #4=IFCSHAPEREPRESENTATION($,$,'SweptSolid',(#100));
            #5=IFCSHAPEREPRESENTATION($,'Axis','Curve3D',(#120));
            #6=IFCSHAPEREPRESENTATION($,'Clearance','SweptSolid',(#110));
            """));
    Shape none =
        measure(
            """
            #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#5,#6));
            #5=IFCSHAPEREPRESENTATION($,'Axis','Curve3D',(#120));
            #6=IFCSHAPEREPRESENTATION($,'Clearance','SweptSolid',(#110));
            """);
    assertThat(none.section()).isNull();
    assertThat(none.problems()).containsExactly("only an axis is drawn, no body");
  }

  /** A mapped set of curves is called the body, or the body beside the axis draws no more. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        """
        #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4));
        #4=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#150));
        #150=IFCMAPPEDITEM(#151,#152);
        #151=IFCREPRESENTATIONMAP(#14,#153);
        #152=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,1.,$);
        #153=IFCSHAPEREPRESENTATION($,'Axis','GeometricSet',(#154));
        #154=IFCGEOMETRICSET((#120));
        """,
        """
        #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4,#5));
        #4=IFCSHAPEREPRESENTATION($,'Body','SurfaceModel',(#155));
        #5=IFCSHAPEREPRESENTATION($,'Axis','Curve3D',(#120));
        #155=IFCSHELLBASEDSURFACEMODEL(());
        """
      })
  void axisTellsTheLengthWhereTheBodyTellsNothing(String representations) {
    Shape line = measure(representations);

    assertThat(line.section()).isNull();
    assertThat(lengthM(line).value()).isCloseTo(9, within(1e-9));
    assertThat(line.problems())
        .singleElement()
        .asString()
        .endsWith("; the length is that of its axis");
  }

  /** Exporters mistake the type of a representation; a line called so is still no body. */
  @ParameterizedTest
  @ValueSource(strings = {"Curve3D", "Annotation2D", "BoundingBox"})
  void solidInTheBodyCountsWhateverTypeOfRepresentationItIsCalled(String type) {
    String body = "#4=IFCSHAPEREPRESENTATION($,'Body','%s',(%s));\n";
    String map =
        """
        #130=IFCMAPPEDITEM(#131,#132);
        #131=IFCREPRESENTATIONMAP(#14,#133);
        #132=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,1.,$);
        #133=IFCSHAPEREPRESENTATION($,'Body',$,(#100));
        """;
    String only = "#3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4));\n";

    isPipe(measure(only + body.formatted(type, "#100")));
    isPipe(measure(only + body.formatted(type, "#130") + map));
    assertThat(measure(only + body.formatted(type, "#120")).section()).isNull();
  }

  @Test
  void productOfWhichOnlyABoxIsDrawnSaysSo() {
    Shape shape =
        measure(
            """
            #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4));
            #4=IFCSHAPEREPRESENTATION($,'Box','BoundingBox',(#130));
            #130=IFCBOUNDINGBOX(#10,0.1,0.1,3.);
            """);

    assertThat(shape.section()).isNull();
    assertThat(shape.isDrawn()).isFalse();
    assertThat(shape.problems()).containsExactly("only a box around it is drawn, no body");
  }

  @Test
  void productWithoutRepresentationSaysSo() {
    Shape shape =
        TinyModel.measure(
            TinyModel.file("#1=IFCPIPESEGMENT('0123456789012345678901',$,$,$,$,$,$,$,$);\n"),
            METRES,
            ShapeHints.NONE);
    assertThat(shape.problems()).containsExactly("no representation");
  }

  @Test
  void sizesHoldWithoutAPlacementButPositionsDoNot() {
    Shape shape =
        TinyModel.measure(
            TinyModel.body("#2=IFCLOCALPLACEMENT(#2,#14);\n", "#100", ITEMS),
            METRES,
            ShapeHints.NONE);
    isPipe(shape);
    assertThat(shape.ends()).isEmpty();
    assertThat(shape.problems()).containsExactly("its placement is missing or not read");
  }

  @Test
  void collarRoundAPipeDoesNotChangeItsSize() {
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN,
                "#130,#100",
                ITEMS
                    + """
                    #130=IFCEXTRUDEDAREASOLID(#131,#132,#13,0.05);
                    #131=IFCCIRCLEPROFILEDEF(.AREA.,$,$,0.08);
                    #132=IFCAXIS2PLACEMENT3D(#133,$,$);
                    #133=IFCCARTESIANPOINT((0.,0.,1.));
                    """),
            METRES,
            ShapeHints.NONE);
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.1, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(3, within(1e-9));
  }
}
