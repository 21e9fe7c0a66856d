package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/** Directrices that stand for arcs without being written as such, and those that do not. */
class SampledArcTest {

  /** A disk along points in millimetres. */
  private static Shape disk(List<double[]> points) {
    StringBuilder records = new StringBuilder();
    List<String> ids = new ArrayList<>();
    for (double[] p : points) {
      int id = 200 + ids.size();
      ids.add("#" + id);
      records.append(
          String.format(Locale.ROOT, "#%d=IFCCARTESIANPOINT((%.9f,%.9f,0.));%n", id, p[0], p[1]));
    }
    return TinyModel.item(
        TinyModel.MM_RAD,
        "#100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);\n#101=IFCPOLYLINE((%s));\n%s"
            .formatted(String.join(",", ids), records));
  }

  private static double[] onArc(double turnRad) {
    return new double[] {171 * Math.sin(turnRad), 171 * (1 - Math.cos(turnRad))};
  }

  @Test
  void chordsOfAQuarterCircleAreABendOfNinetyDegrees() {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      points.add(onArc(Math.PI / 2 * i / 12));
    }
    Shape shape = disk(points);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.171, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.171 * Math.PI / 2, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.06));
  }

  @Test
  void segmentsOfAnElbowTurnAsFarAsItsCorners() {
    List<double[]> points = new ArrayList<>();
    points.add(onArc(0));
    for (int i = 0; i < 6; i++) {
      // tangents at every 15 degrees meet between them, outside the circle
      double turnRad = Math.PI / 2 * (i + 0.5) / 6;
      double out = 1 / Math.cos(Math.PI / 2 / 12);
      points.add(new double[] {171 * out * Math.sin(turnRad), 171 * (1 - out * Math.cos(turnRad))});
    }
    points.add(onArc(Math.PI / 2));
    assertThat(angleDeg(disk(points)).value()).isCloseTo(90, within(1e-6));
  }

  @Test
  void rationalSplineOfAQuarterCircleIsABendOfNinetyDegrees() {
    Shape shape =
        TinyModel.item(
            TinyModel.MM_RAD,
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
            #101=IFCRATIONALBSPLINECURVEWITHKNOTS(2,(#10,#102,#103),.UNSPECIFIED.,.F.,.F.,(3,3),(0.,1.),.UNSPECIFIED.,(1.,0.70710678118654752,1.));
            #102=IFCCARTESIANPOINT((171.,0.,0.));
            #103=IFCCARTESIANPOINT((171.,171.,0.));
            """);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(0.171 * Math.PI / 2, within(1e-9));
  }

  @Test
  void hoseAlongASplineIsLongEnough() {
    Shape shape =
        TinyModel.item(
            TinyModel.MM_RAD,
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
            #101=IFCBSPLINECURVEWITHKNOTS(2,(#10,#102,#103),.UNSPECIFIED.,.F.,.F.,(3,3),(0.,1.),.UNSPECIFIED.);
            #102=IFCCARTESIANPOINT((500.,0.,0.));
            #103=IFCCARTESIANPOINT((500.,500.,0.));
            """);
    // a parabola with both legs of length a: (1 + asinh(1) / sqrt(2)) a
    double unit = 1 + Math.log(1 + Math.sqrt(2)) / Math.sqrt(2);
    assertThat(lengthM(shape).value()).isCloseTo(0.5 * unit, within(1e-4));
  }

  @Test
  void filletsThatUseUpTheirLegsAreAPlainElbow() {
    Shape shape =
        TinyModel.item(
            TinyModel.MM_RAD,
            """
            #100=IFCSWEPTDISKSOLIDPOLYGONAL(#101,30.,$,$,$,171.);
            #101=IFCPOLYLINE((#10,#102,#103));
            #102=IFCCARTESIANPOINT((171.,0.,0.));
            #103=IFCCARTESIANPOINT((171.,171.,0.));
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.171, within(1e-9));
  }

  @Test
  void legUsedUpByTheFilletsOfBothItsCornersKeepsItsTurns() {
    Shape shape =
        TinyModel.item(
            TinyModel.MM_RAD,
            """
            #100=IFCSWEPTDISKSOLIDPOLYGONAL(#101,30.,$,$,$,100.);
            #101=IFCPOLYLINE((#10,#102,#103,#104));
            #102=IFCCARTESIANPOINT((300.,0.,0.));
            #103=IFCCARTESIANPOINT((300.,200.,0.));
            #104=IFCCARTESIANPOINT((600.,200.,0.));
            """);
    assertThat(lengthM(shape).value()).isCloseTo(0.4 + 0.1 * Math.PI, within(1e-9));
  }

  /** Both corners of a profile and a hole make these, all the way round z. */
  private static Shape turned(String profile, String more) {
    return TinyModel.item(
        TinyModel.MM_RAD,
        """
        #100=IFCREVOLVEDAREASOLID(#101,$,#102,6.283185307179586);
        #101=%s;
        #102=IFCAXIS1PLACEMENT(#10,#12);
        #103=IFCAXIS2PLACEMENT2D(#104,$);
        %s"""
            .formatted(profile, more));
  }

  @Test
  void rectangleTurnedAboutItsSideIsACylinderAndBesideTheAxisATube() {
    Shape cylinder =
        turned(
            "IFCRECTANGLEPROFILEDEF(.AREA.,$,#103,50.,2000.)",
            "#104=IFCCARTESIANPOINT((25.,1000.));\n");
    assertThat(cylinder.form()).isEqualTo(Form.STRAIGHT);
    assertThat(section(cylinder).value().largestSideM()).isCloseTo(0.1, within(1e-9));
    assertThat(lengthM(cylinder).value()).isCloseTo(2, within(1e-9));

    Shape tube =
        turned(
            "IFCRECTANGLEPROFILEDEF(.AREA.,$,#103,4.,2000.)",
            "#104=IFCCARTESIANPOINT((48.,1000.));\n");
    assertThat(section(tube).value().largestSideM()).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void polygonTurnedAllTheWayIsAReducerAndARingIsNone() {
    Shape reducer =
        turned(
            "IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#110)",
            """
            #104=IFCCARTESIANPOINT((0.,0.));
            #110=IFCPOLYLINE((#104,#111,#112,#113,#104));
            #111=IFCCARTESIANPOINT((57.,0.));
            #112=IFCCARTESIANPOINT((38.,150.));
            #113=IFCCARTESIANPOINT((0.,150.));
            """);
    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends().get(0).section().largestSideM()).isCloseTo(0.114, within(1e-9));
    assertThat(reducer.ends().get(1).section().largestSideM()).isCloseTo(0.076, within(1e-9));
    assertThat(lengthM(reducer).value()).isCloseTo(0.15, within(1e-9));

    Shape ring =
        turned("IFCCIRCLEPROFILEDEF(.AREA.,$,#103,20.)", "#104=IFCCARTESIANPOINT((100.,0.));\n");
    assertThat(ring.section()).isNull();
  }

  @Test
  void spineBetweenTwoSizesIsAReducer() {
    Shape shape =
        TinyModel.item(
            TinyModel.MM_RAD,
            """
            #100=IFCSECTIONEDSPINE(#101,(#110,#111),(#14,#120));
            #101=IFCCOMPOSITECURVE((#102),.F.);
            #102=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#103);
            #103=IFCPOLYLINE((#10,#104));
            #104=IFCCARTESIANPOINT((0.,0.,150.));
            #110=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,57.);
            #111=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,38.);
            #120=IFCAXIS2PLACEMENT3D(#104,$,$);
            """);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(shape.ends())
        .extracting(ShapeEnd::section)
        .containsExactly(new Section.Round(0.114), new Section.Round(0.076));
    assertThat(lengthM(shape).value()).isCloseTo(0.15, within(1e-9));
  }
}
