package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
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

/** Closed rectangular ducts of faces that are cut at a slant are as long as their axis. */
class CutDuctTest {

  private static final long SEED = 20_261_127;
  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);

  /** A plane through the axis, which the corners beside it lie before or behind. */
  private record Cut(double atM, double perWidth, double perHeight) {

    /** Up to 55 degrees off square, in any direction. */
    static Cut anyAt(double atM, Random random) {
      double slope = Math.tan(Math.toRadians(1 + 54 * random.nextDouble()));
      double turn = 2 * Math.PI * random.nextDouble();
      return new Cut(atM, slope * Math.cos(turn), slope * Math.sin(turn));
    }
  }

  /** A duct along z, with or without a bore. */
  private record Duct(MeshText mesh, double widthM, double heightM, double lengthM) {

    static Duct any(Random random) {
      double widthM = 0.2 + 0.6 * random.nextDouble();
      double heightM = widthM * (0.3 + 0.6 * random.nextDouble());
      return new Duct(new MeshText(), widthM, heightM, 3 * widthM * (1 + random.nextDouble()));
    }

    private int[] rim(Cut cut, double wallM) {
      int[] rim =
          mesh.rectangle(
              new double[3],
              new double[] {widthM / 2 - wallM, 0, 0},
              new double[] {0, heightM / 2 - wallM, 0});
      for (int corner : rim) {
        double[] p = mesh.points.get(corner);
        p[2] = cut.atM + cut.perWidth * p[0] + cut.perHeight * p[1];
      }
      return rim;
    }

    void solid(Cut start, Cut end) {
      mesh.tube(rim(start, 0), rim(end, 0));
    }

    void bored(Cut start, Cut end, double wallM) {
      int[] from = rim(start, 0);
      int[] to = rim(end, 0);
      int[] boreFrom = rim(start, wallM);
      int[] boreTo = rim(end, wallM);
      mesh.wall(from, to).wall(to, boreTo).wall(boreTo, boreFrom).wall(boreFrom, from);
    }

    void placeAnywhere(Random random) {
      Vec axis =
          new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
      mesh.placed(
          new double[] {axis.x(), axis.y(), axis.z()},
          6 * random.nextDouble(),
          new double[] {300 * random.nextDouble(), -40, 12});
    }

    void check(String body) {
      Shape shape = TinyModel.item(TinyModel.METRES, SEGMENT, body);
      assertThat(shape.form()).as(shape.problems().toString()).isEqualTo(Form.STRAIGHT);
      assertThat(section(shape).how()).isEqualTo(How.MESH);
      Section.Rectangular found = (Section.Rectangular) section(shape).value();
      assertThat(found.largestSideM()).isCloseTo(widthM, within(1e-6));
      assertThat(found.smallestSideM()).isCloseTo(heightM, within(1e-6));
      assertThat(Figures.lengthM(shape).value()).isCloseTo(lengthM, within(1e-6));
      assertThat(shape.ends()).hasSize(2);
    }
  }

  static Stream<Arguments> cuts() {
    BiFunction<Duct, Random, List<Cut>> one =
        (duct, random) -> List.of(Cut.anyAt(0, random), new Cut(duct.lengthM, 0, 0));
    BiFunction<Duct, Random, List<Cut>> two =
        (duct, random) -> List.of(Cut.anyAt(0, random), Cut.anyAt(duct.lengthM, random));
    BiFunction<Duct, Random, List<Cut>> parallel =
        (duct, random) -> {
          Cut cut = Cut.anyAt(0, random);
          return List.of(cut, new Cut(duct.lengthM, cut.perWidth, cut.perHeight));
        };
    BiFunction<Duct, Random, List<Cut>> trapezium =
        (duct, random) -> {
          double slope = Math.tan(Math.toRadians(5 + 45 * random.nextDouble()));
          return List.of(new Cut(0, slope, 0), new Cut(duct.lengthM, -slope, 0));
        };
    return Stream.of(
        Arguments.of("one end", one),
        Arguments.of("both ends", two),
        Arguments.of("parallel", parallel),
        Arguments.of("trapezium", trapezium));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cuts")
  void aCutDuctIsAsLongAsItsAxis(String name, BiFunction<Duct, Random, List<Cut>> cuts) {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      Duct duct = Duct.any(random);
      List<Cut> both = cuts.apply(duct, random);
      if (i % 2 == 0) {
        duct.solid(both.get(0), both.get(1));
      } else {
        duct.bored(both.get(0), both.get(1), 0.002 + 0.02 * random.nextDouble());
      }
      duct.placeAnywhere(random);
      duct.check(i % 3 == 0 ? duct.mesh.faceted(100) : duct.mesh.triangulated(100));
    }
  }

  /** Its slanted side is no cut of a duct that runs across it. */
  @Test
  void aDuctThatTapersIsNone() {
    MeshText mesh = new MeshText();
    int[] from = mesh.rectangle(new double[3], new double[] {0.2, 0, 0}, new double[] {0, 0.1, 0});
    int[] to =
        mesh.rectangle(
            new double[] {0, 0, 0.9}, new double[] {0.15, 0, 0}, new double[] {0, 0.08, 0});
    mesh.tube(from, to);
    Shape shape = TinyModel.item(TinyModel.METRES, SEGMENT, mesh.faceted(100));

    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(shape.ends())
        .extracting(end -> end.section().largestSideM())
        .satisfiesExactlyInAnyOrder(
            sideM -> assertThat(sideM).isCloseTo(0.4, within(1e-6)),
            sideM -> assertThat(sideM).isCloseTo(0.3, within(1e-6)));
  }
}
