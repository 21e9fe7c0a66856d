package org.lagwright.takeoff.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.ReferenceRows.Row;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.thickness.FluidRange.Bound;
import org.lagwright.takeoff.thickness.PipeRulePack.Example;

class PipeRulePackTest {

  private static final String FILE = "us-ashrae-90.1-pipe.yaml";
  private static final PipeRulePack RULE = PipeRulePack.bundled(FILE);
  private static final NominalPipeSizes SIZES = NominalPipeSizes.bundled();

  @TempDir Path folder;

  static List<Row> cells() {
    return ReferenceRows.read(PipeRulePackTest.class, "ashrae-90.1-cells.csv");
  }

  static List<Example> examples() {
    return RULE.examples();
  }

  @ParameterizedTest
  @MethodSource("cells")
  void cellIsThePublishedOne(Row row) {
    assertThat(tabulatedIn(row.number("fluid_F"), row.number("nps")))
        .isCloseTo(row.number("thickness_in"), within(1e-12));
  }

  @Test
  void sevenRangesByFiveBandsAreChecked() {
    assertThat(cells()).hasSize(35);
    assertThat(RULE.ranges()).hasSize(8);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void exampleOfThePackHolds(Example example) {
    assertThat(tabulatedIn(example.fluidF(), example.nps()))
        .isCloseTo(example.thicknessIn(), within(1e-12));
  }

  @Test
  void everyBoundaryHasAnExampleOnBothSides() {
    for (FluidRange range : RULE.ranges()) {
      Bound to = range.to();
      if (to != null) {
        assertThat(fluidsOfExamples()).as(range.id()).anyMatch(f -> near(f, to) && below(f, to));
        assertThat(fluidsOfExamples()).as(range.id()).anyMatch(f -> near(f, to) && !below(f, to));
      }
    }
  }

  @Test
  void conductivityRangesAreConvertedOnce() {
    // 0.27 Btu in/(h ft2 degF) is 0.0389 W/(m K), 75 degF is 23.9 degC.
    FluidRange.ConductivityRange rated = Objects.requireNonNull(RULE.range(10).conductivity());

    assertThat(rated.highWPerMK()).isCloseTo(0.03894, within(0.00001));
    assertThat(rated.lowWPerMK()).isCloseTo(0.03029, within(0.00001));
    assertThat(rated.ratedAtMeanC()).isCloseTo(23.89, within(0.01));
  }

  @Test
  void equalConductivityLeavesTheThicknessAsItIs() {
    assertThat(OtherConductivity.powerLaw(0.0508, 0.03, 0.04, 0.04))
        .isCloseTo(0.0508, within(1e-15));
  }

  @ParameterizedTest
  @CsvSource({
    "0.0213, 0.5, 15",
    "0.0603, 2, 50",
    "0.0605, 2, 50",
    "0.1143, 4, 100",
    "0.110, 4, 100",
    "0.003, 0.125, 6",
    "1.2, 36, 900",
    // half way between NPS 18 (457) and NPS 20 (508): the larger one
    "0.4825, 20, 500",
    // copper tube of ASTM B88 and EN 1057 beside steel of EN 10255; from memory, verify
    "0.0286, 1, 25",
    "0.028, 1, 25",
    "0.0269, 0.75, 20",
    "0.035, 1.25, 32",
    "0.0337, 1, 25",
    "0.0413, 1.5, 40",
    "0.042, 1.5, 40",
    "0.0424, 1.25, 32",
    "0.054, 2, 50",
    "0.0761, 2.5, 65",
    "0.1048, 4, 100",
    "0.1016, 3.5, 90",
    "0.108, 4, 100",
  })
  void nominalSizeIsTheNearestByOutsideDiameter(double outsideM, double nps, int dn) {
    NominalPipeSizes.Size size = SIZES.nearest(outsideM);

    assertThat(size.nps()).isEqualTo(nps);
    assertThat(size.dn()).isEqualTo(dn);
  }

  @Test
  void gapBetweenRangesIsRefused() throws IOException {
    assertRefused("to: {degF: 40, included: false}", "to: {degF: 39, included: false}")
        .hasMessageContaining("'cooling-40-to-60F' must begin where 'cooling-below-40F' ends");
  }

  @Test
  void temperatureThatBelongsToTwoRangesIsRefused() throws IOException {
    assertRefused("to: {degF: 40, included: false}", "to: {degF: 40, included: true}")
        .hasMessageContaining("exactly one of them includes");
  }

  @Test
  void overlapIsRefused() throws IOException {
    assertRefused("to: {degF: 40, included: false}", "to: {degF: 45, included: false}")
        .hasMessageContaining("must begin where");
  }

  @Test
  void rowWithACellTooFewIsRefused() throws IOException {
    assertRefused("[0.5, 1.0, 1.0, 1.0, 1.5]", "[0.5, 1.0, 1.0, 1.0]")
        .hasMessageContaining("one thickness for each of 5 bands");
  }

  @Test
  void tableThatEndsBelowTheHottestFluidIsRefused() throws IOException {
    assertRefused(
            "from: {degF: 350, included: false}",
            "from: {degF: 350, included: false}\n    to: {degF: 900, included: true}")
        .hasMessageContaining("open below");
  }

  private AbstractThrowableAssert<?, ? extends Throwable> assertRefused(
      String original, String changed) throws IOException {
    String text =
        new String(
            PipeRulePack.class.getResourceAsStream(FILE).readAllBytes(), StandardCharsets.UTF_8);
    assertThat(text).contains(original);
    Path file =
        Files.writeString(
            folder.resolve("rule.yaml"), text.replaceFirst(Pattern.quote(original), changed));
    return assertThatThrownBy(() -> PackReader.readFile(file, PipeRulePack.class))
        .isInstanceOf(PackException.class);
  }

  private static double tabulatedIn(double fluidF, double nps) {
    return RULE.tabulatedM(RULE.range(UsUnits.celsius(fluidF)), nps) / UsUnits.INCH_M;
  }

  private static List<Double> fluidsOfExamples() {
    return RULE.examples().stream().map(Example::fluidF).toList();
  }

  private static boolean near(double fluidF, Bound bound) {
    return Math.abs(fluidF - bound.degF()) < 0.11;
  }

  /** On the lower side of the boundary, which includes it or not. */
  private static boolean below(double fluidF, Bound bound) {
    return fluidF < bound.degF() || (bound.included() && fluidF == bound.degF());
  }
}
