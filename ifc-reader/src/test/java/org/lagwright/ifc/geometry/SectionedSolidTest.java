package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/** Pipes whose sections stand at distances along a curve and beside it. */
class SectionedSolidTest {

  private static final String STRAIGHT =
      """
      #101=IFCPOLYLINE((#10,#102));
      #102=IFCCARTESIANPOINT((5000.,0.,0.));
      """;

  /** A quarter of a circle of 5 m, to the left. */
  private static final String ARC =
      """
      #101=IFCTRIMMEDCURVE(#102,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);
      #102=IFCCIRCLE(#14,5000.);
      """;

  /** Level, 3 m, then 4 m to the left of it. */
  private static final String CORNER =
      """
      #101=IFCPOLYLINE((#10,#102,#103));
      #102=IFCCARTESIANPOINT((3000.,0.,0.));
      #103=IFCCARTESIANPOINT((3000.,4000.,0.));
      """;

  /** 7 m rising by three in four, then 4 m level to the left. */
  private static final String RISING =
      """
      #101=IFCPOLYLINE((#10,#102,#103));
      #102=IFCCARTESIANPOINT((4000.,0.,3000.));
      #103=IFCCARTESIANPOINT((8000.,0.,6000.));
      """;

  private static Shape pipe(String curve, double toMm, String offsets, String lastOffsets) {
    return TinyModel.measure(
        TinyModel.body(
            "IFC4X3_ADD2",
            TinyModel.AT_ORIGIN,
            "#100",
            curve
                + """
                #100=IFCSECTIONEDSOLIDHORIZONTAL(#101,(#110,#110),(#120,#130));
                #110=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
                #120=IFCAXIS2PLACEMENTLINEAR(#121,$,$);
                #121=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(0.),%s,#101);
                #130=IFCAXIS2PLACEMENTLINEAR(#131,$,$);
                #131=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(%s),%s,#101);
                """
                    .formatted(offsets, toMm, lastOffsets)),
        TinyModel.MM_DEG,
        ShapeHints.NONE);
  }

  private static void isAt(Shape shape, int end, double x, double y, double z) {
    Vec centre = shape.ends().get(end).centre();
    assertThat(centre.distanceTo(new Vec(x, y, z))).isCloseTo(0, within(1e-6));
  }

