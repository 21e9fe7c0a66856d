package org.lagwright.takeoff.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.lagwright.takeoff.heat.Body.Cylinder;
import org.lagwright.takeoff.heat.Body.Flat;
import org.lagwright.takeoff.heat.Cover.Sheath;

class CoverTest {

  private static final long SEED =
      Long.getLong("cover.seed", new Random().nextInt(Integer.MAX_VALUE));

  private static final ConductivityCurve WOOL = ConductivityCurve.quadratic(0.032, 1e-4, 3e-7);

  @BeforeAll
  static void printSeed() {
    System.out.println("cover.seed=" + SEED);
  }

  /**
   * 25 + 25 = 50 on pipes and flat surfaces; the form of ISO 12241 for rectangular ducts is no sum
   * of layers. The inner side between layers of one material changes nothing.
   */
  @RepeatedTest(100)
  void twoLayersOfOneMaterialAreOneThickLayer(RepetitionInfo repetition) {
    Random random = new Random(SEED + repetition.getCurrentRepetition());
    Body body = body(random);
    double oneM = 0.005 + 0.1 * random.nextDouble();
    double otherM = 0.005 + 0.1 * random.nextDouble();
    double insideC = -50 + 400 * random.nextDouble();
    // A wrapped curve is no equal one, so the layers stay two and are iterated.
    ConductivityCurve sameWool = (a, b) -> WOOL.meanWPerMK(a, b);
    Cover two = new Cover(List.of(new Sheath(oneM, WOOL), new Sheath(otherM, sameWool)));

    assertThat(two.sheaths()).hasSize(2);
    assertThat(two.conducted(body, insideC, 20))
        .isCloseTo(Cover.of(oneM + otherM, WOOL).conducted(body, insideC, 20), within(1e-6));
  }

  @Test
  void layersOfOneCurveAreMerged() {
    Cover cover = new Cover(List.of(new Sheath(0.025, WOOL), new Sheath(0.025, WOOL)));

    assertThat(cover.sheaths()).containsExactly(new Sheath(0.05, WOOL));
  }

  /** Above the critical radius every millimetre more lets less through. */
  @RepeatedTest(100)
  void moreInsulationNeverRaisesTheHeatFlowAboveTheCriticalRadius(RepetitionInfo repetition) {
    Random random = new Random(SEED + 1000 + repetition.getCurrentRepetition());
    double diameterM = 0.02 + 0.6 * random.nextDouble();
    AmbientAir air = new AmbientAir(20, 0.9);
    double insideC = -40 + 340 * random.nextDouble();
    double thinM = 0.01 + 0.1 * random.nextDouble();
    Body pipe = new Cylinder(diameterM);

    HeatFlow thin = air.insulated(pipe, Cover.of(thinM, WOOL), insideC);
    HeatFlow thick = air.insulated(pipe, Cover.of(thinM + 0.02, WOOL), insideC);

    double critical =
        CriticalRadius.ofPipeM(WOOL.meanWPerMK(insideC, 20), thin.coefficientWPerM2K());
    assertThat(diameterM / 2 + thinM).isGreaterThan(critical);
    assertThat(Math.abs(thick.flow())).isLessThan(Math.abs(thin.flow()) + 1e-9);
  }

  /** Sachdeva, example 3.14 turned to curves: constant conductivities give the published flow. */
  @Test
  void constantCurvesGiveThePublishedFlow() {
    Cover cover =
        new Cover(
            List.of(
                new Sheath(0.005, ConductivityCurve.constant(50)),
                new Sheath(0.05, ConductivityCurve.constant(0.06)),
                new Sheath(0.05, ConductivityCurve.constant(0.12))));

    assertThat(cover.conducted(new Cylinder(0.1), 250, 50)).isCloseTo(89.6, within(0.18));
  }

  @Test
  void thicknessForAHeatFlowKeepsIt() {
    AmbientAir air = new AmbientAir(20, 0.9);
    Body pipe = new Cylinder(0.0603);
    double coverM = air.thicknessForFlowM(pipe, 80, 15, WOOL, 1);

    assertThat(air.insulated(pipe, Cover.of(coverM, WOOL), 80).flow()).isCloseTo(15, within(1e-4));
    assertThat(air.thicknessForFlowM(pipe, 80, 1000, WOOL, 1)).isZero();
    assertThat(air.thicknessForFlowM(pipe, 80, 0.1, WOOL, 1)).isInfinite();
  }

  @Test
  void thicknessAgainstBurnsHoldsTheSurfaceAtTheLimit() {
    AmbientAir air = new AmbientAir(30, 0.26);
    Body pipe = new Cylinder(0.0603);
    double coverM = air.thicknessForSurfaceM(pipe, 250, 55, WOOL.meanWPerMK(250, 55), 1);

    assertThat(air.insulated(pipe, Cover.of(coverM, WOOL), 250).surfaceC())
        .isCloseTo(55, within(1e-4));
    assertThat(air.thicknessForSurfaceM(pipe, 50, 55, 0.04, 1)).isZero();
    assertThat(air.thicknessForSurfaceM(pipe, 250, 30, 0.04, 1)).isInfinite();
  }

  @Test
  void coverWithoutLayersIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Cover(List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> Cover.of(0, WOOL));
  }

  private static Body body(Random random) {
    return random.nextBoolean()
        ? new Cylinder(0.01 + random.nextDouble())
        : new Flat(0.1 + random.nextDouble());
  }
}
