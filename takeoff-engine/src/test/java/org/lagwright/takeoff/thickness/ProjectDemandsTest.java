package org.lagwright.takeoff.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.thickness.Asked.Frost;
import org.lagwright.takeoff.thickness.Asked.InsulationPrice;
import org.lagwright.takeoff.thickness.Asked.Specified;
import org.lagwright.takeoff.thickness.Demand.Kind;

class ProjectDemandsTest {

  private static final EnergyTariff GAS = new EnergyTariff(2500, 0.10, 0.9, 0.2);

  private final ThicknessChooser chooser = ThicknessChooser.bundled();

  @Test
  void heatLossLimitIsKeptByTheThicknessItNeeds() {
    ThicknessDecision decision = hot(80, asked(12.0, null, null, null, null, null));
    Demand demand = demand(decision, Kind.HEAT_LOSS);

    assertThat(flowWPerM(demand.thicknessM(), 80)).isCloseTo(12, within(1e-3));
    assertThat(Math.abs(proof(decision).insulatedWPerM())).isLessThanOrEqualTo(12);
    assertThat(demand.figures()).containsEntry("largest heat flow W/m", "12.0");
  }

  @Test
  void hotSurfaceStaysBelowTheTouchLimit() {
    ThicknessDecision decision = hot(180, asked(null, 50.0, null, null, null, null));

    assertThat(demand(decision, Kind.TOUCH).thicknessM()).isPositive();
    assertThat(proof(decision).surfaceC()).isLessThanOrEqualTo(50);
    assertThat(demand(hot(45, asked(null, 50.0, null, null, null, null)), Kind.TOUCH).thicknessM())
        .isZero();
  }

  /** Twice the time needs more; a mild frost for a short time needs nothing. */
  @Test
  void longerFrostNeedsMore() {
    double shortM = frostM(new Frost(-10, 5, 8, 0.25));
    double longM = frostM(new Frost(-10, 5, 16, 0.25));

    assertThat(shortM).isPositive().isLessThan(longM);
    assertThat(frostM(new Frost(-1, 10, 0.5, 0.25))).isZero();
    assertThat(frostM(new Frost(-40, 0, 900, 0.01))).isInfinite();
  }

  @Test
  void leastCostThicknessIsDearerOnBothSides() {
    InsulationPrice price = new InsulationPrice(400, 20, 0.05, 20);
    Demand demand = demand(hot(80, asked(null, null, null, GAS, price, null)), Kind.ECONOMIC);

    assertThat(demand.thicknessM()).isBetween(0.01, 0.2);
    double bestM = demand.thicknessM();
    assertThat(costPerYear(price, bestM)).isLessThan(costPerYear(price, bestM - 0.005));
    assertThat(costPerYear(price, bestM)).isLessThan(costPerYear(price, bestM + 0.005));
    assertThat(costPerYear(price, bestM))
        .isCloseTo(
            Double.parseDouble(
                Objects.requireNonNull(demand.figures().get("least cost per metre and year"))),
            within(0.006));
  }

  @Test
  void specificationGovernsWhereItIsTheLargestAndNamesItsClause() {
    ThicknessDecision decision =
        hot(80, asked(null, null, null, null, null, new Specified(0.07, "spec.xlsx, row 12")));

    assertThat(decision.governing()).isSameAs(demand(decision, Kind.SPECIFICATION));
    assertThat(demand(decision, Kind.SPECIFICATION).source()).isEqualTo("spec.xlsx, row 12");
    assertThat(decision.totalM()).isCloseTo(0.07, within(1e-12));
  }

  @Test
  void savingFollowsFromHoursPriceEfficiencyAndEmissions() {
    ThicknessDecision decision =
        hot(80, asked(null, null, null, GAS, null, new Specified(0.05, "x")));
    Proof proof = proof(decision);
    double savedW = proof.bareWPerM() - proof.insulatedWPerM();
    Proof.Saving saving = Objects.requireNonNull(proof.saving());

    assertThat(saving.heatKWh()).isCloseTo(savedW * 2.5, within(1e-9));
    assertThat(saving.energyKWh()).isCloseTo(savedW * 2.5 / 0.9, within(1e-9));
    assertThat(saving.cost()).isCloseTo(savedW * 2.5 / 0.9 * 0.10, within(1e-9));
    assertThat(saving.co2Kg()).isCloseTo(savedW * 2.5 / 0.9 * 0.2, within(1e-9));
  }

