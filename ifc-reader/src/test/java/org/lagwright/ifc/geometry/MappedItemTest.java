package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.MM_RAD;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

class MappedItemTest {

  /** A bend of 90 degrees from the x axis into the y axis, R 200, OD 100, mapped by #110. */
  private static final String BEND =
      """
      #100=IFCMAPPEDITEM(#101,#110);
      #101=IFCREPRESENTATIONMAP(#14,#102);
      #102=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#103));
      #103=IFCREVOLVEDAREASOLID(#104,#105,#106,1.5707963267948966);
      #104=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
      #105=IFCAXIS2PLACEMENT3D(#10,#11,#12);
      #106=IFCAXIS1PLACEMENT(#107,#108);
      #107=IFCCARTESIANPOINT((200.,0.,0.));
      #108=IFCDIRECTION((0.,1.,0.));
      #120=IFCDIRECTION((0.,-1.,0.));
      #121=IFCCARTESIANPOINT((1000.,0.,0.));
      """;

  private static Shape bend(String operator) {
    return TinyModel.item(MM_RAD, BEND + "#110=" + operator + ";\n");
  }

  private static void isBend(Shape shape, double odM, double radiusM) {
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(section(shape).value().largestSideM()).isCloseTo(odM, within(1e-9));
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(radiusM, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(radiusM * Math.PI / 2, within(1e-9));
  }

  @Test
  void targetMovesTheBody() {
    Shape shape = bend("IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#121,1.,$)");
    isBend(shape, 0.1, 0.2);
    assertThat(shape.ends().get(0).centreM().distanceM(new Point(1, 0, 0)))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void mirroredTargetKeepsSizesAndTurnsTheBendTheOtherWay() {
    Shape straight = bend("IFCCARTESIANTRANSFORMATIONOPERATOR3D(#11,#12,#10,1.,#13)");
    Shape mirrored = bend("IFCCARTESIANTRANSFORMATIONOPERATOR3D(#11,#120,#10,1.,#13)");
    isBend(mirrored, 0.1, 0.2);
    Point there = straight.ends().get(1).centreM();
    assertThat(Math.abs(there.y())).isCloseTo(0.2, within(1e-9));
    assertThat(
            mirrored.ends().get(1).centreM().distanceM(new Point(there.x(), -there.y(), there.z())))
        .isCloseTo(0, within(1e-9));
    Point out = mirrored.ends().get(1).outward();
    Point was = straight.ends().get(1).outward();
    assertThat(out.distanceM(new Point(was.x(), -was.y(), was.z()))).isCloseTo(0, within(1e-9));
  }

  @Test
  void scaledTargetScalesEverything() {
    isBend(bend("IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,2.5,$)"), 0.25, 0.5);
  }

  @Test
  void mirroredAndScaledTargetDoesBoth() {
    isBend(bend("IFCCARTESIANTRANSFORMATIONOPERATOR3D(#11,#120,#10,0.5,#13)"), 0.05, 0.1);
  }

  @Test
  void unevenScaleTurnsACircleIntoAnOval() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCMAPPEDITEM(#101,#110);
            #101=IFCREPRESENTATIONMAP(#14,#102);
            #102=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#103));
            #103=IFCEXTRUDEDAREASOLID(#104,#14,#13,1000.);
            #104=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
            #110=IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#10,2.,$,1.,3.);
            """);
    assertThat(section(shape).value()).isEqualTo(new Section.Oval(0.2, 0.1));
    assertThat(lengthM(shape).value()).isCloseTo(3, within(1e-9));
  }

  /** Stretched in its plane it follows an ellipse; stretched across, an oval follows its arc. */
  @Test
  void unevenScaleInThePlaneOfABendLeavesItNoRadius() {
    Shape stretched = bend("IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#10,2.,$,1.,1.)");
    assertThat(stretched.bendRadiusM()).isNull();
    assertThat(stretched.lengthM()).isNull();
    assertThat(stretched.problems()).anyMatch(problem -> problem.contains("unevenly"));
    Shape across = bend("IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#10,1.,$,1.,2.)");
    assertThat(bendRadiusM(across).value()).isCloseTo(0.2, within(1e-9));
    assertThat(section(across).value()).isEqualTo(new Section.Oval(0.1, 0.2));
  }

  @Test
  void originOfTheMapIsAppliedWithoutInversion() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCMAPPEDITEM(#101,#110);
            #101=IFCREPRESENTATIONMAP(#111,#102);
            #102=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#103));
            #103=IFCEXTRUDEDAREASOLID(#104,#14,#13,1000.);
            #104=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
            #110=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#112,2.,$);
            #111=IFCAXIS2PLACEMENT3D(#113,$,$);
            #112=IFCCARTESIANPOINT((0.,0.,5000.));
            #113=IFCCARTESIANPOINT((100.,0.,0.));
            """);
    assertThat(shape.ends().get(0).centreM().distanceM(new Point(0.2, 0, 5)))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void mapThatContainsItselfEnds() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            """
            #100=IFCMAPPEDITEM(#101,#110);
            #101=IFCREPRESENTATIONMAP(#14,#102);
            #102=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#100));
            #110=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,1.,$);
            """);
    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).containsExactly("no body representation");
  }

  @Test
  void mapWithoutTargetIsNoBody() {
    assertThat(bend("IFCDIRECTION((1.,0.,0.))").problems())
        .containsExactly("no body representation");
  }
}
