package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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
import org.lagwright.ifc.model.Section;

/**
 * Round bends whose ends tell nothing, damaged in the ways meshes are, anywhere: angle, radius, arc
 * and diameter are those of the torus that their corners lie on.
 */
class BendWallsTest {

  private static final long SEED = 20_261_126;
  private static final int[] ANGLES_DEG = {15, 22, 30, 45, 60, 90, 120, 150, 180};
  private static final int[] CORNERS = {6, 7, 12, 24, 48};

  /** What is done to the rings of a bend to make a mesh of them. */
  private interface Maker {
    void make(MeshText mesh, Torus torus, int[][] rings, Random random);
  }

  /** A bend of some size from (0, 0, 0) along x towards y. */
  private record Torus(double radius, double bendRadius, double angleRad, int corners, int steps) {
    int[][] rings(MeshText mesh, double tubeRadius) {
      int[][] rings = new int[steps + 1][];
      for (int i = 0; i <= steps; i++) {
        rings[i] = ring(mesh, angleRad * i / steps, tubeRadius);
      }
      return rings;
    }

    int[] ring(MeshText mesh, double t, double tubeRadius) {
      double[] centre = {bendRadius * Math.sin(t), bendRadius * (1 - Math.cos(t)), 0};
      double[] radial = {-Math.sin(t), Math.cos(t), 0};
      return mesh.ring(centre, radial, new double[] {0, 0, 1}, tubeRadius, corners);
    }

    /** A circle about an end, wider than the pipe, out of it by a share of the radius. */
    int[] flange(MeshText mesh, boolean last, double share, double width) {
      double t = last ? angleRad : 0;
      double[] radial = {-Math.sin(t), Math.cos(t), 0};
      double[] centre = beyond(last, share);
      return mesh.ring(centre, radial, new double[] {0, 0, 1}, width * radius, 24);
    }

    /** A point beyond an end, out of it by a share of the radius. */
    double[] beyond(boolean last, double share) {
      double t = last ? angleRad : 0;
      double by = (last ? 1 : -1) * share * radius;
      return new double[] {
        bendRadius * Math.sin(t) + by * Math.cos(t),
        bendRadius * (1 - Math.cos(t)) + by * Math.sin(t),
        0
      };
    }

    /** Turns a point about the axis of the bend. */
    void turn(double[] p, double rad) {
      Vec turned = new Vec(p[0], p[1] - bendRadius, p[2]).turned(Vec.Z, rad);
      p[0] = turned.x();
      p[1] = turned.y() + bendRadius;
      p[2] = turned.z();
    }
  }

  private static void wall(MeshText mesh, int[][] rings) {
    for (int i = 1; i < rings.length; i++) {
      mesh.wall(rings[i - 1], rings[i]);
    }
  }

  private static void open(MeshText mesh, Torus torus, int[][] rings, Random random) {
    wall(mesh, rings);
  }

  private static void capped(MeshText mesh, Torus torus, int[][] rings, Random random) {
    mesh.tube(rings);
  }

  /** Every other corner of the ends stands back by up to six tenths of a step. */
  private static void torn(MeshText mesh, Torus torus, int[][] rings, Random random) {
    wall(mesh, rings);
    double step = torus.angleRad / torus.steps;
    for (int i = 1; i < torus.corners; i += 2) {
      torus.turn(mesh.points.get(rings[0][i]), step * (0.3 + 0.3 * random.nextDouble()));
      torus.turn(mesh.points.get(rings[torus.steps][i]), -step * (0.3 + 0.3 * random.nextDouble()));
    }
  }

  /** Cones of triangles welded to both ends. */
  private static void pointed(MeshText mesh, Torus torus, int[][] rings, Random random) {
    wall(mesh, rings);
    for (boolean last : new boolean[] {false, true}) {
      int tip = mesh.points.size();
      mesh.points.add(torus.beyond(last, 0.3 + 0.3 * random.nextDouble()));
      int[] rim = rings[last ? torus.steps : 0];
      for (int i = 0; i < rim.length; i++) {
        mesh.faces.add(new int[] {rim[i], rim[(i + 1) % rim.length], tip});
      }
    }
  }

