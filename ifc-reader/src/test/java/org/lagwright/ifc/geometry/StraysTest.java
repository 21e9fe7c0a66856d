package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;

/** Segments of one mesh that hold more than the one straight pipe they are measured as. */
class StraysTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double[] Z = {0, 0, 1};
  private static final String BESIDE = "a part of the body lies beside the piece that is measured";
  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);

  /** Adds a round body along z. */
  private static void pipe(MeshText mesh, double diameterM, double x, double fromM, double toM) {
    mesh.tube(
        mesh.ring(new double[] {x, 0, fromM}, X, Y, diameterM / 2, 24),
        mesh.ring(new double[] {x, 0, toM}, X, Y, diameterM / 2, 24));
  }

  /** Adds a round body along x. */
  private static void across(MeshText mesh, double diameterM, double z, double fromM, double toM) {
    mesh.tube(
        mesh.ring(new double[] {fromM, 0, z}, Y, Z, diameterM / 2, 24),
        mesh.ring(new double[] {toM, 0, z}, Y, Z, diameterM / 2, 24));
  }

  private static int[] ring(MeshText mesh, double diameterM, double atM) {
    return mesh.ring(new double[] {0, 0, atM}, X, Y, diameterM / 2, 24);
  }

  private static List<String> problems(MeshText mesh) {
    Shape shape = TinyModel.item(TinyModel.METRES, SEGMENT, mesh.triangulated(100));
    return shape.problems();
  }

  @Test
  void secondPipeBesideTheFirstIsTold() {
    MeshText mesh = new MeshText();
    pipe(mesh, 0.022, 0, 0, 1);
    pipe(mesh, 0.022, 0.05, 0, 1);
    assertThat(problems(mesh)).containsExactly(BESIDE);
  }

  @Test
  void pipeThatGoesOnAcrossIsTold() {
    MeshText mesh = new MeshText();
    pipe(mesh, 0.0424, 0, 0, 0.5);
    across(mesh, 0.0424, 0.25, 0, 0.4);
    assertThat(problems(mesh)).containsExactly(BESIDE);
  }

  @Test
  void lugBesideAPipeIsNone() {
    MeshText mesh = new MeshText();
    pipe(mesh, 0.0603, 0, 0, 2);
    across(mesh, 0.02, 1, 0.02, 0.08);
    assertThat(problems(mesh)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.1})
  void gapBetweenTwoPipesIsTold(double gapM) {
    MeshText mesh = new MeshText();
    pipe(mesh, 0.0424, 0, 0, 0.5);
    pipe(mesh, 0.0424, 0, 0.5 + gapM, 1);
    assertThat(problems(mesh)).containsExactly("the body has a gap, which counts as length");
  }

  @Test
  void piecesThatTouchAreOnePipe() {
    MeshText mesh = new MeshText();
    pipe(mesh, 0.0424, 0, 0, 0.5);
    pipe(mesh, 0.0424, 0, 0.5, 1);
    assertThat(problems(mesh)).isEmpty();
  }

  @Test
  void narrowPartBetweenTwoWideOnesIsTold() {
    MeshText mesh = new MeshText();
    mesh.tube(
        ring(mesh, 0.0424, 0),
        ring(mesh, 0.0424, 0.35),
        ring(mesh, 0.0337, 0.35),
        ring(mesh, 0.0337, 0.65),
        ring(mesh, 0.0424, 0.65),
        ring(mesh, 0.0424, 1));
    assertThat(problems(mesh))
        .containsExactly("part of the body is narrower than the size that is measured");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.7})
  void twoSizesInLineAreTold(double wideM) {
    MeshText mesh = new MeshText();
    pipe(mesh, 0.0424, 0, 0, wideM);
    pipe(mesh, 0.0337, 0, wideM, 1);
    assertThat(problems(mesh))
        .containsExactly("part of the body is wider than the size that is measured");
  }
}
