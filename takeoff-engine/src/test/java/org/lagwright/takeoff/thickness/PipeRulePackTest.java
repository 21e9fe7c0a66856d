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
import java.util.stream.Stream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
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

  static List<PipeRulePack> packs() {
    return Stream.of(
            FILE, "us-iecc-2021-pipe.yaml", "us-ca-title-24-2022-pipe.yaml", "ca-qc-e1.1-s109.yaml")
        .map(PipeRulePack::bundled)
        .toList();
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

  /** All cells of the other tables: 35 of the IECC, 35 of California, 30 of Quebec. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "other-pipe-cells.csv",
      delimiter = ';',
      useHeadersInDisplayName = true)
  void cellOfTheOtherTablesIsThePublishedOne(
      String file, double fluidC, double nps, double thicknessMm) {
    PipeRulePack rule = PipeRulePack.bundled(file);

    assertThat(rule.tabulatedM(rule.range(fluidC), nps) * 1000)
        .isCloseTo(thicknessMm, within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("packs")
  void examplesOfThePackHold(PipeRulePack rule) {
    for (Example example : rule.examples()) {
      assertThat(rule.tabulatedM(rule.range(example.celsius()), example.nps()))
          .as(example.toString())
          .isCloseTo(example.thicknessM(), within(1e-12));
    }
  }

  @ParameterizedTest
  @MethodSource("packs")
  void everyBoundaryHasAnExampleOnBothSides(PipeRulePack rule) {
    for (FluidRange range : rule.ranges()) {
      Bound to = range.to();
      if (to != null) {
        assertThat(rule.examples()).as(range.id()).anyMatch(e -> near(e, to) && below(e, to));
        assertThat(rule.examples()).as(range.id()).anyMatch(e -> near(e, to) && !below(e, to));
      }
    }
    for (double band : rule.bandsFromNps().subList(1, rule.bandsFromNps().size())) {
      assertThat(rule.examples()).as("band from " + band).anyMatch(e -> e.nps() == band);
      double below = below(band);
      assertThat(rule.examples()).as("band to " + below).anyMatch(e -> e.nps() == below);
    }
  }

  /** Quebec, section 109: 28 to 32 m degC/W, below t 28/R, above t 32/R. */
  @Test
  void quebecTakesTheThicknessInProportionToTheResistivity() {
    PipeRulePack.Adjustment quebec = PipeRulePack.bundled("ca-qc-e1.1-s109.yaml").adjustment();
    FluidRange.ConductivityRangeSi range =
        Objects.requireNonNull(PipeRulePack.bundled("ca-qc-e1.1-s109.yaml").range(80).rated());

    assertThat(quebec.adjustedM(0.038, 0.03, 1 / 20.0, quebec.ratedWPerMK(range, 1 / 20.0)))
        .isCloseTo(0.038 * 28 / 20, within(1e-6));
    assertThat(quebec.adjustedM(0.038, 0.03, 1 / 40.0, quebec.ratedWPerMK(range, 1 / 40.0)))
        .isCloseTo(0.038 * 32 / 40, within(1e-6));
  }

  /** Read in the text of 120.3: k is the lower value of the range; 90.1 takes the upper one. */
  @Test
  void californiaTakesTheLowerEndOfTheRange() {
    PipeRulePack california = PipeRulePack.bundled("us-ca-title-24-2022-pipe.yaml");
    FluidRange.ConductivityRangeSi range = Objects.requireNonNull(california.range(80).rated());

    assertThat(california.adjustment().ratedWPerMK(range, 0.05)).isEqualTo(range.lowWPerMK());
    assertThat(RULE.adjustment().ratedWPerMK(range, 0.05)).isEqualTo(range.highWPerMK());
    assertThat(california.info().status()).isEqualTo("from memory, verify");
  }

  @Test
  void quebecIsSilentAboveItsTable() {
    PipeRulePack quebec = PipeRulePack.bundled("ca-qc-e1.1-s109.yaml");

    assertThat(quebec.range(241).table()).isEqualTo("silent");
  }

  @Test
  void conductivityRangesAreConvertedOnce() {
    // 0.27 Btu in/(h ft2 degF) is 0.0389 W/(m K), 75 degF is 23.9 degC.
    FluidRange.ConductivityRangeSi rated = Objects.requireNonNull(RULE.range(10).rated());

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
    "0.003, 0.25, 8",
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
  void rangeWithoutSourceIsRefused() throws IOException {
    assertRefused("    source: \"90.1, table 6.8.3-2\"\n", "")
        .hasMessageContaining("'source' is missing here");
  }

  @Test
  void unknownKeyOfARangeIsRefused() throws IOException {
    assertRefused("    table: cooling\n", "    table: cooling\n    colour: red\n")
        .hasMessageContaining("unknown key 'colour'");
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
        .isInstanceOf(PackException.class)
        .hasMessageMatching("(?s)" + Pattern.quote(file.toString()) + ":\\d+:\\d+: .*");
  }

  /** The nominal size before this one. */
  private static double below(double nps) {
    return SIZES.sizes().stream()
        .mapToDouble(NominalPipeSizes.Size::nps)
        .filter(size -> size < nps && size != 0.625)
        .max()
        .orElseThrow();
  }

  private static double tabulatedIn(double fluidF, double nps) {
    return RULE.tabulatedM(RULE.range(UsUnits.celsius(fluidF)), nps) / UsUnits.INCH_M;
  }

  private static boolean near(Example example, Bound bound) {
    return Math.abs(example.celsius() - bound.celsius()) < 0.11;
  }

  /** On the lower side of the boundary, which includes it or not. */
  private static boolean below(Example example, Bound bound) {
    double overK = example.celsius() - bound.celsius();
    return overK < -1e-9 || (bound.included() && Math.abs(overK) <= 1e-9);
  }
}
