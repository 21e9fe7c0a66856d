package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.section;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Section;

/**
 * Ellipses and flat ovals along arcs, as long in the plane of the bend as the mitre of a circle.
 */
class SweptEllipseTest {

  private static Shape item(String records) {
    return TinyModel.item(TinyModel.MM_RAD, records);
  }

  /** 45 degrees of a mitre: longer by sqrt(2) in the plane of the bend. */
  @Test
  void ellipseOfAMitreIsTheRoundDuctItIsCutFrom() {
    Shape shape =
        item(
            """
            #100=IFCREVOLVEDAREASOLID(#101,#14,#103,0.7853981633974483);
            #101=IFCELLIPSEPROFILEDEF(.AREA.,$,$,106.06601717798213,75.);
            #103=IFCAXIS1PLACEMENT(#104,#12);
            #104=IFCCARTESIANPOINT((300.,0.,0.));
            """);
    // a revolved ellipse is an oval: only sweeps of a mitre along a curve are met in files
    assertThat(section(shape).value()).isInstanceOf(Section.Oval.class);
    Shape swept =
        item(
            """
            #100=IFCFIXEDREFERENCESWEPTAREASOLID(#101,$,#105,$,$,#13);
            #101=IFCELLIPSEPROFILEDEF(.AREA.,$,$,75.,106.06601717798213);
            #105=IFCTRIMMEDCURVE(#106,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(0.7853981633974483)),.T.,.PARAMETER.);
            #106=IFCCIRCLE(#14,300.);
            """);
    assertThat(section(swept).value()).isEqualTo(new Section.Round(0.15));
    assertThat(section(swept).lost()).hasSize(1);
  }

  @Test
  void mitreOfTwoHalfEllipsesIsOneToo() {
    Shape swept =
        item(
            """
            #100=IFCFIXEDREFERENCESWEPTAREASOLID(#101,$,#105,$,$,#13);
            #101=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#110);
            #110=IFCCOMPOSITECURVE((#111,#112),.F.);
            #111=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#113);
            #112=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#114);
            #113=IFCTRIMMEDCURVE(#115,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(3.141592653589793)),.T.,.PARAMETER.);
            #114=IFCTRIMMEDCURVE(#115,(IFCPARAMETERVALUE(3.141592653589793)),(IFCPARAMETERVALUE(0.)),.T.,.PARAMETER.);
            #115=IFCELLIPSE(#16,75.,106.06601717798213);
            #105=IFCTRIMMEDCURVE(#106,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(0.7853981633974483)),.T.,.PARAMETER.);
            #106=IFCCIRCLE(#14,300.);
            """);
    assertThat(section(swept).value()).isInstanceOf(Section.Round.class);
    assertThat(section(swept).value().largestSideM()).isCloseTo(0.15, within(1e-9));
  }

  /** A flat oval duct of 400 x 200 around 60 degrees is twice as wide as high and no mitre. */
  @Test
  void flatOvalIsNoMitreOfACircle() {
    Shape swept =
        item(
            """
            #100=IFCFIXEDREFERENCESWEPTAREASOLID(#101,$,#105,$,$,#13);
            #101=IFCROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,$,200.,400.,100.);
            #105=IFCTRIMMEDCURVE(#106,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(1.0471975511965976)),.T.,.PARAMETER.);
            #106=IFCCIRCLE(#14,400.);
            """);
    assertThat(section(swept).value()).isInstanceOf(Section.Oval.class);
    assertThat(section(swept).value().largestSideM()).isEqualTo(0.4);
    assertThat(section(swept).lost()).isEmpty();
  }
}
