package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.fitting.pattern.ConePiece;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;
import org.lagwright.takeoff.fitting.pattern.NotchedTube;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.Pattern;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.fitting.pattern.SaddleHole;
import org.lagwright.takeoff.fitting.pattern.SquareToRound;
import org.lagwright.takeoff.fitting.pattern.TorusGore;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** What holds for every pattern, on dimensions drawn at random; the seed stands in the name. */
class GeneratedPatternsTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  private static double between(Random random, double from, double to) {
    return from + random.nextDouble() * (to - from);
  }

  private static Outline outline(Random random, double r) {
    return random.nextBoolean()
        ? new Outline.Circle(r)
        : new Outline.Stadium(2 * r * between(random, 0.5, 1), 2 * r * between(random, 0.5, 1));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void mitreClosesAndIsSymmetricalAndKeepsItsAreaWhereverTheSeamIs(long seed) {
    Random random = new Random(seed);
    double r = between(random, 0.02, 0.3);
    EndCut mitre = EndCut.mitre(between(random, 0.01, 0.7));
    double shift = random.nextInt(24) / 24.0;
    Outline outer = outline(random, r);
    TubePiece piece = new TubePiece(outer, r / 5, 3 * r, EndCut.SQUARE, mitre, List.of(), 0);
    TubePiece shifted = new TubePiece(outer, r / 5, 3 * r, EndCut.SQUARE, mitre, List.of(), shift);

    var stations = piece.pattern().ordinates();
    assertThat(stations.get(24).upperM()).isCloseTo(stations.get(0).upperM(), within(1e-12));
    for (int i = 0; i <= 12; i++) {
      assertThat(stations.get(24 - i).upperM()).isCloseTo(stations.get(i).upperM(), within(1e-12));
    }
    double drawnM2 = piece.pattern().curves().get(0).areaM2();
    assertThat(shifted.areaM2()).isEqualTo(piece.areaM2());
    assertThat(shifted.pattern().curves().get(0).areaM2())
        .isCloseTo(drawnM2, within(1e-3 * drawnM2));
    assertThat(drawnM2).isCloseTo(piece.areaM2(), within(1e-3 * drawnM2));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void drawnAreaIsTheComputedArea(long seed) {
    Random random = new Random(seed);
    for (PieceShape shape : shapes(random)) {
      Pattern pattern = shape.pattern();
      double drawnM2 = drawnM2(pattern);

      assertThat(drawnM2)
          .as(shape.toString())
          .isCloseTo(shape.areaM2(), within(2e-3 * shape.areaM2()));
    }
  }

  /** The first cut is the outline; other closed cuts are taken out of it. */
  private static double drawnM2(Pattern pattern) {
    List<Curve> cuts =
        pattern.curves().stream().filter(c -> c.role() == Curve.Role.CUT && c.closed()).toList();
    return cuts.get(0).areaM2() - cuts.stream().skip(1).mapToDouble(Curve::areaM2).sum();
  }

  private static List<PieceShape> shapes(Random random) {
    double a = between(random, 0.03, 0.3);
    double b = a * between(random, 0.2, 1);
    double e = between(random, 0, a - b);
    double beta = between(random, 0.6, Math.PI / 2);
    double bend = a * between(random, 1.2, 3);
    EndCut saddle = new EndCut.Saddle(a, e, beta);
    SaddleHole hole = new SaddleHole(a, b, e, beta, 4 * a, 0);
    return List.of(
        new TubePiece(new Outline.Circle(b), b / 4, 6 * a, EndCut.SQUARE, saddle, List.of(), 0.25),
        new TubePiece(
            new Outline.Circle(a), a / 4, 9 * a, EndCut.SQUARE, EndCut.SQUARE, List.of(hole), 0.5),
        new NotchedTube(new Outline.Circle(a), a / 4, bend, beta, 1 + random.nextInt(4), 0.1),
        new TorusGore(a, a / 4, bend, beta / 4),
        new ConePiece(a, b * 0.99, between(random, 0.05, 0.5), e, 0.02),
        new ConePiece(a, b * 0.99, between(random, 0.05, 0.5), 0, 0.02),
        new SquareToRound(2.2 * a, 2.5 * a, b, between(random, 0.1, 0.5), e / 2, e / 3, 0.02));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void manyMitredPiecesComeToTheTorus(long seed) {
    Random random = new Random(seed);
    double r = between(random, 0.02, 0.2);
    double s = between(random, 0.01, 0.05);
    BendCover bend =
        new BendCover(
            (r + s) * between(random, 1.1, 4),
            between(random, 0.2, Math.PI / 2),
            new Outline.Circle(r));
    LayerOn on = Given.layer(LayerForm.TUBE, s);
    double torusM2 = bend.smooth(on, 0.001).outerAreaM2();
    double before = Double.POSITIVE_INFINITY;
    for (int pieces : new int[] {3, 6, 12, 100, 1000}) {
      double over = bend.mitred(on, pieces, 0).outerAreaM2() / torusM2 - 1;
      assertThat(over).isBetween(0.0, before);
      before = over;
    }
    assertThat(before).isLessThan(1e-6);
    assertThat(bend.smooth(on, 0.001).volumeM3())
        .isCloseTo(bend.mitred(on, 1000, 0).volumeM3(), within(1e-6));
    assertThat(bend.notched(on, 4).outerAreaM2())
        .isCloseTo(bend.mitred(on, 4, 0).outerAreaM2(), within(1e-12));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void lateralAtARightAngleIsTheSquareTee(long seed) {
    Random random = new Random(seed);
    double r = between(random, 0.02, 0.2);
    LayerOn on = Given.layer(LayerForm.TUBE, between(random, 0.01, 0.05));
    double leg = 3 * r + 0.2;
    BranchCover square = new BranchCover(r, r, leg, leg, leg, Math.PI / 2, 0);
    BranchCover nearly = new BranchCover(r, r, leg, leg, leg, Math.PI / 2 - 1e-7, 0);
    JunctionCover wye =
        new JunctionCover(
            r,
            List.of(
                new JunctionCover.Leg(Math.PI, leg),
                new JunctionCover.Leg(Math.PI / 2, leg),
                new JunctionCover.Leg(-Math.PI / 2, leg)));

    double expected = square.notched(on, 0.01).outerAreaM2();
    assertThat(nearly.threePieces(on, 0.01).outerAreaM2()).isCloseTo(expected, within(1e-6));
    assertThat(wye.cover(on, 0.01).outerAreaM2()).isCloseTo(expected, within(1e-9));
    assertThat(square.saddled(on, 0.01).outerAreaM2()).isCloseTo(expected, within(1e-6));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void holeOfAThinBranchIsItsCrossSection(long seed) {
    Random random = new Random(seed);
    double a = between(random, 0.05, 0.5);
    double b = a / 1000;
    double circle = Math.PI * b * b;

    assertThat(new SaddleHole(a, b, 0, Math.PI / 2, 0, 0).areaM2())
        .isCloseTo(circle, within(1e-5 * circle));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void twoLayersHoldAsMuchAsOneOfTheirThickness(long seed) {
    Random random = new Random(seed);
    double r = between(random, 0.02, 0.2);
    double s1 = between(random, 0.01, 0.05);
    double s2 = between(random, 0.01, 0.05);
    BranchCover tee = new BranchCover(r, r, 1, 1, 1, Math.PI / 2, 0);
    double inner = tee.threePieces(Given.layer(LayerForm.TUBE, s1), 0).volumeM3();
    LayerOn outerLayer = new LayerOn(Given.layer(LayerForm.SHEET, s2).layer(), 2, s1);
    double outer = tee.threePieces(outerLayer, 0).volumeM3();
    double whole = tee.threePieces(Given.layer(LayerForm.TUBE, s1 + s2), 0).volumeM3();

    assertThat(inner + outer).isCloseTo(whole, within(1e-6 * whole));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void eccentricConeWithoutOffsetIsTheSector(long seed) {
    Random random = new Random(seed);
    double r1 = between(random, 0.05, 0.3);
    double r2 = r1 * between(random, 0.1, 0.95);
    double h = between(random, 0.05, 0.5);
    double slant = Math.hypot(h, r1 - r2);
    ConePiece straight = new ConePiece(r1, r2, h, 0, 0.01);
    ConePiece nearly = new ConePiece(r1, r2, h, 1e-9, 0.01);

    assertThat(straight.areaM2()).isCloseTo(Math.PI * (r1 + r2) * slant, within(1e-9));
    assertThat(nearly.areaM2()).isCloseTo(straight.areaM2(), within(1e-8));
    assertThat(straight.angleRad()).isCloseTo(2 * Math.PI * (r1 - r2) / slant, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void outlineIsStridedByArcAndStaysOnItsParallel(long seed) {
    Random random = new Random(seed);
    double r = between(random, 0.05, 0.3);
    Outline outline = outline(random, r);
    int parts = 4096;
    double sum =
        IntStream.range(0, parts)
            .mapToDouble(
                i -> {
                  FlatPoint from = outline.at(outline.girthM() * i / parts, 0);
                  return from.distanceM(
                      outline.at(outline.girthM() * (i + 1) / parts % outline.girthM(), 0));
                })
            .sum();
    double s = between(random, 0, outline.girthM());

    assertThat(sum).isCloseTo(outline.girthM(), within(1e-4 * outline.girthM()));
    assertThat(outline.at(s, 0).distanceM(outline.at(s, 0.01))).isCloseTo(0.01, within(1e-12));
  }
}
