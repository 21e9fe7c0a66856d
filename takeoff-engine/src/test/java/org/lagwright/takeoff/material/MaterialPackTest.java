package org.lagwright.takeoff.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.takeoff.material.MaterialFamily.VapourResistance;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

class MaterialPackTest {

  private static final MaterialPack PACK = MaterialPack.bundled();

  @TempDir Path folder;

  /** Points as printed in the handbook the pack names, halves between them, both ends. */
  @ParameterizedTest
  @CsvSource({
    "fef_nbr, 0, 0.035, false",
    "fef_nbr, 10, 0.036, false",
    "fef_nbr, 35, 0.0385, false",
    "fef_nbr, 60, 0.040, false",
    "fef_nbr, 60.1, 0.040, true",
    "fef_nbr, -30, 0.033, false",
    "fef_nbr, -30.1, 0.033, true",
    "sw_pipe_board, 75, 0.0405, false",
    "pir, -25, 0.0215, false",
    "duct_wrap, 34, 0.043, false",
    "duct_wrap, 13.9, 0.043, true",
  })
  void conductivityIsLinearBetweenThePointsAndHeldBeyond(
      String family, double meanC, double expected, boolean extrapolated) {
    Conductivity c = PACK.family(family).conductivityAt(meanC);

    assertThat(c.wPerMK()).isCloseTo(expected, within(1e-12));
    assertThat(c.extrapolated()).isEqualTo(extrapolated);
  }

  @Test
  void theFamiliesOfTheTradeAreThere() {
    assertThat(PACK.families())
        .extracting(MaterialFamily::id)
        .containsExactly(
            "fef_nbr",
            "fef_epdm",
            "gw_pipe_board",
            "sw_pipe_board",
            "duct_wrap",
            "cellular_glass",
            "phenolic",
            "pir",
            "pe_foam",
            "pur",
            "calcium_silicate",
            "aerogel_blanket",
            "melamine",
            "eps",
            "xps",
            "cork",
            "eglass_needle_mat",
            "ceramic_fibre",
            "perlite");
  }

  @Test
  void onlyWhatWasReadInTheTextItselfIsCalledVerified() {
    assertThat(PACK.families())
        .filteredOn(f -> f.conductivity().status() != SourceStatus.VERIFIED)
        .extracting(MaterialFamily::id)
        .containsExactly("duct_wrap", "phenolic", "aerogel_blanket");
    assertThat(PACK.families())
        .allSatisfy(
            f ->
                assertThat(f.stock().status())
                    .isIn(SourceStatus.COMMON_PRACTICE, SourceStatus.MEMORY));
  }

  /**
   * Permeability as printed in the handbook, in ug m/(N h), against that of air, 1.9e-10 kg/(m s
   * Pa) at 10 degC (from memory); 1 ug m/(N h) is 2.78e-13 kg/(m s Pa).
   */
  @ParameterizedTest
  @CsvSource({"fef_nbr, 0.25", "fef_epdm, 0.1", "phenolic, 10", "pir, 30", "pur, 20"})
  void vapourResistanceFollowsFromThePrintedPermeability(String family, double permeability) {
    VapourResistance vapour = Objects.requireNonNull(PACK.family(family).vapour());

    assertThat(vapour.status()).isEqualTo(SourceStatus.MEMORY);
    assertThat(Objects.requireNonNull(vapour.mu()))
        .isCloseTo(1.9e-10 / (permeability * 2.78e-13), withinPercentage(2));
  }

  @Test
  void noVapourPassesCellularGlass() {
    assertThat(Objects.requireNonNull(PACK.family("cellular_glass").vapour()).mu()).isNull();
  }

  @Test
  void boresThatDoNotEndAtTheLargestAreRefused() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("stock.yaml"),
            "tubeWallsMm: [9]\nlargestTubeBoreMm: 89\nsheetsMm: []\nsectionWallsMm: []\n"
                + "largestSectionBoreMm: 0\ntubeBoresMm: [15, 22]\nstatus: verified\nsource: t\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Stock.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("tubeBoresMm must end at largestTubeBoreMm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{form: tube, widthM: 1, lengthM: 2} | widthM belongs to sheet and roll",
        "{form: roll, lengthM: 2} | widthM belongs to sheet and roll",
        "{form: bag, lengthM: 2} | form must be",
        "{form: tube, lengthM: 0} | must be above 0"
      })
  void sizesThatCannotBeSoldAreRefused(String sold, String reason) throws IOException {
    Path file = Files.writeString(folder.resolve("sold.yaml"), sold + "\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Stock.Sold.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void everyFamilyHasAFormToBuy() {
    assertThat(PACK.families())
        .allSatisfy(
            f ->
                assertThat(
                        f.stock().tubeWallsMm().size()
                            + f.stock().sheetsMm().size()
                            + f.stock().sectionWallsMm().size())
                    .isPositive());
  }

  @Test
  void serviceRangeIncludesItsEnds() {
    MaterialFamily foam = PACK.family("fef_nbr");

    assertThat(foam.stands(116)).isTrue();
    assertThat(foam.stands(116.1)).isFalse();
    assertThat(foam.stands(-40)).isTrue();
    assertThat(foam.stands(-40.1)).isFalse();
    assertThat(foam.serviceRangeInWords()).isEqualTo("-40 to 116 degC");
  }

  @Test
  void unknownFamilyIsRefusedWithTheKnownOnes() {
    assertThatThrownBy(() -> PACK.family("wool"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("unknown material 'wool'")
        .hasMessageContaining("sw_pipe_board")
        .hasMessageContaining("settings");
    assertThat(PACK.findFamily("wool")).isEmpty();
  }

  @Test
  void wallsThatDoNotRiseAreRefused() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("stock.yaml"),
            "tubeWallsMm: [13, 9]\nlargestTubeBoreMm: 89\nsheetsMm: []\nsectionWallsMm: []\n"
                + "largestSectionBoreMm: 0\nstatus: verified\nsource: test\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Stock.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("tubeWallsMm must rise");
  }

  @Test
  void pointsOutOfOrderAreRefused() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("points.yaml"),
            "grade: any\nstatus: verified\nsource: test\n"
                + "points: [{meanC: 10, wPerMK: 0.03}, {meanC: 0, wPerMK: 0.03}]\n");

    assertThatThrownBy(() -> PackReader.readFile(file, MaterialFamily.Points.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("meanC must rise");
  }
}
