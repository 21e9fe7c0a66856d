package org.lagwright.takeoff.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackInfo;

class ThicknessChooserTest {

  private static final String RULE = "us-ashrae-90.1-pipe";
  private static final Section DN50 = new Section.Round(0.0603);

  private final ThicknessChooser chooser = ThicknessChooser.bundled();

  @Test
  void chilledWaterPipeInDampAirIsGovernedByCondensation() {
    ThicknessDecision decision = chooser.decide(pipe(6.0, 6.0, 28, 90, null));

    assertThat(decision.demands())
        .extracting(Demand::kind)
        .containsExactly(Demand.Kind.CONDENSATION, Demand.Kind.ENERGY_RULE);
    assertThat(decision.governing()).isSameAs(decision.demands().get(0));
    assertThat(decision.requiredM()).isEqualTo(decision.demands().get(0).thicknessM());
    assertThat(decision.layersInWords()).isEqualTo("40 mm tube");
    assertThat(decision.totalM()).isCloseTo(0.040, within(1e-12));
    assertThat(decision.location()).isEqualTo("indoor");
  }

  /** Golden: the figures as users see them, in order; recomputed once by a second program. */
  @Test
  void condensationShowsEveryFigureItRestsOn() {
    Demand demand = chooser.decide(pipe(6.0, null, 26, 80, null)).demands().get(0);

    assertThat(inLines(demand))
        .isEqualTo(
            """
            air temperature degC: 26.0
            relative humidity %: 80.0
            dew point degC: 22.28
            margin K: 0.00
            lowest surface temperature degC: 22.28
            medium temperature degC: 6.0
            emissivity: 0.90
            still air: ISO 12241, level pipe or side of a duct
            material: fef_nbr
            mean temperature degC: 14.14
            conductivity W/(m K): 0.0364
            conductivity status: verified
            surface coefficient W/(m2 K): 8.52
            thickness needed mm: 15.3
            thickness bought mm: 19.0
            surface temperature as bought degC: 22.92
            surface coefficient as bought W/(m2 K): 8.34
            """);
  }

  @Test
  void energyRuleShowsEveryFigureItRestsOn() {
    Demand demand = chooser.decide(hot("sw_pipe_board", 80.0)).demands().get(1);

    assertThat(demand.rule()).isEqualTo("us-ashrae-90.1-pipe/heating-141-to-200F");
    assertThat(inLines(demand))
        .isEqualTo(
            """
            fluid temperature degC: 80.0
            fluid temperature degF: 176.0
            fluid range of the rule: 141-200 degF
            outside diameter mm: 60.3
            nominal size: NPS 2 / DN 50
            row status: read in a reproduction, verify
            thickness of the table in: 2.0
            thickness of the table mm: 50.8
            material: sw_pipe_board
            mean temperature degC: 51.67
            conductivity W/(m K): 0.0372
            conductivity status: verified
            conductivity range of the rule from W/(m K): 0.0361
            conductivity range of the rule to W/(m K): 0.0418
            adjusted to the conductivity: no, it lies within the range
            thickness needed mm: 50.8
            thickness bought mm: 60.0
            medium temperature degC: 80.0
            mean air temperature degC: 20.0
            wind m/s: 0.0
            heat flow bare W/m: 158.8
            heat flow insulated W/m: 12.3
            """);
  }

  @Test
  void materialOutsideTheRangeOfTheRuleGetsMoreThickness() {
    // 90.1 at 80 degC, NPS 2: 2.0 in for up to 0.29 Btu in/(h ft2 degF) = 0.0418 W/(m K); the EPDM
    // type has 0.048 at 51.7 degC.
    Demand demand = chooser.decide(hot("fef_epdm", 80.0)).demands().get(1);

    assertThat(demand.thicknessM())
        .isCloseTo(
            OtherConductivity.powerLaw(0.0508, 0.03015, 0.048, 0.29 * UsUnits.BTU_IN_PER_H_FT2_F),
            within(1e-9))
        .isGreaterThan(0.0508);
  }

  @Test
  void lukewarmPipeNeedsNothingAndNoDemandGoverns() {
    ThicknessDecision decision = chooser.decide(pipe(30.0, 30.0, 26, 60, null));

    assertThat(decision.demands()).extracting(Demand::thicknessM).containsExactly(0.0, 0.0);
    assertThat(decision.governing()).isNull();
    assertThat(decision.requiredM()).isZero();
    assertThat(decision.layers()).isEmpty();
  }

  @Test
  void withoutTemperaturesThereIsNoDemand() {
    assertThat(chooser.decide(pipe(null, null, 26, 60, null)).demands()).isEmpty();
  }

  @Test
  void userMinimumGovernsWhereItIsTheLargest() {
    ThicknessDecision decision = chooser.decide(pipe(6.0, 6.0, 26, 50, 0.032));

    assertThat(decision.governing())
        .isNotNull()
        .extracting(Demand::kind)
        .isEqualTo(Demand.Kind.USER);
    assertThat(decision.layersInWords()).isEqualTo("32 mm tube");
  }

