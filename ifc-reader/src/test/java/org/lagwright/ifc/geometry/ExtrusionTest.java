package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.METRES;
import static org.lagwright.ifc.geometry.TinyModel.MM_DEG;
import static org.lagwright.ifc.geometry.TinyModel.MM_RAD;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Lengths hold to 0.1 mm and diameters to 0.01 mm, as the accuracy targets ask. */
class ExtrusionTest {

  private static final String EXTRUDED = "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,2500.);\n";

  private static void round(Shape shape, double diameterM, double lengthM) {
    assertThat(section(shape).value()).isInstanceOf(Section.Round.class);
    assertThat(section(shape).value().largestSideM()).isCloseTo(diameterM, within(1e-5));
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-4));
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
  }

  private static void box(Shape shape, double widthM, double heightM, double lengthM) {
    Section.Rectangular section = (Section.Rectangular) section(shape).value();
    assertThat(section.widthM()).isCloseTo(widthM, within(1e-5));
    assertThat(section.heightM()).isCloseTo(heightM, within(1e-5));
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-4));
  }

  @Test
  void circleGivesTwiceTheRadiusAndTheDepth() {
    Shape shape =
        TinyModel.item(MM_RAD, EXTRUDED + "#101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,30.15);");
    round(shape, 0.0603, 2.5);
    assertThat(section(shape).how()).isEqualTo(How.SOLID);
    assertThat(section(shape).evidence()).hasToString("#101 IfcCircleProfileDef.Radius = 30.15");
    assertThat(lengthM(shape).evidence()).hasToString("#100 IfcExtrudedAreaSolid.Depth = 2500.");
    assertThat(shape.problems()).isEmpty();
    assertThat(shape.ends().get(0).centreM()).isEqualTo(new Point(0, 0, 0));
    assertThat(shape.ends().get(0).outward().z()).isEqualTo(-1);
    assertThat(shape.ends().get(1).centreM()).isEqualTo(new Point(0, 0, 2.5));
    assertThat(shape.ends().get(1).outward()).isEqualTo(new Point(0, 0, 1));
  }

  @Test
  void hollowCircleGivesItsOuterDiameter() {
    round(
        TinyModel.item(
            MM_RAD, EXTRUDED + "#101=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#16,84.15,4.5);"),
        0.1683,
        2.5);
  }

  @Test
  void lengthOfTheExtrusionDirectionDoesNotCount() {
    round(
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#102,1000.);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,50.);
            #102=IFCDIRECTION((0.,0.,-7.));
            """),
        0.1,
        1);
  }

  @Test
  void slantedExtrusionIsSeenAtRightAnglesToItsAxis() {
    // a circle of 100 extruded at 60 degrees to its plane is 100 x 100 sin 60 across
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#102,1000.);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
            #102=IFCDIRECTION((0.5,0.,0.8660254037844386));
            """);
    assertThat(lengthM(shape).value()).isCloseTo(1, within(1e-9));
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.1, within(1e-9));
    assertThat(section(shape).value()).isInstanceOf(Section.Oval.class);
    assertThat(shape.problems())
        .containsExactly("extruded at a slant; section taken at right angles");
  }

  @Test
  void ellipseOfEqualAxesIsRoundAndOthersAreOval() {
    round(
        TinyModel.item(MM_RAD, EXTRUDED + "#101=IFCELLIPSEPROFILEDEF(.AREA.,$,#16,100.,100.);"),
        0.2,
        2.5);
    Shape oval =
        TinyModel.item(MM_RAD, EXTRUDED + "#101=IFCELLIPSEPROFILEDEF(.AREA.,$,#16,200.,100.);");
    assertThat(section(oval).value()).isEqualTo(new Section.Oval(0.4, 0.2));
  }

  @Test
  void rectangleRoundedByHalfItsHeightIsAFlatOval() {
    Shape oval =
        TinyModel.item(
            MM_RAD, EXTRUDED + "#101=IFCROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,#16,400.,200.,100.);");
    assertThat(section(oval).value()).isEqualTo(new Section.Oval(0.4, 0.2));
    box(
        TinyModel.item(
            MM_RAD, EXTRUDED + "#101=IFCROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,#16,400.,200.,10.);"),
        0.4,
        0.2,
        2.5);
  }

  @Test
  void polygonWithCornersOnACircleGivesTheCircleAlsoWhenItsFirstPointRepeats() {
    round(
        TinyModel.item(
            MM_RAD,
            EXTRUDED
                + "#101=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#102);\n"
                + "#102=IFCINDEXEDPOLYCURVE(#103,$,.F.);\n"
                + "#103=IFCCARTESIANPOINTLIST2D(("
                + polygon(24, 16.85, 120, -40)
                + "));\n"),
        0.0337,
        2.5);
  }

  /** Corners on a circle about a centre, the first one repeated. */
  private static String polygon(int corners, double radius, double cx, double cy) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= corners; i++) {
      double t = 2 * Math.PI * (i % corners) / corners;
      points.append(
          String.format(
              Locale.ROOT,
              "%s(%.9f,%.9f)",
              i == 0 ? "" : ",",
              cx + radius * Math.cos(t),
              cy + radius * Math.sin(t)));
    }
    return points.toString();
  }

  @Test
  void fourCornersAreARectangleAlthoughTheyLieOnACircle() {
    box(
        TinyModel.item(
            MM_RAD,
            EXTRUDED
                + """
                #101=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#102);
                #102=IFCPOLYLINE((#103,#104,#105,#106,#103));
                #103=IFCCARTESIANPOINT((0.,0.));
                #104=IFCCARTESIANPOINT((1000.,0.));
                #105=IFCCARTESIANPOINT((1000.,400.));
                #106=IFCCARTESIANPOINT((0.,400.));
                """),
        1,
        0.4,
        2.5);
  }

  @Test
  void flatOvalOfLinesAndArcsIsRecognised() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            EXTRUDED
                + """
                #101=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#102);
                #102=IFCINDEXEDPOLYCURVE(#103,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),\
                IFCLINEINDEX((4,5)),IFCARCINDEX((5,6,1))),.F.);
                #103=IFCCARTESIANPOINTLIST2D(((-150.,-100.),(150.,-100.),(250.,0.),(150.,100.),\
                (-150.,100.),(-250.,0.)));
                """);
    Section.Oval oval = (Section.Oval) section(shape).value();
    assertThat(oval.widthM()).isCloseTo(0.5, within(1e-5));
    assertThat(oval.heightM()).isCloseTo(0.2, within(1e-5));
  }

  @Test
  void compositeCurveOfTrimmedCirclesInDegreesIsACircle() {
    round(
        TinyModel.item(
            MM_DEG,
            EXTRUDED
                + """
                #101=IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#102,(#110));
                #102=IFCCOMPOSITECURVE((#103,#104),.F.);
                #103=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#105);
                #104=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.F.,#106);
                #105=IFCTRIMMEDCURVE(#107,(IFCPARAMETERVALUE(90.)),(IFCPARAMETERVALUE(270.)),.T.,.PARAMETER.);
                #106=IFCTRIMMEDCURVE(#107,(IFCPARAMETERVALUE(90.)),(IFCPARAMETERVALUE(270.)),.F.,.PARAMETER.);
                #107=IFCCIRCLE(#16,62.5);
                #110=IFCCIRCLE(#16,60.);
                """),
        0.125,
        2.5);
  }

  @Test
  void derivedProfileIsScaledByItsOperator() {
    round(
        TinyModel.item(
            MM_RAD,
            EXTRUDED
                + """
                #101=IFCDERIVEDPROFILEDEF(.AREA.,$,#102,#103,$);
                #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
                #103=IFCCARTESIANTRANSFORMATIONOPERATOR2D($,$,#15,2.);
                """),
        0.2,
        2.5);
  }

  @Test
  void taperedExtrusionIsAReducerWithBothDiameters() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCEXTRUDEDAREASOLIDTAPERED(#101,#14,#13,100.,#102);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,40.);
            #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#103,60.);
            #103=IFCAXIS2PLACEMENT2D(#104,$);
            #104=IFCCARTESIANPOINT((20.,0.));
            """);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(lengthM(shape).value()).isCloseTo(0.1, within(1e-9));
    assertThat(shape.ends())
        .extracting(ShapeEnd::section)
        .containsExactly(new Section.Round(0.08), new Section.Round(0.12));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.12));
    assertThat(section(shape).evidence().step()).isEqualTo(102);
    // eccentric by 20 mm
    assertThat(shape.ends().get(1).centreM()).isEqualTo(new Point(0.02, 0, 0.1));
  }

  @Test
  void rectangleToCircleIsATransition() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCEXTRUDEDAREASOLIDTAPERED(#101,#14,#13,300.,#102);
            #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,400.,300.);
            #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,125.);
            """);
    assertThat(shape.form()).isEqualTo(Form.TRANSITION);
    assertThat(lengthM(shape).value()).isCloseTo(0.3, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"500,300,STRAIGHT", "300,500,REDUCER", "400,300,REDUCER"})
  void equalSidesThatLieAcrossEachOtherMakeAReducer(double x, double y, Form form) {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCEXTRUDEDAREASOLIDTAPERED(#101,#14,#13,400.,#102);
            #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,500.,300.);
            #102=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,%s,%s);
            """
                .formatted(x, y));
    assertThat(shape.form()).isEqualTo(form);
    assertThat(lengthM(shape).value()).isCloseTo(0.4, within(1e-9));
  }

  /** A duct of 4.85 m, 500 wide, 300 high, drawn as its plan and extruded upwards. */
  private static final String UPWARDS =
      """
      #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,300.);
      #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,4850.,500.);
      """;

  @Test
  void ductExtrudedUpwardsIsAsLongAsItsPortsAreApart() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            TinyModel.segmentWithPorts(new Point(-2.425, 0, 0.15), new Point(2.425, 0, 0.15)),
            UPWARDS);
    box(shape, 0.5, 0.3, 4.85);
    assertThat(shape.ends().get(0).centreM().distanceM(new Point(-2.425, 0, 0.15)))
        .isCloseTo(0, within(1e-9));
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(2.425, 0, 0.15)))
        .isCloseTo(0, within(1e-9));
    assertThat(lengthM(shape).evidence()).isEqualTo(section(shape).evidence());
    assertThat(lengthM(shape).lost()).hasSize(1);
    assertThat(lengthM(shape).lost().get(0).value()).isCloseTo(0.3, within(1e-9));
    assertThat(lengthM(shape).lost().get(0).evidence().path()).endsWith("Depth");
    assertThat(lengthM(shape).lost().get(0).why())
        .isEqualTo("the ports lie at the ends of the other edge");
    assertThat(section(shape).lost().get(0).value().perimeterM()).isCloseTo(10.7, within(1e-9));
  }

  @Test
  void portsBeatTheLongestEdgeOfAShortWideDuct() {
    // 500 long between its ports, 4850 wide
    Shape shape =
        TinyModel.item(
            MM_RAD,
            TinyModel.segmentWithPorts(new Point(0, -0.25, 0.15), new Point(0, 0.25, 0.15)),
            UPWARDS);
    box(shape, 4.85, 0.3, 0.5);
  }

  @Test
  void lengthPropertyDecidesWhereThereAreNoPorts() {
    Shape shape = TinyModel.item(MM_RAD, new ShapeHints(List.of(), 0.5, true), UPWARDS);
    box(shape, 4.85, 0.3, 0.5);
    assertThat(lengthM(shape).lost().get(0).why())
        .isEqualTo("a length property equals the other edge");
  }

  @Test
  void longestEdgeOfASegmentIsItsLengthWhereNothingElseTells() {
    Shape shape = TinyModel.item(MM_RAD, new ShapeHints(List.of(), null, true), UPWARDS);
    box(shape, 0.5, 0.3, 4.85);
    // a rubbish property changes nothing
    box(TinyModel.item(MM_RAD, new ShapeHints(List.of(), 30.0, true), UPWARDS), 0.5, 0.3, 4.85);
  }

  @Test
  void boxThatIsNoSegmentKeepsItsDepth() {
    Shape shape = TinyModel.item(MM_RAD, UPWARDS);
    assertThat(lengthM(shape).value()).isCloseTo(0.3, within(1e-9));
    assertThat(lengthM(shape).lost().get(0).value()).isCloseTo(4.85, within(1e-9));
  }

  @Test
  void shortRoundPipeKeepsItsDepthAlthoughItIsWiderThanLong() {
    round(
        TinyModel.item(
            MM_RAD,
            new ShapeHints(List.of(), null, true),
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,40.);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,100.);
            """),
        0.2,
        0.04);
  }

  @Test
  void levelSideOfADuctIsItsWidth() {
    // profile x points up in the world
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                "#2=IFCLOCALPLACEMENT($,#20);\n#20=IFCAXIS2PLACEMENT3D(#10,#11,#13);\n",
                "#100",
                EXTRUDED + "#101=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,300.,500.);\n"),
            MM_RAD,
            new ShapeHints(List.of(), null, true));
    box(shape, 0.5, 0.3, 2.5);
  }

  @Test
  void bendOfADuctDrawnAsItsSideViewGivesMeanRadiusAndAngle() {
    // throat 300, heel 600, so 300 wide on a centre line of radius 450; 250 high
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,250.);
            #101=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#102);
            #102=IFCCOMPOSITECURVE((#103,#104,#105,#106),.F.);
            #103=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#107);
            #104=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.F.,#108);
            #105=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#109);
            #106=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#110);
            #107=IFCPOLYLINE((#111,#112));
            #108=IFCTRIMMEDCURVE(#115,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);
            #109=IFCPOLYLINE((#113,#114));
            #110=IFCTRIMMEDCURVE(#116,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);
            #111=IFCCARTESIANPOINT((0.,600.));
            #112=IFCCARTESIANPOINT((0.,300.));
            #113=IFCCARTESIANPOINT((300.,0.));
            #114=IFCCARTESIANPOINT((600.,0.));
            #115=IFCCIRCLE(#16,300.);
            #116=IFCCIRCLE(#16,600.);
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.45, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.45 * Math.PI / 2, within(1e-9));
    assertThat(section(shape).value().perimeterM()).isCloseTo(1.1, within(1e-9));
    assertThat(shape.ends()).extracting(e -> e.centreM().z()).containsExactly(0.125, 0.125);
  }

  @Test
  void unknownProfileOfASegmentLeavesTheLengthAndSaysWhy() {
    Shape shape =
        TinyModel.item(
            METRES,
            new ShapeHints(List.of(), null, true),
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,3.);
            #101=IFCLSHAPEPROFILEDEF(.AREA.,$,#16,0.2,0.1,0.01,$,$,$);
            """);
    assertThat(shape.section()).isNull();
    assertThat(lengthM(shape).value()).isEqualTo(3);
    assertThat(shape.problems()).singleElement().asString().contains("neither circle, rectangle");
  }

  @Test
  void brokenReferencesLeaveAProblemAndNoNumber() {
    for (String broken :
        List.of(
            "#100=IFCEXTRUDEDAREASOLID(#999,#14,#13,3.);",
            "#100=IFCEXTRUDEDAREASOLID(#101,#999,#13,3.);\n#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,1.);",
            "#100=IFCEXTRUDEDAREASOLID(#101,#14,#999,3.);\n#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,1.);",
            "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,$);\n#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,1.);",
            "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,3.);\n#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,-1.);",
            "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,3.);\n#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,1.#INF);",
            "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,3.);\n#101=IFCDERIVEDPROFILEDEF(.AREA.,$,#101,$,$);",
            "#100=IFCBOUNDINGBOX(#10,1.,1.,1.);")) {
      Shape shape = TinyModel.item(METRES, broken + "\n");
      assertThat(shape.section()).as(broken).isNull();
      assertThat(shape.lengthM()).as(broken).isNull();
      assertThat(shape.problems()).as(broken).isNotEmpty();
    }
  }
}