  @Test
  void pipeLiesAsFarToTheLeftAndBelowAsItsPositionsSay() {
    Shape shape = pipe(STRAIGHT, 3000, "2000.,-1000.,$", "2000.,-1000.,$");
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1));
    assertThat(lengthM(shape).value()).isCloseTo(3, within(1e-9));
    isAt(shape, 0, 0, 2, -1);
    isAt(shape, 1, 3, 2, -1);
    assertThat(shape.problems()).isEmpty();
  }

  /** A rise of three in four: what is above it, square to it, lies back by 0.6 and up by 0.8. */
  @Test
  void whatLiesAboveASlopeLiesSquareToIt() {
    Shape shape = pipe(RISING, 5000, "$,1000.,$", "$,1000.,$");
    assertThat(lengthM(shape).value()).isCloseTo(5, within(1e-9));
    isAt(shape, 0, -0.6, 0, 0.8);
    isAt(shape, 1, 3.4, 0, 3.8);
  }

  @ParameterizedTest
  @CsvSource({"2000., 3", "-2000., 7", "$, 5"})
  void bendBesideItsCurveHasTheRadiusOfItsOwnWay(String left, double radiusM) {
    Shape shape = pipe(ARC, 5000 * Math.PI / 2, left + ",500.,$", left + ",500.,$");
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(radiusM, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(radiusM * Math.PI / 2, within(1e-6));
    isAt(shape, 0, radiusM, 0, 0.5);
    isAt(shape, 1, 0, radiusM, 0.5);
  }

  /** One metre inside of a corner both legs are shorter by a metre; a metre above, neither is. */
  @ParameterizedTest
  @CsvSource({"'1000.,$,$', 5, 2, 4", "'$,1000.,$', 7, 3, 4", "'-1000.,$,$', 9, 4, 4"})
  void legsBesideACornerMeetInTheirOwnCorner(
      String offsets, double expectedM, double endX, double endY) {
    Shape shape = pipe(CORNER, 7000, offsets, offsets);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(lengthM(shape).value()).isCloseTo(expectedM, within(1e-9));
    Vec end = shape.ends().get(1).centre();
    assertThat(end.x()).isCloseTo(endX, within(1e-9));
    assertThat(end.y()).isCloseTo(endY, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"'500.,$,$'", "'$,500.,$'", "'1000.,$,10.'"})
  void pipeWhoseOffsetsChangeIsNotMeasured(String lastOffsets) {
    Shape shape = pipe(STRAIGHT, 3000, "1000.,$,$", lastOffsets);
    assertThat(shape.lengthM()).isNull();
    assertThat(shape.problems()).singleElement().asString().contains("offsets from the directrix");
  }

  @Test
  void pipeFurtherInThanTheCentreOfItsCurveIsNotMeasured() {
    Shape shape = pipe(ARC, 5000 * Math.PI / 2, "5500.,$,$", "5500.,$,$");
    assertThat(shape.lengthM()).isNull();
    assertThat(shape.problems()).hasSize(1);
  }

  /**
   * A quarter of a circle of 20 m, to the left, that rises by 1 %, read as chords. Beside it by 3 m
   * the way in plan is 17 m times pi / 2, and it rises as much.
   */
  @ParameterizedTest
  @CsvSource({"3000., 17", "-3000., 23"})
  void pipeBesideARisingCurveEndsSquareToTheEndsOfThat(String left, double radiusM) {
    double turnM = 10 * Math.PI;
    String curve =
        """
        #101=IFCGRADIENTCURVE((#140),.F.,#102,$);
        #102=IFCCOMPOSITECURVE((#103),.F.);
        #103=IFCCURVESEGMENT(.CONTINUOUS.,#16,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(%s),#104);
        #104=IFCCIRCLE(#16,20000.);
        #140=IFCCURVESEGMENT(.CONTINUOUS.,#141,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(%s),#143);
        #141=IFCAXIS2PLACEMENT2D(#15,#142);
        #142=IFCDIRECTION((1.,0.01));
        #143=IFCLINE(#15,#144);
        #144=IFCVECTOR(#145,1.);
        #145=IFCDIRECTION((1.,0.));
        """
            .formatted(turnM * 1000, turnM * 1000 * Math.hypot(1, 0.01));
    Shape shape = pipe(curve, turnM * 1000 * Math.hypot(1, 0.01), left + ",$,$", left + ",$,$");

    assertThat(lengthM(shape).value())
        .isCloseTo(Math.hypot(radiusM * Math.PI / 2, turnM * 0.01), within(1e-3));
    Vec start = shape.ends().get(0).centre();
    Vec end = shape.ends().get(1).centre();
    assertThat(start.distanceTo(new Vec(0, 20 - radiusM, 0))).isCloseTo(0, within(1e-4));
    assertThat(end.distanceTo(new Vec(radiusM, 20, turnM * 0.01))).isCloseTo(0, within(1e-4));
  }

  /** 60 in diameter at both ends, 100 between them. */
  @Test
  void sectionOfAnotherSizeBetweenTwoAlikeIsTold() {
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                "IFC4X3_ADD2",
                TinyModel.AT_ORIGIN,
                "#100",
                STRAIGHT
                    + """
                    #100=IFCSECTIONEDSOLIDHORIZONTAL(#101,(#110,#111,#110),(#120,#130,#140));
                    #110=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,30.);
                    #111=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
                    #120=IFCAXIS2PLACEMENTLINEAR(#121,$,$);
                    #121=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(0.),$,$,$,#101);
                    #130=IFCAXIS2PLACEMENTLINEAR(#131,$,$);
                    #131=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(1000.),$,$,$,#101);
                    #140=IFCAXIS2PLACEMENTLINEAR(#141,$,$);
                    #141=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(2000.),$,$,$,#101);
                    """),
            TinyModel.MM_RAD,
            ShapeHints.NONE);

    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-9));
    assertThat(shape.problems()).anyMatch(problem -> problem.contains("differ"));
  }
}
