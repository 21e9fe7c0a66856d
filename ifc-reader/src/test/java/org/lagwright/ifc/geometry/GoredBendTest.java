package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;

/** Round bends of straight pieces, and others whose corners do not tell the arc by themselves. */
class GoredBendTest {

  private static final double RADIUS = 0.08;
  private static final double[] Z = {0, 0, 1};

  /**
   * From the x axis towards the y axis; the pieces touch the arc from outside, so the joints lie
   * {@code R / cos(joint / 2)} from its centre.
   */
  private static int[][] rings(
      MeshText mesh, double radius, double arcM, double turn, int pieces, double tangentM) {
    double joint = turn / (pieces - 1);
    int[][] rings = new int[pieces + 1][];
    for (int i = 0; i <= pieces; i++) {
      boolean first = i == 0;
      boolean last = i == pieces;
      double at = first ? 0 : last ? turn : (i - 0.5) * joint;
      double slant = first || last ? 1 : 1 / Math.cos(joint / 2);
      double beyond = first ? -tangentM : last ? tangentM : 0;
      double[] centre = {
        arcM * slant * Math.sin(at) + beyond * Math.cos(at),
        arcM * (1 - slant * Math.cos(at)) + beyond * Math.sin(at),
        0
      };
      double[] radial = {-slant * Math.sin(at), slant * Math.cos(at), 0};
      rings[i] = mesh.ring(centre, radial, Z, radius, 24);
    }
    return rings;
  }

  private static Shape measured(MeshText mesh) {
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(section(shape).value().largestSideM()).isCloseTo(2 * RADIUS, within(1e-6));
    return shape;
  }

  @ParameterizedTest
  @CsvSource({"3,90,0.24", "3,90,0.16", "3,60,0.24", "3,45,0.16", "4,90,0.16", "5,90,0.24"})
  void bendOfPiecesHasTheRadiusOfTheArcThatTheyTouch(int pieces, double degrees, double arcM) {
    double turn = Math.toRadians(degrees);
    MeshText mesh = new MeshText();
    mesh.tube(rings(mesh, RADIUS, arcM, turn, pieces, 0));
    Shape shape = measured(mesh);
    assertThat(angleDeg(shape).value()).isCloseTo(degrees, within(1e-4));
    assertThat(bendRadiusM(shape).value()).isCloseTo(arcM, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(arcM * turn, within(1e-6));
  }

  /** Triangles of the next piece that lie level run along the first one too. */
  @Test
  void slightBendOfPiecesHasTheRadiusOfItsArc() {
    MeshText mesh = new MeshText();
    mesh.tube(rings(mesh, RADIUS, 0.24, Math.toRadians(30), 3, 0));
    assertThat(bendRadiusM(measured(mesh)).value()).isCloseTo(0.24, within(1e-6));
  }

  /** To tenths of a millimetre: the arc may not reach beyond the ends for that. */
  @Test
  void roundedBendOfPiecesHasTheRadiusOfItsArc() {
    MeshText mesh = new MeshText();
    mesh.tube(rings(mesh, RADIUS, 0.16, Math.toRadians(45), 3, 0));
    for (double[] point : mesh.points) {
      for (int i = 0; i < 3; i++) {
        point[i] = Math.rint(point[i] * 1e4) / 1e4;
      }
    }
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.16, within(1e-3));
  }

  /** Low faces next to the joints lean by degrees where corners are rounded. */
  @ParameterizedTest
  @CsvSource({"3,60,0.25", "3,90,0.24", "4,90,0.24"})
  void roundedBendWithLowFacesHasTheRadiusOfItsArc(int pieces, double degrees, double arcM) {
    MeshText mesh = new MeshText();
    int[][] joints = rings(mesh, RADIUS, arcM, Math.toRadians(degrees), pieces, 0);
    int[][] all = new int[2 * pieces][];
    for (int i = 0; i < pieces; i++) {
      all[2 * i] = joints[i];
      all[2 * i + 1] = between(mesh, joints[i], joints[i + 1]);
    }
    all[2 * pieces - 1] = joints[pieces];
    mesh.tube(all);
    for (double[] point : mesh.points) {
      for (int i = 0; i < 3; i++) {
        point[i] = Math.rint(point[i] * 1e4) / 1e4;
      }
    }
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(bendRadiusM(shape).value()).isCloseTo(arcM, within(3e-3));
  }

