package org.lagwright.ifc.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.MeshText;
import org.lagwright.ifc.geometry.TinyModel;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.Sheath;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/**
 * Meshes at a slant whose coordinates are rounded: no three corners of an end lie in its plane any
 * more, and thin triangles of it are tilted by degrees.
 */
class RoundedMeshTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double[] SLANT = {1 / Math.sqrt(14), 2 / Math.sqrt(14), 3 / Math.sqrt(14)};

  private static Shape measured(MeshText mesh, double stepM) {
    return TinyModel.item(TinyModel.METRES, rounded(mesh, 0.7, stepM).triangulated(100));
  }

  private static MeshText rounded(MeshText mesh, double turnRad, double stepM) {
    mesh.placed(SLANT, turnRad, new double[] {0.1234567, 0.2345678, 0.3456789});
    for (double[] point : mesh.points) {
      for (int i = 0; i < 3; i++) {
        point[i] = Math.rint(point[i] / stepM) * stepM;
      }
    }
    return mesh;
  }

  /** Round rings about the z axis. */
  private static int[] ring(MeshText mesh, double z, double radius, int corners) {
    return mesh.ring(new double[] {0, 0, z}, X, Y, radius, corners);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 1e-5, 1e-6})
  void reducerKeepsBothEnds(double stepM) {
    MeshText mesh = new MeshText();
    mesh.tube(
        ring(mesh, 0, 0.03015, 24),
        ring(mesh, 0.02, 0.03015, 24),
        ring(mesh, 0.06, 0.0211, 24),
        ring(mesh, 0.08, 0.0211, 24));
    Shape shape = measured(mesh, stepM);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.0603, within(stepM));
    assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.0422, within(stepM));
    assertThat(lengthM(shape).value()).isCloseTo(0.08, within(stepM));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 1e-5, 1e-6})
  void bendKeepsItsAngle(double stepM) {
    MeshText mesh = new MeshText().bend(0.125, 0.25, Math.toRadians(60), 24, 6);
    Shape shape = measured(mesh, stepM);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(60, within(0.05));
    assertThat(lengthM(shape).value()).isCloseTo(0.25 * Math.PI / 3, within(5 * stepM));
  }

  /** Its walls stand off each other by no more than the step: they are no plane for that. */
  @ParameterizedTest
  @CsvSource({"0.005,24", "0.005,48", "0.003,36", "0.0105,64"})
  void thinPipeOfManyFacesIsStillRound(double radius, int corners) {
    MeshText mesh = new MeshText();
    mesh.tube(ring(mesh, 0, radius, corners), ring(mesh, 2, radius, corners));
    Shape shape = measured(mesh, 1e-4);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(section(shape).value().largestSideM()).isCloseTo(2 * radius, within(1e-4));
    assertThat(lengthM(shape).value()).isCloseTo(2, within(2e-4));
  }

  /** The plane of a rounded end leans so much that it misses the far end by half a millimetre. */
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 1.3, 2.2})
  void longPipeIsAsWideAsItsWallAndNotAsItsSocket(double turnRad) {
    MeshText mesh = new MeshText();
    mesh.tube(
        ring(mesh, 0, 0.027, 24),
        ring(mesh, 2.9, 0.027, 24),
        ring(mesh, 2.9, 0.031, 24),
        ring(mesh, 3, 0.031, 24));
    ShapeHints hints = new ShapeHints(List.of(), null, true);
    Shape shape =
        TinyModel.item(TinyModel.METRES, hints, rounded(mesh, turnRad, 1e-4).triangulated(100));
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.054, within(1.5e-4));
    assertThat(lengthM(shape).value()).isCloseTo(3, within(2e-4));
  }

  /** The bore of sheet: its rim is as narrow as ten steps, and each of its faces leans. */
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 1.3, 2.2})
  void ductOfSheetThatIsCutAtASlantIsAsLongAsItsAxis(double turnRad) {
    MeshText mesh = new MeshText();
    int[] from = rim(mesh, 0, 0, 0);
    int[] to = rim(mesh, 0.9, 1, 0);
    int[] boreFrom = rim(mesh, 0, 0, 1e-3);
    int[] boreTo = rim(mesh, 0.9, 1, 1e-3);
    mesh.wall(from, to).wall(to, boreTo).wall(boreTo, boreFrom).wall(boreFrom, from);
    ShapeHints hints = new ShapeHints(List.of(), null, true);
    Shape shape =
        TinyModel.item(TinyModel.METRES, hints, rounded(mesh, turnRad, 1e-4).triangulated(100));
    assertThat(lengthM(shape).value()).isCloseTo(0.9, within(2e-4));
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.4, within(2e-4));
    assertThat(section(shape).value().smallestSideM()).isCloseTo(0.2, within(2e-4));
  }

  /** Of 400 x 200 mm; slope 1 is a cut of 45 degrees. */
  private static int[] rim(MeshText mesh, double z, double slope, double wall) {
    double[] half = {0.2 - wall, 0, 0};
    int[] rim = mesh.rectangle(new double[] {0, 0, z}, half, new double[] {0, 0.1 - wall, 0});
    for (int corner : rim) {
      double[] point = mesh.points.get(corner);
      point[2] += slope * point[0];
    }
    return rim;
  }

  /** Of many narrow faces the ends are torn, and only the wall tells the pipe. */
  @ParameterizedTest
  @ValueSource(ints = {24, 64, 100})
  void pipeThatIsCutAtASlantIsAsLongAsItsAxis(int corners) {
    MeshText mesh = new MeshText();
    int[] start = cut(mesh, 0.03015, -0.4142, 0, corners);
    int[] end = cut(mesh, 0.03015, 0.4142, 0.7, corners);
    int[] boreStart = cut(mesh, 0.027, -0.4142, 0, corners);
    int[] boreEnd = cut(mesh, 0.027, 0.4142, 0.7, corners);
    mesh.wall(start, end).wall(end, boreEnd).wall(boreEnd, boreStart).wall(boreStart, start);
    ShapeHints hints = new ShapeHints(List.of(), null, true);
    Shape shape =
        TinyModel.item(TinyModel.METRES, hints, rounded(mesh, 0.7, 1e-4).triangulated(100));
    assertThat(lengthM(shape).value()).isCloseTo(0.7, within(2e-4));
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.0603, within(1.5e-4));
  }

  private static int[] cut(MeshText mesh, double radius, double slope, double z, int corners) {
    int[] rim = ring(mesh, z, radius, corners);
    for (int corner : rim) {
      double[] point = mesh.points.get(corner);
      point[2] += slope * point[0];
    }
    return rim;
  }

  /** Corners of one wall stand off each other by more than half a per cent of a narrow pipe. */
  @ParameterizedTest
  @CsvSource({"0.011, 0.010", "0.0085, 0.0075"})
  void shellInTheMeshOfANarrowPipeIsTold(double radius, double bore) {
    MeshText mesh = new MeshText();
    addTube(mesh, radius, bore);
    addTube(mesh, radius + 0.02, radius);
    ShapeHints hints = new ShapeHints(List.of(), null, true);
    Shape shape =
        TinyModel.item(TinyModel.METRES, hints, rounded(mesh, 0.7, 1e-4).triangulated(100));
    Sheath sheath = Objects.requireNonNull(shape.sheath());
    assertThat(sheath.inner().value().largestSideM()).isCloseTo(2 * radius, within(2e-4));
    assertThat(sheath.outer().largestSideM()).isCloseTo(2 * radius + 0.04, within(2e-4));
  }

  private static void addTube(MeshText mesh, double radius, double bore) {
    int[] start = ring(mesh, 0, radius, 24);
    int[] end = ring(mesh, 2, radius, 24);
    int[] boreStart = ring(mesh, 0, bore, 24);
    int[] boreEnd = ring(mesh, 2, bore, 24);
    mesh.wall(start, end).wall(end, boreEnd).wall(boreEnd, boreStart).wall(boreStart, start);
  }

  /** Whole centimetres are no rounding: sides that turn by 2 mm over 100 are still two. */
  @Test
  void coordinatesOfWholeNumbersAreNotTakenForCoarseOnes() {
    RoundingStep rounding = new RoundingStep();
    rounding.note(List.of(new Vec(0.5, 0.3, 0), new Vec(-0.5, 0.25, 1)), 0.001, 1);
    assertThat(rounding.stepM()).isEqualTo(1e-4);
    rounding.note(List.of(new Vec(0.12345, 0, 0)), 0.001, 1);
    assertThat(rounding.stepM()).isCloseTo(1e-5, within(1e-12));
    rounding.note(List.of(new Vec(1 / 3.0, 0, 0)), 0.001, 1);
    assertThat(rounding.stepM()).isZero();
  }

  /** Facets of the ring at its ends are as narrow as its wall, so a step tilts them by degrees. */
  @ParameterizedTest
  @CsvSource({
    "0.042,0.0035,0.06,8,1e-4",
    "0.042,0.0035,0.06,16,1e-4",
    "0.07,0.005,0.08,8,1e-4",
    "0.028,0.0015,0.03,12,1e-5",
    "0.5,0.003,0.2,24,1e-4"
  })
  void sleeveOfAThinWallKeepsBothEnds(
      double diameterM, double wallM, double lengthM, int corners, double stepM) {
    for (double turnRad : new double[] {0.7, 1.3, 2.2}) {
      MeshText sleeve = rounded(sleeve(diameterM, wallM, lengthM, corners), turnRad, stepM);
      for (String body : List.of(sleeve.triangulated(100), sleeve.faceted(100))) {
        Shape shape = TinyModel.item(TinyModel.METRES, body);
        assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
        assertThat(section(shape).value().largestSideM()).isCloseTo(diameterM, within(stepM));
        assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(2 * stepM));
      }
    }
  }

  private static MeshText sleeve(double diameterM, double wallM, double lengthM, int corners) {
    MeshText mesh = new MeshText();
    int[] outside = ring(mesh, 0, diameterM / 2, corners);
    int[] farOutside = ring(mesh, lengthM, diameterM / 2, corners);
    int[] bore = ring(mesh, 0, diameterM / 2 - wallM, corners);
    int[] farBore = ring(mesh, lengthM, diameterM / 2 - wallM, corners);
    mesh.wall(outside, farOutside).wall(bore, farBore).wall(outside, bore);
    return mesh.wall(farOutside, farBore);
  }

  /** As some write what a program holds in 32 bits: in full, by the fewest digits, by seven. */
  private enum Written {
    IN_FULL,
    SHORT,
    SEVEN_DIGITS;

    double of(double number) {
      return switch (this) {
        case IN_FULL -> (float) number;
        case SHORT -> Double.parseDouble(Float.toString((float) number));
        case SEVEN_DIGITS -> Double.parseDouble(String.format(Locale.ROOT, "%.6e", number));
      };
    }
  }

  /** In the coordinates of a building, 312 m from its origin, where 32 bits step by 0.03 mm. */
  @ParameterizedTest
  @EnumSource(Written.class)
  void reducerFarFromTheOriginKeepsBothEndsThoughItsCoordinatesAreShort(Written written) {
    MeshText mesh = new MeshText();
    mesh.tube(
        ring(mesh, 0, 0.05715, 24),
        ring(mesh, 0.02, 0.05715, 24),
        ring(mesh, 0.09, 0.03015, 24),
        ring(mesh, 0.11, 0.03015, 24));
    mesh.placed(SLANT, 0.7, new double[] {311.2345678, 42.3456789, 7.4567891});
    for (double[] point : mesh.points) {
      for (int i = 0; i < 3; i++) {
        point[i] = written.of(point[i]);
      }
    }
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));

    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.1143, within(4e-4));
    assertThat(lengthM(shape).value()).isCloseTo(0.11, within(4e-4));
  }

  @ParameterizedTest
  @EnumSource(Written.class)
  void stepOfShortCoordinatesIsThatOfTheLargest(Written written) {
    RoundingStep rounding = new RoundingStep();
    rounding.note(List.of(new Vec(written.of(Math.PI), written.of(-100 * Math.E), 0)), 1, 1);
    double stepM = written == Written.SEVEN_DIGITS ? 1e-4 : Math.ulp(256f);

    assertThat(rounding.stepM()).isCloseTo(stepM, within(1e-12));
  }

  /** A pipe along the z axis from one cut at a slant to another across it, with low faces there. */
  private static MeshText cutPipe() {
    MeshText mesh = new MeshText();
    double[] slantX = {1, 0, 1};
    double[] slantY = {0, 1, 0.5};
    mesh.tube(
        mesh.ring(new double[] {0, 0, 0}, slantX, Y, 0.03015, 24),
        mesh.ring(new double[] {0, 0, 0.002}, slantX, Y, 0.03015, 24),
        mesh.ring(new double[] {0, 0, 0.7}, X, slantY, 0.03015, 24));
    return mesh;
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 1e-5, 1e-6})
  void pipeCutAtASlantIsRoundAndAsLongAsItsAxis(double stepM) {
    ShapeHints straight = new ShapeHints(List.of(), null, true);
    String mesh = rounded(cutPipe(), 0.7, stepM).triangulated(100);
    Shape shape = TinyModel.item(TinyModel.METRES, straight, mesh);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(section(shape).value()).isInstanceOf(Section.Round.class);
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.0603, within(2e-4));
    assertThat(lengthM(shape).value()).isCloseTo(0.7, within(5e-4));
  }

  /** In feet with three decimals, 0.3 mm. */
  @Test
  void reducerInThousandthsOfAFootKeepsBothEnds() {
    MeshText mesh = new MeshText();
    mesh.tube(
        ring(mesh, 0, 0.1978, 24),
        ring(mesh, 0.1, 0.1978, 24),
        ring(mesh, 0.3, 0.1384, 24),
        ring(mesh, 0.4, 0.1384, 24));
    String written = rounded(mesh, 0.7, 1e-3).triangulated(100);
    Shape shape = TinyModel.item(new GeometryUnits(0.3048, 1), written);
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.1206, within(3e-4));
    assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.0844, within(3e-4));
  }

  /** A circle has no corners on whole millimetres, while those of a box may be meant so. */
  @Test
  void roundBodyOnWholeMillimetresIsTold() {
    MeshText pipe = new MeshText();
    pipe.tube(ring(pipe, 0, 0.05, 24), ring(pipe, 1, 0.05, 24));
    assertThat(measured(pipe, 1e-3).problems()).anyMatch(each -> each.contains("rounded"));
    MeshText fine = new MeshText();
    fine.tube(ring(fine, 0, 0.05, 24), ring(fine, 1, 0.05, 24));
    assertThat(measured(fine, 1e-4).problems()).isEmpty();
    MeshText box = new MeshText();
    box.tube(rectangle(box, 0), rectangle(box, 1));
    Shape duct = TinyModel.item(TinyModel.METRES, box.triangulated(100));
    assertThat(duct.problems()).noneMatch(each -> each.contains("rounded"));
  }

  private static int[] rectangle(MeshText mesh, double z) {
    return mesh.rectangle(
        new double[] {0, 0, z}, new double[] {0.2, 0, 0}, new double[] {0, 0.1, 0});
  }
}
