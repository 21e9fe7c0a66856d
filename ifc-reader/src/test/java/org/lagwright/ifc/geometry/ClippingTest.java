package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.MM_RAD;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

class ClippingTest {

  /** A pipe of 2 m along z, cut by #110 whose plane is #112. */
  private static final String PIPE =
      """
      #101=IFCEXTRUDEDAREASOLID(#102,#14,#13,2000.);
      #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
      """;

  private static Shape cut(String more) {
    return TinyModel.item(MM_RAD, PIPE + more);
  }

  @Test
  void slantedCutShortensThePipeToWhereThePlaneMeetsItsAxis() {
    Shape shape =
        cut(
            """
            #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);
            #110=IFCHALFSPACESOLID(#111,.F.);
            #111=IFCPLANE(#112);
            #112=IFCAXIS2PLACEMENT3D(#113,#114,$);
            #113=IFCCARTESIANPOINT((0.,0.,1500.));
            #114=IFCDIRECTION((1.,0.,1.));
            """);
    assertThat(lengthM(shape).value()).isCloseTo(1.5, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1));
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(0, 0, 1.5)))
        .isCloseTo(0, within(1e-9));
    assertThat(lengthM(shape).evidence().path())
        .isEqualTo("IfcBooleanClippingResult.FirstOperand > IfcExtrudedAreaSolid.Depth");
  }

  @Test
  void agreementFlagTellsWhichSideGoes() {
    String plane =
        """
        #111=IFCPLANE(#112);
        #112=IFCAXIS2PLACEMENT3D(#113,$,$);
        #113=IFCCARTESIANPOINT((0.,0.,500.));
        """;
    Shape lower =
        cut(
            "#100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);\n#110=IFCHALFSPACESOLID(#111,.F.);\n"
                + plane);
    Shape upper =
        cut(
            "#100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);\n#110=IFCHALFSPACESOLID(#111,.T.);\n"
                + plane);
    Shape common =
        cut(
            "#100=IFCBOOLEANRESULT(.INTERSECTION.,#101,#110);\n#110=IFCHALFSPACESOLID(#111,.T.);\n"
                + plane);
    assertThat(lengthM(lower).value()).isCloseTo(0.5, within(1e-9));
    assertThat(lengthM(upper).value()).isCloseTo(1.5, within(1e-9));
    assertThat(lengthM(common).value()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void twoCutsLeaveTheMiddle() {
    Shape shape =
        cut(
            """
            #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#120,#110);
            #120=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#121);
            #110=IFCHALFSPACESOLID(#111,.F.);
            #111=IFCPLANE(#112);
            #112=IFCAXIS2PLACEMENT3D(#113,$,$);
            #113=IFCCARTESIANPOINT((0.,0.,1800.));
            #121=IFCHALFSPACESOLID(#122,.T.);
            #122=IFCPLANE(#123);
            #123=IFCAXIS2PLACEMENT3D(#124,$,$);
            #124=IFCCARTESIANPOINT((0.,0.,300.));
            """);
    assertThat(lengthM(shape).value()).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void cutThatLeavesNothingIsReportedAndAHoleTakesNothing() {
    Shape nothing =
        cut(
            """
            #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);
            #110=IFCHALFSPACESOLID(#111,.F.);
            #111=IFCPLANE(#112);
            #112=IFCAXIS2PLACEMENT3D(#113,$,$);
            #113=IFCCARTESIANPOINT((0.,0.,-10.));
            """);
    assertThat(nothing.lengthM()).isNull();
    assertThat(nothing.problems())
        .containsExactly("#100=IFCBOOLEANCLIPPINGRESULT: the cut leaves nothing");
    Shape hole =
        cut("#100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);\n#110=IFCBLOCK(#14,1.,1.,1.);\n");
    assertThat(lengthM(hole).value()).isCloseTo(2, within(1e-9));
    assertThat(hole.problems()).isEmpty();
  }

  @Test
  void operandThatContainsItselfEnds() {
    Shape shape = cut("#100=IFCBOOLEANRESULT(.DIFFERENCE.,#100,#101);\n");
    assertThat(shape.lengthM()).isNull();
    assertThat(shape.problems()).isNotEmpty();
  }

  /** A duct of 600 x 250 mm, extruded to 419 mm and cut to 339: shorter than wide either way. */
  @Test
  void portsOfAShortDuctThatIsCutTellAlongWhichEdgeItRuns() {
    Shape shape =
        TinyModel.item(
            MM_RAD,
            new ShapeHints(List.of(new Point(0, 0, 0), new Point(0, 0, 0.339)), null, true),
            """
            #101=IFCEXTRUDEDAREASOLID(#102,#14,#13,419.);
            #102=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,600.,250.);
            #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);
            #110=IFCHALFSPACESOLID(#111,.F.);
            #111=IFCPLANE(#112);
            #112=IFCAXIS2PLACEMENT3D(#113,$,$);
            #113=IFCCARTESIANPOINT((0.,0.,339.));
            """);
    assertThat(section(shape).value()).isEqualTo(new Section.Rectangular(0.6, 0.25));
    assertThat(lengthM(shape).value()).isCloseTo(0.339, within(1e-9));
  }
}