  /** A third of the faces next to both ends is missing. */
  private static void broken(MeshText mesh, Torus torus, int[][] rings, Random random) {
    wall(mesh, rings);
    int before = torus.steps - 1;
    for (int i = 0; i < torus.corners; i += 3) {
      int[] first = {rings[0][i], rings[1][i]};
      int[] last = {rings[before][i], rings[torus.steps][i]};
      mesh.faces.removeIf(f -> isAt(f, first) || isAt(f, last));
    }
  }

  private static boolean isAt(int[] face, int[] edge) {
    return face[0] == edge[0] && face[3] == edge[1];
  }

  /** Pipe and jacket around it, both torn; of slight bends one wall only, as two tell nothing. */
  private static void doubleWall(MeshText mesh, Torus torus, int[][] rings, Random random) {
    torn(mesh, torus, rings, random);
    if (torus.angleRad > 0.5) {
      torn(mesh, torus, torus.rings(mesh, 0.6 * torus.radius), random);
    }
  }

  static Stream<Arguments> bodies() {
    List<Arguments> bodies = new ArrayList<>();
    bodies.add(Arguments.of("open", true, (Maker) BendWallsTest::open));
    bodies.add(Arguments.of("capped", true, (Maker) BendWallsTest::capped));
    bodies.add(Arguments.of("torn ends", false, (Maker) BendWallsTest::torn));
    bodies.add(Arguments.of("pointed ends", false, (Maker) BendWallsTest::pointed));
    bodies.add(Arguments.of("broken ends", false, (Maker) BendWallsTest::broken));
    bodies.add(Arguments.of("double wall", false, (Maker) BendWallsTest::doubleWall));
    return bodies.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bodies")
  void bendIsMeasuredWhateverItsEndsAre(String name, boolean endsTold, Maker maker) {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (Torus torus : bends(random)) {
      Shape shape = shape(maker, torus, 0, ShapeHints.NONE, random);
      check(shape, torus, new Tolerance(1e-6, 0.003, 1e-4));
      assertThat(isByWalls(shape)).as(torus.toString()).isNotEqualTo(endsTold);
    }
  }

  /**
   * Every corner off by up to a thousandth of the radius, so that fans of triangles are no caps.
   */
  @ParameterizedTest(name = "{0}")
  @MethodSource("bodies")
  void bendWithNoiseIsMeasuredWithinAFewPerCent(String name, boolean endsTold, Maker maker) {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (Torus torus : bends(random)) {
      Shape shape = shape(maker, torus, 1e-3, ShapeHints.NONE, random);
      check(shape, torus, new Tolerance(1e-3, 2.5, torus.angleRad > 0.5 ? 0.02 : 0.06));
    }
  }

  /** A segment is expected to be straight, but need not be. */
  @Test
  void bentSegmentIsABendToo() {
    Random random = new Random(SEED);
    Torus torus = new Torus(0.05, 0.2, Math.PI / 2, 12, 8);
    ShapeHints segment = new ShapeHints(List.of(), null, true);
    Shape shape = shape(BendWallsTest::torn, torus, 0, segment, random);

    check(shape, torus, new Tolerance(1e-6, 0.003, 1e-4));
    assertThat(angleDeg(shape).evidence().path())
        .isIn(
            "IfcShellBasedSurfaceModel walls of a bend", "IfcTriangulatedFaceSet walls of a bend");
    assertThat(angleDeg(shape).evidence().raw()).contains(" faces on an arc, normals spread over ");
  }

  /**
   * Flanges hide the ends of the pipe: its size and radius are those of the wall between them, as
   * long as that has more surface than the flanges.
   */
  @Test
  void pipeBetweenFlangesIsMeasuredByItsWalls() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (Torus torus : bends(random)) {
      if (torus.bendRadius * torus.angleRad < 12 * torus.radius) {
        continue;
      }
      double thick = 0.3 * torus.radius;
      MeshText mesh = new MeshText();
      wall(mesh, torus.rings(mesh, torus.radius));
      for (boolean last : new boolean[] {false, true}) {
        mesh.tube(torus.flange(mesh, last, 0, 1.8), torus.flange(mesh, last, 0.3, 1.8));
      }
      placeAnywhere(mesh, random);
      Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));