  /** A wire of 1 mm under foam of 6 mm: by hand 12.6 against 13.4 m K/W bare. */
  @Test
  void insulationBelowTheCriticalRadiusIsSeen() {
    Asked thin = asked(null, null, null, null, null, new Specified(0.006, "x"));
    ThicknessDecision wire =
        chooser.decide(
            new Conditions(
                new Section.Round(0.001),
                false,
                null,
                60.0,
                Exposure.still(20, 50, 0.9),
                0,
                "fef_nbr",
                "none",
                null,
                "indoor",
                "heating",
                thin));

    assertThat(proof(wire).raisesHeatFlow()).isTrue();
    assertThat(proof(hot(80, thin)).raisesHeatFlow()).isFalse();
  }

  @Test
  void proofHoldsTheDewPointOfTheAir() {
    ThicknessDecision decision =
        chooser.decide(
            new Conditions(
                new Section.Round(0.0603),
                false,
                6.0,
                6.0,
                Exposure.still(26, 80, 0.9),
                0,
                "fef_nbr",
                "none",
                null,
                "indoor",
                "chilled",
                Asked.NOTHING));

    assertThat(proof(decision).dewPointC()).isCloseTo(22.28, within(0.01));
    assertThat(proof(decision).surfaceC()).isGreaterThanOrEqualTo(22.28);
    assertThat(proof(decision).saving()).isNull();
  }

  @Test
  void hundredThousandElementsOfTwoHundredConditionsAreComputedTwoHundredTimes() {
    ThicknessBenchmark benchmark = new ThicknessBenchmark();

    assertThat(benchmark.decideAll(100_000)).isEqualTo(100_000);
    assertThat(benchmark.computed()).isEqualTo(ThicknessBenchmark.CONDITIONS);
  }

  @Test
  void impossibleRequestsAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Frost(1, 5, 8, 0.25));
    assertThatIllegalArgumentException().isThrownBy(() -> new Frost(-10, 5, 8, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new InsulationPrice(0, 0, 0.05, 20));
    assertThatIllegalArgumentException().isThrownBy(() -> new Specified(0, "x"));
    assertThatIllegalArgumentException().isThrownBy(() -> new EnergyTariff(9000, 0.1, 1, 0));
  }

  private double frostM(Frost frost) {
    return demand(hot(10, asked(null, null, frost, null, null, null)), Kind.FROST).thicknessM();
  }

  private double costPerYear(InsulationPrice price, double coverM) {
    double annuity = 0.05 / (1 - Math.pow(1.05, -20));
    double outerM2 = Math.PI * (0.0603 + 2 * coverM);
    double volumeM3 = Math.PI * coverM * (0.0603 + coverM);
    return annuity * (price.perM3() * volumeM3 + price.perM2() * outerM2)
        + GAS.costPerYear(flowWPerM(coverM, 80));
  }

  private double flowWPerM(double coverM, double mediumC) {
    Conditions conditions = conditions(new Section.Round(0.0603), mediumC, Asked.NOTHING);
    return new Surround(conditions, chooser.materials().family(conditions.materialId()))
        .flowWPerM(coverM, mediumC);
  }

  private ThicknessDecision hot(double mediumC, Asked asked) {
    return chooser.decide(conditions(new Section.Round(0.0603), mediumC, asked));
  }

  private static Conditions conditions(Section section, double mediumC, Asked asked) {
    return new Conditions(
        section,
        false,
        null,
        mediumC,
        Exposure.still(20, 50, 0.9),
        0,
        "sw_pipe_board",
        "none",
        null,
        "outdoor",
        "heating",
        asked);
  }

  private static Asked asked(
      @Nullable Double heatLossWPerM,
      @Nullable Double touchC,
      @Nullable Frost frost,
      @Nullable EnergyTariff tariff,
      @Nullable InsulationPrice price,
      @Nullable Specified specified) {
    return new Asked(heatLossWPerM, touchC, frost, tariff, price, specified);
  }

  private static Demand demand(ThicknessDecision decision, Kind kind) {
    return decision.demands().stream().filter(d -> d.kind() == kind).findFirst().orElseThrow();
  }

  private static Proof proof(ThicknessDecision decision) {
    return Objects.requireNonNull(decision.proof());
  }
}
