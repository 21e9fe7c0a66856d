package org.lagwright.takeoff.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.heat.AmbientAir;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.Cover;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.moistair.MoistAir;
import org.lagwright.takeoff.pack.DataTable;

/**
 * Properties that hold for any conditions. Each run draws a new seed and prints it; to repeat a
 * run, set the system property {@code thickness.seed}.
 */
class GeneratedThicknessTest {

  private static final long SEED =
      Long.getLong("thickness.seed", new Random().nextInt(Integer.MAX_VALUE));

  private final ThicknessChooser chooser = ThicknessChooser.bundled();

  @BeforeAll
  static void printSeed() {
    System.out.println("thickness.seed=" + SEED);
  }

  @RepeatedTest(300)
  void moreHumidityNeverNeedsLess(RepetitionInfo repetition) {
    Random random = new Random(SEED + repetition.getCurrentRepetition());
    Conditions drier = conditions(random);
    double humidityPct =
        drier.relativeHumidityPct() + random.nextDouble() * (100 - drier.relativeHumidityPct());

    assertNotThinner(drier, with(drier, mediumC(drier), humidityPct));
  }

  @RepeatedTest(300)
  void aColderMediumNeverNeedsLess(RepetitionInfo repetition) {
    Random random = new Random(SEED + 1000 + repetition.getCurrentRepetition());
    Conditions warmer = conditions(random);
    double colderC = mediumC(warmer) - 20 * random.nextDouble();

    assertNotThinner(warmer, with(warmer, colderC, warmer.relativeHumidityPct()));
  }

  @RepeatedTest(300)
  void computedThicknessHoldsTheSurfaceAtTheLimit(RepetitionInfo repetition) {
    Random random = new Random(SEED + 2000 + repetition.getCurrentRepetition());
    Conditions conditions = conditions(random);
    double thicknessM = condensationM(conditions);
    double limitC =
        MoistAir.dewPointC(conditions.airC(), conditions.relativeHumidityPct())
            + conditions.marginK();

    if (thicknessM > 1e-4 && Double.isFinite(thicknessM)) {
      assertThat(surfaceC(conditions, thicknessM)).isGreaterThan(limitC - 1e-5);
      assertThat(surfaceC(conditions, thicknessM - 1e-4)).isLessThan(limitC);
    }
  }

  @RepeatedTest(300)
  void stockIsNeverThinnerThanRequired(RepetitionInfo repetition) {
    Random random = new Random(SEED + 3000 + repetition.getCurrentRepetition());
    ThicknessDecision decision = chooser.decide(conditions(random));

    if (!decision.layers().isEmpty()) {
      assertThat(decision.totalM()).isGreaterThanOrEqualTo(decision.requiredM() - 1e-9);
      assertThat(decision.demands())
          .allSatisfy(
              d -> assertThat(d.thicknessM()).isLessThanOrEqualTo(decision.totalM() + 1e-9));
    }
  }

  /** Pipes of 20 mm and more lie above the critical radius of any insulation here. */
  @RepeatedTest(100)
  void moreInsulationNeverLetsMoreHeatThrough(RepetitionInfo repetition) {
    Random random = new Random(SEED + 4000 + repetition.getCurrentRepetition());
    double outsideM = between(random, 0.02, 0.6);
    Exposure exposure =
        new Exposure(
            24, 50, between(random, -10, 30), between(random, 0, 6), 0.9, stillAir(random), null);
    double mediumC = between(random, -30, 110);
    double last = Double.POSITIVE_INFINITY;
    for (double thicknessM : List.of(0.006, 0.013, 0.025, 0.05, 0.09)) {
      Proof proof =
          Objects.requireNonNull(
              chooser.decide(pipe(outsideM, mediumC, exposure, thicknessM)).proof());
      assertThat(Math.abs(proof.insulatedWPerM()))
          .as("%s mm round %s m", thicknessM * 1000, outsideM)
          .isLessThan(last);
      last = Math.abs(proof.insulatedWPerM()) + 1e-9;
    }
  }

  /** A stock of 25 mm walls only builds 50 mm of two, which does what one of 50 mm does. */
  @RepeatedTest(50)
  void twiceTwentyFiveMillimetresAreFifty(RepetitionInfo repetition) {
    Random random = new Random(SEED + 5000 + repetition.getCurrentRepetition());
    double outsideM = between(random, 0.02, 0.3);
    double mediumC = between(random, -30, 110);
    Conditions fifty = pipe(outsideM, mediumC, Exposure.still(24, 50, 0.9), 0.05);
    ThicknessDecision two = stocked("tube,25,500").decide(fifty);
    ThicknessDecision one = stocked("tube,50,500").decide(fifty);

    assertThat(two.layersInWords()).isEqualTo("25 mm tube + 25 mm tube");
    assertThat(one.layersInWords()).isEqualTo("50 mm tube");
    assertThat(Objects.requireNonNull(two.proof()).insulatedWPerM())
        .isCloseTo(Objects.requireNonNull(one.proof()).insulatedWPerM(), within(1e-9));
    assertThat(Objects.requireNonNull(two.proof()).surfaceC())
        .isCloseTo(Objects.requireNonNull(one.proof()).surfaceC(), within(1e-9));
  }