      assertThat(shape.form()).as(torus.toString()).isEqualTo(Form.BEND);
      near(section(shape).value().largestSideM(), 2 * torus.radius, 1e-4, torus);
      near(angleDeg(shape).value(), Math.toDegrees(torus.angleRad), 1e-4, torus);
      near(bendRadiusM(shape).value(), torus.bendRadius, 1e-3, torus);
      near(lengthM(shape).value(), torus.bendRadius * torus.angleRad + 2 * thick, 1e-3, torus);
      assertThat(shape.ends())
          .allSatisfy(end -> near(end.section().largestSideM(), 2 * torus.radius, 1e-4, torus));
    }
  }

  /** Short tangents lie so near to the arc that their corners pass for corners of it. */
  @Test
  void bendWhoseCornersReachFartherThanItsWallsTurnSaysSo() {
    Torus torus = new Torus(0.05, 0.075, Math.PI / 2, 12, 6);
    MeshText mesh = new MeshText();
    int[][] rings = torus.rings(mesh, torus.radius);
    int[][] all = new int[torus.steps + 3][];
    System.arraycopy(rings, 0, all, 1, rings.length);
    all[0] = tangent(mesh, torus, rings[0], false);
    all[torus.steps + 2] = tangent(mesh, torus, rings[torus.steps], true);
    wall(mesh, all);
    for (boolean last : new boolean[] {false, true}) {
      int tip = mesh.points.size();
      mesh.points.add(torus.beyond(last, 0.5));
      int[] rim = all[last ? torus.steps + 2 : 0];
      for (int i = 0; i < rim.length; i++) {
        mesh.faces.add(new int[] {rim[i], rim[(i + 1) % rim.length], tip});
      }
    }
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));

    assertThat(angleDeg(shape).value()).isGreaterThan(100);
    assertThat(shape.problems()).anyMatch(problem -> problem.contains("angle is less sure"));
  }

  /** The corners of an end once more, out of it by a quarter of the radius. */
  private static int[] tangent(MeshText mesh, Torus torus, int[] rim, boolean last) {
    double[] from = torus.beyond(last, 0);
    double[] to = torus.beyond(last, 0.25);
    int[] out = new int[rim.length];
    for (int i = 0; i < rim.length; i++) {
      double[] p = mesh.points.get(rim[i]);
      out[i] = mesh.points.size();
      mesh.points.add(new double[] {p[0] + to[0] - from[0], p[1] + to[1] - from[1], p[2]});
    }
    return out;
  }

  /** What is straight stays so, whether or not it is said to be a segment. */
  @Test
  void straightPieceWithTornEndsIsNoBend() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 40; i++) {
      double radius = 0.01 + 0.2 * random.nextDouble();
      double length = radius * (3 + 20 * random.nextDouble());
      int corners = 12 + random.nextInt(20);
      int[][] rings = new int[2 + random.nextInt(6)][];
      MeshText mesh = new MeshText();
      for (int r = 0; r < rings.length; r++) {
        double[] centre = {length * r / (rings.length - 1), 0, 0};
        rings[r] =
            mesh.ring(centre, new double[] {0, 1, 0}, new double[] {0, 0, 1}, radius, corners);
      }
      wall(mesh, rings);
      for (int c = 1; c < corners; c += 2) {
        mesh.points.get(rings[0][c])[0] += 0.05 * length * random.nextDouble();
        mesh.points.get(rings[rings.length - 1][c])[0] -= 0.05 * length * random.nextDouble();
      }
      noise(mesh, 1e-3 * radius, random);
      placeAnywhere(mesh, random);
      Shape shape = TinyModel.item(TinyModel.METRES, mesh.surface(100));

      assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
      assertThat(section(shape).value().largestSideM())
          .isCloseTo(2 * radius, within(5e-3 * radius));
    }
  }

  /** Parts of a sphere and of a cone lie on no tube, and a whole ring has no ends. */
  @Test
  void bodiesThatAreNoBendsAreNotTakenForOne() {
    Random random = new Random(SEED);
    MeshText ring = new MeshText();
    Torus whole = new Torus(0.05, 0.2, 2 * Math.PI, 12, 24);
    int[][] rings = whole.rings(ring, whole.radius);
    rings[24] = rings[0];
    wall(ring, rings);
    MeshText ball = new MeshText();
    for (int i = 1; i < 10; i++) {
      double t = Math.PI * i / 10;
      double[] centre = {0, 0, 0.1 * Math.cos(t)};
      rings[i] =
          ball.ring(centre, new double[] {1, 0, 0}, new double[] {0, 1, 0}, 0.1 * Math.sin(t), 16);
      if (i > 1) {
        ball.wall(rings[i - 1], rings[i]);
      }
    }
    for (int c = 0; c < 16; c += 2) {
      ball.points.get(rings[1][c])[2] += 0.004;
      ball.points.get(rings[9][c])[2] -= 0.004;
    }
    for (MeshText mesh : List.of(ring, ball)) {
      placeAnywhere(mesh, random);
      assertThat(TinyModel.item(TinyModel.METRES, mesh.surface(100)).form())
          .isNotEqualTo(Form.BEND);
    }
  }

  /** Bends of all angles and polygons, with steps of at most 15 degrees. */
  private static List<Torus> bends(Random random) {
    List<Torus> bends = new ArrayList<>();
    for (int angleDeg : ANGLES_DEG) {
      for (int corners : CORNERS) {
        double radius = 0.01 + 0.2 * random.nextDouble();
        double bendRadius = radius * (1.5 + 5 * random.nextDouble());
        int steps = 3 + angleDeg / 15 + random.nextInt(4);
        bends.add(new Torus(radius, bendRadius, Math.toRadians(angleDeg), corners, steps));
      }
    }
    return bends;
  }

  private static Shape shape(
      Maker maker, Torus torus, double noise, ShapeHints hints, Random random) {
    MeshText mesh = new MeshText();
    maker.make(mesh, torus, torus.rings(mesh, torus.radius), random);
    noise(mesh, noise * torus.radius, random);
    placeAnywhere(mesh, random);
    String text = random.nextBoolean() ? mesh.surface(100) : mesh.triangulated(100);
    return TinyModel.item(TinyModel.METRES, hints, text);
  }

  private static void noise(MeshText mesh, double mostM, Random random) {
    for (double[] p : mesh.points) {
      for (int k = 0; k < 3; k++) {
        p[k] += mostM * (2 * random.nextDouble() - 1);
      }
    }
  }

  private static void placeAnywhere(MeshText mesh, Random random) {
    Vec axis = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    mesh.placed(
        new double[] {axis.x(), axis.y(), axis.z()},
        6 * random.nextDouble(),
        new double[] {300 * random.nextDouble(), -40, 12});
  }

  private static boolean isByWalls(Shape shape) {
    return angleDeg(shape).evidence().path().endsWith("walls of a bend");
  }

  /** Shares of diameter and of all lengths, and degrees. */
  private record Tolerance(double diameter, double angleDeg, double length) {}

  private static void check(Shape shape, Torus torus, Tolerance tolerance) {
    assertThat(shape.form()).as(torus + " " + shape.problems()).isEqualTo(Form.BEND);
    assertThat(section(shape).value()).as(torus.toString()).isInstanceOf(Section.Round.class);
    assertThat(section(shape).how()).isEqualTo(How.MESH);
    near(section(shape).value().largestSideM(), 2 * torus.radius, tolerance.diameter, torus);
    assertThat(angleDeg(shape).value())
        .as(torus.toString())
        .isCloseTo(Math.toDegrees(torus.angleRad), within(tolerance.angleDeg));
    near(bendRadiusM(shape).value(), torus.bendRadius, tolerance.length, torus);
    near(lengthM(shape).value(), torus.bendRadius * torus.angleRad, tolerance.length, torus);
    double chord = 2 * torus.bendRadius * Math.sin(torus.angleRad / 2);
    assertThat(shape.ends()).hasSize(2);
    double apart = shape.ends().get(0).centreM().distanceM(shape.ends().get(1).centreM());
    near(apart, chord, tolerance.length, torus);
  }

  private static void near(double found, double expected, double share, Torus torus) {
    assertThat(found).as(torus.toString()).isCloseTo(expected, within(share * expected));
  }
}
