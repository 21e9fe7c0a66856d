package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.lagwright.ifc.model.Section;

/** The sizes of the program against the published tables; sources stand in the file. */
class PipeSizesTest {

  private static final double TOLERANCE_M = 0.00015;

  @ParameterizedTest
  @CsvFileSource(
      resources = "/org/lagwright/testmodels/reference/pipe-sizes.csv",
      delimiter = ';',
      useHeadersInDisplayName = true)
  void outsideDiameterOfTheTableIsKnownByItsNominalSize(
      String standard, Double nps, Integer dn, double outsideMm) {
    if (standard.equals("EN 1506")) {
      // Round ducts are named by their diameter; a duct is no pipe of that outside diameter.
      assertThat(nps).isNull();
      assertThat(dn).isNull();
      return;
    }
    assertThat(PipeSizes.isOutsideDiameter(outsideMm / 1000)).isTrue();
    if (dn != null) {
      assertThat(PipeSizes.ofNominal(dn))
          .anyMatch(size -> Math.abs(diameterM(size) - outsideMm / 1000) < TOLERANCE_M);
    }
  }

  private static double diameterM(Section section) {
    return ((Section.Round) section).outsideDiameterM();
  }
}
