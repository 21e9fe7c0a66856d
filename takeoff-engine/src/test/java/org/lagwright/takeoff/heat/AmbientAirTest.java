package org.lagwright.takeoff.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.ReferenceRows.Row;
import org.lagwright.takeoff.heat.Body.Cylinder;
import org.lagwright.takeoff.heat.Body.Flat;
import org.lagwright.takeoff.heat.LayeredBody.SolidLayer;

class AmbientAirTest {

  static List<Row> barePipes() {
    return ReferenceRows.read(AmbientAirTest.class, "bare-pipe.csv");
  }

  static List<Row> condensationExamples() {
    return ReferenceRows.read(AmbientAirTest.class, "condensation.csv");
  }

  @ParameterizedTest
  @MethodSource("barePipes")
  void barePipeLosesWhatTheTableSays(Row row) {
    double published = row.number("published_W_per_m");
    HeatFlow heat =
        new AmbientAir(20, 0.9)
            .bare(new Cylinder(row.number("outside_mm") / 1000), row.number("pipe_C"));

    assertThat(heat.flow()).isCloseTo(published, within(Math.max(0.006 * published, 0.5)));
  }

  @Test
  void allCellsOfTheBarePipeTableAreChecked() {
    assertThat(barePipes()).hasSize(210);
  }

  @ParameterizedTest
  @MethodSource("condensationExamples")
  void thicknessAgainstCondensationIsTheExpectedOne(Row row) {
    double h = row.number("h");
    Body body =
        row.text("outside_mm").equals("flat")
            ? new Flat(1)
            : new Cylinder(row.number("outside_mm") / 1000);
    double thicknessM =
        new AmbientAir(row.number("air_C"), 0.9)
            .smallestThicknessM(
                body,
                row.number("medium_C"),
                row.number("dew_point_C"),
                row.number("lambda"),
                coverM -> h,
                1);

    double expectedMm = row.number("thickness_mm");
    assertThat(thicknessM * 1000).isCloseTo(expectedMm, within(row.tolerance(expectedMm)));
  }

  @Test
  void radiationAndGivenConvectionAddUpAsPublished() {
    // Kreith, Principles of Heat Transfer, example 1.10: 0.5 m pipe at 500 K in 300 K, emissivity
    // 0.9, convection 20 W/(m2 K): 10644 W/m. Tolerance 0.1 %, its rounding.
    double h = 20 + Radiation.coefficientWPerM2K(0.9, 500 - 273.15, 300 - 273.15);

    assertThat(Math.PI * 0.5 * h * 200).isCloseTo(10644, within(10.6));
  }

  @Test
  void radiationHoldsAtEqualTemperatures() {
    assertThat(Radiation.coefficientWPerM2K(1, 20, 20))
        .isCloseTo(4 * 5.670374e-8 * Math.pow(293.15, 3), within(1e-12));
  }

  @Test
  void iteratedSurfaceBalancesConductionAndFilm() {
    AmbientAir air = new AmbientAir(26, 0.9);
    Body pipe = new Cylinder(0.0603);
    HeatFlow heat =
        air.insulated(pipe, Cover.of(0.019, ConductivityCurve.quadratic(0.035, 1e-4, 0)), 6);

    double lambda = 0.035 + 1e-4 * (6 + heat.surfaceC()) / 2;
    HeatFlow again =
        new LayeredBody(pipe, List.of(new SolidLayer(0.019, lambda)))
            .flow(6, 26, LayeredBody.NO_FILM, heat.coefficientWPerM2K());
    assertThat(heat.flow()).isCloseTo(again.flow(), within(1e-6)).isNegative();
    assertThat(heat.surfaceC()).isCloseTo(again.surfaceC(), within(1e-6)).isBetween(6.0, 26.0);
  }

  @Test
  void noHeatFlowsBetweenEqualTemperatures() {
    HeatFlow heat =
        new AmbientAir(20, 0.9)
            .insulated(new Flat(1), Cover.of(0.02, ConductivityCurve.constant(0.04)), 20);

    assertThat(heat.flow()).isZero();
    assertThat(heat.surfaceC()).isEqualTo(20);
  }

  @Test
  void warmMediumNeedsNothingAndTargetAtAirTemperatureIsOutOfReach() {
    AmbientAir air = new AmbientAir(26, 0.9);
    Body pipe = new Cylinder(0.0603);

    assertThat(air.thicknessForSurfaceM(pipe, 22.3, 22.3, 0.036, 1)).isZero();
    assertThat(air.thicknessForSurfaceM(pipe, 6, 26, 0.036, 1)).isInfinite();
    assertThat(air.thicknessForSurfaceM(pipe, 6, 25.99, 0.036, 1)).isInfinite();
  }

  @Test
  void impossibleEmissivityIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new AmbientAir(20, 1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new AmbientAir(Double.NaN, 0.9));
  }
}
