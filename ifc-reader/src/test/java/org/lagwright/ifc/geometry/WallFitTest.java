package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Straight round bodies whose ends tell nothing, damaged in the ways meshes are, anywhere. */
class WallFitTest {

  private static final long SEED = 20_261_125;
  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);

  /** A body of the given outside radius and length along z. */
  private interface Maker {
    void make(MeshText mesh, double radius, double length, Random random);
  }

  private static int[] ring(MeshText mesh, double z, double radius, int corners) {
    return mesh.ring(new double[] {0, 0, z}, X, Y, radius, corners);
  }

  /** Every other corner of the ends stands back by a twentieth of the length, in both ends. */
  private static void torn(MeshText mesh, double radius, double length, Random random) {
    int[] from = ring(mesh, 0, radius, 24);
    int[] to = ring(mesh, length, radius, 24);
    for (int i = 1; i < from.length; i += 2) {
      mesh.points.get(from[i])[2] += length * (0.01 + 0.09 * random.nextDouble());
      mesh.points.get(to[i])[2] -= length * (0.01 + 0.09 * random.nextDouble());
    }
    mesh.wall(from, to);
  }

  /** Cones of triangles on both ends. */
  private static void pointed(MeshText mesh, double radius, double length, Random random) {
    int[] from = ring(mesh, 0, radius, 20);
    int[] to = ring(mesh, length, radius, 20);
    mesh.wall(from, to);
    cone(mesh, from, -radius * (0.3 + random.nextDouble()));
    cone(mesh, to, length + radius * (0.3 + random.nextDouble()));
  }

  private static void cone(MeshText mesh, int[] rim, double tipZ) {
    int tip = mesh.points.size();
    mesh.points.add(new double[] {0, 0, tipZ});
    for (int i = 0; i < rim.length; i++) {
      mesh.faces.add(new int[] {rim[i], rim[(i + 1) % rim.length], tip});
    }
  }

  /** A tenth of the wall is missing, also at the ends. */
  private static void holed(MeshText mesh, double radius, double length, Random random) {
    int[][] rings = new int[8][];
    for (int i = 0; i < rings.length; i++) {
      rings[i] = ring(mesh, length * i / (rings.length - 1), radius, 24);
    }
    for (int i = 1; i < rings.length; i++) {
      mesh.wall(rings[i - 1], rings[i]);
    }
    mesh.faces.removeIf(face -> random.nextInt(10) == 0);
  }

  /** Pipe and jacket around it, both torn. */
  private static void doubleWall(MeshText mesh, double radius, double length, Random random) {
    torn(mesh, radius, length, random);
    torn(mesh, 0.6 * radius, length, random);
  }

  /** Fins stand on the wall, so that edges have three faces; every fifth face is there twice. */
  private static void finned(MeshText mesh, double radius, double length, Random random) {
    torn(mesh, radius, length, random);
    List<int[]> faces = List.copyOf(mesh.faces);
    for (int i = 0; i < faces.size(); i += 5) {
      int[] face = faces.get(i);
      mesh.faces.add(face.clone());
      int inside = mesh.points.size();
      mesh.points.add(new double[] {0, 0, length * random.nextDouble()});
      mesh.faces.add(new int[] {face[0], face[3], inside});
    }
  }

  static Stream<Arguments> bodies() {
    return Stream.of(
        Arguments.of("torn ends", (Maker) WallFitTest::torn),
        Arguments.of("pointed ends", (Maker) WallFitTest::pointed),
        Arguments.of("holes", (Maker) WallFitTest::holed),
        Arguments.of("double wall", (Maker) WallFitTest::doubleWall),
        Arguments.of("fins and copies", (Maker) WallFitTest::finned));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bodies")
  void wallsGiveDiameterAndLength(String name, Maker maker) {
    check(maker, 1e-6, (mesh, random) -> {});
  }

  /** Every corner off by up to a thousandth of the radius. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("bodies")
  void wallsWithNoiseGiveThemWithinHalfAPerCent(String name, Maker maker) {
    check(
        maker,
        5e-3,
        (mesh, random) -> {
          double size = Math.abs(mesh.points.get(0)[0]);
          for (double[] p : mesh.points) {
            for (int k = 0; k < 3; k++) {
              p[k] += 1e-3 * size * (2 * random.nextDouble() - 1);
            }
          }
        });
  }

  private static void placeAnywhere(MeshText mesh, Random random) {
    Vec axis = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    mesh.placed(
        new double[] {axis.x(), axis.y(), axis.z()},
        6 * random.nextDouble(),
        new double[] {300 * random.nextDouble(), -40, 12});
  }

  private static void check(Maker maker, double share, BiConsumer<MeshText, Random> damage) {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 20; i++) {
      double radius = 0.01 + 0.3 * random.nextDouble();
      double length = radius * (5 + 20 * random.nextDouble());
      MeshText mesh = new MeshText();
      maker.make(mesh, radius, length, random);
      damage.accept(mesh, random);
      placeAnywhere(mesh, random);
      Shape shape = TinyModel.item(TinyModel.METRES, SEGMENT, mesh.surface(100));

      assertThat(shape.form()).as(shape.problems().toString()).isEqualTo(Form.STRAIGHT);
      assertThat(section(shape).value()).isInstanceOf(Section.Round.class);
      assertThat(section(shape).how()).isEqualTo(How.MESH);
      assertThat(section(shape).value().largestSideM())
          .isCloseTo(2 * radius, within(2 * radius * share));
      assertThat(lengthM(shape).value()).isCloseTo(length, within(length * share));
      assertThat(shape.ends()).hasSize(2);
    }
  }

  /** Flat walls whose ends are torn, so that no end loop lies in a plane. */
  @Test
  void wallsOfATornRectangularDuctGiveItsSidesAndLength() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 20; i++) {
      double width = 0.1 + 0.6 * random.nextDouble();
      double height = width * (0.3 + 0.6 * random.nextDouble());
      double length = 3 * width * (1 + random.nextDouble());
      MeshText mesh = new MeshText();
      int[] from = rectangle(mesh, 0, width, height);
      int[] to = rectangle(mesh, length, width, height);
      for (int k = 1; k < from.length; k += 2) {
        mesh.points.get(from[k])[2] += length * (0.01 + 0.09 * random.nextDouble());
        mesh.points.get(to[k])[2] -= length * (0.01 + 0.09 * random.nextDouble());
      }
      mesh.wall(from, to);
      placeAnywhere(mesh, random);
      Shape shape = TinyModel.item(TinyModel.METRES, SEGMENT, mesh.surface(100));

      assertThat(shape.form()).as(shape.problems().toString()).isEqualTo(Form.STRAIGHT);
      Section.Rectangular found = (Section.Rectangular) section(shape).value();
      assertThat(found.largestSideM()).isCloseTo(width, within(1e-6));
      assertThat(found.perimeterM()).isCloseTo(2 * (width + height), within(2e-6));
      assertThat(lengthM(shape).value()).isCloseTo(length, within(1e-6));
    }
  }

  /** A hollow disk in whole millimetres, whose ends are not flat: it only lies in a box. */
  @Test
  void disksAreNoFlatDucts() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      double length = 0.04 + 0.04 * random.nextDouble();
      MeshText mesh = new MeshText();
      int[] from = ring(mesh, 0, 0.2, 24);
      int[] to = ring(mesh, length, 0.2, 24);
      int[] boreFrom = ring(mesh, 0, 0.2 - 0.05 * random.nextDouble(), 24);
      int[] boreTo = ring(mesh, length, 0.2 - 0.05 * random.nextDouble(), 24);
      mesh.tube(from, to);
      mesh.tube(boreFrom, boreTo);
      placeAnywhere(mesh, random);
      for (double[] p : mesh.points) {
        for (int k = 0; k < 3; k++) {
          p[k] = Math.round(p[k] * 1000) / 1000.0;
        }
      }
      Shape shape = TinyModel.item(TinyModel.METRES, ShapeHints.NONE, mesh.triangulated(100));

      assertThat(shape.ends())
          .as("disk %d", i)
          .noneMatch(end -> end.section() instanceof Section.Rectangular);
    }
  }

  /** Four edges lie on a circle, each with a corner at both ends. */
  @Test
  void squareDuctBetweenItsPortsIsNotRound() {
    MeshText mesh = new MeshText();
    mesh.tube(square(mesh, 0), square(mesh, 2));
    Shape shape =
        TinyModel.item(
            TinyModel.METRES,
            TinyModel.segmentWithPorts(new Point(0, 0, 0), new Point(0, 0, 2)),
            mesh.triangulated(100));

    Section.Rectangular found = (Section.Rectangular) section(shape).value();
    assertThat(found.widthM()).isCloseTo(0.3, within(1e-9));
    assertThat(found.heightM()).isCloseTo(0.3, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-9));
  }

  private static int[] square(MeshText mesh, double z) {
    return mesh.rectangle(
        new double[] {0, 0, z}, new double[] {0.15, 0, 0}, new double[] {0, 0.15, 0});
  }

  /** Corners and the points a third along each side. */
  private static int[] rectangle(MeshText mesh, double z, double width, double height) {
    double[][] corners = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
    int[] ring = new int[12];
    for (int i = 0; i < ring.length; i++) {
      double[] a = corners[i / 3];
      double[] b = corners[(i / 3 + 1) % 4];
      double share = i % 3 / 3.0;
      ring[i] = mesh.points.size();
      mesh.points.add(
          new double[] {
            width / 2 * (a[0] + share * (b[0] - a[0])),
            height / 2 * (a[1] + share * (b[1] - a[1])),
            z
          });
    }
    return ring;
  }
}
