package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Proof;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** What air, wind, finish and ground of a location do to thickness and heat flow. */
class SurroundingsTest {

  private static final String OUTDOORS =
      "air: {outdoor: {temperatureC: 28, meanTemperatureC: 5, windMPerS: 6}}\n";
  private static final String IN_THE_GROUND =
      "scope: {district-heating-flow: in, domestic-cold-water: in}\n"
          + "ground: {depthM: 1.2, soilWPerMK: 1.8}\n"
          + "air: {buried: {meanTemperatureC: 9}}\n";

  /** Design air 28 degC decides condensation; the flow is that of 5 degC and 6 m/s. */
  @Test
  void heatFlowTakesMeanAndWindButCondensationTheStillDesignAir() {
    ThicknessDecision decision = decision(OUTDOORS, "LTHW flow", "Roof", true);

    assertThat(proof(decision).airC()).isEqualTo(28);
    assertThat(demand(decision, Demand.Kind.ENERGY_RULE).figures())
        .containsEntry("mean air temperature degC", "5.0")
        .containsEntry("wind m/s", "6.0");
    ThicknessDecision cold = decision(OUTDOORS, "CHW flow", "Roof", true);
    assertThat(demand(cold, Demand.Kind.CONDENSATION).figures())
        .containsEntry("air temperature degC", "28.0")
        .doesNotContainKey("wind m/s");
  }

  /** By hand, bare pipe: 8.9 v^0.9/D^0.1 = 59.1 and 6.5 W/(m2 K) by radiation at 80 and 5 degC. */
  @Test
  void windAndMeanAirTakeHeatFromTheBarePipe() {
    Proof windy = proof(decision(OUTDOORS, "LTHW flow", "Roof", true));
    Proof still =
        proof(
            decision(OUTDOORS.replace("windMPerS: 6", "windMPerS: 0"), "LTHW flow", "Roof", true));

    assertThat(windy.bareWPerM()).isCloseTo((59.1 + 6.5) * Math.PI * 0.0603 * 75, within(1.5));
    assertThat(windy.insulatedWPerM()).isGreaterThan(still.insulatedWPerM());
    assertThat(windy.surfaceC()).isEqualTo(still.surfaceC());
  }

  @Test
  void brightJacketOfALocationNeedsMoreAgainstCondensation() {
    String bright = "air: {plant-room: {surfaceEmissivity: 0.1}}\n";

    assertThat(demand(decision(bright, "CHW flow", "Plant room", null)).thicknessM())
        .isGreaterThan(
            demand(decision("project: x\n", "CHW flow", "Plant room", null)).thicknessM());
    assertThat(demand(decision(bright, "CHW flow", "Level 1", null)))
        .isEqualTo(demand(decision("project: x\n", "CHW flow", "Level 1", null)));
  }

  /** Insulation and soil in series: ln(De/D)/(2 pi lambda) and arcosh(2 z/De)/(2 pi lambda). */
  @Test
  void buriedPipeThatTheSettingsTakeInLosesItsHeatThroughTheSoil() {
    ThicknessDecision decision = decision(IN_THE_GROUND, "District heating flow", "Buried", null);
    Proof proof = proof(decision);
    double outerM = 0.0603 + 2 * decision.totalM();
    double soil = acosh(2 * 1.2 / outerM) / (2 * Math.PI * 1.8);

    assertThat(proof.airC()).isEqualTo(9);
    assertThat(proof.insulatedWPerM()).isCloseTo((proof.surfaceC() - 9) / soil, within(1e-6));
    assertThat(proof.bareWPerM())
        .isCloseTo(
            (proof.heatMediumC() - 9) * 2 * Math.PI * 1.8 / acosh(2.4 / 0.0603), within(1e-6));
    assertThat(proof.dewPointC()).isNull();
    assertThat(decision.demands())
        .extracting(Demand::kind)
        .containsExactly(Demand.Kind.ENERGY_RULE);
  }

