package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;

/** Bends that turn right round, with legs: length = leg + pi R + leg. */
class ReturnBendTest {

  private static final double RADIUS_M = 0.04;

  /** A half circle of radius 40 mm from the origin along x to (0, 80), and legs back along x. */
  private static final String ARC_AND_LEGS =
      """
      #100=IFCSWEPTDISKSOLID(#101,13.45,$,$,$);
      #101=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(3.1415926535897931)),.T.,.PARAMETER.);
      #103=IFCCIRCLE(#104,40.);
      #104=IFCAXIS2PLACEMENT3D(#105,$,#106);
      #105=IFCCARTESIANPOINT((0.,40.,0.));
      #106=IFCDIRECTION((0.,-1.,0.));
      #120=IFCSWEPTDISKSOLID(#121,13.45,$,$,$);
      #121=IFCPOLYLINE((#122,#10));
      #122=IFCCARTESIANPOINT((-500.,0.,0.));
      #130=IFCSWEPTDISKSOLID(#131,13.45,$,$,$);
      #131=IFCPOLYLINE((#132,#133));
      #132=IFCCARTESIANPOINT((0.,80.,0.));
      #133=IFCCARTESIANPOINT((-300.,80.,0.));
      """;

  /** A ring of a wall about a centre, with one axis across the path and the other along z. */
  private interface Ring {
    int[] at(MeshText mesh, double[] centre, double[] across);
  }

  private static final Ring PIPE =
      (mesh, centre, across) -> mesh.ring(centre, across, new double[] {0, 0, 1}, 0.01345, 12);

  /** 30 mm in the plane of the bend, 50 mm high. */
  private static final Ring DUCT =
      (mesh, centre, across) ->
          mesh.rectangle(
              centre,
              new double[] {0.015 * across[0], 0.015 * across[1], 0},
              new double[] {0, 0, 0.025});

  private static Shape mesh(Ring ring, double legM, double otherLegM, int steps) {
    MeshText mesh = new MeshText();
    List<int[]> rings = new ArrayList<>();
    rings.add(ring.at(mesh, new double[] {-legM, 0, 0}, new double[] {0, 1, 0}));
    for (int i = 0; i <= steps; i++) {
      double t = Math.PI * i / steps;
      double[] centre = {RADIUS_M * Math.sin(t), RADIUS_M * (1 - Math.cos(t)), 0};
      rings.add(ring.at(mesh, centre, new double[] {-Math.sin(t), Math.cos(t), 0}));
    }
    rings.add(ring.at(mesh, new double[] {-otherLegM, 2 * RADIUS_M, 0}, new double[] {0, -1, 0}));
    mesh.tube(rings.toArray(int[][]::new));
    return TinyModel.item(TinyModel.METRES, mesh.polygonal(100));
  }

  private static void assertReturnBend(Shape shape, double legsM, double withinM) {
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(shape.problems()).isEmpty();
    assertThat(angleDeg(shape).value()).isCloseTo(180, within(1e-4));
    assertThat(bendRadiusM(shape).value()).isCloseTo(RADIUS_M, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(legsM + Math.PI * RADIUS_M, within(withinM));
  }

  @Test
  void eachLegOfAReturnBendCountsOnce() {
    Shape shape =
        TinyModel.measure(
            TinyModel.body(TinyModel.AT_ORIGIN, "#120,#100,#130", ARC_AND_LEGS),
            TinyModel.MM_RAD,
            ShapeHints.NONE);
    assertReturnBend(shape, 0.8, 1e-9);
  }

  @Test
  void legsOfAMeshedReturnBendCount() {
    assertReturnBend(mesh(PIPE, 0.5, 0.5, 16), 1, 1e-5);
    assertReturnBend(mesh(PIPE, 0.2, 0.1, 7), 0.3, 1e-5);
    assertReturnBend(mesh(DUCT, 0.1, 0.3, 9), 0.4, 1e-5);
  }

  @Test
  void lengthOfAReturnBendWithSquareCornersIsNotKnown() {
    MeshText mesh = new MeshText();
    mesh.tube(
        PIPE.at(mesh, new double[] {-0.2, 0, 0}, new double[] {0, 1, 0}),
        mesh.ring(
            new double[] {0, 0, 0}, new double[] {-1, 1, 0}, new double[] {0, 0, 1}, 0.01345, 12),
        mesh.ring(
            new double[] {0, 0.2, 0},
            new double[] {-1, -1, 0},
            new double[] {0, 0, 1},
            0.01345,
            12),
        PIPE.at(mesh, new double[] {-0.2, 0.2, 0}, new double[] {0, -1, 0}));
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.polygonal(100));
    assertThat(shape.lengthM()).isNull();
    assertThat(shape.bendRadiusM()).isNull();
    assertThat(shape.problems()).singleElement().asString().contains("does not follow an arc");
  }
}
