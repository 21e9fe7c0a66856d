package org.lagwright.takeoff.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
            "pir");
  }

  @Test
  void onlyWhatWasReadInTheTextItselfIsCalledVerified() {
    assertThat(PACK.families())
        .filteredOn(f -> f.conductivity().status() != SourceStatus.VERIFIED)
        .extracting(MaterialFamily::id)
        .containsExactly("duct_wrap", "phenolic");
    assertThat(PACK.families())
        .allSatisfy(f -> assertThat(f.stock().status()).isEqualTo(SourceStatus.COMMON_PRACTICE));
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