  /** A ring on a piece, close to its second joint. */
  private static int[] between(MeshText mesh, int[] from, int[] to) {
    int[] ring = new int[from.length];
    for (int i = 0; i < ring.length; i++) {
      double[] a = mesh.points.get(from[i]);
      double[] b = mesh.points.get(to[i]);
      ring[i] = mesh.points.size();
      mesh.points.add(
          new double[] {a[0] + 0.98 * (b[0] - a[0]), a[1] + 0.98 * (b[1] - a[1]), a[2]});
    }
    return ring;
  }

  @Test
  void longerEndPiecesAreTangents() {
    MeshText mesh = new MeshText();
    mesh.tube(rings(mesh, RADIUS, 0.2, Math.PI / 2, 3, 0.1));
    Shape shape = measured(mesh);
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.2, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(0.2 * Math.PI / 2 + 0.2, within(1e-6));
  }

  @Test
  void hollowBendOfPiecesIsMeasuredByItsOutside() {
    MeshText mesh = new MeshText();
    int[][] outer = rings(mesh, RADIUS, 0.24, Math.PI / 2, 3, 0);
    int[][] inner = rings(mesh, 0.9 * RADIUS, 0.24, Math.PI / 2, 3, 0);
    mesh.wall(outer[0], inner[0]).wall(outer[3], inner[3]);
    for (int i = 1; i < outer.length; i++) {
      mesh.wall(outer[i - 1], outer[i]).wall(inner[i - 1], inner[i]);
    }
    assertThat(bendRadiusM(measured(mesh)).value()).isCloseTo(0.24, within(1e-6));
  }

  /** The ends of the pieces lie within the body, on its joints. */
  @Test
  void piecesThatAreBodiesOfTheirOwnMakeTheSameBend() {
    MeshText mesh = new MeshText();
    int[][] rings = rings(mesh, RADIUS, 0.24, Math.PI / 2, 4, 0);
    for (int i = 1; i < rings.length; i++) {
      mesh.tube(rings[i - 1], rings[i]);
    }
    Shape shape = measured(mesh);
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.24, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(0.24 * Math.PI / 2, within(1e-6));
  }

  /** Both legs of {@code R tan(turn / 2)} meet in one corner. */
  @ParameterizedTest
  @ValueSource(ints = {30, 45, 90})
  void bendOfTwoPiecesHasALengthButNoRadius(int degrees) {
    double turn = Math.toRadians(degrees);
    MeshText mesh = new MeshText();
    mesh.tube(rings(mesh, RADIUS, 0.24, turn, 2, 0));
    Shape shape = measured(mesh);
    assertThat(shape.bendRadiusM()).isNull();
    assertThat(lengthM(shape).value()).isCloseTo(0.48 * Math.tan(turn / 2), within(1e-6));
    assertThat(shape.problems()).hasSize(1);
  }

