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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Closed forms of bends: arc {@code R theta}, chord {@code 2 R sin(theta / 2)}. */
class SweepTest {

  private static void bend(Shape shape, double angleDeg, double radiusM, double odM) {
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(angleDeg, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(radiusM, within(1e-8));
    assertThat(section(shape).value().largestSideM()).isCloseTo(odM, within(1e-8));
    double turn = Math.toRadians(angleDeg);
    double chord = shape.ends().get(0).centreM().distanceM(shape.ends().get(1).centreM());
    assertThat(chord).isCloseTo(2 * radiusM * Math.sin(turn / 2), within(1e-8));
    // deflection of the outward directions is the angle
    double between = shape.ends().get(0).out().angleTo(shape.ends().get(1).out());
    assertThat(Math.PI - between).isCloseTo(turn, within(1e-8));
  }

  private static String revolved(String angle) {
    return """
        #100=IFCREVOLVEDAREASOLID(#101,#102,#103,%s);
        #101=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#16,57.15,3.6);
        #102=IFCAXIS2PLACEMENT3D(#10,#11,#12);
        #103=IFCAXIS1PLACEMENT(#104,#12);
        #104=IFCCARTESIANPOINT((152.5,77.,0.));
        """
        .formatted(angle);
  }

  @Test
  void revolvedAngleIsReadInTheUnitOfTheFile() {
    Shape degrees = TinyModel.item(MM_DEG, revolved("45."));
    Shape radians = TinyModel.item(MM_RAD, revolved("0.7853981633974483"));
    // the axis is written by a point 77 further along it; what counts is the distance to the line
    double radiusM = 0.1525;
    bend(degrees, 45, radiusM, 0.1143);
    bend(radians, 45, radiusM, 0.1143);
    assertThat(lengthM(radians).value()).isCloseTo(radiusM * Math.PI / 4, within(1e-9));
    assertThat(angleDeg(degrees).evidence()).hasToString("#100 IfcRevolvedAreaSolid.Angle = 45.");
  }

  @Test
  void revolvedTheOtherWayRoundIsTheSameBendMirrored() {
    Shape shape = TinyModel.item(MM_DEG, revolved("-45."));
    bend(shape, 45, 0.1525, 0.1143);
  }

  @Test
  void bendWithTangentsKeepsItsRadiusAndCountsThemAsLength() {
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN,
                "#100,#110,#120",
                revolved("90.")
                    + """
                    #110=IFCEXTRUDEDAREASOLID(#111,#102,#130,30.);
                    #111=IFCCIRCLEPROFILEDEF(.AREA.,$,$,57.15);
                    #120=IFCEXTRUDEDAREASOLID(#111,#121,#13,20.);
                    #121=IFCAXIS2PLACEMENT3D(#122,#12,#11);
                    #122=IFCCARTESIANPOINT((152.5,152.5,0.));
                    #130=IFCDIRECTION((0.,0.,-1.));
                    """),
            MM_DEG,
            ShapeHints.NONE);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.1525, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.1525 * Math.PI / 2 + 0.05, within(1e-6));
    assertThat(shape.ends())
        .anySatisfy(e -> near(e, new Point(-0.03, 0, 0)))
        .anySatisfy(e -> near(e, new Point(0.1525, 0.1725, 0)));
  }

  private static void near(ShapeEnd end, Point expected) {
    assertThat(end.centreM().distanceM(expected)).isCloseTo(0, within(1e-6));
  }

  @Test
  void revolvedRectangleKeepsWidthAndHeightAtBothEnds() {
    // profile x level towards the axis, profile y up; bend in plan
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCREVOLVEDAREASOLID(#101,#102,#103,90.);
            #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,600.,250.);
            #102=IFCAXIS2PLACEMENT3D(#10,#12,#11);
            #103=IFCAXIS1PLACEMENT(#104,#12);
            #104=IFCCARTESIANPOINT((700.,0.,0.));
            """);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.7, within(1e-9));
    for (ShapeEnd end : shape.ends()) {
      Section.Rectangular box = (Section.Rectangular) end.section();
      assertThat(box.widthM()).isCloseTo(0.6, within(1e-9));
      assertThat(box.heightM()).isCloseTo(0.25, within(1e-9));
    }
  }

  @Test
  void wholeTurnIsNoBend() {
    Shape shape = TinyModel.item(MM_DEG, revolved("360."));
    assertThat(shape.angleDeg()).isNull();
    assertThat(shape.problems())
        .containsExactly("#100=IFCREVOLVEDAREASOLID is a body of revolution");
  }

  @Test
  void profileSweptAlongATrimmedCircleIsABend() {
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCSURFACECURVESWEPTAREASOLID(#101,#14,#102,0.,1.,#110);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,152.5);
            #102=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(270.)),(IFCPARAMETERVALUE(315.)),.T.,.PARAMETER.);
            #103=IFCCIRCLE(#16,305.);
            #110=IFCSURFACEOFLINEAREXTRUSION(#111,$,#13,1.);
            #111=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#102);
            """);
    bend(shape, 45, 0.305, 0.305);
    assertThat(lengthM(shape).value()).isCloseTo(0.305 * Math.PI / 4, within(1e-9));
  }

  @Test
  void parametersAtTheTrimsSayWhichWayRoundTheArcRuns() {
    // against the circle from 270 to 0 would be three quarters of it
    bend(sweptArc("270.,360.", "270.", "0.", ".F."), 90, 0.305, 0.1143);
    bend(sweptArc("-90.,0.", "270.", "360.", ".F."), 90, 0.305, 0.1143);
  }

  @ParameterizedTest(name = "{0}: {1} to {2} {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "0.,1.|270.|315.|.T.",
        "0.,45.|270.|315.|.T.",
        "0.,315.|270.|315.|.T.",
        "0.,360.|270.|315.|.T.",
        "270.,315.|270.|315.|.T.",
        "-90.,-45.|270.|315.|.T.",
        "0.,1.|315.|270.|.F.",
        "0.,45.|315.|270.|.F.",
        "315.,270.|315.|270.|.F.",
        "270.,315.|315.|270.|.F.",
        "$,$|315.|270.|.F.",
      })
  void otherParametersLeaveAnArcBetweenItsTrims(String own, String from, String to, String sense) {
    bend(sweptArc(own, from, to, sense), 45, 0.305, 0.1143);
  }

  /** A pipe along an arc of a circle between two trims. */
  private static Shape sweptArc(String parameters, String from, String to, String sense) {
    return TinyModel.item(
        MM_DEG,
        """
        #100=IFCSWEPTDISKSOLID(#102,57.15,$,%s);
        #102=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(%s)),(IFCPARAMETERVALUE(%s)),%s,.PARAMETER.);
        #103=IFCCIRCLE(#16,305.);
        """
            .formatted(parameters, from, to, sense));
  }

  @ParameterizedTest
  @CsvSource({"270., 360.", "270., 0.", "-90., 0."})
  void parametersCutACircleAlsoAcrossItsBeginning(String from, String to) {
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCSWEPTDISKSOLID(#103,57.15,$,%s,%s);
            #103=IFCCIRCLE(#14,305.);
            """
                .formatted(from, to));
    bend(shape, 90, 0.305, 0.1143);
  }

  @Test
  void profileBesideItsDirectrixGivesTheRadiusOfItsOwnCentre() {
    // the directrix runs along the throat; 51.5875 further out lies the axis of the pipe
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCSURFACECURVESWEPTAREASOLID(#101,#14,#102,0.,360.,#110);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#104,51.5875);
            #102=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(270.)),(IFCPARAMETERVALUE(0.)),.T.,.PARAMETER.);
            #103=IFCCIRCLE(#16,6.35);
            #104=IFCAXIS2PLACEMENT2D(#105,$);
            #105=IFCCARTESIANPOINT((0.,51.5875));
            #110=IFCSURFACEOFLINEAREXTRUSION(#111,$,#13,1.);
            #111=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#102);
            """);
    bend(shape, 90, 0.0579375, 0.103175);
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(0.0579375, 0, 0)))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void profileLaidBesideItsDirectrixByItsXAxisGivesTheSameRadius() {
    // as the schema has it: the x axis of the profile along the normal of the reference surface
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCSURFACECURVESWEPTAREASOLID(#101,#14,#102,270.,360.,#110);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#104,51.5875);
            #102=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(270.)),(IFCPARAMETERVALUE(0.)),.T.,.PARAMETER.);
            #103=IFCCIRCLE(#16,6.35);
            #104=IFCAXIS2PLACEMENT2D(#105,$);
            #105=IFCCARTESIANPOINT((51.5875,0.));
            #110=IFCSURFACEOFLINEAREXTRUSION(#111,$,#13,304.8);
            #111=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#102);
            """);
    bend(shape, 90, 0.0579375, 0.103175);
    assertThat(lengthM(shape).value()).isCloseTo(0.0579375 * Math.PI / 2, within(1e-9));
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(0.0579375, 0, 0)))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void fixedReferenceSweepAlongALineIsStraightAndStandsUpright() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCFIXEDREFERENCESWEPTAREASOLID(#101,$,#102,$,$,#12);
            #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,400.,200.);
            #102=IFCPOLYLINE((#10,#103,#104));
            #103=IFCCARTESIANPOINT((1000.,0.,0.));
            #104=IFCCARTESIANPOINT((3000.,0.,0.));
            """);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(lengthM(shape).value()).isCloseTo(3, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Rectangular(0.4, 0.2));
  }

  @Test
  void parametersCutAPolylineAtItsLegs() {
    Shape shape =
        TinyModel.item(
            METRES,
            """
            #100=IFCSWEPTDISKSOLID(#101,0.05,$,0.5,2.);
            #101=IFCPOLYLINE((#10,#102,#103,#104));
            #102=IFCCARTESIANPOINT((2.,0.,0.));
            #103=IFCCARTESIANPOINT((5.,0.,0.));
            #104=IFCCARTESIANPOINT((9.,0.,0.));
            """);
    assertThat(lengthM(shape).value()).isCloseTo(1 + 3, within(1e-12));
    assertThat(shape.ends().get(1).centreM()).isEqualTo(new Point(5, 0, 0));
  }

  @Test
  void diskAlongLineArcLineIsABendWithItsTangents() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCSWEPTDISKSOLID(#101,10.,8.,$,$);
            #101=IFCINDEXEDPOLYCURVE(#102,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),\
            IFCLINEINDEX((4,5))),.F.);
            #102=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(100.,0.,0.),\
            (170.71067811865476,29.28932188134524,0.),(200.,100.,0.),(200.,150.,0.)));
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.1, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.15 + 0.1 * Math.PI / 2, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.02));
  }

  @Test
  void diskAlongACompositeCurveOfLineAndTrimmedCircle() {
    Shape shape =
        TinyModel.item(
            MM_DEG,
            """
            #100=IFCSWEPTDISKSOLID(#101,10.,$,0.,2.);
            #101=IFCCOMPOSITECURVE((#102,#103),.F.);
            #102=IFCCOMPOSITECURVESEGMENT(.CONTSAMEGRADIENT.,.T.,#104);
            #103=IFCCOMPOSITECURVESEGMENT(.DISCONTINUOUS.,.T.,#106);
            #104=IFCTRIMMEDCURVE(#105,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(2.)),.T.,.PARAMETER.);
            #105=IFCLINE(#110,#111);
            #106=IFCTRIMMEDCURVE(#107,(#15),(#112),.T.,.CARTESIAN.);
            #107=IFCCIRCLE(#108,100.);
            #108=IFCAXIS2PLACEMENT2D(#109,$);
            #109=IFCCARTESIANPOINT((-100.,0.));
            #110=IFCCARTESIANPOINT((0.,-500.));
            #111=IFCVECTOR(#12,250.);
            #112=IFCCARTESIANPOINT((-100.,100.));
            """);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.1, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.5 + 0.1 * Math.PI / 2, within(1e-9));
  }

  @Test
  void cornerWithoutAnArcIsABendOfUnknownRadius() {
    Shape shape =
        TinyModel.item(
            METRES,
            """
            #100=IFCSWEPTDISKSOLID(#101,0.05,$,$,$);
            #101=IFCPOLYLINE((#10,#102,#103));
            #102=IFCCARTESIANPOINT((2.,0.,0.));
            #103=IFCCARTESIANPOINT((2.,0.,3.));
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(shape.bendRadiusM()).isNull();
    assertThat(lengthM(shape).value()).isCloseTo(5, within(1e-9));
    assertThat(shape.problems()).containsExactly("bend without an arc, its radius is not known");
  }

  @Test
  void bendDrawnWithManyShortLegsIsOneBend() {
    StringBuilder records =
        new StringBuilder("#100=IFCSWEPTDISKSOLID(#101,10.,$,$,$);\n#101=IFCPOLYLINE((");
    StringBuilder points = new StringBuilder();
    int legs = 18;
    for (int i = 0; i <= legs; i++) {
      double t = Math.PI / 2 * i / legs;
      records.append(i == 0 ? "#" : ",#").append(200 + i);
      points.append(
          "#%d=IFCCARTESIANPOINT((%.9f,%.9f,0.));\n"
              .formatted(200 + i, 300 * Math.cos(t), 300 * Math.sin(t)));
    }
    Shape shape = TinyModel.item(MM_RAD, records + "));\n" + points);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    // all points lie on the circle, the first and the last one too
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.3, within(1e-6));
  }

  @Test
  void severalBendsInOneElementGiveTheLengthAndSaySo() {
    Shape shape =
        TinyModel.item(
            METRES,
            """
            #100=IFCSWEPTDISKSOLID(#101,0.05,$,$,$);
            #101=IFCPOLYLINE((#10,#102,#103,#104));
            #102=IFCCARTESIANPOINT((2.,0.,0.));
            #103=IFCCARTESIANPOINT((2.,0.,3.));
            #104=IFCCARTESIANPOINT((4.,0.,3.));
            """);
    assertThat(shape.form()).isEqualTo(Form.UNKNOWN);
    assertThat(lengthM(shape).value()).isCloseTo(7, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1));
    assertThat(shape.problems()).containsExactly("path of 3 legs, several bends in one element");
  }

  @Test
  void splineOfDegreeTwoWithWeightsFollowsItsCircle() {
    // a quarter circle as a rational curve: weights 1, sqrt(1/2), 1
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCSWEPTDISKSOLID(#101,10.,$,$,$);
            #101=IFCRATIONALBSPLINECURVEWITHKNOTS(2,(#102,#103,#104),.UNSPECIFIED.,.F.,.F.,\
            (3,3),(0.,1.),.UNSPECIFIED.,(1.,0.7071067811865476,1.));
            #102=IFCCARTESIANPOINT((300.,0.,0.));
            #103=IFCCARTESIANPOINT((300.,300.,0.));
            #104=IFCCARTESIANPOINT((0.,300.,0.));
            """);
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.3, within(1e-6));
    // twelve chords of an arc are shorter by (7.5 degrees)^2 / 24
    assertThat(lengthM(shape).value()).isCloseTo(0.3 * Math.PI / 2, within(0.0005));
  }

  @Test
  void brokenDirectrixLeavesAProblem() {
    for (String broken :
        List.of(
            "#100=IFCSWEPTDISKSOLID(#999,10.,$,$,$);",
            "#100=IFCSWEPTDISKSOLID(#101,10.,$,$,$);\n#101=IFCPOLYLINE((#10,#999));",
            "#100=IFCSWEPTDISKSOLID(#101,10.,$,$,$);\n#101=IFCCOMPOSITECURVE((#102),.F.);\n"
                + "#102=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#101);",
            "#100=IFCSWEPTDISKSOLID(#101,$,$,$,$);\n#101=IFCPOLYLINE((#10,#102));\n"
                + "#102=IFCCARTESIANPOINT((2.,0.,0.));",
            "#100=IFCREVOLVEDAREASOLID(#101,#14,#999,1.);\n#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,1.);")) {
      Shape shape = TinyModel.item(METRES, broken + "\n");
      assertThat(shape.lengthM()).as(broken).isNull();
      assertThat(shape.problems()).as(broken).hasSize(1);
    }
  }
}