  @Test
  void buriedPipeIsReportedWithItsSoil() {
    Takeoff takeoff = takeoff(IN_THE_GROUND, "District heating flow", "Buried", null);

    assertThat(takeoff.findings())
        .filteredOn(f -> f.code() == TakeoffFinding.BURIED_IN_SOIL)
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("1.80 W/(m K)").contains("1.200 m"));
  }

  @Test
  void coldWaterInTheGroundHasNoCondensationAndIsAsked() {
    Takeoff takeoff = takeoff(IN_THE_GROUND, "Trinkwasser kalt", "Buried", null);

    assertThat(takeoff.elements().get(0).leftOutWith()).isEqualTo("NO_DEMAND");
  }

  /** Chilled return of 12 degC outdoors at a mean of 5 degC: what it loses is no cost. */
  @Test
  void aColdMediumThatTheMeanAirDoesNotWarmSavesNothing() {
    String tariff =
        "demands: {tariffs: {cold: {hoursPerYear: 2000, pricePerKWh: 0.2, efficiency: 4,"
            + " co2KgPerKWh: 0.3}}}\n";

    assertThat(proof(decision(OUTDOORS + tariff, "CHW return", "Roof", true)).saving()).isNull();
    assertThat(proof(decision(tariff, "CHW return", "Level 1", null)).saving()).isNotNull();
  }

  /** By hand at 4 K: 1.25 (4/0.1)^0.25 = 3.1 level, 1.74 4^(1/3) = 2.8 W/(m2 K) along a riser. */
  @Test
  void riserNeedsMoreAgainstCondensationThanALevelPipe() {
    TestElement level =
        TestElement.pipe(1, 60.3, 2).inSystem("CHW flow").end(0, 0, -1, 0).end(2, 0, 1, 0);
    TestElement riser =
        TestElement.pipe(2, 60.3, 2).inSystem("CHW flow").endAtHeight(0).endAtHeight(2);
    Takeoff takeoff =
        Takeoff.of(List.of(TestElement.model(level, riser)), TestSettings.of("project: x\n"));
    Demand onLevel = demand(Objects.requireNonNull(takeoff.elements().get(0).thickness()));
    Demand onRiser = demand(Objects.requireNonNull(takeoff.elements().get(1).thickness()));

    assertThat(onRiser.thicknessM()).isGreaterThan(onLevel.thicknessM());
    assertThat(onRiser.figures()).containsEntry("still air", "ISO 12241, riser");
    assertThat(onLevel.figures().get("still air"))
        .isEqualTo("ISO 12241, level pipe or side of a duct");
  }

  @Test
  void settingsChooseTheCoefficientsOfChurchillAndChu() {
    Demand iso = demand(decision("project: x\n", "CHW flow", "Plant room", null));
    Demand other =
        demand(decision("surfaceCoefficients: churchill-chu\n", "CHW flow", "Plant room", null));

    assertThat(other.figures().get("still air")).startsWith("Churchill and Chu");
    assertThat(other.thicknessM()).isNotEqualTo(iso.thicknessM());
  }

  /** GEG, annex 8, half of 20 mm at 0.035 W/(m K); glass wool is at 0.034 at 40 degC mean. */
  @Test
  void halfThicknessHoldsInTheLocationThatTheUserNames() {
    String geg =
        "energyRule: de-geg-2024-annex-8\n"
            + "air: {between-heated-rooms: {temperatureC: 20, relativeHumidityPct: 50}}\n"
            + "places: [{contains: Trennwand, location: between-heated-rooms}]\n";
    double half = energyRuleM(geg, "Trennwand");
    double whole = energyRuleM(geg, "Level 1");

    assertThat(half).isBetween(0.009, 0.0105);
    assertThat(whole).isBetween(0.0185, 0.0205);
  }

  private static double energyRuleM(String settings, String storey) {
    TestElement pipe = TestElement.pipe(1, 21.3, 2).inSystem("LTHW flow").at(storey, null);
    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(pipe)), TestSettings.of(settings));
    ThicknessDecision decision = Objects.requireNonNull(takeoff.elements().get(0).thickness());
    return demand(decision, Demand.Kind.ENERGY_RULE).thicknessM();
  }

  private static double acosh(double x) {
    return Math.log(x + Math.sqrt(x * x - 1));
  }

  private static Demand demand(ThicknessDecision decision) {
    return demand(decision, Demand.Kind.CONDENSATION);
  }

  private static Demand demand(ThicknessDecision decision, Demand.Kind kind) {
    return decision.demands().stream().filter(d -> d.kind() == kind).findFirst().orElseThrow();
  }

  private static Proof proof(ThicknessDecision decision) {
    return Objects.requireNonNull(decision.proof());
  }

  private static ThicknessDecision decision(
      String settings, String system, String storey, @Nullable Boolean external) {
    return Objects.requireNonNull(
        takeoff(settings, system, storey, external).elements().get(0).thickness());
  }

  private static Takeoff takeoff(
      String settings, String system, String storey, @Nullable Boolean external) {
    TestElement pipe = TestElement.pipe(1, 60.3, 2).inSystem(system).at(storey, external);
    return Takeoff.of(List.of(TestElement.model(pipe)), TestSettings.of(settings));
  }
}