  /** Circles at both ends and nothing between: across the chord they would be ovals. */
  @ParameterizedTest
  @ValueSource(ints = {45, 90})
  void bendDrawnInOneStepIsNoPipeCutAtASlant(int degrees) {
    MeshText mesh = new MeshText().bend(RADIUS, 0.24, Math.toRadians(degrees), 16, 1);
    Shape shape = measured(mesh);
    assertThat(angleDeg(shape).value()).isCloseTo(degrees, within(1e-4));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.24, within(1e-6));
  }

  /** Corners on the legs fit every smaller arc too; a little larger ones hardly miss them. */
  @Test
  void arcDrawnInOneStepBetweenTangentsKeepsItsRadius() {
    MeshText mesh = new MeshText();
    double[] x = {1, 0, 0};
    double[] y = {0, 1, 0};
    mesh.tube(
        mesh.ring(new double[] {-0.3, 0, 0}, y, Z, RADIUS, 24),
        mesh.ring(new double[] {0, 0, 0}, y, Z, RADIUS, 24),
        mesh.ring(new double[] {0.24, 0.24, 0}, x, new double[] {0, 0, -1}, RADIUS, 24),
        mesh.ring(new double[] {0.24, 0.64, 0}, x, new double[] {0, 0, -1}, RADIUS, 24));
    Shape shape = measured(mesh);
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.24, within(1e-3));
    assertThat(lengthM(shape).value()).isCloseTo(0.24 * Math.PI / 2 + 0.7, within(1e-3));
  }

  /** Rings of an arc of 0.16 m in equal steps between two tangents of 60 mm. */
  private static int[][] arc(MeshText mesh, double radius, double turn, int steps, int corners) {
    double arcM = 0.16;
    double tangentM = 0.06;
    int[][] rings = new int[steps + 3][];
    for (int i = 0; i < rings.length; i++) {
      double at = turn * Math.max(0, Math.min(steps, i - 1)) / steps;
      double beyond = i == 0 ? -tangentM : i == rings.length - 1 ? tangentM : 0;
      double[] centre = {
        arcM * Math.sin(at) + beyond * Math.cos(at),
        arcM * (1 - Math.cos(at)) + beyond * Math.sin(at),
        0
      };
      rings[i] =
          mesh.ring(centre, new double[] {-Math.sin(at), Math.cos(at), 0}, Z, radius, corners);
    }
    return rings;
  }

  /** The legs and chords of an arc lie as some pieces of a bend with twice as many joints do. */
  @ParameterizedTest
  @CsvSource({"2,30,24", "3,30,64", "2,45,24", "3,60,24"})
  void coarseArcBetweenTangentsIsNoBendOfPieces(int steps, double degrees, int corners) {
    double turn = Math.toRadians(degrees);
    MeshText mesh = new MeshText();
    mesh.tube(arc(mesh, RADIUS, turn, steps, corners));
    Shape shape = measured(mesh);
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.16, within(1e-4));
    assertThat(lengthM(shape).value()).isCloseTo(0.16 * turn + 0.12, within(1e-4));
  }

  /** The corners of a bore stand off any arc by the wall. */
  @ParameterizedTest
  @CsvSource({"5,45", "8,90", "4,30"})
  void hollowArcBetweenTangentsKeepsItsRadius(int steps, double degrees) {
    double turn = Math.toRadians(degrees);
    MeshText mesh = new MeshText();
    int[][] outer = arc(mesh, RADIUS, turn, steps, 24);
    int[][] inner = arc(mesh, RADIUS - 0.003, turn, steps, 24);
    mesh.wall(outer[0], inner[0]).wall(outer[steps + 2], inner[steps + 2]);
    for (int i = 1; i < outer.length; i++) {
      mesh.wall(outer[i - 1], outer[i]).wall(inner[i - 1], inner[i]);
    }
    Shape shape = measured(mesh);
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.16, within(1e-4));
    assertThat(lengthM(shape).value()).isCloseTo(0.16 * turn + 0.12, within(1e-4));
  }

  /** One skin: a wider piece of 80 mm, 20 mm of pipe, the arc, and the same back. */
  private static MeshText socketed(double arcM, double turn, double wider) {
    int steps = 8;
    int[][] rings = new int[steps + 7][];
    MeshText mesh = new MeshText();
    double[] beyond = {0.1, 0.02, 0.02};
    double[] size = {wider, wider, 1};
    for (int i = 0; i < rings.length; i++) {
      int place = i < 3 ? i : i > rings.length - 4 ? rings.length - 1 - i : -1;
      double at = turn * Math.max(0, Math.min(steps, i - 3)) / steps;
      double off = place < 0 ? 0 : (i < 3 ? -1 : 1) * beyond[place];
      double radius = RADIUS * (place < 0 ? 1 : size[place]);
      double[] centre = {
        arcM * Math.sin(at) + off * Math.cos(at), arcM * (1 - Math.cos(at)) + off * Math.sin(at), 0
      };
      rings[i] = mesh.ring(centre, new double[] {-Math.sin(at), Math.cos(at), 0}, Z, radius, 24);
    }
    return mesh.tube(rings);
  }

  /** Sockets and flanges hide how large the pipe is, and make legs longer than its arc. */
  @ParameterizedTest
  @CsvSource({"90,0.12,1.25", "45,0.12,1.25", "30,0.2,1.1", "90,0.24,1.9"})
  void bendBetweenSocketsHasTheRadiusOfItsPipe(double degrees, double arcM, double wider) {
    double turn = Math.toRadians(degrees);
    Shape shape = measured(socketed(arcM, turn, wider));
    assertThat(bendRadiusM(shape).value()).isCloseTo(arcM, within(1e-3));
    assertThat(lengthM(shape).value()).isCloseTo(arcM * turn + 0.2, within(1e-3));
  }
}
