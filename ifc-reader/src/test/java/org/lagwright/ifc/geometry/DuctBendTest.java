package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;

/** Bends of rectangular and oval ducts with straight collars, which make the legs longer. */
class DuctBendTest {

  private static final double[] Z = {0, 0, 1};
  private static final int STEPS = 8;

  private final MeshText mesh = new MeshText();

  private int[] ring(double[] centre, double[] radial, double half, double halfHigh, boolean oval) {
    if (!oval) {
      double[] across = {half * radial[0], half * radial[1], 0};
      return mesh.rectangle(centre, across, new double[] {0, 0, halfHigh});
    }
    int[] ring = mesh.ring(centre, radial, Z, halfHigh, 24);
    for (int i = 0; i < ring.length; i++) {
      double shift = Math.copySign(half - halfHigh, Math.cos(2 * Math.PI * i / 24 + 1e-9));
      mesh.points.get(ring[i])[0] += shift * radial[0];
      mesh.points.get(ring[i])[1] += shift * radial[1];
    }
    return ring;
  }

  /** From the x axis towards the y axis, with a collar on either side. */
  private int[][] rings(
      double arcM, double turn, double collarM, double half, double halfHigh, boolean oval) {
    int[][] rings = new int[STEPS + 3][];
    for (int i = 0; i < rings.length; i++) {
      double at = turn * Math.max(0, Math.min(STEPS, i - 1)) / STEPS;
      double beyond = i == 0 ? -collarM : i == rings.length - 1 ? collarM : 0;
      double[] centre = {
        arcM * Math.sin(at) + beyond * Math.cos(at),
        arcM * (1 - Math.cos(at)) + beyond * Math.sin(at),
        0
      };
      rings[i] = ring(centre, new double[] {-Math.sin(at), Math.cos(at), 0}, half, halfHigh, oval);
    }
    return rings;
  }

  private Shape measured() {
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    return shape;
  }

  @ParameterizedTest
  @CsvSource({
    "0.75,45,0.05,0.25,0.15,false",
    "0.75,90,0.05,0.25,0.15,false",
    "0.40,90,0.10,0.25,0.15,false",
    "0.25,30,0.04,0.10,0.10,false",
    "0.60,15,0.04,0.20,0.10,false",
    "0.50,45,0.05,0.25,0.125,true",
    "0.50,90,0.05,0.25,0.125,true"
  })
  void collarsDoNotMakeTheRadiusOfADuctBendLarger(
      double arcM, double degrees, double collarM, double half, double halfHigh, boolean oval) {
    double turn = Math.toRadians(degrees);
    mesh.tube(rings(arcM, turn, collarM, half, halfHigh, oval));
    Shape shape = measured();
    assertThat(bendRadiusM(shape).value()).isCloseTo(arcM, within(2e-4));
    assertThat(lengthM(shape).value()).isCloseTo(arcM * turn + 2 * collarM, within(2e-4));
  }

  @Test
  void liningOfADuctBendDoesNotHideItsRadius() {
    int[][] outer = rings(0.6, Math.PI / 2, 0.05, 0.25, 0.15, false);
    int[][] inner = rings(0.6, Math.PI / 2, 0.05, 0.225, 0.125, false);
    int last = outer.length - 1;
    mesh.wall(outer[0], inner[0]).wall(outer[last], inner[last]);
    for (int i = 1; i <= last; i++) {
      mesh.wall(outer[i - 1], outer[i]).wall(inner[i - 1], inner[i]);
    }
    assertThat(bendRadiusM(measured()).value()).isCloseTo(0.6, within(2e-4));
  }

  /** The frames are all that is seen of the ends; the duct comes out of their backs. */
  @Test
  void ductBetweenFramesTellsSizeAndRadius() {
    int[][] duct = rings(0.5, Math.PI / 2, 0.04, 0.25, 0.15, false);
    int[][] frame = rings(0.5, Math.PI / 2, 0.04, 0.28, 0.18, false);
    int last = duct.length - 1;
    mesh.cap(frame[0]).wall(frame[0], frame[1]).wall(frame[1], duct[1]);
    for (int i = 2; i < last; i++) {
      mesh.wall(duct[i - 1], duct[i]);
    }
    mesh.wall(duct[last - 1], frame[last - 1]).wall(frame[last - 1], frame[last]).cap(frame[last]);
    ShapeHints ports =
        new ShapeHints(List.of(new Point(-0.04, 0, 0), new Point(0.5, 0.54, 0)), null, false);
    Shape shape = TinyModel.item(TinyModel.METRES, ports, mesh.triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.5, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.5, within(1e-4));
    assertThat(shape.problems()).isEmpty();
  }

  /** A finely drawn throat and a square heel: most corners lie on the arc all the same. */
  @Test
  void squareHeelIsNoArcHoweverFineTheThroat() {
    int corners = 60;
    int[][] sides = new int[2][corners + 5];
    for (int side = 0; side < 2; side++) {
      double high = side == 0 ? -0.15 : 0.15;
      double[][] heel = {{-0.05, -0.3}, {0.6, -0.3}, {0.6, 0.35}, {0.1, 0.35}};
      for (int i = 0; i < sides[side].length; i++) {
        double at = Math.PI / 2 * (i - 4) / (corners - 1);
        boolean isThroat = i >= 4 && i < corners + 4;
        double[] flat = i < 4 ? heel[i] : new double[] {-0.05, 0.2};
        double x = isThroat ? 0.1 * Math.cos(at) : flat[0];
        double y = isThroat ? 0.3 - 0.1 * Math.sin(at) : flat[1];
        sides[side][i] = mesh.points.size();
        mesh.points.add(new double[] {x, y, high});
      }
    }
    mesh.tube(sides);
    ShapeHints ports =
        new ShapeHints(List.of(new Point(-0.05, -0.05, 0), new Point(0.35, 0.35, 0)), null, false);
    Shape shape = TinyModel.item(TinyModel.METRES, ports, mesh.polygonal(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(shape.bendRadiusM()).isNull();
  }
}
