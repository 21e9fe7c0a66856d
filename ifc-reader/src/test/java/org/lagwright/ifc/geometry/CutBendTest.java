package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/** Bends, reducers and tees that something cuts or bores, each with its closed form. */
class CutBendTest {

  /** A quarter bend of 100 mm, radius 300 mm, about the y axis through x = 300. */
  private static final String BEND =
      """
      #101=IFCREVOLVEDAREASOLID(#102,#14,#103,1.5707963267948966);
      #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
      #103=IFCAXIS1PLACEMENT(#104,#12);
      #104=IFCCARTESIANPOINT((300.,0.,0.));
      """;

  private static Shape item(String records) {
    return TinyModel.item(TinyModel.MM_RAD, records);
  }

  @Test
  void planeThroughTheAxisLeavesPartOfTheBend() {
    Shape shape =
        item(
            BEND
                + """
                #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCHALFSPACESOLID(#111,.F.);
                #111=IFCPLANE(#112);
                #112=IFCAXIS2PLACEMENT3D(#104,#113,#12);
                #113=IFCDIRECTION((-1.,0.,-1.));
                """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(45, within(1e-3));
    assertThat(lengthM(shape).value()).isCloseTo(0.3 * Math.PI / 4, within(1e-5));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.3, within(1e-9));
    assertThat(shape.problems()).isEmpty();
    double chordM = shape.ends().get(0).centre().distanceTo(shape.ends().get(1).centre());
    assertThat(chordM).isCloseTo(0.6 * Math.sin(Math.PI / 8), within(1e-5));
  }

  @Test
  void boreOfABendTakesNothing() {
    Shape shape =
        item(
            BEND
                + """
                #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCREVOLVEDAREASOLID(#111,#14,#103,1.5707963267948966);
                #111=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,45.);
                """);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
  }

  @Test
  void plateThatCutsHalfOfABendIsTold() {
    Shape shape =
        item(
            BEND
                + """
                #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCBLOCK(#111,1000.,500.,1000.);
                #111=IFCAXIS2PLACEMENT3D(#112,$,$);
                #112=IFCCARTESIANPOINT((-500.,0.,100.));
                """);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(shape.problems()).singleElement().asString().contains("measured without");
  }

  @Test
  void taperedSolidCutInTheMiddleEndsInItsMiddleSize() {
    Shape shape =
        item(
            """
            #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);
            #101=IFCEXTRUDEDAREASOLIDTAPERED(#102,#14,#13,300.,#103);
            #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,60.);
            #103=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,20.);
            #110=IFCHALFSPACESOLID(#111,.F.);
            #111=IFCPLANE(#112);
            #112=IFCAXIS2PLACEMENT3D(#113,$,$);
            #113=IFCCARTESIANPOINT((0.,0.,150.));
            """);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(lengthM(shape).value()).isCloseTo(0.15, within(1e-9));
    assertThat(shape.ends().get(0).section()).isEqualTo(new Section.Round(0.12));
    assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.08, within(1e-9));
  }

  private static final String CONE =
      """
      #101=IFCRIGHTCIRCULARCONE(#14,300.,60.);
      """;

  @Test
  void coneWithoutItsPointIsAReducer() {
    Shape shape =
        item(
            CONE
                + """
                #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCHALFSPACESOLID(#111,.F.);
                #111=IFCPLANE(#112);
                #112=IFCAXIS2PLACEMENT3D(#113,$,$);
                #113=IFCCARTESIANPOINT((0.,0.,100.));
                """);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.12));
    assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.08, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(0.1, within(1e-6));
  }

  @Test
  void coneWithItsPointHasNoSection() {
    Shape shape =
        item(
            CONE
                + """
                #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCHALFSPACESOLID(#111,.T.);
                #111=IFCPLANE(#112);
                #112=IFCAXIS2PLACEMENT3D(#113,$,$);
                #113=IFCCARTESIANPOINT((0.,0.,250.));
                """);
    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).isNotEmpty();
  }

  @Test
  void boresDoNotTakeTheBranchOfATee() {
    Shape shape =
        item(
            """
            #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#102);
            #101=IFCBOOLEANRESULT(.UNION.,#110,#120);
            #102=IFCBOOLEANRESULT(.UNION.,#130,#140);
            #110=IFCEXTRUDEDAREASOLID(#111,#14,#13,300.);
            #111=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
            #120=IFCEXTRUDEDAREASOLID(#121,#103,#13,150.);
            #121=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,30.);
            #103=IFCAXIS2PLACEMENT3D(#104,#11,#13);
            #104=IFCCARTESIANPOINT((0.,0.,150.));
            #130=IFCEXTRUDEDAREASOLID(#131,#14,#13,300.);
            #131=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,46.);
            #140=IFCEXTRUDEDAREASOLID(#141,#103,#13,150.);
            #141=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,27.);
            """);
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends())
        .extracting(ShapeEnd::section)
        .containsExactly(new Section.Round(0.1), new Section.Round(0.1), new Section.Round(0.06));
    assertThat(shape.problems()).isEmpty();
  }
}
