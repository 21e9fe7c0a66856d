package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;

/** Bends and pipes that are drawn piece by piece, end to end. */
class BendChainTest {

  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);

  /** Both halves of a quarter bend of radius 200 mm from the origin along x towards y. */
  private static final String HALVES =
      """
      #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
      #101=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(0.78539816339744831)),.T.,.PARAMETER.);
      #110=IFCSWEPTDISKSOLID(#102,30.,$,$,$);
      #102=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(0.78539816339744831)),(IFCPARAMETERVALUE(1.5707963267948966)),.T.,.PARAMETER.);
      #103=IFCCIRCLE(#104,200.);
      #104=IFCAXIS2PLACEMENT3D(#105,$,#106);
      #105=IFCCARTESIANPOINT((0.,200.,0.));
      #106=IFCDIRECTION((0.,-1.,0.));
      """;

  private static final String LEGS =
      """
      #120=IFCSWEPTDISKSOLID(#121,30.,$,$,$);
      #121=IFCPOLYLINE((#122,#10));
      #122=IFCCARTESIANPOINT((-1000.,0.,0.));
      #130=IFCSWEPTDISKSOLID(#131,30.,$,$,$);
      #131=IFCPOLYLINE((#132,#133));
      #132=IFCCARTESIANPOINT((200.,200.,0.));
      #133=IFCCARTESIANPOINT((200.,500.,0.));
      """;

  private static Shape measure(ShapeHints hints, String items, String records) {
    return TinyModel.measure(
        TinyModel.body(TinyModel.AT_ORIGIN, items, records), TinyModel.MM_RAD, hints);
  }

  @Test
  void halvesOfABendAreOneBend() {
    Shape shape = measure(ShapeHints.NONE, "#100,#110", HALVES);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.2, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.1 * Math.PI, within(1e-9));
  }

  /** Each turns by 45 degrees: 2 sin 45 radii along and 2 (1 - cos 45) aside. */
  @Test
  void twoBendsThatTurnBackAreAnOffset() {
    String back =
        """
        #140=IFCSWEPTDISKSOLID(#141,30.,$,$,$);
        #141=IFCTRIMMEDCURVE(#142,(IFCPARAMETERVALUE(3.1415926535897931)),(IFCPARAMETERVALUE(3.9269908169872414)),.T.,.PARAMETER.);
        #142=IFCCIRCLE(#143,200.);
        #143=IFCAXIS2PLACEMENT3D(#144,$,#106);
        #144=IFCCARTESIANPOINT((282.842712475,-82.842712475,0.));
        """;
    Shape shape = measure(ShapeHints.NONE, "#100,#140", HALVES + back);
    assertThat(shape.form()).isEqualTo(Form.OFFSET);
    assertThat(lengthM(shape).value())
        .isCloseTo(0.4 * Math.hypot(Math.sqrt(0.5), 1 - Math.sqrt(0.5)), within(1e-6));
  }

  @Test
  void halvesOfABendWithTangentsAreOneBend() {
    Shape shape = measure(ShapeHints.NONE, "#120,#100,#110,#130", HALVES + LEGS);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.2, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(1.3 + 0.1 * Math.PI, within(1e-9));
  }

  @Test
  void meshesOfBothHalvesAreOneBend() {
    MeshText first = new MeshText().bend(0.05, 0.2, Math.PI / 4, 24, 6);
    MeshText second =
        new MeshText()
            .bend(0.05, 0.2, Math.PI / 4, 24, 6)
            .placed(
                new double[] {0, 0, 1},
                Math.PI / 4,
                new double[] {0.2 * Math.sin(Math.PI / 4), 0.2 * (1 - Math.cos(Math.PI / 4)), 0});
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN,
                "#100,#200",
                first.triangulated(100) + second.triangulated(200)),
            TinyModel.METRES,
            ShapeHints.NONE);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(0.01));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.2, within(1e-4));
  }

  /** One step of 7.5 degrees, and three: the larger piece alone turns by 22.5. */
  @Test
  void bendOfTwoUnequalMeshesTurnsAsFarAsBoth() {
    double step = Math.toRadians(7.5);
    double[] at = {0.2 * Math.sin(step), 0.2 * (1 - Math.cos(step)), 0};
    MeshText first = new MeshText().bend(0.1, 0.2, step, 16, 1);
    MeshText second =
        new MeshText().bend(0.1, 0.2, 3 * step, 16, 3).placed(new double[] {0, 0, 1}, step, at);
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN, "#100,#5000", first.faceted(100) + second.faceted(5000)),
            TinyModel.METRES,
            ShapeHints.NONE);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(30, within(0.01));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.2, within(1e-4));
    assertThat(lengthM(shape).value()).isCloseTo(0.2 * Math.PI / 6, within(1e-4));
  }

  @Test
  void pipeWithACornerIsAsLongAsItsLegs() {
    Shape shape =
        measure(
            SEGMENT,
            "#120,#140",
            LEGS
                + """
                #140=IFCSWEPTDISKSOLID(#141,30.,$,$,$);
                #141=IFCPOLYLINE((#10,#142));
                #142=IFCCARTESIANPOINT((0.,800.,0.));
                """);
    assertThat(lengthM(shape).value()).isCloseTo(1.8, within(1e-9));
    assertThat(shape.problems()).singleElement().asString().contains("several bends");
  }
}
