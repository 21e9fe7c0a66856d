package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Bodies whose flat sides look like ends: without ports nothing tells which are. */
class FlatSidesTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};

  private final MeshText mesh = new MeshText();

  /** Across the x axis. */
  private int[] rectangle(double x, double z, double width, double height) {
    return mesh.rectangle(
        new double[] {x, 0, z}, new double[] {0, width / 2, 0}, new double[] {0, 0, height / 2});
  }

  /** 0.4 x 0.25 to 0.4 x 0.2, level on top. */
  private void flatTopped() {
    mesh.tube(rectangle(0, 0, 0.4, 0.25), rectangle(0.5, 0.025, 0.4, 0.2));
  }

  /** A duct of 0.4 x 0.25 and a round branch of 0.16 that stands in it, each closed. */
  private void roundTap() {
    mesh.tube(rectangle(-0.3, 0, 0.4, 0.25), rectangle(0.3, 0, 0.4, 0.25));
    mesh.tube(
        mesh.ring(new double[] {0, 0, 0}, X, Y, 0.08, 24),
        mesh.ring(new double[] {0, 0, 0.3}, X, Y, 0.08, 24));
  }

  private Shape measured(Point... ports) {
    return TinyModel.item(
        TinyModel.METRES, new ShapeHints(List.of(ports), null, false), mesh.triangulated(100));
  }

  private static void isUntold(Shape shape, int ends) {
    assertThat(shape.form()).isEqualTo(Form.UNKNOWN);
    assertThat(shape.section()).isNull();
    assertThat(shape.lengthM()).isNull();
    assertThat(shape.ends()).hasSize(ends);
    assertThat(shape.problems()).containsExactly("flat sides of the body look like ends too");
  }

  /** A duct of 0.4 x 0.3 and branches of 0.5 x 0.1 that begin in its middle, as many as told. */
  private void branches(int count) {
    mesh.tube(rectangle(-0.4, 0, 0.4, 0.3), rectangle(0.4, 0, 0.4, 0.3));
    double[] halfWidth = {0.25, 0, 0};
    double[] halfHeight = {0, 0, 0.05};
    for (int i = 0; i < count; i++) {
      mesh.tube(
          mesh.rectangle(new double[] {0, 0, 0}, halfWidth, halfHeight),
          mesh.rectangle(new double[] {0, i == 0 ? 0.3 : -0.3, 0}, halfWidth, halfHeight));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void endsOfBranchesAreNoSidesOfOneBox(int count) {
    branches(count);
    isUntold(measured(), 6);
  }

  /** The sides of the branch, 0.6 x 0.1, lie behind the ends of the run on its axis. */
  @Test
  void sideOfABranchIsNoEndOfItsRun() {
    branches(2);
    Shape cross =
        measured(
            new Point(-0.4, 0, 0),
            new Point(0.4, 0, 0),
            new Point(0, -0.3, 0),
            new Point(0, 0.3, 0));
    assertThat(cross.form()).isEqualTo(Form.CROSS);
    assertThat(cross.ends().get(0).section().smallestSideM()).isCloseTo(0.3, within(1e-9));
    assertThat(cross.ends().get(0).section().largestSideM()).isCloseTo(0.4, within(1e-9));
    assertThat(cross.ends().get(2).section().smallestSideM()).isCloseTo(0.1, within(1e-9));
    assertThat(cross.ends().get(2).section().largestSideM()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void topAndBottomOfATransitionAreNotToldFromItsEnds() {
    flatTopped();
    isUntold(measured(), 4);
  }

  @Test
  void portsTellTheEndsOfATransition() {
    flatTopped();
    Shape shape = measured(new Point(0, 0, 0), new Point(0.5, 0, 0.025));
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(((Section.Rectangular) section(shape).value()).heightM())
        .isCloseTo(0.25, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.5, within(1e-9));
  }

  /** 1.15 x 0.4 to 1.1 x 0.35: each side fills 98 % of its box. */
  @Test
  void endsOfATransitionThatTapersAllRoundAreToldFromItsSides() {
    for (double lengthM : new double[] {0.06, 0.6}) {
      mesh.points.clear();
      mesh.faces.clear();
      mesh.tube(rectangle(0, 0, 1.15, 0.4), rectangle(lengthM, 0, 1.1, 0.35));
      isTransition(measured(), lengthM);
    }
  }

  private static void isTransition(Shape shape, double lengthM) {
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-9));
    assertThat(shape.ends()).hasSize(2);
    isOfSize(shape.ends().get(0).section(), 1.15, 0.4);
    isOfSize(shape.ends().get(1).section(), 1.1, 0.35);
  }

  private static void isOfSize(Section section, double widthM, double heightM) {
    assertThat(section.largestSideM()).isCloseTo(widthM, within(1e-9));
    assertThat(section.smallestSideM()).isCloseTo(heightM, within(1e-9));
  }

  /** Whole ones and the upper half of one, as families write what they show by condition. */
  @Test
  void surfaceModelOfBodiesInOneAnotherIsTheLargestOfThem() {
    mesh.tube(rectangle(0, 0, 1.15, 0.4), rectangle(0.06, 0, 1.1, 0.35));
    FlatSidesTest half = new FlatSidesTest();
    half.mesh.tube(half.rectangle(0, 0.1, 1.15, 0.2), half.rectangle(0.06, 0.0875, 1.1, 0.175));
    String model = MeshText.faceBased(100, List.of(mesh, mesh, mesh, half.mesh));
    Shape shape = TinyModel.item(TinyModel.METRES, ShapeHints.NONE, model);
    isTransition(shape, 0.06);
    assertThat(shape.problems())
        .containsExactly("4 items in the body, the largest of them measured");
  }

  /** The bottom of the duct is not the other end of the branch that stands on its top. */
  @Test
  void roundBranchOfARectangularDuctIsNoPieceByItself() {
    roundTap();
    isUntold(measured(), 6);
  }

  @Test
  void portsTellTheEndsOfARectangularDuctWithARoundBranch() {
    roundTap();
    Shape shape = measured(new Point(-0.3, 0, 0), new Point(0.3, 0, 0), new Point(0, 0, 0.3));
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(lengthM(shape).value()).isCloseTo(0.6, within(1e-9));
    assertThat(shape.ends().get(2).section()).isInstanceOf(Section.Round.class);
  }

  @Test
  void pentagonalBoxHasNeitherARoundNorARectangularSection() {
    mesh.tube(
        mesh.ring(new double[] {0, 0, 0}, X, Y, 0.15, 5),
        mesh.ring(new double[] {0, 0, 2}, X, Y, 0.15, 5));
    ShapeHints segment = new ShapeHints(List.of(), null, true);
    isUntold(TinyModel.item(TinyModel.METRES, segment, mesh.triangulated(100)), 5);
  }

  /** Measured across its own slant it would be 0.4 x 0.25 times the cosine of its slope. */
  @Test
  void offsetThatIsShearedHasTheSizeOfItsEnds() {
    mesh.tube(rectangle(0, 0, 0.4, 0.25), rectangle(0.5, 0.1, 0.4, 0.25));
    Shape shape = measured(new Point(0, 0, 0), new Point(0.5, 0, 0.1));
    assertThat(shape.form()).isEqualTo(Form.OFFSET);
    Section.Rectangular section = (Section.Rectangular) section(shape).value();
    assertThat(section.widthM()).isCloseTo(0.4, within(1e-9));
    assertThat(section.heightM()).isCloseTo(0.25, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(Math.hypot(0.5, 0.1), within(1e-9));
  }

  /** Flat oval of 0.4 x 0.25 across the x axis. */
  private int[] oval(double x, double z) {
    int[] ring = new int[18];
    for (int i = 0; i < ring.length; i++) {
      double turned = Math.PI * (i % 9) / 8 - Math.PI / 2;
      double side = i < 9 ? 1 : -1;
      ring[i] = mesh.points.size();
      mesh.points.add(
          new double[] {
            x, side * (0.075 + 0.125 * Math.cos(turned)), z + side * 0.125 * Math.sin(turned)
          });
    }
    return ring;
  }

  @Test
  void ovalOffsetThatIsShearedHasTheSizeOfItsEnds() {
    mesh.tube(oval(0, 0), oval(0.5, 0.1));
    Shape shape = measured();
    assertThat(shape.form()).isEqualTo(Form.OFFSET);
    Section.Oval section = (Section.Oval) section(shape).value();
    assertThat(section.widthM()).isCloseTo(0.4, within(1e-9));
    assertThat(section.heightM()).isCloseTo(0.25, within(1e-9));
  }

  /** The slanted side of the shoe reaches the mouth of the branch, which has no collar. */
  @Test
  void portsTellTheMouthOfAShoe() {
    double[][] side = {
      {-0.4, -0.2},
      {0.4, -0.2},
      {0.4, 0.2},
      {0.25, 0.2},
      {0.15, 0.3},
      {-0.15, 0.3},
      {-0.15, 0.2},
      {-0.4, 0.2}
    };
    int[][] flanks = new int[2][side.length];
    for (int flank = 0; flank < 2; flank++) {
      for (int i = 0; i < side.length; i++) {
        flanks[flank][i] = mesh.points.size();
        mesh.points.add(new double[] {side[i][0], side[i][1], flank == 0 ? -0.125 : 0.125});
      }
    }
    mesh.tube(flanks);
    Shape tee =
        TinyModel.item(
            TinyModel.METRES,
            new ShapeHints(
                List.of(new Point(-0.4, 0, 0), new Point(0.4, 0, 0), new Point(0, 0.3, 0)),
                null,
                false),
            mesh.faceted(100));
    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(lengthM(tee).value()).isCloseTo(0.8, within(1e-9));
    assertThat(tee.ends().get(2).section().largestSideM()).isCloseTo(0.3, within(1e-9));
  }
}