  private static ThicknessChooser stocked(String row) {
    DataTable table =
        DataTable.of(
            "stock.csv",
            List.of(
                new DataTable.Line(1, List.of("material", "form", "thicknessMm", "largestBoreMm")),
                new DataTable.Line(2, List.of(("fef_nbr," + row).split(",", -1)))));
    return new ThicknessChooser(ThicknessPacks.bundled().withCatalogue(table));
  }

  private static Conditions pipe(
      double outsideM, double mediumC, Exposure exposure, double thicknessM) {
    return new Conditions(
        new Section.Round(outsideM),
        false,
        null,
        mediumC,
        exposure,
        0,
        "fef_nbr",
        ThicknessChooser.NO_ENERGY_RULE,
        thicknessM,
        "indoor",
        "heating",
        Asked.NOTHING);
  }

  private void assertNotThinner(Conditions less, Conditions more) {
    assertThat(condensationM(more))
        .as("%s%n%s", less, more)
        .isGreaterThanOrEqualTo(condensationM(less) - 1e-9);
  }

  private double condensationM(Conditions conditions) {
    return chooser.decide(conditions).demands().get(0).thicknessM();
  }

  private static double mediumC(Conditions conditions) {
    return Objects.requireNonNull(conditions.condensationC());
  }

  /** The coldest of the surfaces under this thickness, computed forwards. */
  private double surfaceC(Conditions conditions, double thicknessM) {
    MaterialFamily material = chooser.materials().family(conditions.materialId());
    AmbientAir air = new Surround(conditions, material).stillAir();
    return Bodies.surfaces(conditions.section()).stream()
        .mapToDouble(body -> surfaceC(air, body, thicknessM, conditions, material))
        .min()
        .orElseThrow();
  }

  private static double surfaceC(
      AmbientAir air,
      Body body,
      double thicknessM,
      Conditions conditions,
      MaterialFamily material) {
    return air.insulated(
            body,
            Cover.of(thicknessM, (a, b) -> material.conductivityBetween(a, b).wPerMK()),
            mediumC(conditions))
        .surfaceC();
  }

  private Conditions conditions(Random random) {
    List<MaterialFamily> families = chooser.materials().families();
    boolean duct = random.nextBoolean();
    return new Conditions(
        section(random, duct),
        duct,
        between(random, -30, 20),
        between(random, -30, 200),
        new Exposure(
            between(random, 10, 40),
            between(random, 30, 97),
            between(random, -10, 30),
            random.nextBoolean() ? 0 : between(random, 0, 10),
            between(random, 0.05, 0.95),
            stillAir(random),
            null),
        between(random, 0, 1),
        families.get(random.nextInt(families.size())).id(),
        random.nextBoolean() ? "us-ashrae-90.1-pipe" : ThicknessChooser.NO_ENERGY_RULE,
        random.nextBoolean() ? between(random, 0.006, 0.1) : null,
        "indoor",
        "chilled",
        Asked.NOTHING);
  }

  private static StillAir stillAir(Random random) {
    StillAir.Source[] sources = StillAir.Source.values();
    return new StillAir(sources[random.nextInt(sources.length)], random.nextBoolean());
  }

  private static Section section(Random random, boolean duct) {
    if (!duct || random.nextInt(3) == 0) {
      return new Section.Round(between(random, 0.01, 1.2));
    }
    double widthM = between(random, 0.1, 2);
    double heightM = between(random, 0.1, 2);
    return random.nextBoolean()
        ? new Section.Rectangular(widthM, heightM)
        : new Section.Oval(widthM, heightM);
  }

  private static double between(Random random, double from, double to) {
    return from + random.nextDouble() * (to - from);
  }

  private static Conditions with(Conditions c, double condensationC, double humidityPct) {
    return new Conditions(
        c.section(),
        c.duct(),
        condensationC,
        c.energyC(),
        c.exposure().at(humidityPct),
        c.marginK(),
        c.materialId(),
        c.energyRuleId(),
        c.userMinimumM(),
        c.location(),
        c.family(),
        c.asked());
  }
}
