package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;

/** Fittings with flanges or sockets in one mesh, joined to nothing. */
class FlangeBacksTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double[] Z = {0, 0, 1};

  private final MeshText mesh = new MeshText();

  private int[] runRing(double x, double diameter) {
    return mesh.ring(new double[] {x, 0, 0}, Y, Z, diameter / 2, 24);
  }

  private int[] branchRing(double y, double diameter) {
    return mesh.ring(new double[] {0, y, 0}, X, Z, diameter / 2, 24);
  }

  /** What is widened at both ends of the run and at the end of the branch. */
  private Shape tee(double widerM, double deepM) {
    mesh.tube(
        runRing(-0.15, widerM),
        runRing(-0.15 + deepM, widerM),
        runRing(-0.15 + deepM, 0.11),
        runRing(0.15 - deepM, 0.11),
        runRing(0.15 - deepM, widerM),
        runRing(0.15, widerM));
    mesh.tube(
        branchRing(0, 0.11),
        branchRing(0.15 - deepM, 0.11),
        branchRing(0.15 - deepM, widerM),
        branchRing(0.15, widerM));
    return TinyModel.item(TinyModel.METRES, mesh.faceted(100));
  }

  private static void isTeeOf110(Shape shape) {
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends())
        .allSatisfy(end -> assertThat(end.section().largestSideM()).isCloseTo(0.11, within(1e-6)));
    assertThat(lengthM(shape).value()).isCloseTo(0.3, within(1e-6));
  }

  @Test
  void teeIsAsWideAsThePipeBehindItsFlanges() {
    isTeeOf110(tee(0.22, 0.02));
  }

  @Test
  void teeIsAsWideAsThePipeBehindItsSockets() {
    isTeeOf110(tee(0.128, 0.06));
  }

  @Test
  void stepOfTheRunBehindTheBranchIsNoSocket() {
    mesh.tube(
        runRing(-0.06, 0.0889), runRing(0.04, 0.0889), runRing(0.04, 0.0603), runRing(0.2, 0.0603));
    mesh.tube(branchRing(0, 0.0483), branchRing(0.08, 0.0483));
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.faceted(100));
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.0889, within(1e-6));
    assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.0603, within(1e-6));
  }

  /** The run widens towards its other end, and nothing tells how wide the pipe is there. */
  @Test
  void bothEndsOfARunKeepTheirSizeWhereOneOfThemHasNoBack() {
    mesh.tube(
        runRing(-0.15, 0.22),
        runRing(-0.13, 0.22),
        runRing(-0.13, 0.11),
        runRing(0.08, 0.11),
        runRing(0.15, 0.22));
    mesh.tube(branchRing(0, 0.06), branchRing(0.2, 0.06));
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.faceted(100));
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends())
        .extracting(end -> Math.round(1000 * end.section().largestSideM()))
        .containsExactly(220L, 220L, 60L);
  }

  /** The front of a socket about a bore is no plane any more: its back is taken for the end. */
  @Test
  void tornFrontOfASocketIsTold() {
    int[] rim = runRing(-0.15, 0.128);
    for (int i = 0; i < rim.length; i += 2) {
      mesh.points.get(rim[i])[0] -= 0.01;
    }
    int[] back = runRing(-0.09, 0.128);
    int[] pipe = runRing(-0.09, 0.11);
    int[] end = runRing(0.15, 0.11);
    int[] bore = runRing(-0.15, 0.1);
    mesh.wall(rim, back).wall(back, pipe).wall(pipe, end);
    mesh.wall(end, runRing(0.15, 0.1)).wall(runRing(0.15, 0.1), bore).wall(bore, rim);
    mesh.tube(branchRing(0.04, 0.11), branchRing(0.15, 0.11));
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.faceted(100));

    assertThat(shape.problems()).anyMatch(problem -> problem.contains("torn"));
  }
}