  @Test
  void saturatedAirIsOutOfReachAndSaysSo() {
    ThicknessDecision decision = chooser.decide(pipe(6.0, 6.0, 26, 100, null));
    Demand condensation = decision.demands().get(0);

    assertThat(condensation.isReachable()).isFalse();
    assertThat(decision.governing()).isSameAs(condensation);
    assertThat(decision.layers()).isEmpty();
    assertThat(condensation.figures()).containsEntry("dew point degC", "26.00");
    assertThat(condensation.figures().get("result")).startsWith("out of reach");
  }

  @Test
  void marginThatEatsTheWholeDifferenceIsOutOfReach() {
    Conditions conditions =
        new Conditions(
            DN50,
            false,
            6.0,
            null,
            Exposure.still(26, 95, 0.9),
            1,
            "fef_nbr",
            "none",
            null,
            "indoor",
            "chilled",
            Asked.NOTHING);

    assertThat(chooser.decide(conditions).governing()).isNotNull();
    assertThat(chooser.decide(conditions).requiredM()).isInfinite();
  }

  @Test
  void nearlySaturatedAirNeedsMoreThanAnyoneBuilds() {
    Demand demand = chooser.decide(pipe(6.0, null, 26, 99.9, null)).demands().get(0);

    assertThat(demand.isReachable()).isFalse();
    assertThat(demand.figures()).containsEntry("thickness needed mm", "out of reach");
  }

  @Test
  void ductHasNoPipeRuleAndIsLaggedWithSheet() {
    for (Section section :
        List.of(
            new Section.Rectangular(0.6, 0.3),
            new Section.Oval(0.6, 0.3),
            new Section.Round(0.315))) {
      ThicknessDecision decision =
          chooser.decide(
              new Conditions(
                  section,
                  true,
                  13.0,
                  13.0,
                  Exposure.still(28, 70, 0.9),
                  0,
                  "fef_nbr",
                  RULE,
                  null,
                  "indoor",
                  "chilled",
                  Asked.NOTHING));
      assertThat(decision.demands())
          .extracting(Demand::kind)
          .containsExactly(Demand.Kind.CONDENSATION);
      assertThat(decision.layers())
          .singleElement()
          .extracting(Layer::form)
          .isEqualTo(Layer.LayerForm.SHEET);
    }
  }

  @Test
  void equalConditionsAreDecidedOnce() {
    assertThat(chooser.decide(pipe(6.0, 6.0, 26, 80, null)))
        .isSameAs(chooser.decide(pipe(6.0, 6.0, 26, 80, null)));
  }

  @Test
  void packsAreListedForTheBasis() {
    assertThat(chooser.listPacks())
        .extracting(PackInfo::id)
        .startsWith("materials-generic", "pipe-sizes", "pipe-bores", RULE)
        .contains("us-iecc-2021-pipe", "de-geg-2024-annex-8", "en-12828-class-6");
    assertThat(chooser.packsInUse(RULE))
        .extracting(PackInfo::id)
        .containsExactly("materials-generic", "pipe-sizes", "pipe-bores", RULE);
    assertThat(chooser.listPacks())
        .allSatisfy(
            p -> assertThat(List.of(p.version(), p.source(), p.status())).doesNotContain(""));
  }

  @Test
  void unknownIdsAreRefusedForTheUser() {
    chooser.requireKnown("none", List.of("fef_nbr"));
    chooser.requireKnown(RULE, List.of());

    assertThatThrownBy(() -> chooser.requireKnown("90.1", List.of()))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("unknown energy rule '90.1'")
        .hasMessageContaining(RULE);
    assertThatThrownBy(() -> chooser.requireKnown("none", List.of("foam")))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("unknown material 'foam'");
  }

  @Test
  void impossibleConditionsAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> pipe(6.0, 6.0, 26, 0, null));
    assertThatIllegalArgumentException().isThrownBy(() -> pipe(6.0, 6.0, 26, 101, null));
    assertThatIllegalArgumentException().isThrownBy(() -> pipe(6.0, 6.0, 90, 50, null));
    assertThatIllegalArgumentException().isThrownBy(() -> pipe(Double.NaN, 6.0, 26, 50, null));
    assertThatIllegalArgumentException().isThrownBy(() -> pipe(6.0, 6.0, 26, 50, 0.0));
  }

  private static Conditions pipe(
      @Nullable Double condensationC,
      @Nullable Double energyC,
      double airC,
      double humidityPct,
      @Nullable Double userMinimumM) {
    return new Conditions(
        DN50,
        false,
        condensationC,
        energyC,
        Exposure.still(airC, humidityPct, 0.9),
        0,
        "fef_nbr",
        RULE,
        userMinimumM,
        "indoor",
        "chilled",
        Asked.NOTHING);
  }

  private static Conditions hot(String material, double mediumC) {
    return new Conditions(
        DN50,
        false,
        mediumC,
        mediumC,
        Exposure.still(20, 50, 0.9),
        0,
        material,
        RULE,
        null,
        "indoor",
        "chilled",
        Asked.NOTHING);
  }

  private static String inLines(Demand demand) {
    return demand.figures().entrySet().stream()
        .map(e -> e.getKey() + ": " + e.getValue() + "\n")
        .collect(Collectors.joining());
  }
}
