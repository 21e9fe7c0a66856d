package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.Sheath;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/** One mesh that is several bodies inside one another, two metres long along z. */
class NestedBodiesTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double LENGTH_M = 2;
  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);

  /** Adds a round body; solid without a bore. Corners of bodies that touch are there twice. */
  private static void tube(
      MeshText mesh, int corners, double diameterMm, double boreMm, double fromM) {
    double toM = LENGTH_M - fromM;
    int[] start = ring(mesh, corners, diameterMm, fromM);
    int[] end = ring(mesh, corners, diameterMm, toM);
    if (boreMm > 0) {
      int[] boreStart = ring(mesh, corners, boreMm, fromM);
      int[] boreEnd = ring(mesh, corners, boreMm, toM);
      mesh.wall(start, end).wall(end, boreEnd).wall(boreEnd, boreStart).wall(boreStart, start);
    } else {
      mesh.tube(start, end);
    }
  }

  private static int[] ring(MeshText mesh, int corners, double diameterMm, double atM) {
    return mesh.ring(new double[] {0, 0, atM}, X, Y, diameterMm / 2000, corners);
  }

  private static Shape measure(MeshText mesh) {
    return TinyModel.item(TinyModel.METRES, SEGMENT, mesh.triangulated(100));
  }

  private static Shape pipeInShell(
      int corners, double pipeMm, double boreMm, double shellMm, double shellBoreMm, double fromM) {
    MeshText mesh = new MeshText();
    tube(mesh, 24, pipeMm, boreMm, 0);
    tube(mesh, corners, shellMm, shellBoreMm, fromM);
    return measure(mesh);
  }

  @ParameterizedTest(name = "{0} mm, bore {1} mm, in {2} mm with a bore of {3} mm from {4} m on")
  @CsvSource({
    "60.3, 54, 120.3, 60.3, 0, 24",
    "60.3, 0, 120.3, 60.3, 0, 24",
    "60.3, 54, 120.3, 62, 0, 24",
    "60.3, 0, 120.3, 62, 0, 24",
    "60.3, 54, 120.3, 60.3, 0.1, 24",
    "60.3, 54, 120.3, 60.3, 0, 36",
    "500, 498.8, 600, 500, 0, 24"
  })
  void shellInTheMeshOfItsPipeIsTold(
      double pipeMm, double boreMm, double shellMm, double shellBoreMm, double fromM, int corners) {
    Shape shape = pipeInShell(corners, pipeMm, boreMm, shellMm, shellBoreMm, fromM);
    Sheath sheath = Objects.requireNonNull(shape.sheath());
    assertThat(sheath.inner().value().largestSideM()).isCloseTo(pipeMm / 1000, within(1e-6));
    assertThat(sheath.outer().largestSideM()).isCloseTo(shellMm / 1000, within(1e-6));
    assertThat(sheath.share()).isCloseTo(1 - fromM, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(LENGTH_M, within(1e-6));
    assertThat(shape.problems()).isEmpty();
  }

  @ParameterizedTest(name = "{0} mm, bore {1} mm, in {2} mm with a bore of {3} mm")
  @CsvSource({
    "60.3, 54, 114.3, 107, 114.3",
    "54, 50, 60.3, 54, 60.3",
    "60.3, 54, 63, 60.3, 63",
    "298, 248, 300, 298, 300"
  })
  void pipeInPipeAndLiningAndCoatAreNoInsulation(
      double pipeMm, double boreMm, double outerMm, double outerBoreMm, double expectedMm) {
    Shape shape = pipeInShell(24, pipeMm, boreMm, outerMm, outerBoreMm, 0);
    assertThat(shape.sheath()).isNull();
    assertThat(section(shape).value().largestSideM()).isCloseTo(expectedMm / 1000, within(1e-6));
  }

  @Test
  void jacketAroundTheInsulationBelongsToTheShell() {
    MeshText mesh = new MeshText();
    tube(mesh, 24, 60.3, 54, 0);
    tube(mesh, 24, 125, 60.3, 0);
    tube(mesh, 24, 131, 125, 0);
    Sheath sheath = Objects.requireNonNull(measure(mesh).sheath());
    assertThat(sheath.inner().value().largestSideM()).isCloseTo(0.0603, within(1e-6));
    assertThat(sheath.outer().largestSideM()).isCloseTo(0.131, within(1e-6));
  }

  private static int[] rectangle(MeshText mesh, double widthM, double heightM, double atM) {
    return mesh.rectangle(
        new double[] {0, 0, atM},
        new double[] {widthM / 2, 0, 0},
        new double[] {0, heightM / 2, 0});
  }

  private static void duct(MeshText mesh, double widthM, double heightM, double wallM) {
    int[] start = rectangle(mesh, widthM, heightM, 0);
    int[] end = rectangle(mesh, widthM, heightM, LENGTH_M);
    int[] boreStart = rectangle(mesh, widthM - 2 * wallM, heightM - 2 * wallM, 0);
    int[] boreEnd = rectangle(mesh, widthM - 2 * wallM, heightM - 2 * wallM, LENGTH_M);
    mesh.wall(start, end).wall(end, boreEnd).wall(boreEnd, boreStart).wall(boreStart, start);
  }

  @Test
  void shellInTheMeshOfItsDuctIsTold() {
    MeshText mesh = new MeshText();
    duct(mesh, 0.4, 0.2, 0.001);
    duct(mesh, 0.46, 0.26, 0.03);
    Sheath sheath = Objects.requireNonNull(measure(mesh).sheath());
    Section.Rectangular bare = (Section.Rectangular) sheath.inner().value();
    assertThat(bare.largestSideM()).isCloseTo(0.4, within(1e-6));
    assertThat(bare.smallestSideM()).isCloseTo(0.2, within(1e-6));
    assertThat(sheath.outer().largestSideM()).isCloseTo(0.46, within(1e-6));
  }

  @Test
  void threeWallsWithoutPlatesBetweenThemAreTold() {
    MeshText mesh = new MeshText();
    for (double diameterMm : new double[] {54, 60.3, 120.3}) {
      mesh.wall(ring(mesh, 24, diameterMm, 0), ring(mesh, 24, diameterMm, LENGTH_M));
    }
    Shape shape = measure(mesh);
    assertThat(shape.sheath()).isNull();
    assertThat(shape.problems()).anyMatch(problem -> problem.startsWith("walls run inside"));
  }

  @ParameterizedTest(name = "bore {0} mm, shell bore {1} mm")
  @CsvSource({"0, 60.3", "0, 62", "54, 60.3", "54, 62"})
  void shellInTheMeshOfItsBendIsTold(double boreMm, double shellBoreMm) {
    MeshText mesh = new MeshText();
    bend(mesh, 60.3, boreMm);
    bend(mesh, 120.3, shellBoreMm);
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(section(shape).value().largestSideM() < 0.0604 || !shape.problems().isEmpty())
        .isTrue();
  }

  @ParameterizedTest(name = "bore {0} mm")
  @ValueSource(doubles = {0, 54})
  void bendOfOneBodyIsNot(double boreMm) {
    MeshText mesh = new MeshText();
    bend(mesh, 60.3, boreMm);
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.0603, within(1e-6));
    assertThat(shape.problems()).isEmpty();
  }

  /** Round a quarter about a centre 120 mm beside its start. */
  private static void bend(MeshText mesh, double diameterMm, double boreMm) {
    int[][] rings = quarter(mesh, diameterMm);
    int last = rings.length - 1;
    if (boreMm == 0) {
      mesh.tube(rings);
      return;
    }
    int[][] bore = quarter(mesh, boreMm);
    for (int i = 0; i < last; i++) {
      mesh.wall(rings[i], rings[i + 1]).wall(bore[i + 1], bore[i]);
    }
    mesh.wall(rings[last], bore[last]).wall(bore[0], rings[0]);
  }

  private static int[][] quarter(MeshText mesh, double diameterMm) {
    int[][] rings = new int[19][];
    for (int i = 0; i < rings.length; i++) {
      double turn = Math.PI / 2 * i / (rings.length - 1);
      double[] radial = {-Math.sin(turn), Math.cos(turn), 0};
      double[] centre = {0.12 * Math.sin(turn), -0.12 * Math.cos(turn), 0};
      rings[i] = mesh.ring(centre, radial, new double[] {0, 0, 1}, diameterMm / 2000, 24);
    }
    return rings;
  }
}
