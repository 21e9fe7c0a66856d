package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;

/** Cylinders set on one another along the z axis, each a closed body. */
class SteppedReducerTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double[] Z = {0, 0, 1};

  private final MeshText mesh = new MeshText();
  private double top;

  private SteppedReducerTest then(double diameter, double length) {
    mesh.tube(ring(top, diameter), ring(top + length, diameter));
    top += length;
    return this;
  }

  private int[] ring(double z, double diameter) {
    return mesh.ring(new double[] {0, 0, z}, X, Y, diameter / 2, 24);
  }

  private Shape measured(boolean segment) {
    ShapeHints hints = new ShapeHints(List.of(), null, segment);
    Shape shape = TinyModel.item(TinyModel.METRES, hints, mesh.faceted(100));
    assertThat(lengthM(shape).value()).isCloseTo(top, within(1e-9));
    return shape;
  }

  private static void ends(Shape shape, long... mm10) {
    assertThat(
            shape.ends().stream()
                .mapToLong(end -> Math.round(1e4 * end.section().largestSideM()))
                .toArray())
        .containsExactlyInAnyOrder(mm10);
  }

  @Test
  void reducerOfTwoStepsKeepsBothSizes() {
    Shape shape = then(0.0603, 0.03).then(0.0483, 0.03).measured(false);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    ends(shape, 603, 483);
  }

  @Test
  void reducerOfThreeStepsHasTheSizesOfItsEnds() {
    Shape shape = then(0.0269, 0.03).then(0.0337, 0.03).then(0.0483, 0.03).measured(false);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    ends(shape, 269, 483);
  }

  @Test
  void flangeIsNoStep() {
    Shape shape = then(0.22, 0.02).then(0.1143, 0.2).measured(false);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    ends(shape, 1143, 1143);
  }

  @Test
  void socketsOnBothEndsAreNoSteps() {
    Shape shape = then(0.035, 0.025).then(0.028, 0.05).then(0.035, 0.025).measured(false);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    ends(shape, 280, 280);
  }

  @Test
  void socketOfAPipeIsNoStep() {
    Shape shape = then(0.13, 0.08).then(0.11, 2).measured(true);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    ends(shape, 1100, 1100);
  }

  @Test
  void socketOfTheSmallEndIsNotTheSizeOfTheLargeOne() {
    then(0.0663, 0.024);
    mesh.tube(ring(top, 0.0603), ring(top + 0.043, 0.0337));
    top += 0.043;
    Shape shape = then(0.0395, 0.017).measured(false);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    ends(shape, 603, 337);
  }

  @Test
  void socketsOfATeeAreNotTheSizesOfItsOtherEnds() {
    mesh.tube(branch(0), branch(0.06));
    then(0.0663, 0.024);
    mesh.tube(ring(top, 0.0603), ring(top + 0.043, 0.0337));
    top += 0.043;
    Shape shape = then(0.0395, 0.017).measured(false);
    assertThat(shape.form()).isEqualTo(Form.TEE);
    ends(shape, 603, 337, 269);
  }

  /** Of the branch the pipe in it is its size, not the nut around it. */
  @Test
  void nutOnABranchIsNoStep() {
    mesh.tube(branch(0), branch(0.04));
    mesh.tube(nut(0.04), nut(0.055));
    then(0.0269, 0.06);
    mesh.tube(
        mesh.ring(new double[] {-0.05, 0, 0.03}, Y, Z, 0.0152 / 2, 24),
        mesh.ring(new double[] {0, 0, 0.03}, Y, Z, 0.0152 / 2, 24));
    // from the far end of the branch to that of the spindle
    top = 0.105;
    Shape shape = measured(false);
    ends(shape, 269, 269, 269, 152);
  }

  private int[] branch(double x) {
    return mesh.ring(new double[] {x, 0, 0.03}, Y, Z, 0.0269 / 2, 24);
  }

  private int[] nut(double x) {
    return mesh.ring(new double[] {x, 0, 0.03}, Y, Z, 0.0346 / 2, 24);
  }
}
